package org.marktwice.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Cut;
import org.marktwice.files.BoardFile;
import org.marktwice.files.FileRefused;
import org.marktwice.print.BoardReport;
import org.marktwice.print.BoardReport.Clearance;
import org.marktwice.print.Paper;
import org.marktwice.print.SheetFile;
import org.marktwice.timber.Board;
import org.marktwice.timber.Climate;
import org.marktwice.timber.GradedKnot;
import org.marktwice.timber.JoineryClass;
import org.marktwice.timber.KnotBody;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Species;
import org.marktwice.timber.Surface;
import org.marktwice.timber.Trace;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A board's report. */
@Command(
        name = "board",
        description = "Reports on a board: its sizes and cup, the traces of its knots, and their clearance from cuts.",
        footer = {
            "",
            "FILE holds a board object as in a scenario, with optional \"cuts\": [{\"id\", \"from\": [x, y, z],",
            "\"to\": [x, y, z]}] in the board's frame.",
            "",
            "ROOM is a temperature and a relative humidity, such as 21.1C,50%% or 70F,50%%: the board is reported as",
            "it will be once it has settled there (Wood Handbook eq. 4-5; how long that takes isn't told).",
            "",
            "OUT gets the board unrolled to scale with its knots numbered, its end grain with the cup drawn larger,",
            "and all figures, on a sheet of paper; it bears no date. An old file of that name is replaced.",
            "",
            "Exit 0: reported. 2: the file can't be read, M is no moisture, ROOM no room, or OUT can't be written.",
            "",
            "--json writes one object; figures are unrounded, lengths in millimetres:",
            "  board         its id",
            "  room          (with --room) celsius, humidity in %%, moisture at which timber settles there",
            "  now, then     (then with --dry-to or --room) moisture in %%, width, thickness, cup {face-1, face-2}: the",
            "                deepest gap under a straight-edge, + hollow, - rounded. width, thickness and cup",
            "                are null with a boxed heart, and note says so; moisture is null for sheet stuff",
            "  traces[]      knot, surface, length (along the surface's first axis), width, area, live,",
            "                kind (round, oval, splay), place (face, edge, arris, end), size (square to the",
            "                board's length, as graders measure it)",
            "  surfaces[]    the four along the grain: surface, largest (size of its largest knot), class",
            "                (J10 to J50 by EN 942; null where no class is met, and for sheet stuff)",
            "  clearances[]  knot, cut, mm: least distance of the knot inside the board from the cut"
        })
final class BoardCommand implements Callable<Integer> {
    private static final String BOXED = "boxed heart: expect a check; width, thickness and cup can't be told";

    private final Console console;

    @Spec
    @Nullable
    CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "a board (*.board.json)")
    private Path file = Path.of("");

    /** At most one of the two. */
    static final class Later {
        @Option(names = "--dry-to", paramLabel = "M", description = "report it as well at M percent moisture")
        private @Nullable Double dryTo;

        @Option(
                names = "--room",
                paramLabel = "ROOM",
                converter = RoomConverter.class,
                description = "report it as well once settled in this room")
        private @Nullable Climate room;

        @Nullable
        Double moisture() {
            return room == null ? dryTo : (Double) room.settledMoisture();
        }
    }

    @ArgGroup(exclusive = true)
    private @Nullable Later later;

    @Option(names = "--json", description = "write the result as JSON, as described below")
    private boolean json;

    @Option(names = "--out", paramLabel = "OUT", description = "write the report as a picture (.pdf, .svg or .png)")
    private @Nullable Path out;

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            converter = PaperConverter.class,
            description = "with --out: a4 (if nothing is said) or letter")
    private Paper paper = Paper.A4;

    BoardCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused {
        Double to = later == null ? null : later.moisture();
        Climate room = later == null ? null : later.room;
        if (to != null && !(to >= 0 && to <= 100)) {
            throw WrongUse.of(spec, "--dry-to: expected a moisture from 0 to 100, found " + to);
        }
        BoardFile read = BoardFile.read(file);
        Board board = read.board();
        Map<String, Seasoned> states = new LinkedHashMap<>();
        states.put("now", Seasoned.now(board));
        if (to != null) states.put("then", Seasoned.of(board, to));
        List<Clearance> clearances = clearances(read);
        Path picture = out;
        if (picture != null) {
            BoardReport report =
                    new BoardReport(board, states.get("then"), room == null ? "" : spoken(room), clearances);
            SheetFile.save(picture, report.pages(paper), "Board " + board.id());
        }
        if (json) console.json(json(board, room, states, clearances));
        else text(board, room, states, clearances);
        return Exit.DONE;
    }

    private static List<Clearance> clearances(BoardFile file) {
        List<Clearance> all = new ArrayList<>();
        for (KnotBody body : file.board().bodies()) {
            for (Cut cut : file.cuts()) {
                double least =
                        cut.boxes().stream().mapToDouble(body::clearance).min().orElse(Double.POSITIVE_INFINITY);
                all.add(new Clearance(body.knot().id(), cut.joint(), least));
            }
        }
        return all;
    }

    private static Map<String, @Nullable Object> json(
            Board board, @Nullable Climate room, Map<String, Seasoned> states, List<Clearance> clearances) {
        Fields answer = Fields.with("board", board.id()).maybe("room", room == null ? null : json(room));
        states.forEach((when, state) -> answer.and(when, state(board, state)));
        return answer.and(
                        "traces",
                        board.traces().stream()
                                .map(t -> trace(GradedKnot.of(board, t)))
                                .toList())
                .and(
                        "surfaces",
                        Surface.LONG.stream().map(s -> surface(board, s)).toList())
                .and(
                        "clearances",
                        clearances.stream()
                                .map(c -> Fields.with("knot", c.knot())
                                        .and("cut", c.cut())
                                        .and("mm", c.mm())
                                        .map())
                                .toList())
                .map();
    }

    private static Map<String, @Nullable Object> json(Climate room) {
        return Fields.with("celsius", room.celsius())
                .and("humidity", room.humidity())
                .and("moisture", room.settledMoisture())
                .map();
    }

    private static Map<String, @Nullable Object> state(Board board, Seasoned state) {
        Fields cup = new Fields();
        for (Surface face : List.of(Surface.FACE_1, Surface.FACE_2)) cup.orNull(face.id(), orNull(state.cup(face)));
        return new Fields()
                .orNull("moisture", board.isSheet() ? null : (Double) state.moisture())
                .orNull("width", orNull(state.width()))
                .orNull("thickness", orNull(state.thickness()))
                .orNull("cup", state.boxedHeart() ? null : cup.map())
                .maybe("note", state.boxedHeart() ? BOXED : null)
                .map();
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? (Double) value.getAsDouble() : null;
    }

    private static Map<String, @Nullable Object> surface(Board board, Surface surface) {
        return Fields.with("surface", surface.id())
                .and("largest", JoineryClass.largestKnot(board, surface))
                .orNull("class", JoineryClass.of(board, surface).map(Enum::name).orElse(null))
                .map();
    }

    private static Map<String, @Nullable Object> trace(GradedKnot knot) {
        Trace trace = knot.trace();
        return Fields.with("knot", trace.knot())
                .and("surface", trace.surface().id())
                .and("length", trace.length())
                .and("width", trace.width())
                .and("area", trace.area())
                .and("live", trace.live())
                .and("kind", knot.kind().id())
                .and("place", knot.place().id())
                .and("size", knot.size())
                .map();
    }

    private void text(Board board, @Nullable Climate room, Map<String, Seasoned> states, List<Clearance> clearances) {
        String made = board.species().map(Species::name).orElse("sheet stuff");
        console.line("Board " + board.id() + ", " + made + ", "
                + Text.number(board.size().length()) + " × "
                + Text.number(board.size().width()) + " × "
                + Text.number(board.size().thickness()) + " mm");
        if (room != null) {
            console.line("  room: " + spoken(room));
        }
        states.forEach((when, state) -> console.line("  " + when + ": " + text(board, state)));
        for (Trace t : board.traces()) {
            GradedKnot knot = GradedKnot.of(board, t);
            console.line("  knot " + t.knot() + " on " + t.surface().spoken() + ": " + knot.spoken() + ", "
                    + Text.mm(knot.size()) + " across; " + Text.mm(t.length()) + " × " + Text.mm(t.width()) + ", "
                    + Text.number(t.area()) + " mm²");
        }
        if (!board.isSheet()) classes(board);
        for (Clearance c : clearances) {
            console.line("  knot " + c.knot() + " from cut " + c.cut() + ": "
                    + (c.mm() > 0 ? Text.mm(c.mm()) + " clear" : "they meet"));
        }
    }

    private static String spoken(Climate room) {
        return Text.number(room.celsius()) + " °C, " + Text.number(room.humidity())
                + " % relative humidity; timber settles at " + Text.number(room.settledMoisture()) + " % moisture";
    }

    private void classes(Board board) {
        console.line("  joinery class (EN 942) by the largest knot:");
        for (Surface surface : Surface.LONG) {
            double largest = JoineryClass.largestKnot(board, surface);
            console.line("    " + surface.spoken() + ": "
                    + JoineryClass.of(board, surface).map(Enum::name).orElse("below J50") + ", "
                    + (largest > 0 ? Text.mm(largest) : "no knot"));
        }
    }

    private static String text(Board board, Seasoned state) {
        String at = board.isSheet() ? "" : "at " + Text.number(state.moisture()) + " % moisture ";
        OptionalDouble width = state.width();
        OptionalDouble thickness = state.thickness();
        if (width.isEmpty() || thickness.isEmpty()) return at + BOXED;
        return at + Text.number(width.getAsDouble()) + " mm wide, " + Text.number(thickness.getAsDouble())
                + " mm thick, face 1 " + cup(state, Surface.FACE_1) + ", face 2 " + cup(state, Surface.FACE_2);
    }

    private static String cup(Seasoned state, Surface face) {
        double cup = state.cup(face).orElse(0);
        if (Math.abs(cup) < 0.005) return "flat";
        return Text.number(Math.abs(cup)) + " mm " + (cup > 0 ? "hollow" : "rounded");
    }
}
