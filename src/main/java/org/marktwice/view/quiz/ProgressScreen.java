package org.marktwice.view.quiz;

import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
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
import org.marktwice.view.Painted;
import org.marktwice.view.Screen;
import org.marktwice.view.Sign;

/** What is firm, what is shaky, what is due: by rule, with a plain chart; and what the bench would now train. */
final class ProgressScreen implements Screen {
    /** What the page asks of the quiz. */
    interface Host {
        void practise();

        void back();

        /** Goes to an exercise on the start page. */
        void exercise(Scenario scenario);

        /** The learner's journal, as a file to hand on. Nothing leaves the learner's folder but by this. */
        Path journal();

        /** What a sheet for paper may be made from: another number after every answer. */
        long proposedSeed();
    }

    private final Host host;
    private final String learner;
    private final Progress progress;
    private final List<Scenario> exercises;
    private final int due;
    private final JLabel line = Look.label(" ", Style.BODY);
    private final List<Deed> deeds;
    private final JPanel page;
    private final PaperPart paper;
    private final JButton practise = Look.primary(new JButton());

    /** @param due how many questions are due today */
    ProgressScreen(Host host, String learner, Progress progress, int due, List<Scenario> exercises, boolean back) {
        this.host = host;
        this.learner = learner;
        this.progress = progress;
        this.due = due;
        this.exercises = exercises;
        paper = new PaperPart(host.proposedSeed(), line::setText);
        Deed save = new Deed(QuizCommands.SAVE, this::save);
        Deed print = new Deed(QuizCommands.PRINT, paper::save);
        paper.button().setAction(print);
        Deed more = new Deed(QuizCommands.MORE, host::practise);
        Deed to = new Deed(QuizCommands.BACK, host::back, () -> back);
        deeds = List.of(more, save, print, to);
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
                new MigLayout("insets 20, gap 20, fill", "[grow,fill][320lp:360lp:380lp,fill]", "[grow,fill]"));
        body.add(table(), "grow, hmin 0, wmin 0");
        body.add(summary(), "growy, hmin 0");
        whole.add(body, "grow, hmin 0");
        whole.add(Bar.bottom(
                line,
                Look.quiet("Your answers stay in your own folder unless you save them for someone.", Style.NOTE)));
        return whole;
    }

    private JComponent table() {
        Card card = new Card(new MigLayout("insets 12 12 4 4, fill", "[grow,fill]", "[grow,fill]"));
        Column column = new Column(new MigLayout(
                "insets 12 16 16 16, gap 16 10, wrap 4",
                "[220lp:340lp:420lp,fill][120lp!][150lp:150lp,grow,fill][120lp!]"));
        for (String head : List.of("RULE AND IDEA", "STANDS", "RIGHT OF ASKED", "COMES AGAIN")) {
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
        if (row.word() == Standing.Word.NOT_MET) return "–";
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
        Column column = new Column(new MigLayout("insets 20, gap 0, wrap 1, hidemode 3", "[grow,fill]"));
        column.add(Look.label(due == 0 ? "Nothing is due today" : questions(due) + " due today", Style.SUBTITLE));
        column.add(new Standings(progress), "h 12lp!, gaptop 12");
        for (Standing.Word word : Standings.ORDER) {
            JLabel count = Look.label(progress.count(word) + " " + word.spoken(), Style.BODY);
            count.setIcon(Standings.swatch(word));
            count.setIconTextGap(Look.px(8));
            column.add(count, "gaptop " + (word == Standing.Word.FIRM ? 10 : 4));
        }
        column.add(
                Look.prose(
                        "Firm is what you answered rightly three times, each when it was due. It comes again every week; a week"
                                + " missed takes nothing away.",
                        Style.NOTE,
                        Ink.QUIET),
                "wmin 0, gaptop 10");
        column.add(Look.label("At the bench now", Style.SUBTITLE), "gaptop 24");
        column.add(new TrainingPart(progress, exercises, host::exercise), "wmin 0, gaptop 8");
        column.add(Look.label("On paper", Style.SUBTITLE), "gaptop 24");
        column.add(paper, "wmin 0, gaptop 8");
        Card card = new Card(new MigLayout("insets 4, fill", "[grow,fill]", "[grow,fill]"));
        card.add(column.scrolling(), "grow, hmin 0, wmin 0");
        return card;
    }

    private static String questions(int n) {
        return n == 1 ? "1 question is" : n + " questions are";
    }

    /** Saves a copy where the learner wants it. */
    private void save() {
        JFileChooser chooser = new JFileChooser();
        chooser.setSelectedFile(host.journal().getFileName().toFile());
        if (chooser.showSaveDialog(page) == JFileChooser.APPROVE_OPTION) {
            saveTo(chooser.getSelectedFile().toPath());
        }
    }

    /** What makes sheets; for tests that save one. */
    PaperPart paper() {
        return paper;
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
    private static final class Share extends Painted {
        private static final long serialVersionUID = 1L;
        private final int right;
        private final int asked;

        Share(int right, int asked) {
            super(AccessibleRole.LABEL);
            this.right = right;
            this.asked = asked;
            setFont(Style.NOTE.font());
            String said = asked == 0 ? "not asked yet" : right + " of " + asked + " right";
            setToolTipText(said);
            readAs(said);
        }

        @Override
        protected void draw(Graphics2D g) {
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
