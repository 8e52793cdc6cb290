package org.marktwice.bench;

import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import org.marktwice.bench.BoardState.Aside;
import org.marktwice.bench.BoardState.Done;
import org.marktwice.bench.BoardState.Named;
import org.marktwice.bench.BoardState.Turned;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Turn;
import org.marktwice.timber.Surface;

/** What an action that can be done leaves on the boards. */
final class Effects {
    private Effects() {}

    /**
     * @param pairs the boards that lie in a cramp, each with what it lies against
     * @param actions an earlier action by its step
     */
    static void apply(Rack boards, Map<String, Pairing> pairs, int step, Action action, IntFunction<Action> actions) {
        if (action instanceof Action.RubOut rub) {
            // A line struck over a pair lies on both boards.
            boards.replaceAll(before -> rubbedOut(before, rub.step()));
        } else if (action instanceof Action.Cramp cramp) {
            pairs.put(cramp.board(), Pairing.of(cramp));
            pairs.put(cramp.mate(), Pairing.of(cramp).fromTheOther());
        } else if (action instanceof Action.Uncramp off) {
            Pairing was = pairs.remove(off.board());
            if (was != null) pairs.remove(was.there());
        } else if (action instanceof Action.OnBoard onBoard) {
            boards.put(after(boards.get(onBoard.board()), step, onBoard));
            Pairing pair = pairs.get(onBoard.board());
            if (pair != null && onBoard instanceof Action.Line line) carry(boards, pair, step, line, actions);
        }
    }

    /** What is struck over a pair comes out on the other board too. */
    private static void carry(Rack boards, Pairing pair, int step, Action.Line line, IntFunction<Action> actions) {
        BoardState here = boards.get(pair.here());
        BoardState there = boards.get(pair.there());
        boolean again = line.from() instanceof Action.Datum.Step s
                && there.struck().stream().anyMatch(d -> d.step() == s.step());
        double x = Placed.on(here, line, id -> boards.get(id).board(), actions).x();
        pair.on(line, here.board(), there.board(), x, again)
                .ifPresent(l -> boards.put(there.struck(and(there.struck(), new Done<>(step, l)))));
    }

    private static BoardState after(BoardState b, int step, Action.OnBoard action) {
        if (action instanceof Action.Measure m) return b.measured(and(b.measurements(), new Done<>(step, m)));
        if (action instanceof Action.Test t) return b.tested(and(b.tests(), new Done<>(step, t)));
        if (action instanceof Action.FaceSide f) {
            return b.marked(and(b.marks(), new Mark(Mark.Kind.FACE_SIDE, f.on(), f.towards(), step)));
        }
        if (action instanceof Action.FaceEdge f) {
            return b.marked(and(b.marks(), new Mark(Mark.Kind.FACE_EDGE, f.on(), f.towards(), step)));
        }
        if (action instanceof Action.Name n) {
            return b.placed(new Named(step, n.part(), n.at()), b.turn(), null);
        }
        if (action instanceof Action.Turning t) {
            return b.placed(b.name(), new Turned(step, turn(t), t.trim()), b.aside());
        }
        if (action instanceof Action.SetAside s) return b.placed(null, null, new Aside(step, s.because()));
        if (action instanceof Action.Fault) return b;
        return b.struck(and(b.struck(), new Done<>(step, action)));
    }

    private static BoardState rubbedOut(BoardState b, int step) {
        Named name = b.name();
        Named left = name != null && name.step() == step ? null : name;
        return b.marked(b.marks().stream().filter(m -> m.step() != step).toList())
                .struck(b.struck().stream().filter(d -> d.step() != step).toList())
                .placed(left, b.turn(), b.aside());
    }

    /** The turn that a possible turning names. */
    static Turn turn(Action.Turning action) {
        return facing(action).orElseThrow();
    }

    /** The turn that names two surfaces, the earlier one first; empty where no board lies so. */
    static Optional<Turn> facing(Action.Turning action) {
        Iterator<Map.Entry<Surface, Direction>> two = action.facing().entrySet().iterator();
        Map.Entry<Surface, Direction> one = two.next();
        Map.Entry<Surface, Direction> other = two.next();
        return one.getKey().compareTo(other.getKey()) < 0
                ? Turn.facing(one.getKey(), one.getValue(), other.getKey(), other.getValue())
                : Turn.facing(other.getKey(), other.getValue(), one.getKey(), one.getValue());
    }

    private static <T> List<T> and(List<T> list, T last) {
        return Growing.of(list).and(last);
    }
}
