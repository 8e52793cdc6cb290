package org.marktwice.print;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Unrolled;
import org.marktwice.timber.Board;
import org.marktwice.timber.GradedKnot;
import org.marktwice.timber.JoineryClass;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Surface;
import org.marktwice.timber.Trace;

/** The figures of a board's report, as blocks. */
final class BoardTables {
    private static final String BOXED = "Boxed heart: expect a check. Width, thickness and cup can't be told.";

    private final BoardReport report;
    private final Board board;

    BoardTables(BoardReport report) {
        this.report = report;
        this.board = report.board();
    }

    /** Each table is kept in one piece with its heading where it can be. */
    List<Block> all() {
        List<Block> all = new ArrayList<>();
        all.addAll(Blocks.table(sizes()));
        all.addAll(Blocks.table(knots()));
        if (!board.isSheet()) all.addAll(Blocks.table(surfaces()));
        if (!report.clearances().isEmpty()) all.addAll(Blocks.table(clearances()));
        return all;
    }

    private List<Block> sizes() {
        List<Block> all = new ArrayList<>();
        boolean later = report.later().isPresent();
        all.add(Blocks.heading("Sizes", ""));
        Blocks.Columns columns = later ? Blocks.Columns.of("lrr", 0.40, 0.30, 0.30) : Blocks.Columns.of("lr", 0.6, 0.4);
        all.add(row(columns, true, "", "now", "then"));
        all.add(row(
                columns,
                false,
                "length",
                mm(board.size().length()),
                mm(board.size().length())));
        if (!board.isSheet()) {
            all.add(row(columns, false, "moisture", percent(report.now()), later(BoardTables::percent)));
        }
        all.add(row(columns, false, "width", width(report.now()), later(BoardTables::width)));
        all.add(row(columns, false, "thickness", thickness(report.now()), later(BoardTables::thickness)));
        for (Surface face : List.of(Surface.FACE_1, Surface.FACE_2)) {
            all.add(row(columns, false, face.spoken(), cup(report.now(), face), later(s -> cup(s, face))));
        }
        if (report.now().boxedHeart()) all.add(Blocks.text(BOXED, Type.NOTE, Ink.QUIET));
        if (!report.room().isEmpty()) all.add(Blocks.text("Then: " + report.room(), Type.NOTE, Ink.QUIET));
        String shape = shape();
        if (!shape.isEmpty()) all.add(Blocks.text("From the machine: " + shape + ".", Type.NOTE, Ink.QUIET));
        return all;
    }

    private Block row(Blocks.Columns columns, boolean head, String... cells) {
        return Blocks.row(columns, List.of(cells).subList(0, columns.shares().size()), head);
    }

    private String later(java.util.function.Function<Seasoned, String> of) {
        return report.later().map(of).orElse("");
    }

    private static String percent(Seasoned state) {
        return Figure.percent(state.moisture());
    }

    private static String width(Seasoned state) {
        return orDash(state.width());
    }

    private static String thickness(Seasoned state) {
        return orDash(state.thickness());
    }

    private static String orDash(OptionalDouble value) {
        return value.isPresent() ? mm(value.getAsDouble()) : "–";
    }

    private static String mm(double value) {
        return Figure.number(value);
    }

    static String cup(Seasoned state, Surface face) {
        if (state.boxedHeart()) return "–";
        double cup = state.cup(face).orElse(0);
        if (Math.abs(cup) < 0.005) return "flat";
        return Figure.number(Math.abs(cup)) + (cup > 0 ? " hollow" : " rounded");
    }

    private String shape() {
        Shape s = board.shape();
        List<String> words = new ArrayList<>();
        say(words, "bow", s.bow());
        say(words, "spring", s.spring());
        say(words, "twist", s.twist());
        say(words, "taper", s.taper());
        say(words, "thickening", s.thickening());
        for (Surface surface : Surface.values()) {
            double off = s.outOfSquare(surface);
            if (off != 0) words.add(surface.spoken() + " " + Figure.number(off) + "° off square");
        }
        return String.join(", ", words);
    }

    private static void say(List<String> words, String what, double mm) {
        if (mm != 0) words.add(what + " " + Figure.number(mm) + " mm");
    }

    private List<Block> knots() {
        List<Block> all = new ArrayList<>();
        all.add(Blocks.heading("Knots", board.traces().isEmpty() ? "none shows" : ""));
        if (board.traces().isEmpty()) return all;
        Blocks.Columns columns = Blocks.Columns.of("lllrr", 0.09, 0.16, 0.36, 0.15, 0.24);
        all.add(Blocks.row(columns, List.of("no.", "on", "kind (EN 844)", "across", "trace"), true));
        for (Trace trace : board.traces()) {
            GradedKnot knot = GradedKnot.of(board, trace);
            all.add(Blocks.row(
                    columns,
                    List.of(
                            Figure.knot(trace.knot()),
                            trace.surface().spoken(),
                            kind(knot),
                            Figure.tenth(knot.size()),
                            Figure.tenth(trace.length()) + " × " + Figure.tenth(trace.width())),
                    false));
        }
        return all;
    }

    /** Without the word knot, which stands over all of them. */
    private static String kind(GradedKnot knot) {
        return knot.spoken().replaceFirst(" knot$", "");
    }

    private List<Block> surfaces() {
        List<Block> all = new ArrayList<>();
        all.add(Blocks.heading("Surfaces", "joinery class by EN 942"));
        Blocks.Columns columns = Blocks.Columns.of("llrr", 0.16, 0.42, 0.22, 0.2);
        all.add(Blocks.row(columns, List.of("", "", "largest knot", "class"), true));
        for (Surface surface : Surface.LONG) {
            double largest = JoineryClass.largestKnot(board, surface);
            all.add(Blocks.row(
                    columns,
                    List.of(
                            surface.spoken(),
                            Unrolled.note(board, surface),
                            largest > 0 ? Figure.tenth(largest) : "none",
                            JoineryClass.of(board, surface).map(Enum::name).orElse("below J50")),
                    false));
        }
        return all;
    }

    private List<Block> clearances() {
        List<Block> all = new ArrayList<>();
        all.add(Blocks.heading("Knots from cuts", ""));
        Blocks.Columns columns = Blocks.Columns.of("llr", 0.2, 0.5, 0.3);
        all.add(Blocks.row(columns, List.of("knot", "cut", "clear"), true));
        for (BoardReport.Clearance c : report.clearances()) {
            String clear = c.mm() > 0 ? Figure.tenth(c.mm()) : "they meet";
            all.add(Blocks.row(columns, List.of(Figure.knot(c.knot()), c.cut(), clear), false));
        }
        return all;
    }
}
