package org.marktwice.view.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.Option;
import org.marktwice.classroom.ClassList;
import org.marktwice.classroom.Laying;
import org.marktwice.classroom.RackAllotment;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.files.RackFile;
import org.marktwice.picture.Ink;
import org.marktwice.print.LabelSheet;
import org.marktwice.print.Paper;
import org.marktwice.print.SheetFile;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Surface;
import org.marktwice.view.Bar;
import org.marktwice.view.Card;
import org.marktwice.view.Column;
import org.marktwice.view.Commands;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Commands.Place;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Screen;

/** The real boards on the rack, allotted to the parts of a whole class's jobs, with what to check and what to buy. */
final class AllotScreen implements Screen {
    static final Command ALLOT =
            new Command("allot", Place.ALLOT, "Allot", "menu ENTER", "Find the best board for every part of every job");
    static final Command LABELS =
            new Command("labels", Place.ALLOT, "Labels …", "menu P", "Save labels to stick on the boards (PDF)");
    static final Command BACK =
            new Command("leave-allot", Place.ALLOT, "Teacher's desk", "ESCAPE", "Go back to the desk");
    static final List<Command> ALL = List.of(ALLOT, LABELS, BACK);

    private final Scenario scenario;
    private final PathField rack;
    private final PathField list;
    private final NumberField times;
    private final Rows<Line> rows;
    private final JLabel outcome = Look.label("Every part gets the board that serves it best.", Style.BODY);
    private final JTextArea notes = Look.prose("", Style.BODY, Ink.QUIET);
    private final JLabel line = Look.label(" ", Style.BODY);
    private final List<Deed> deeds;
    private final JPanel page;
    private int jobs = 1;
    private @Nullable RackAllotment allotted;
    private List<String> names = List.of();

    /** One part of one job. */
    private record Line(String job, String part, Optional<Option> option) {
        String board() {
            return option.map(o -> o.placing().board().id()).orElse("");
        }

        String lies() {
            return option.map(o -> Laying.of(o.placing()).spoken()).orElse("");
        }

        String trim() {
            return option.map(o -> trimmed(o.placing())).orElse("");
        }

        String verdict() {
            if (option.isEmpty()) return "× no board";
            if (option.get().nearest().isEmpty()) return "✓ no knot near a cut";
            String near = String.format(
                    Locale.ROOT,
                    "knot %.1f mm from a cut",
                    option.get().nearest().get().clearance());
            return (option.get().clear() ? "✓ " : "× ") + near;
        }

        private static String trimmed(Placing placing) {
            if (placing.surplus() < 0.05) return "nothing";
            return String.format(
                    Locale.ROOT,
                    "%.1f off end 1, %.1f off end 2",
                    placing.off(Surface.END_1),
                    placing.off(Surface.END_2));
        }
    }

    AllotScreen(Desk desk, Scenario scenario) {
        this.scenario = scenario;
        rack = new PathField(
                "rack", "What is on the rack: a table (*.csv) or *.rack.json", PathField.Kind.FILE, () -> {});
        list = new PathField(
                "allot-list",
                "A job for each learner of a list (CSV); empty for so many jobs",
                PathField.Kind.FILE,
                () -> {});
        times = new NumberField(
                "jobs",
                "How many jobs are made",
                4,
                n -> n == Math.rint(n) && n >= 1 && n <= RackAllotment.MOST,
                n -> jobs = n == null ? jobs : (int) Math.rint(n));
        times.show((double) jobs);
        rows = new Rows<>(List.of(
                Rows.words("Job", 1, Line::job),
                Rows.words("Part", 1.6, Line::part),
                Rows.words("Board", 0.7, Line::board),
                Rows.words("Clear", 2, Line::verdict),
                Rows.words("How it lies", 4, Line::lies),
                Rows.words("To trim, mm", 2, Line::trim)));
        deeds = List.of(
                new Deed(ALLOT, this::allot),
                new Deed(LABELS, this::labels, () -> allotted != null),
                new Deed(BACK, desk::home));
        page = build();
        Commands.install(page, deeds);
    }

    private JPanel build() {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        whole.add(Bar.top(
                "Allot real boards",
                scenario.title() + ": whose parts come out of which board",
                KeyButton.of(deeds.get(1)),
                KeyButton.of(deeds.get(2))));
        JPanel body =
                new JPanel(new MigLayout("insets 20, gap 20, fill", "[360:380:440,fill][grow,fill]", "[grow,fill]"));
        body.add(form(), "grow, hmin 0, wmin 0");
        Card card =
                new Card(new MigLayout("insets 20 24 20 24, gap 0 10, wrap 1, fill", "[grow,fill]", "[][grow,fill]"));
        outcome.setName("outcome");
        card.add(outcome, "wmin 0");
        card.add(new Sheet<>("allotted", "Which board becomes which part", rows), "grow, hmin 0, wmin 0");
        body.add(card, "grow, hmin 0, wmin 0");
        whole.add(body, "grow, hmin 0");
        line.setName("line");
        whole.add(Bar.bottom(
                line,
                Look.quiet("Chalk 1 on the face and the edge that the table calls face-1 and edge-1.", Style.NOTE)));
        return whole;
    }

    private JComponent form() {
        Card card = new Card(new MigLayout(
                "insets 20 24 20 24, gap 12 8, wrap 2, fill", "[][grow,fill]", "[][][][][][]12[grow,fill]"));
        card.add(Look.label("The rack", Style.SUBTITLE), "span 2");
        card.add(rack, "span 2, growx, wmin 0");
        card.add(Look.quiet("Jobs", Style.BODY));
        card.add(times, "w 64!, growx 0");
        card.add(Look.quiet("or for a class list (CSV)", Style.BODY), "span 2");
        card.add(list, "span 2, growx, wmin 0");
        card.add(KeyButton.primary(deeds.get(0)), "span 2, growx 0");
        Column column = new Column(new MigLayout("insets 0, fillx", "[grow,fill]"));
        notes.setName("allot-notes");
        notes.setText("The table has a line for each place where a knot shows: board, species, length, width,"
                + " thickness, pith-y, pith-z, knot, on, u, v, along, across, dead.");
        column.add(notes, "wmin 0");
        card.add(column.scrolling(), "span 2, grow, hmin 0, wmin 0");
        return card;
    }

    private void allot() {
        Optional<Path> from = rack.path();
        if (from.isEmpty()) {
            say("Say which file tells what is on the rack");
            return;
        }
        Optional<Path> learners = list.path();
        int number = jobs;
        say("");
        outcome.setText("Alloting …");
        Aside.run(
                () -> {
                    List<String> whose = new ArrayList<>();
                    if (learners.isPresent())
                        whose.addAll(ClassList.read(learners.get()).learners());
                    else for (int i = 1; i <= number; i++) whose.add("Job " + i);
                    if (whose.size() > RackAllotment.MOST) {
                        throw new Aside.Said("No more than " + RackAllotment.MOST + " jobs at once");
                    }
                    return new Found(
                            RackAllotment.of(scenario, RackFile.read(from.get()), whose.size()), List.copyOf(whose));
                },
                this::come,
                why -> {
                    outcome.setText("Nothing was allotted.");
                    say(why);
                });
    }

    private record Found(RackAllotment allotment, List<String> names) {}

    private void come(Found found) {
        RackAllotment a = found.allotment();
        allotted = a;
        names = found.names();
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            for (Part part : scenario.drawing().parts()) {
                lines.add(new Line(names.get(i), part.name(), a.jobs().get(i).of(part)));
            }
        }
        rows.show(lines);
        boolean round = a.clear() == a.parts();
        outcome.setText((round ? "✓  " : "×  ") + a.supplied() + " of " + a.parts() + " parts supplied, " + a.clear()
                + " of them clear, from " + a.rack().size() + " boards.");
        notes.setText(notes(a));
        deeds.forEach(Deed::refresh);
    }

    private static String notes(RackAllotment a) {
        List<String> said = new ArrayList<>();
        if (!a.toBuy().isEmpty()) said.add("To buy, free of knots near the joints:");
        for (RackAllotment.Purchase p : a.toBuy()) {
            String instead = p.instead().isEmpty() ? "" : ", instead of " + String.join(", ", p.instead());
            said.add("· " + p.count() + " of " + NumberField.spoken(p.size().width()) + " × "
                    + NumberField.spoken(p.size().thickness()) + " mm, "
                    + NumberField.spoken(p.size().length())
                    + " mm long or longer, for " + String.join(", ", p.parts()) + instead);
        }
        if (!a.checks().isEmpty()) said.add((said.isEmpty() ? "" : "\n") + "To measure again before anything is cut:");
        for (RackAllotment.Check c : a.checks()) {
            String found = Double.isInfinite(c.clearance())
                    ? "found at no cut"
                    : String.format(
                            Locale.ROOT, "%.1f mm from the nearest cut, %.1f wanted", c.clearance(), c.margin());
            said.add("· board " + c.option().placing().board().id() + ", knot "
                    + c.fit().knot().id() + ": " + found
                    + String.format(
                            Locale.ROOT, ", give or take %.1f", 2 * c.fit().spread()));
        }
        List<String> left = a.leftOver().stream().map(l -> l.board().id()).toList();
        if (!left.isEmpty()) said.add((said.isEmpty() ? "" : "\n") + "Left over: " + String.join(", ", left));
        return said.isEmpty() ? "Nothing to buy, nothing to measure again." : String.join("\n", said);
    }

    private void labels() {
        JFileChooser chooser = new JFileChooser();
        chooser.setSelectedFile(new java.io.File(scenario.id() + "-labels.pdf"));
        if (chooser.showSaveDialog(page) == JFileChooser.APPROVE_OPTION) {
            labels(chooser.getSelectedFile().toPath());
        }
    }

    void labels(Path to) {
        RackAllotment now = allotted;
        if (now == null) return;
        List<String> whose = names;
        Aside.run(
                () -> {
                    SheetFile.save(to, LabelSheet.of(now, whose, Paper.A4), "Labels: " + scenario.title());
                    return to;
                },
                saved -> say("Saved: " + saved),
                this::say);
    }

    private void say(String words) {
        line.setText(words.isEmpty() ? " " : words);
        line.setToolTipText(line.getText());
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return scenario.title() + ": allot boards";
    }

    @Override
    public String menu() {
        return "Allot";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public void focus() {
        rack.requestFocusInWindow();
    }
}
