package org.marktwice.view.quiz;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.AccessibleRole;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.picture.JobPicture;
import org.marktwice.quiz.Progress;
import org.marktwice.rulebook.Texts;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Painted;

/** Which exercise at the bench would now train what is shaky, and the way to it. */
final class TrainingPart extends JPanel {
    private static final long serialVersionUID = 1L;

    TrainingPart(Progress progress, List<Scenario> exercises, Consumer<Scenario> go) {
        super(new MigLayout("insets 0, gap 0, wrap 1", "[grow,fill]"));
        setOpaque(false);
        Optional<Progress.Row> row = progress.shaky().stream()
                .filter(r -> Progress.training(r, exercises).isPresent())
                .findFirst();
        if (row.isEmpty()) {
            String none = progress.shaky().isEmpty()
                    ? "Nothing is shaky: go on with the next exercise."
                    : "No exercise on the list trains what is shaky.";
            add(Look.prose(none, Style.BODY, Ink.INK), "wmin 0");
            return;
        }
        Progress.Training training = Progress.training(row.get(), exercises).orElseThrow();
        Scenario exercise = training.exercise();
        String idea = row.get().kind().idea();
        add(
                Look.prose(
                        "Shaky: " + idea.substring(0, 1).toLowerCase(Locale.ROOT) + idea.substring(1) + ".",
                        Style.BODY,
                        Ink.INK),
                "wmin 0");
        add(
                Look.prose(
                        "“" + exercise.title() + "” (level " + exercise.level() + ") trains it: "
                                + Texts.of(training.rule()).title() + ".",
                        Style.BODY,
                        Ink.INK),
                "wmin 0, gaptop 4");
        add(new Drawn(exercise), "h 96lp!, gaptop 8");
        JButton button = new JButton("Go to “" + exercise.title() + "”");
        button.setName("train");
        button.addActionListener(e -> go.accept(exercise));
        add(button, "growx 0, alignx left, gaptop 8");
    }

    /** The exercise's job. */
    private static final class Drawn extends Painted {
        private static final long serialVersionUID = 1L;
        private final transient JobPicture job;

        Drawn(Scenario exercise) {
            super(AccessibleRole.ICON);
            readAs(exercise.title());
            job = JobPicture.of(exercise.drawing());
        }

        @Override
        protected void draw(Graphics2D g) {
            job.paint(
                    g,
                    new Rectangle2D.Double(1, 1, getWidth() - 2.0, getHeight() - 2.0),
                    JobPicture.Style.PLAIN,
                    Look.palette());
        }
    }
}
