package org.marktwice.view.quiz;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.files.FileRefused;
import org.marktwice.files.QuizJournal;
import org.marktwice.picture.Ink;
import org.marktwice.quiz.Progress;
import org.marktwice.quiz.Standing;
import org.marktwice.rulebook.Texts;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Bar;
import org.marktwice.view.Card;
import org.marktwice.view.Column;
import org.marktwice.view.Commands;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Screen;
import org.marktwice.view.Sign;

/** What is firm, what is shaky, what is due: by rule, with a plain chart; and what the bench would now train. */
final class ProgressScreen implements Screen {
    /** What the page asks of the quiz. */
    interface Host {
        void practise();

        void back();

        /** The learner's journal, as a file to hand on. Nothing leaves the learner's folder but by this. */
        Path journal();
    }

    private final Host host;
    private final String learner;
    private final Progress progress;
    private final List<Scenario> exercises;
    private final int due;
    private final JLabel line = Look.label(" ", Style.BODY);
    private final List<Deed> deeds;
    private final JPanel page;
    private final JButton practise = Look.primary(new JButton());

    /** @param due how many questions are due today */
    ProgressScreen(Host host, String learner, Progress progress, int due, List<Scenario> exercises, boolean back) {
        this.host = host;
        this.learner = learner;
        this.progress = progress;
        this.due = due;
        this.exercises = exercises;
        Deed save = new Deed(QuizCommands.SAVE, this::save);
        Deed more = new Deed(QuizCommands.MORE, host::practise);
        Deed to = new Deed(QuizCommands.BACK, host::back, () -> back);
        deeds = List.of(more, save, to);
        page = build(save, more, to, back);
        Commands.install(page, deeds);
        line.setName("line");
    }

    private JPanel build(Deed save, Deed more, Deed to, boolean back) {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        practise.setAction(more);
        practise.setText(due > 0 ? "Practise what is due" : "Practise");
        practise.setName("practise");
        JButton saving = new JButton(save);
        saving.setName("save");
        JButton backButton = new JButton(to);
        backButton.setName("back");
        backButton.setVisible(back);
        whole.add(Bar.top("How far you are", learner + " · quiz", backButton, saving, practise));
        JPanel body = new JPanel(
                new MigLayout("insets 20, gap 20, fill", "[grow,fill][300lp:340lp:360lp,fill]", "[grow,fill]"));
        body.add(table(), "grow, hmin 0, wmin 0");
        body.add(summary(), "aligny top");
        whole.add(body, "grow, hmin 0");
        whole.add(Bar.bottom(
                line,
                Look.quiet("Your answers stay in your own folder unless you save them for someone.", Style.NOTE)));
        return whole;
    }

    private JComponent table() {
        Card card = new Card(new MigLayout("insets 12 12 4 4, fill", "[grow,fill]", "[grow,fill]"));
        Column column = new Column(
                new MigLayout("insets 12 16 16 16, gap 16 10, wrap 4", "[grow,fill][130lp!][150lp!][150lp!]"));
        for (String head : List.of("RULE AND IDEA", "STANDS", "RIGHT OF ASKED", "DUE")) {
            column.add(Look.quiet(head, Style.HEADING));
        }
        String rule = "";
        for (Progress.Row row : progress.rows()) {
            if (!row.rule().equals(rule)) {
                rule = row.rule();
                column.add(Look.label(Texts.of(rule).title(), Style.STRONG), "span 4, gaptop 8, wmin 0");
            }
            add(column, row);
        }
        var scroll = column.scrolling();
        scroll.setName("standings");
        scroll.getAccessibleContext().setAccessibleName("How you stand, by rule");
        card.add(scroll, "grow, hmin 0, wmin 0");
        return card;
    }

    private static void add(Column column, Progress.Row row) {
        column.add(Look.label(row.kind().idea(), Style.BODY), "gapleft 16, wmin 0");
        JLabel word = Look.inked(new JLabel(row.word().spoken()), Style.BODY, ink(row.word()));
        sign(row.word()).ifPresent(v -> word.setIcon(new Sign(v)));
        word.setName("stands-" + row.kind().id());
        column.add(word);
        column.add(new Share(row.right(), row.asked()), "growx, h 18lp!");
        column.add(Look.quiet(due(row), Style.BODY));
    }

    private static String due(Progress.Row row) {
        if (row.word() == Standing.Word.NOT_MET) return "new";
        if (row.isDue()) return "today";
        return row.days() == 1 ? "tomorrow" : "in " + row.days() + " days";
    }

    private static Ink ink(Standing.Word word) {
        return switch (word) {
            case FIRM -> Ink.SOUND;
            case SHAKY -> Ink.CLOSE;
            case ON_THE_WAY -> Ink.INK;
            case NOT_MET -> Ink.QUIET;
        };
    }

    private static Optional<Verdict> sign(Standing.Word word) {
        return switch (word) {
            case FIRM -> Optional.of(Verdict.SOUND);
            case SHAKY -> Optional.of(Verdict.CLOSE);
            default -> Optional.empty();
        };
    }

    private JComponent summary() {
        Card card = new Card(new MigLayout("insets 24 24 24 24, gap 0, wrap 1", "[grow,fill]"));
        card.add(Look.label(due == 0 ? "Nothing is due today" : questions(due) + " due today", Style.SUBTITLE));
        for (Standing.Word word :
                List.of(Standing.Word.FIRM, Standing.Word.ON_THE_WAY, Standing.Word.SHAKY, Standing.Word.NOT_MET)) {
            JLabel count = Look.label(progress.count(word) + " " + word.spoken(), Style.BODY);
            card.add(count, "gaptop " + (word == Standing.Word.FIRM ? 12 : 6));
        }
        card.add(
                Look.prose(
                        "Firm is what you answered rightly three times, each when it was due. It comes again every week; a week"
                                + " missed takes nothing away.",
                        Style.NOTE,
                        Ink.QUIET),
                "wmin 0, gaptop 16");
        card.add(Look.label("At the bench now", Style.SUBTITLE), "gaptop 24");
        card.add(Look.prose(bench(), Style.BODY, Ink.INK), "wmin 0, gaptop 8");
        return card;
    }

    private static String questions(int n) {
        return n == 1 ? "1 question is" : n + " questions are";
    }

    private String bench() {
        Optional<Progress.Row> shaky = progress.shakiest();
        if (shaky.isEmpty()) return "Nothing is shaky: go on with the next exercise.";
        Optional<Scenario> exercise = Progress.exercise(shaky.get().kind(), exercises);
        String idea = shaky.get().kind().idea();
        return exercise.map(s -> idea + ": “" + s.title() + "” (level " + s.level() + ") asks for it.")
                .orElse(idea + ": no exercise on the list asks for it.");
    }

    /** Saves a copy where the learner wants it. */
    private void save() {
        JFileChooser chooser = new JFileChooser();
        chooser.setSelectedFile(host.journal().getFileName().toFile());
        if (chooser.showSaveDialog(page) == JFileChooser.APPROVE_OPTION) {
            saveTo(chooser.getSelectedFile().toPath());
        }
    }

    void saveTo(Path file) {
        try {
            QuizJournal.copy(host.journal(), file);
            line.setText("Saved as " + file.getFileName() + ". Hand it on as you like.");
        } catch (FileRefused e) {
            line.setText("It could not be saved: " + e.reason());
        }
    }

    /** A bar as long as the share, with its figures beside it. */
    private static final class Share extends JComponent {
        private static final long serialVersionUID = 1L;
        private final int right;
        private final int asked;

        Share(int right, int asked) {
            this.right = right;
            this.asked = asked;
            setFont(Style.NOTE.font());
            setToolTipText(asked == 0 ? "not asked yet" : right + " of " + asked + " right");
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = Look.smooth((Graphics2D) graphics.create());
            int words = Look.px(58);
            double wide = Math.max(1, getWidth() - words);
            double high = Look.px(8);
            double y = (getHeight() - high) / 2;
            g.setColor(Look.colour(Ink.BORDER));
            g.fill(new RoundRectangle2D.Double(0, y, wide, high, high, high));
            if (asked > 0 && right > 0) {
                g.setColor(Look.colour(Ink.ACTION));
                g.fill(new RoundRectangle2D.Double(0, y, wide * right / asked, high, high, high));
            }
            g.setFont(getFont());
            g.setColor(Look.colour(Ink.QUIET));
            String text = asked == 0 ? "–" : right + " of " + asked;
            g.drawString(
                    text,
                    (float) (wide + Look.px(8)),
                    getHeight() / 2f + g.getFontMetrics().getAscent() * 0.36f);
            g.dispose();
        }
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return "Quiz: how far you are";
    }

    @Override
    public String menu() {
        return "Quiz";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public void focus() {
        practise.requestFocusInWindow();
    }
}
