package org.marktwice.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Trim;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** Lines of an attempt's file. */
public final class ActionWriter {
    private ActionWriter() {}

    /** The first line, without a line feed. The attempt's actions aren't part of it. */
    public static String header(Attempt attempt) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("format", Format.ATTEMPT.written());
        out.put("scenario", attempt.scenario());
        if (!attempt.digest().isEmpty()) out.put("digest", attempt.digest());
        out.put("learner", attempt.learner());
        out.put("started", attempt.started());
        return JsonText.line(out);
    }

    /** The action's line, without a line feed. */
    public static String line(Action action) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("t", action.t());
        out.put("do", action.verb());
        if (action instanceof Action.OnBoard on) {
            out.put("board", on.board());
            board(on, out);
        } else if (action instanceof Action.RubOut rubOut) {
            out.put("what", step(rubOut.step()));
        } else if (action instanceof Action.Estimate estimate) {
            out.put("expects", estimate.expects().stream().sorted().toList());
            if (estimate.parts() != null)
                out.put("parts", estimate.parts().stream().sorted().toList());
        } else if (action instanceof Action.Hint hint) {
            out.put("rule", hint.rule());
            if (hint.board() != null) out.put("board", hint.board());
            if (hint.part() != null) out.put("part", hint.part());
            if (hint.joint() != null) out.put("joint", hint.joint());
            out.put("grade", hint.grade());
        } else if (action instanceof Action.LessHelp less) {
            out.put("to", less.to().id());
        } else if (action instanceof Action.TakeOver over) {
            out.put("seed", over.seed());
        }
        return JsonText.line(out);
    }

    /** The whole file. */
    public static String text(Attempt attempt) {
        StringBuilder text = new StringBuilder(header(attempt)).append('\n');
        for (Action action : attempt.actions()) text.append(line(action)).append('\n');
        return text.toString();
    }

    private static void board(Action.OnBoard action, Map<String, Object> out) {
        if (action instanceof Action.Measure a) {
            out.put("from", point(a.from()));
            out.put("to", point(a.to()));
            if (a.reads() != null) out.put("reads", a.reads());
        } else if (action instanceof Action.Test a) {
            out.put("with", a.with().id());
            out.put("on", a.on().id());
            if (a.at() != null) out.put("at", a.at());
            if (a.from() != null) out.put("from", a.from().id());
            if (a.reads() != null) out.put("reads", a.reads());
        } else if (action instanceof Action.FaceSide a) {
            mark(a.on(), a.towards(), out);
        } else if (action instanceof Action.FaceEdge a) {
            mark(a.on(), a.towards(), out);
        } else if (action instanceof Action.Name a) {
            out.put("part", a.part());
            out.put("on", a.at().surface().id());
            out.put("at", List.of(a.at().u(), a.at().v()));
        } else if (action instanceof Action.Turning a) {
            turn(a, out);
        } else if (action instanceof Action.SetAside a) {
            out.put("because", a.because().id());
        } else if (action instanceof Action.Line a) {
            struck(a, out);
        } else if (action instanceof Action.Bevel a) {
            out.put("on", a.on().id());
            out.put("stock", a.stock().id());
            out.put("from", datum(a.from()));
            out.put("at", a.at());
            out.put("degrees", a.degrees());
            out.put("with", a.with().id());
        } else if (action instanceof Action.Gauge a) {
            out.put("on", a.on().id());
            out.put("fence", a.fence().id());
            out.put("set", a.set());
        } else if (action instanceof Action.Cut a) {
            out.put("what", step(a.step()));
            out.put("with", a.with().id());
            out.put("side", a.side().id());
        } else if (action instanceof Action.Cramp a) {
            out.put("on", a.on().id());
            out.put("mate", a.mate());
            out.put("to", a.to().id());
            out.put("level", List.of(a.level().id(), a.with().id()));
        } else if (action instanceof Action.Waste a) {
            out.put("joint", a.joint());
            out.put("between", List.of(step(a.between()), step(a.and())));
        } else if (action instanceof Action.EstimateClearance a) {
            out.put("mm", a.mm());
        } else if (action instanceof Action.Fault a) {
            out.put("slip", a.slip());
        }
    }

    private static void mark(Surface on, Surface towards, Map<String, Object> out) {
        out.put("on", on.id());
        out.put("towards", towards.id());
    }

    private static void turn(Action.Turning a, Map<String, Object> out) {
        out.put("facing", facing(a.facing()));
        if (a.trim() != null)
            out.put("trim", Map.of("end", a.trim().end().id(), "mm", a.trim().mm()));
    }

    private static Map<String, Object> trim(Trim trim) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("end", trim.end().id());
        out.put("mm", trim.mm());
        return out;
    }

    private static void struck(Action.Line a, Map<String, Object> out) {
        out.put("on", a.on().id());
        out.put("square", a.square().id());
        out.put("from", datum(a.from()));
        if (a.at() != null) out.put("at", a.at());
        if (a.mate() != null) out.put("mate", a.mate());
        out.put("with", a.with().id());
    }

    private static Object datum(Action.Datum from) {
        if (from instanceof Action.Datum.End end) return end.end().id();
        return step(((Action.Datum.Step) from).step());
    }

    private static Map<String, Object> step(int step) {
        return Map.of("step", step);
    }

    private static List<Object> point(SurfacePoint at) {
        return List.of(at.surface().id(), at.u(), at.v());
    }

    /** Surfaces to directions, in the surfaces' order. */
    private static Map<String, Object> facing(Map<Surface, Direction> facing) {
        Map<String, Object> out = new LinkedHashMap<>();
        facing.keySet().stream().sorted().forEach(s -> out.put(s.id(), direction(facing, s)));
        return out;
    }

    private static String direction(Map<Surface, Direction> facing, Surface surface) {
        Direction direction = facing.get(surface);
        if (direction == null) throw new IllegalStateException("a key of the map has a value");
        return direction.id();
    }
}
