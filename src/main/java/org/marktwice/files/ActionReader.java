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

    static Action read(Json json) throws FileRefused {
        Json.Member word =
                Fields.object(json, "an action (an object)").members().get("do");
        if (word == null) throw json.place().refuse("the field \"do\" is missing");
        Verb verb = Values.word(word.value(), Verb.values(), Verb::id);
        Fields in = Fields.of(json, "an action (an object)", verb.known);
        double t = in.number("t", Range.TIME);
        return switch (verb) {
            case RUB_OUT -> new Action.RubOut(t, step(in.need("what")));
            case UNDO -> new Action.Undo(t);
            case REDO -> new Action.Redo(t);
            case ESTIMATE -> estimate(in, t);
            case HINT -> hint(in, t);
            case LESS_HELP ->
                new Action.LessHelp(t, Values.word(in.need("to"), Practice.Guidance.values(), Practice.Guidance::id));
            case TAKE_OVER -> new Action.TakeOver(t, Values.whole(in.need("seed"), 0, Integer.MAX_VALUE));
            case HAND_IN -> new Action.HandIn(t);
            default -> onBoard(verb, in, t, Id.BOARD.read(in.need("board")));
        };
    }

    private static Action onBoard(Verb verb, Fields in, double t, String board) throws FileRefused {
        return switch (verb) {
            case MEASURE ->
                new Action.Measure(
                        t, board, surfacePoint(in.need("from")), surfacePoint(in.need("to")), optional(in, "reads"));
            case TEST -> test(in, t, board);
            case FACE_SIDE -> new Action.FaceSide(t, board, on(in), surface(in, "towards"));
            case FACE_EDGE -> new Action.FaceEdge(t, board, on(in), surface(in, "towards"));
            case NAME -> new Action.Name(t, board, Id.WORD.read(in.need("part")), onSurface(on(in), in.need("at")));
            case TURN -> new Action.Turning(t, board, facing(in.need("facing")), trim(in.get("trim")));
            case SET_ASIDE ->
                new Action.SetAside(t, board, Values.word(in.need("because"), Reason.values(), Reason::id));
            case LINE -> line(in, t, board);
            case BEVEL -> bevel(in, t, board);
            case GAUGE -> new Action.Gauge(t, board, on(in), surface(in, "fence"), in.number("set", Range.DISTANCE));
            case WASTE -> waste(in, t, board);
            case CUT ->
                new Action.Cut(
                        t,
                        board,
                        step(in.need("what")),
                        Values.word(in.need("with"), Cutter.values(), Cutter::id),
                        Values.word(in.need("side"), CutAt.values(), CutAt::id));
            case CRAMP -> cramp(in, t, board);
            case UNCRAMP -> new Action.Uncramp(t, board);
            case ESTIMATE_CLEARANCE -> new Action.EstimateClearance(t, board, in.number("mm", Range.DISTANCE));
            case FAULT -> new Action.Fault(t, board, Id.WORD.read(in.need("slip")));
            default -> throw new IllegalStateException(verb.id() + " is on no board");
        };
    }

    private static Surface on(Fields in) throws FileRefused {
        return surface(in, "on");
    }

    private static Surface surface(Fields in, String name) throws FileRefused {
        return BoardReader.surface(in.need(name));
    }

    private static Action test(Fields in, double t, String board) throws FileRefused {
        Tool with = Values.word(in.need("with"), Tool.values(), Tool::id);
        Surface from = in.has("from") ? surface(in, "from") : null;
        return new Action.Test(t, board, with, on(in), optional(in, "at"), from, optional(in, "reads"));
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

    private static Action line(Fields in, double t, String board) throws FileRefused {
        if (in.has("at") == in.has("mate")) {
            throw in.place().refuse("expected either \"at\" or \"mate\", found " + (in.has("at") ? "both" : "neither"));
        }
        return new Action.Line(
                t,
                board,
                on(in),
                surface(in, "square"),
                datum(in.need("from")),
                optional(in, "at"),
                in.has("mate") ? Id.BOARD.read(in.need("mate")) : null,
                Values.word(in.need("with"), Marker.values(), Marker::id));
    }

    private static Action bevel(Fields in, double t, String board) throws FileRefused {
        return new Action.Bevel(
                t,
                board,
                on(in),
                surface(in, "stock"),
                datum(in.need("from")),
                in.number("at", Range.POSITION),
                in.number("degrees", Range.BEVEL),
                Values.word(in.need("with"), Marker.values(), Marker::id));
    }

    private static Action cramp(Fields in, double t, String board) throws FileRefused {
        Json level = in.need("level");
        List<Surface> two =
                Values.list(level, "two ends that are level", 0, json -> Values.word(json, ENDS, Surface::id));
        if (two.size() != 2) throw level.place().refuse("expected two ends that are level, found " + two.size());
        String mate = Id.BOARD.read(in.need("mate"));
        return new Action.Cramp(t, board, face(in, "on"), mate, face(in, "to"), two.get(0), two.get(1));
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

    private static Action waste(Fields in, double t, String board) throws FileRefused {
        Json between = in.need("between");
        List<Integer> two = Values.list(between, "two lines [{\"step\": n}, {\"step\": m}]", 0, ActionReader::step);
        if (two.size() != 2) throw between.place().refuse("expected two lines, found " + two.size());
        return new Action.Waste(t, board, Id.WORD.read(in.need("joint")), two.get(0), two.get(1));
    }

    private static Action estimate(Fields in, double t) throws FileRefused {
        Set<String> rules = Set.copyOf(Values.distinct(in.need("expects"), "a list of rules' ids", 0, Id.WORD::read));
        if (!in.has("parts")) return new Action.Estimate(t, rules);
        return new Action.Estimate(
                t, rules, Set.copyOf(Values.distinct(in.need("parts"), "a list of parts' ids", 0, Id.WORD::read)));
    }

    private static Action hint(Fields in, double t) throws FileRefused {
        return new Action.Hint(
                t,
                Id.WORD.read(in.need("rule")),
                in.has("board") ? Id.BOARD.read(in.need("board")) : null,
                in.has("part") ? Id.WORD.read(in.need("part")) : null,
                in.has("joint") ? Id.WORD.read(in.need("joint")) : null,
                Values.whole(in.need("grade"), 1, Action.Hint.GRADES));
    }
}
