package org.marktwice.view.desk;

import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.BulkMarking;
import org.marktwice.classroom.ClassList;
import org.marktwice.classroom.JobRecord.Band;
import org.marktwice.classroom.JobRecord.Judged;
import org.marktwice.classroom.Measure;
import org.marktwice.classroom.Results;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RecordFile;
import org.marktwice.files.Save;
import org.marktwice.fit.Tolerances;
import org.marktwice.picture.Ink;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Bar;
import org.marktwice.view.Card;
import org.marktwice.view.Commands;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Commands.Place;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Screen;

/** The finished jobs: measured sizes, gaps and diagonals typed straight down a column, with their bands. */
final class RecordScreen implements Screen {
    static final Command SAVE =
            new Command("save-record", Place.RECORD, "Save", "menu S", "Save the record, as CSV or JSON by its name");
    static final Command OPEN = new Command(
            "open-record", Place.RECORD, "Open or begin", "menu ENTER", "Open the record, or begin one for the class");
    static final Command UNDO = new Command("undo-record", Place.RECORD, "Undo", "menu Z", "Go back an entry");
    static final Command REDO = new Command("redo-record", Place.RECORD, "Redo", "menu shift Z", "Go on again");
    static final Command BESIDE = new Command(
            "beside", Place.RECORD, "Set practice beside", "menu B", "Mark the attempts and set their marks beside");
    static final Command BACK =
            new Command("leave-record", Place.RECORD, "Teacher's desk", "ESCAPE", "Go back to the desk");
    static final List<Command> ALL = List.of(OPEN, SAVE, UNDO, REDO, BESIDE, BACK);

    private static final int NAME = 88;
    private static final int MEASURE = 108;
    private static final int HEAD_LINES = 4;

    private final Desk desk;
    private final Scenario scenario;
    private final PathField file;
    private final PathField attempts;
    private final NumberField count;
    private final Choice<String> tolerances;
    private final JLabel says = Look.label(" ", Style.BODY);
    private final JLabel paid = Look.quiet(" ", Style.NOTE);
    private final JLabel line = Look.label(" ", Style.BODY);
    private final Cells cells = new Cells();
    private final TypingTable table = new Table();
    private final JTable names = new JTable(cells);
    private final List<Deed> deeds;
    private final JPanel page;
    private RecordModel model;
    private Map<String, Double> practice = Map.of();

    RecordScreen(Desk desk, Scenario scenario) {
        this.desk = desk;
        this.scenario = scenario;
        model = new RecordModel(
                scenario, RecordFile.blank(scenario.id(), ClassList.numbered(1).learners()));
        file = new PathField("record-file", "The record's file, *.csv or *.record.json", PathField.Kind.FILE, () -> {});
        attempts =
                new PathField("record-attempts", "A folder of attempts to set beside", PathField.Kind.FOLDER, () -> {});
        count = new NumberField(
                "record-learners",
                "How many learners, for a record that is begun",
                4,
                n -> n == Math.rint(n) && n >= 1 && n <= ClassList.MOST,
                n -> {});
        count.show(20.0);
        tolerances = new Choice<>("tolerances", "By which tolerances", RecordScreen::words, t -> model.judgeBy(t));
        file.show(desk.folder().folder().resolve(scenario.id() + ".record.csv"));
        deeds = List.of(
                new Deed(OPEN, this::open),
                new Deed(SAVE, this::save),
                new Deed(UNDO, () -> model.steps().undo(), () -> model.steps().canUndo()),
                new Deed(REDO, () -> model.steps().redo(), () -> model.steps().canRedo()),
                new Deed(BESIDE, this::beside),
                new Deed(BACK, desk::home));
        dressTable();
        page = build();
        Commands.install(page, deeds);
        begin(new RecordModel(
                scenario, RecordFile.blank(scenario.id(), ClassList.numbered(20).learners())));
    }

    private static String words(String tolerance) {
        return tolerance.isEmpty()
                ? "the exercise's own"
                : Tolerances.preset(tolerance).map(Tolerances::title).orElse(tolerance);
    }

    private static List<String> presets() {
        List<String> all = new ArrayList<>(List.of(""));
        Tolerances.presets().forEach(t -> all.add(t.id()));
        return all;
    }

    private void dressTable() {
        table.setModel(cells);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
        table.setDefaultRenderer(Object.class, new Figure());
        names.setDefaultRenderer(Object.class, new Figure());
        names.setRowHeight(table.getRowHeight());
        names.setFocusable(false);
        names.setRowSelectionAllowed(false);
        names.setIntercellSpacing(new Dimension(1, 1));
        names.setShowGrid(true);
        names.setGridColor(Look.colour(Ink.BORDER));
        names.getTableHeader().setReorderingAllowed(false);
        names.getTableHeader().setResizingAllowed(false);
    }

    /** The learners stay in sight however far to the right one is. */
    private JScrollPane scrolling() {
        JScrollPane scroll = new JScrollPane(table);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setRowHeaderView(names);
        scroll.setCorner(ScrollPaneConstants.UPPER_LEFT_CORNER, names.getTableHeader());
        return scroll;
    }

    /** Straight down a column, and on to the head of the next. */
    private final class Table extends TypingTable {
        private static final long serialVersionUID = 1L;

        Table() {
            super("record", "What the finished jobs measured", 30);
        }

        @Override
        boolean isFigure(int column) {
            return true;
        }

        @Override
        int[] below(int line, int column) {
            boolean last = line + 1 >= getRowCount();
            return last
                    ? new int[] {0, Math.min(column + 1, model.measures().size() - 1)}
                    : new int[] {line + 1, column};
        }
    }

    private Deed deed(Command command) {
        return deeds.stream()
                .filter(d -> d.command().equals(command))
                .findFirst()
                .orElseThrow();
    }

    private JPanel build() {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][][grow,fill][]"));
        whole.add(Bar.top(
                "Finished jobs",
                scenario.title() + ": what they measure, against the drawing",
                KeyButton.of(deed(UNDO)),
                KeyButton.of(deed(REDO)),
                KeyButton.primary(deed(SAVE)),
                KeyButton.of(deed(BACK))));
        JPanel top = new JPanel(new MigLayout("insets 16 20 4 20, fill", "[grow,fill]"));
        Card choices = new Card(
                new MigLayout("insets 14 20 14 20, gap 12 8, fillx, wrap 5", "[][grow,fill][][grow,fill][fill]"));
        choices.add(Look.quiet("Record", Style.BODY));
        choices.add(file, "wmin 0");
        choices.add(Look.quiet("Learners", Style.BODY));
        choices.add(count, "w 64!, growx 0");
        choices.add(KeyButton.of(deed(OPEN)));
        choices.add(Look.quiet("Judged by", Style.BODY));
        choices.add(tolerances, "growx 0, w 220!");
        choices.add(Look.quiet("Attempts", Style.BODY));
        choices.add(attempts, "wmin 0");
        choices.add(KeyButton.of(deed(BESIDE)));
        top.add(choices, "grow, wmin 0");
        whole.add(top, "wmin 0");
        JPanel body = new JPanel(new MigLayout("insets 8 20 20 20, fill", "[grow,fill]", "[grow,fill]"));
        Card card =
                new Card(new MigLayout("insets 16 20 16 20, gap 0 8, wrap 1, fill", "[grow,fill]", "[grow,fill][][]"));
        card.add(scrolling(), "grow, hmin 0, wmin 0");
        says.setName("record-says");
        paid.setName("record-paid");
        card.add(says, "wmin 0");
        card.add(paid, "wmin 0");
        body.add(card, "grow, hmin 0, wmin 0");
        whole.add(body, "grow, hmin 0, wmin 0");
        line.setName("line");
        whole.add(Bar.bottom(
                line, Look.quiet("Type a figure and press Enter: on to the next learner down.", Style.NOTE)));
        return whole;
    }

    private void begin(RecordModel next) {
        model = next;
        practice = Map.of();
        model.steps().addListener(this::refresh);
        cells.fireTableStructureChanged();
        table.removeColumn(table.getColumnModel().getColumn(0));
        for (int i = 0; i < table.getColumnCount(); i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(Look.px(MEASURE));
            table.getColumnModel().getColumn(i).setHeaderRenderer(new WrappedHead(HEAD_LINES, true));
        }
        while (names.getColumnCount() > 1) {
            names.removeColumn(names.getColumnModel().getColumn(1));
        }
        names.getColumnModel().getColumn(0).setHeaderRenderer(new WrappedHead(HEAD_LINES, false));
        names.setPreferredScrollableViewportSize(new Dimension(Look.px(NAME), 0));
        if (table.getRowCount() > 0) table.changeSelection(0, 0, false, false);
        table.scrollRectToVisible(new java.awt.Rectangle(0, 0, 1, 1));
        refresh();
    }

    private void refresh() {
        tolerances.show(presets(), model.steps().now().tolerance());
        practice = model.practice();
        if (table.getRowCount() > 0) cells.fireTableRowsUpdated(0, table.getRowCount() - 1);
        List<String> out = model.outBy();
        says.setText(
                out.isEmpty()
                        ? "Nothing that the whole class is out by."
                        : "The whole class: " + String.join("; ", out) + ". Look at the setting-out.");
        says.setToolTipText(says.getText());
        paid.setText(model.paid().isEmpty() ? " " : model.paid());
        deeds.forEach(Deed::refresh);
    }

    private Optional<Path> path() {
        Optional<Path> path = file.path();
        if (path.isEmpty()) say("Say which file the record is in");
        return path;
    }

    private void open() {
        path().ifPresent(p -> {
            int learners = number();
            Aside.run(
                    () -> java.nio.file.Files.exists(p)
                            ? opened(p)
                            : new RecordModel(
                                    scenario,
                                    RecordFile.blank(
                                            scenario.id(),
                                            ClassList.numbered(learners).learners())),
                    next -> {
                        begin(next);
                        say(java.nio.file.Files.exists(p) ? "Opened: " + p : "Begun for " + learners + " learners");
                    },
                    this::say);
        });
    }

    private int number() {
        try {
            return (int) Math.max(
                    1,
                    Math.min(ClassList.MOST, Double.parseDouble(count.getText().strip())));
        } catch (NumberFormatException e) {
            return 20;
        }
    }

    private RecordModel opened(Path from) throws FileRefused {
        RecordFile read = RecordFile.read(from);
        RecordFile named = new RecordFile(scenario.id(), read.tolerance(), read.gap(), read.rows());
        org.marktwice.classroom.JobRecord.of(scenario, read.scenario().isEmpty() ? named : read, from.toString());
        return new RecordModel(scenario, named);
    }

    private void save() {
        table.settle();
        path().ifPresent(p -> {
            RecordFile now = model.steps().now();
            List<String> ids = model.measures().stream().map(Measure::id).toList();
            boolean json = p.toString().toLowerCase(Locale.ROOT).endsWith(".json");
            Aside.run(
                    () -> {
                        Path folder = p.toAbsolutePath().getParent();
                        if (folder != null) java.nio.file.Files.createDirectories(folder);
                        Save.whole(p, json ? now.bytes() : now.csv(ids));
                        return p;
                    },
                    saved -> {
                        if (model.steps().now().equals(now)) model.steps().saved();
                        say("Saved: " + saved);
                    },
                    this::say);
        });
    }

    private void beside() {
        Optional<Path> from = attempts.path();
        if (from.isEmpty()) {
            say("Say which folder the attempts are in");
            return;
        }
        Path exercise = desk.folder().scenario(scenario.id());
        Path handedOut = desk.folder().folder().resolve("Handed out").resolve(scenario.id());
        say("Marking the attempts …");
        Aside.run(
                () -> Marking.of(
                                java.nio.file.Files.isDirectory(handedOut) ? handedOut : exercise,
                                from.get(),
                                true,
                                BulkMarking.Progress.NONE)
                        .results(Results.Counting.LAST),
                results -> {
                    model.beside(results);
                    refresh();
                    say("Practice marks of " + results.rows().size() + " learners stand beside");
                },
                this::say);
    }

    private void say(String words) {
        line.setText(words.isEmpty() ? " " : words);
        line.setToolTipText(line.getText());
    }

    /** A row a learner, a column a measure; then the job's bands and the practice marks. */
    private final class Cells extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        private Optional<Measure> measure(int column) {
            return column >= 1 && column <= model.measures().size()
                    ? Optional.of(model.measures().get(column - 1))
                    : Optional.empty();
        }

        @Override
        public int getRowCount() {
            return model == null ? 0 : model.learners().size();
        }

        @Override
        public int getColumnCount() {
            return model == null ? 0 : model.measures().size() + 3;
        }

        @Override
        public String getColumnName(int column) {
            if (column == 0) return "Learner";
            return measure(column)
                    .map(m -> m.title()
                            + (m.drawn() > 0 ? ", " + NumberField.spoken(Math.rint(m.drawn() * 10) / 10) : ""))
                    .orElse(column == model.measures().size() + 1 ? "Job of 100" : "Practice of 100");
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return measure(column).isPresent();
        }

        @Override
        public Object getValueAt(int row, int column) {
            if (column == 0) return model.learners().get(row);
            Optional<Measure> measure = measure(column);
            if (measure.isPresent()) {
                OptionalDouble read = model.at(row, measure.get());
                return read.isPresent() ? NumberField.spoken(read.getAsDouble()) : "";
            }
            double share = column == model.measures().size() + 1
                    ? model.judged().jobs().get(row).share()
                    : practice.getOrDefault(model.learners().get(row), Double.NaN);
            return Double.isNaN(share) ? "" : String.format(Locale.ROOT, "%.0f", 100 * share);
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            Measure measure = measure(column).orElseThrow();
            if (model.type(row, measure, String.valueOf(value))) say("");
            else
                say("\"" + value + "\" is no figure in millimetres: " + measure.title() + ", "
                        + model.learners().get(row));
        }
    }

    /** A figure with the sign of its band. */
    private final class Figure extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable of, @Nullable Object value, boolean selected, boolean focused, int row, int shown) {
            int column = of.convertColumnIndexToModel(shown);
            Optional<Judged> judged = cells.measure(column)
                    .filter(m -> model.at(row, m).isPresent())
                    .flatMap(m -> model.judged(row, m));
            String sign = judged.map(j -> sign(j.band())).orElse("");
            super.getTableCellRendererComponent(of, sign + (value == null ? "" : value), selected, focused, row, shown);
            setBorder(BorderFactory.createEmptyBorder(0, Look.px(8), 0, Look.px(8)));
            setHorizontalAlignment(column == 0 ? SwingConstants.LEFT : SwingConstants.RIGHT);
            if (!selected) setBackground(Look.colour(Ink.PANEL));
            setForeground(judged.map(j -> ink(j.band())).orElse(Look.colour(Ink.INK)));
            setToolTipText(judged.map(j ->
                            String.format(Locale.ROOT, "%s: %+.1f, limit ± %.1f mm", j.title(), j.off(), j.limit()))
                    .orElse(null));
            return this;
        }

        private String sign(Band band) {
            return switch (band) {
                case GOOD -> "✓ ";
                case FAIR -> "~ ";
                case POOR -> "× ";
            };
        }

        private Color ink(Band band) {
            return Look.colour(
                    switch (band) {
                        case GOOD -> Ink.SOUND;
                        case FAIR -> Ink.CLOSE;
                        case POOR -> Ink.WRONG;
                    });
        }
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return scenario.title() + ": finished jobs";
    }

    @Override
    public String menu() {
        return "Finished jobs";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public void focus() {
        table.requestFocusInWindow();
    }

    /** What was typed is kept beside, where it was not saved. */
    @Override
    public void left() {
        table.settle();
        if (!model.steps().isSaved()) save();
    }
}
