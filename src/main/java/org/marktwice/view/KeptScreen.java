package org.marktwice.view;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Cautions;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Look.Style;

/** After an examination: that the work is kept, and nothing of how it was done. */
final class KeptScreen implements Screen {
    private final Scenario scenario;
    private final JButton exercises = Look.primary(new JButton("Exercises"));
    private final JPanel page;

    /**
     * @param file where it is kept; empty where it isn't
     * @param toExercises leads back to the exercises
     */
    KeptScreen(Scenario scenario, String learner, Optional<Path> file, Runnable toExercises) {
        this.scenario = scenario;
        exercises.setName("exercises-button");
        exercises.addActionListener(e -> toExercises.run());
        page = build(learner, file);
    }

    private JPanel build(String learner, Optional<Path> file) {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        whole.add(Bar.top("Handed in", scenario.title() + ", level " + scenario.level() + " · " + learner));
        Card card = new Card(new MigLayout("insets 28 32 28 32, gap 0 12, wrap 1", "[grow,fill]"));
        JComponent title = Look.label("Your work is kept.", Style.TITLE);
        title.setName("kept");
        card.add(title);
        card.add(
                Look.prose(
                        "This was an examination: your teacher marks it, and gives you the mark sheet with the reasons."
                                + " Nothing is shown before that.",
                        Style.BODY,
                        Ink.INK),
                "growx, wmin 0");
        file.ifPresent(f -> card.add(Look.prose("The file to give in: " + f, Style.NOTE, Ink.QUIET), "growx, wmin 0"));
        card.add(exercises, "growx 0, alignx left, gaptop 8");
        JPanel centred = new JPanel(new MigLayout("insets 24, fill", "push[grow,fill,560lp::680lp]push", "[top]"));
        centred.add(card, "growx, wmin 0");
        whole.add(centred, "grow");
        whole.add(Bar.bottom(Look.label(" ", Style.BODY), Look.quiet(Cautions.LINE, Style.NOTE)));
        return whole;
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return scenario.title() + ": handed in";
    }

    @Override
    public String menu() {
        return "Handed in";
    }

    @Override
    public List<Deed> deeds() {
        return List.of();
    }

    @Override
    public Optional<Workshop> workshop() {
        return Workshop.of(scenario);
    }

    @Override
    public void focus() {
        exercises.requestFocusInWindow();
    }
}
