package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.BoardState.Named;
import org.marktwice.bench.BoardState.Turned;
import org.marktwice.bench.Mark;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * A board's part, marks and turn, told apart from the steps that made them: these count 1, 2, 3 … in their order. What a
 * rule finds about a board marked so is the same whenever it was done, but for the step that decided it. Safe for several
 * threads.
 */
final class AsItIsMarked {
    private static final SurfacePoint ANYWHERE = new SurfacePoint(Surface.FACE_1, 0, 0);

    private final Map<Rule, Finding> findings = new ConcurrentHashMap<>();

    /** All that such a finding follows from, besides the scenario. */
    record Key(
            String board,
            @Nullable String part,
            boolean named,
            List<Mark> marks,
            @Nullable Turned turned) {}

    /**
     * A board's marks and turn in their order.
     *
     * @param key its marks and turn with steps from 1 on
     * @param steps the step that each of them was, from place 1 on
     */
    record Ordered(Key key, int[] steps) {
        static Ordered of(Workpiece piece) {
            List<Mark> marks = piece.state().marks();
            Turned turned = piece.state().turn();
            int[] steps = new int[marks.size() + 2];
            List<Mark> ordered = new ArrayList<>(marks.size());
            Turned turnedAt = null;
            int place = 0;
            for (Mark mark : marks) {
                if (turned != null && turnedAt == null && turned.step() < mark.step()) {
                    steps[++place] = turned.step();
                    turnedAt = new Turned(place, turned.turn(), turned.trim());
                }
                steps[++place] = mark.step();
                ordered.add(new Mark(mark.kind(), mark.on(), mark.towards(), place));
            }
            if (turned != null && turnedAt == null) {
                steps[++place] = turned.step();
                turnedAt = new Turned(place, turned.turn(), turned.trim());
            }
            String part = piece.part() == null ? null : piece.part().id();
            boolean named = piece.state().name() != null;
            return new Ordered(new Key(piece.board().id(), part, named, ordered, turnedAt), steps);
        }

        /** The piece as if nothing else had been done. */
        private Workpiece bare(Workpiece piece) {
            Named name = piece.state().name();
            BoardState state = new BoardState(
                    piece.board(),
                    key.marks(),
                    name == null ? null : new Named(0, name.part(), ANYWHERE),
                    key.turned(),
                    null,
                    List.of(),
                    List.of(),
                    List.of());
            return new Workpiece(piece.situation(), state, piece.part());
        }

        private Finding at(Finding finding) {
            Integer place = finding.step();
            return place == null ? finding : finding.at(steps[place]);
        }
    }

    /** What a rule finds about a piece that is marked so. */
    Finding finding(Rule rule, Workpiece piece, Ordered as, Function<Workpiece, Finding> by) {
        Finding known = findings.get(rule);
        if (known == null) {
            known = by.apply(as.bare(piece));
            findings.put(rule, known);
        }
        return as.at(known);
    }
}
