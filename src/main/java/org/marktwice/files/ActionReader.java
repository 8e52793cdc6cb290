package org.marktwice.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.CutAt;
import org.marktwice.bench.Cutter;
import org.marktwice.bench.Marker;
import org.marktwice.bench.Reason;
import org.marktwice.bench.Tool;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** One line of an attempt after the header: its shape and its words. Whether it can be done is the bench's to say. */
final class ActionReader {
    private static final Surface[] ENDS = {Surface.END_1, Surface.END_2};
    private static final Surface[] FACES = {Surface.FACE_1, Surface.FACE_2};
    private static final int MOST_STEPS = 1_000_000;

    private ActionReader() {}

    /** What may stand in an action, by the word in its {@code do}. */
    private enum Verb {
        MEASURE("board", "from", "to", "reads"),
        TEST("board", "with", "on", "at", "from", "reads"),
        FACE_SIDE("board", "on", "towards"),
        FACE_EDGE("board", "on", "towards"),
        NAME("board", "part", "on", "at"),
        TURN("board", "facing", "trim"),
        SET_ASIDE("board", "because"),
        LINE("board", "on", "square", "from", "at", "mate", "with"),
        BEVEL("board", "on", "stock", "from", "at", "degrees", "with"),
        GAUGE("board", "on", "fence", "set"),
        WASTE("board", "joint", "between"),
        CUT("board", "what", "with", "side"),
        CRAMP("board", "on", "mate", "to", "level"),
        UNCRAMP("board"),
        RUB_OUT("what"),
        UNDO(),
        REDO(),
        ESTIMATE("expects", "parts"),
        ESTIMATE_CLEARANCE("board", "mm"),
        HINT("rule", "board", "part", "joint", "grade"),
        LESS_HELP("to"),
        TAKE_OVER("seed"),
        FAULT("board", "slip"),
        HAND_IN();

        private final String id = name().toLowerCase(Locale.ROOT).replace('_', '-');
        private final List<String> known;

        Verb(String... fields) {
            this.known = Stream.concat(Stream.of("t", "do"), Stream.of(fields)).toList();
        }

        String id() {
            return id;
        }
    }

    /** An action that only wants its time, in seconds. */
    interface Timed {
        Action at(double t);
    }

    /** A line read: when, and what. */
    record Read(double t, Timed what) {
        Action action() {
            return what.at(t);
        }
    }

    static Read read(Json json) throws FileRefused {
        Json.Member word =
                Fields.object(json, "an action (an object)").members().get("do");
        if (word == null) throw json.place().refuse("the field \"do\" is missing");
        Verb verb = Values.word(word.value(), Verb.values(), Verb::id);
        Fields in = Fields.of(json, "an action (an object)", verb.known);
        double t = in.number("t", Range.TIME);
        return new Read(t, timed(verb, in));
    }

    private static Timed timed(Verb verb, Fields in) throws FileRefused {
        return switch (verb) {
            case RUB_OUT -> rubOut(step(in.need("what")));
            case UNDO -> Action.Undo::new;
            case REDO -> Action.Redo::new;
            case ESTIMATE -> estimate(in);
            case HINT -> hint(in);
            case LESS_HELP -> lessHelp(Values.word(in.need("to"), Practice.Guidance.values(), Practice.Guidance::id));
            case TAKE_OVER -> takeOver(Values.whole(in.need("seed"), 0, Integer.MAX_VALUE));
            case HAND_IN -> Action.HandIn::new;
            default -> onBoard(verb, in, Id.BOARD.read(in.need("board")));
        };
    }

    private static Timed rubOut(int step) {
        return t -> new Action.RubOut(t, step);
    }

    private static Timed lessHelp(Practice.Guidance to) {
        return t -> new Action.LessHelp(t, to);
    }

    private static Timed takeOver(int seed) {
        return t -> new Action.TakeOver(t, seed);
    }

    private static Timed onBoard(Verb verb, Fields in, String board) throws FileRefused {
        return switch (verb) {
            case MEASURE -> measure(in, board);
            case TEST -> test(in, board);
            case FACE_SIDE, FACE_EDGE -> mark(verb, in, board);
            case NAME -> name(in, board);
            case TURN -> turning(in, board);
            case SET_ASIDE -> setAside(in, board);
            case LINE -> line(in, board);
            case BEVEL -> bevel(in, board);
            case GAUGE -> gauge(in, board);
            case WASTE -> waste(in, board);
            case CUT -> cut(in, board);
            case CRAMP -> cramp(in, board);
            case UNCRAMP -> t -> new Action.Uncramp(t, board);
            case ESTIMATE_CLEARANCE -> estimateClearance(in, board);
            case FAULT -> fault(in, board);
            default -> throw new IllegalStateException(verb.id() + " is on no board");
        };
    }

    private static Timed measure(Fields in, String board) throws FileRefused {
        SurfacePoint from = surfacePoint(in.need("from"));
        SurfacePoint to = surfacePoint(in.need("to"));
        Double reads = optional(in, "reads");
        return t -> new Action.Measure(t, board, from, to, reads);
    }

    private static Timed mark(Verb verb, Fields in, String board) throws FileRefused {
        Surface on = on(in);
        Surface towards = surface(in, "towards");
        return verb == Verb.FACE_SIDE
                ? t -> new Action.FaceSide(t, board, on, towards)
                : t -> new Action.FaceEdge(t, board, on, towards);
    }

    private static Timed name(Fields in, String board) throws FileRefused {
        String part = Id.WORD.read(in.need("part"));
        SurfacePoint at = onSurface(on(in), in.need("at"));
        return t -> new Action.Name(t, board, part, at);
    }

    private static Timed turning(Fields in, String board) throws FileRefused {
        Map<Surface, Direction> facing = Map.copyOf(facing(in.need("facing")));
        Trim trim = trim(in.get("trim"));
        return t -> new Action.Turning(t, board, facing, trim);
    }

    private static Timed setAside(Fields in, String board) throws FileRefused {
        Reason because = Values.word(in.need("because"), Reason.values(), Reason::id);
        return t -> new Action.SetAside(t, board, because);
    }

    private static Timed gauge(Fields in, String board) throws FileRefused {
        Surface on = on(in);
        Surface fence = surface(in, "fence");
        double set = in.number("set", Range.DISTANCE);
        return t -> new Action.Gauge(t, board, on, fence, set);
    }

    private static Timed cut(Fields in, String board) throws FileRefused {
        int line = step(in.need("what"));
        Cutter with = Values.word(in.need("with"), Cutter.values(), Cutter::id);
        CutAt side = Values.word(in.need("side"), CutAt.values(), CutAt::id);
        return t -> new Action.Cut(t, board, line, with, side);
    }

    private static Timed estimateClearance(Fields in, String board) throws FileRefused {
        double mm = in.number("mm", Range.DISTANCE);
        return t -> new Action.EstimateClearance(t, board, mm);
    }

    private static Timed fault(Fields in, String board) throws FileRefused {
        String slip = Id.WORD.read(in.need("slip"));
        return t -> new Action.Fault(t, board, slip);
    }

    private static Surface on(Fields in) throws FileRefused {
        return surface(in, "on");
    }

    private static Surface surface(Fields in, String name) throws FileRefused {
        return BoardReader.surface(in.need(name));
    }

    private static Timed test(Fields in, String board) throws FileRefused {
        Tool with = Values.word(in.need("with"), Tool.values(), Tool::id);
        Surface from = in.has("from") ? surface(in, "from") : null;
        Surface on = on(in);
        Double at = optional(in, "at");
        Double reads = optional(in, "reads");
        return t -> new Action.Test(t, board, with, on, at, from, reads);
    }

    private static @Nullable Double optional(Fields in, String name) throws FileRefused {
        return in.has(name) ? (Double) in.number(name, Range.POSITION) : null;
    }

    private static SurfacePoint surfacePoint(Json json) throws FileRefused {
        String what = "a point [surface, u, v]";
        List<Json> items = Values.items(json, what, 0);
        if (items.size() != 3) throw json.place().refuse("expected " + what + ", found " + items.size() + " values");
        return new SurfacePoint(BoardReader.surface(items.get(0)), position(items.get(1)), position(items.get(2)));
    }

    private static SurfacePoint onSurface(Surface surface, Json json) throws FileRefused {
        String what = "a position [u, v]";
        List<Json> items = Values.items(json, what, 0);
        if (items.size() != 2) throw json.place().refuse("expected " + what + ", found " + items.size() + " values");
        return new SurfacePoint(surface, position(items.get(0)), position(items.get(1)));
    }

    private static double position(Json json) throws FileRefused {
        return Values.number(json, Range.POSITION);
    }

    private static Map<Surface, Direction> facing(Json json) throws FileRefused {
        String what = "two adjoining surfaces with the directions they face";
        Map<Surface, Direction> facing = new LinkedHashMap<>();
        for (var member : Fields.object(json, what).members().entrySet()) {
            Place name = member.getValue().name();
            Surface surface = Values.word(name, member.getKey(), Surface.values(), Surface::id);
            facing.put(surface, DrawingReader.direction(member.getValue().value()));
        }
        if (facing.size() != 2) throw json.place().refuse("expected " + what + ", found " + facing.size());
        List<Surface> two = new ArrayList<>(facing.keySet());
        Direction one = facing.get(two.get(0));
        Direction other = facing.get(two.get(1));
        if (one == null || other == null) throw new IllegalStateException("both were just put there");
        if (Turn.facing(two.get(0), one, two.get(1), other).isEmpty()) {
            throw json.place()
                    .refuse("no turn makes " + two.get(0).id() + " face " + one.id() + " and "
                            + two.get(1).id() + " face " + other.id());
        }
        return facing;
    }

    private static @Nullable Trim trim(Optional<Json> json) throws FileRefused {
        if (json.isEmpty()) return null;
        Fields in = Fields.of(json.get(), "an object with end and mm", List.of("end", "mm"));
        return new Trim(Values.word(in.need("end"), ENDS, Surface::id), in.number("mm", Range.DISTANCE));
    }

    private static Timed line(Fields in, String board) throws FileRefused {
        if (in.has("at") == in.has("mate")) {
            throw in.place().refuse("expected either \"at\" or \"mate\", found " + (in.has("at") ? "both" : "neither"));
        }
        Surface on = on(in);
        Surface square = surface(in, "square");
        Action.Datum from = datum(in.need("from"));
        Double at = optional(in, "at");
        String mate = in.has("mate") ? Id.BOARD.read(in.need("mate")) : null;
        Marker with = Values.word(in.need("with"), Marker.values(), Marker::id);
        return t -> new Action.Line(t, board, on, square, from, at, mate, with);
    }

    private static Timed bevel(Fields in, String board) throws FileRefused {
        Surface on = on(in);
        Surface stock = surface(in, "stock");
        Action.Datum from = datum(in.need("from"));
        double at = in.number("at", Range.POSITION);
        double degrees = in.number("degrees", Range.BEVEL);
        Marker with = Values.word(in.need("with"), Marker.values(), Marker::id);
        return t -> new Action.Bevel(t, board, on, stock, from, at, degrees, with);
    }

    private static Timed cramp(Fields in, String board) throws FileRefused {
        Json level = in.need("level");
        List<Surface> two =
                Values.list(level, "two ends that are level", 0, json -> Values.word(json, ENDS, Surface::id));
        if (two.size() != 2) throw level.place().refuse("expected two ends that are level, found " + two.size());
        String mate = Id.BOARD.read(in.need("mate"));
        Surface on = face(in, "on");
        Surface to = face(in, "to");
        return t -> new Action.Cramp(t, board, on, mate, to, two.get(0), two.get(1));
    }

    private static Surface face(Fields in, String name) throws FileRefused {
        return Values.word(in.need(name), FACES, Surface::id);
    }

    private static Action.Datum datum(Json json) throws FileRefused {
        if (json instanceof Json.Obj) return new Action.Datum.Step(step(json));
        if (!(json instanceof Json.Text)) throw json.expected("an end of the board or an earlier line {\"step\": n}");
        return new Action.Datum.End(Values.word(json, ENDS, Surface::id));
    }

    private static int step(Json json) throws FileRefused {
        Fields in = Fields.of(json, "an earlier step {\"step\": n}", List.of("step"));
        return Values.whole(in.need("step"), 1, MOST_STEPS);
    }

    private static Timed waste(Fields in, String board) throws FileRefused {
        Json between = in.need("between");
        List<Integer> two = Values.list(between, "two lines [{\"step\": n}, {\"step\": m}]", 0, ActionReader::step);
        if (two.size() != 2) throw between.place().refuse("expected two lines, found " + two.size());
        String joint = Id.WORD.read(in.need("joint"));
        return t -> new Action.Waste(t, board, joint, two.get(0), two.get(1));
    }

    private static Timed estimate(Fields in) throws FileRefused {
        Set<String> rules = Set.copyOf(Values.distinct(in.need("expects"), "a list of rules' ids", 0, Id.WORD::read));
        if (!in.has("parts")) return t -> new Action.Estimate(t, rules);
        Set<String> parts = Set.copyOf(Values.distinct(in.need("parts"), "a list of parts' ids", 0, Id.WORD::read));
        return t -> new Action.Estimate(t, rules, parts);
    }

    private static Timed hint(Fields in) throws FileRefused {
        String rule = Id.WORD.read(in.need("rule"));
        String board = in.has("board") ? Id.BOARD.read(in.need("board")) : null;
        String part = in.has("part") ? Id.WORD.read(in.need("part")) : null;
        String joint = in.has("joint") ? Id.WORD.read(in.need("joint")) : null;
        int grade = Values.whole(in.need("grade"), 1, Action.Hint.GRADES);
        return t -> new Action.Hint(t, rule, board, part, joint, grade);
    }
}
