package org.marktwice.print;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.JobRecord;
import org.marktwice.classroom.JobRecord.Beside;
import org.marktwice.classroom.Measure;
import org.marktwice.files.RecordFile;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Sign;
import org.marktwice.scenario.Scenario;

/** The finished jobs of a class in one table; what is not measured yet has an empty cell to write in. */
final class RecordGrid {
    private static final double NAMES = Paper.points(40);
    /** What stands over a column, set upright. */
    private static final double TITLES = Paper.points(38);
    /** Its drawn size and its limit under that. */
    private static final double SIZES = Paper.points(9);

    private static final double LEAST_ROW = Paper.points(6.5);
    private static final double MOST_ROW = Paper.points(8.5);
    private static final int COLUMNS = 10;
    private static final double WIDEST = Paper.points(24);
    /** Rows of a table that is begun without learners. */
    private static final int UNNAMED = 24;

    private final JobRecord record;
    private final RecordFile file;
    private final Map<String, Double> practice;
    private final Paper paper;
    private final List<String> notes = new ArrayList<>();
    private final List<Column> columns = new ArrayList<>();
    private double rowHigh = MOST_ROW;
    private double columnWide = 1;

    /** @param measure null for what is reckoned over the whole job */
    private record Column(String title, @Nullable Measure measure, boolean job) {}

    RecordGrid(JobRecord record, RecordFile file, @Nullable Beside beside, Paper paper) {
        this.record = record;
        this.file = file;
        this.practice = RecordSheets.practice(beside);
        this.paper = paper;
        for (Measure m : record.measures()) columns.add(new Column(m.title(), m, false));
        if (measured()) columns.add(new Column("Job of 100", null, true));
        if (beside != null) columns.add(new Column("Practice of 100", null, false));
        notes.add("Millimetres. " + RecordSheets.limits(record)
                + " Ticked is good: within half the limit; waved is fair: within it; crossed is poor: beyond it.");
        if (beside != null) notes.add(paid(beside));
    }

    private boolean measured() {
        return record.jobs().stream().anyMatch(j -> !j.judged().isEmpty());
    }

    private static String paid(Beside beside) {
        if (beside.correlation().isEmpty()) return "Too few, or too much alike, to tell whether practice paid.";
        return String.format(
                java.util.Locale.ROOT,
                "Practice and job: correlation %.2f. Near 1, who practised well built well; near 0, there is no telling.",
                beside.correlation().getAsDouble());
    }

    List<Leaf> leaves() {
        Scenario scenario = record.scenario();
        int learners = Math.max(1, file.rows().size());
        TitleBlock block = new TitleBlock(
                SheetKind.RECORD.spoken(),
                scenario.title(),
                "level " + scenario.level() + " · " + (file.rows().isEmpty() ? "class" : "class of " + learners),
                "");
        Rectangle2D room = block.room(paper, false);
        int rows = file.rows().isEmpty() ? UNNAMED : file.rows().size();
        int sums = measured() ? 2 : 0;
        double left = room.getHeight() - notesHigh(room.getWidth()) - TITLES - SIZES;
        rowHigh = Math.max(LEAST_ROW, Math.min(MOST_ROW, left / (rows + sums)));
        int most = Math.max(1, (int) (left / rowHigh + 1e-6) - sums);
        List<Leaf> leaves = new ArrayList<>();
        List<List<Column>> groups = groups(columns, COLUMNS);
        int widest = groups.stream().mapToInt(List::size).max().orElse(1);
        columnWide = Math.min((room.getWidth() - NAMES) / widest, WIDEST);
        for (List<Column> group : groups) {
            for (int from = 0; from < rows; from += most) {
                int first = from;
                int end = Math.min(rows, from + most);
                leaves.add(new Leaf(false, block, (pen, place) -> page(pen, place, group, first, end, end == rows)));
            }
        }
        return leaves;
    }

    /** As evenly as they go; two diagonals stay side by side. */
    private static List<List<Column>> groups(List<Column> columns, int most) {
        int n = Math.max(1, (columns.size() + most - 1) / most);
        List<List<Column>> groups = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= n; i++) {
            int to = i * columns.size() / n;
            if (to < columns.size() && secondDiagonal(columns.get(to).measure())) to--;
            groups.add(columns.subList(from, to));
            from = to;
        }
        return groups;
    }

    private static boolean secondDiagonal(@Nullable Measure measure) {
        return measure != null
                && measure.kind() == Measure.Kind.DIAGONAL
                && measure.id().endsWith("-b");
    }

    private double notesHigh(double width) {
        return notes.stream()
                                .mapToDouble(
                                        n -> Pen.wrapped(n, Type.NOTE, width).size())
                                .sum()
                        * Type.NOTE.leading()
                + 8;
    }

    private void page(Pen pen, Rectangle2D place, List<Column> group, int from, int end, boolean last) {
        double x = place.getX();
        double y = place.getY();
        for (String note : notes) {
            for (String line : Pen.wrapped(note, Type.NOTE, place.getWidth())) {
                pen.write(line, x, y + Type.NOTE.size(), Type.NOTE, Ink.QUIET);
                y += Type.NOTE.leading();
            }
        }
        y += 8;
        double wide = columnWide;
        double right = x + NAMES + wide * group.size();
        head(pen, group, x, y, wide);
        double top = y;
        y += TITLES + SIZES;
        pen.line(x, y, right, y, Pen.WIDE, Ink.INK);
        for (int row = from; row < end; row++) {
            if (row < file.rows().size()) row(pen, group, row, x, y, wide);
            y += rowHigh;
            pen.line(x, y, right, y, Pen.NARROW, Ink.QUIET);
        }
        if (last && measured()) y = sums(pen, group, x, y, wide, right);
        for (int i = 0; i <= group.size(); i++) {
            double at = x + NAMES + i * wide;
            pen.line(at, top, at, y, Pen.NARROW, Ink.QUIET);
        }
    }

    private void head(Pen pen, List<Column> group, double x, double y, double wide) {
        double first = y + TITLES + Type.NOTE.size() + 2;
        double second = first + Type.NOTE.leading();
        pen.write("learner", x, y + TITLES - 4, Type.NOTE, Ink.QUIET);
        pen.writeRight("drawn", x + NAMES - 5, first, Type.NOTE, Ink.QUIET);
        pen.writeRight("limit", x + NAMES - 5, second, Type.NOTE, Ink.QUIET);
        for (int i = 0; i < group.size(); i++) {
            Column column = group.get(i);
            double at = x + NAMES + i * wide;
            upright(pen, column.title(), at, y, wide);
            Measure m = column.measure();
            if (m == null) continue;
            String drawn = m.kind() == Measure.Kind.GAP ? "none" : Figure.number(Math.rint(m.drawn() * 10) / 10);
            pen.writeRight(drawn, at + wide - 4, first, Type.NOTE, Ink.INK);
            String limit = (m.kind() == Measure.Kind.GAP ? "" : "± ") + Figure.number(record.limit(m));
            pen.writeRight(limit, at + wide - 4, second, Type.NOTE, Ink.INK);
        }
    }

    /** Written up the page, in as many lines as there is room for. */
    private static void upright(Pen pen, String title, double x, double y, double wide) {
        List<String> lines = Pen.wrapped(title, Type.NOTE, TITLES - 6);
        int most = Math.max(1, (int) ((wide - 4) / Type.NOTE.leading()));
        if (lines.size() > most) {
            String rest = String.join(" ", lines.subList(most - 1, lines.size()));
            lines = new ArrayList<>(lines.subList(0, most - 1));
            lines.add(Pen.cut(rest, Type.NOTE, TITLES - 6));
        }
        AffineTransform before = pen.g.getTransform();
        pen.g.translate(x, y + TITLES - 3);
        pen.g.rotate(-Math.PI / 2);
        double base = (wide - lines.size() * Type.NOTE.leading()) / 2 + Type.NOTE.size() * 0.95;
        for (String line : lines) {
            pen.write(line, 0, base, Type.NOTE, Ink.INK);
            base += Type.NOTE.leading();
        }
        pen.g.setTransform(before);
    }

    private void row(Pen pen, List<Column> group, int row, double x, double y, double wide) {
        RecordFile.Row read = file.rows().get(row);
        List<String> name = Pen.wrapped(read.learner(), Type.NOTE, NAMES - 6);
        if (name.size() > 2) {
            String rest = String.join(" ", name.subList(1, name.size()));
            name = List.of(name.get(0), Pen.cut(rest, Type.NOTE, NAMES - 6));
        }
        double base = y + (rowHigh - name.size() * Type.NOTE.leading()) / 2 + Type.NOTE.size();
        for (String line : name) {
            pen.write(line, x, base, Type.NOTE, Ink.INK);
            base += Type.NOTE.leading();
        }
        double middle = y + rowHigh / 2 + Type.TABLE.size() * 0.36;
        for (int i = 0; i < group.size(); i++) {
            double at = x + NAMES + i * wide;
            pen.writeRight(cell(group.get(i), row), at + wide - 4, middle, Type.TABLE, Ink.INK);
            sign(pen, group.get(i), row, at + 2.5, middle);
        }
    }

    private String cell(Column column, int row) {
        RecordFile.Row read = file.rows().get(row);
        Measure measure = column.measure();
        if (measure != null) {
            OptionalDouble mm = read.of(measure.id());
            return mm.isPresent() ? RecordSheets.reading(mm.getAsDouble()) : "";
        }
        double share =
                column.job() ? record.jobs().get(row).share() : practice.getOrDefault(read.learner(), Double.NaN);
        return Double.isNaN(share) ? "" : RecordSheets.hundred(share);
    }

    /** The band's; of two diagonals it stands at the first. */
    private void sign(Pen pen, Column column, int row, double x, double base) {
        Measure measure = column.measure();
        if (measure == null || secondDiagonal(measure)) return;
        String id = judgedAs(measure);
        record.jobs().get(row).judged().stream()
                .filter(j -> j.id().equals(id))
                .findFirst()
                .map(j -> RecordSheets.verdict(j.band()))
                .ifPresent(v -> {
                    pen.g.setColor(Pen.PALETTE.of(Ink.of(v)));
                    Sign.draw(pen.g, v, x, base, Type.TABLE.size() * 0.75);
                });
    }

    private static String judgedAs(Measure measure) {
        return measure.kind() == Measure.Kind.DIAGONAL
                ? measure.id().substring(0, measure.id().length() - 2)
                : measure.id();
    }

    /** What the class as a whole is out by, and how many are good, fair and poor. */
    private double sums(Pen pen, List<Column> group, double x, double y, double wide, double right) {
        List<String> captions = List.of("out by, on the mean", "good · fair · poor");
        for (int line = 0; line < 2; line++) {
            double base = y + line * rowHigh + rowHigh / 2 + Type.NOTE.size() * 0.36;
            pen.write(captions.get(line), x, base, Type.NOTE, Ink.QUIET);
            for (int i = 0; i < group.size(); i++) {
                double to = x + NAMES + (i + 1) * wide - 4;
                pen.writeRight(sum(group.get(i), line), to, base, Type.NOTE, Ink.INK);
            }
            pen.line(x, y + (line + 1) * rowHigh, right, y + (line + 1) * rowHigh, Pen.NARROW, Ink.QUIET);
        }
        return y + 2 * rowHigh;
    }

    private String sum(Column column, int line) {
        Measure measure = column.measure();
        if (measure == null || secondDiagonal(measure)) return "";
        String id = judgedAs(measure);
        return record.columns().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .map(c -> line == 0
                        ? RecordSheets.off(Math.rint(c.mean() * 10) / 10)
                        : c.good() + " · " + c.fair() + " · " + c.poor())
                .orElse("");
    }
}
