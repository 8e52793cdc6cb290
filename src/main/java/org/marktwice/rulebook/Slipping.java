package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Surface;

/**
 * The attempt in which a slip is to be made.
 *
 * @param situation after the attempt
 */
record Slipping(Situation situation, Attempt good) {

    /** A board with both marks on surfaces that share an arris. */
    record Marked(Workpiece piece, Mark side, Mark edge) {
        String board() {
            return piece.board().id();
        }

        /** The board as it lies; there is one where {@link Slipping#lying()} gave this. */
        Placing placing() {
            return piece.placing().orElseThrow();
        }
    }

    List<Marked> marked() {
        return Workpiece.toBeMarked(situation).stream()
                .flatMap(w ->
                        w.faceSide().stream().flatMap(s -> w.faceEdge().stream().map(e -> new Marked(w, s, e))))
                .filter(m -> m.side().on().adjoins(m.edge().on()))
                .toList();
    }

    /** The marked boards that lie in the job. */
    List<Marked> lying() {
        return marked().stream().filter(m -> m.piece().placing().isPresent()).toList();
    }

    /** The boards that lie in the job, marked or not. */
    Stream<Place.Lying> lies() {
        return Place.all(situation).stream().flatMap(p -> p.lying().stream());
    }

    /** @param others boards besides its own that it changes or rests on */
    Slipped made(Slip slip, String board, Rule rule, Rewriting rewritten, String... others) {
        Set<String> touches = Stream.concat(Stream.of(board), Stream.of(others)).collect(Collectors.toSet());
        return new Slipped(slip, board, touches, rule.id(), rewritten.attempt());
    }

    /** The attempt with the board's marks and trials moved from surface to surface. */
    Rewriting moved(Marked marked, UnaryOperator<Surface> to) {
        return new Rewriting(good).changing(a -> moved(a, marked, to));
    }

    static Action moved(Action action, Marked marked, UnaryOperator<Surface> to) {
        if (!Rewriting.on(marked.board()).test(action)) return action;
        if (action instanceof Action.FaceSide a) {
            return new Action.FaceSide(a.t(), a.board(), to.apply(a.on()), to.apply(a.towards()));
        }
        if (action instanceof Action.FaceEdge a) {
            return new Action.FaceEdge(a.t(), a.board(), to.apply(a.on()), to.apply(a.towards()));
        }
        if (action instanceof Action.Test a) {
            return new Action.Test(a.t(), a.board(), a.with(), to.apply(a.on()), a.at());
        }
        return action;
    }

    /** The attempt with this board worked for another placing, in the place of all that was done to these boards. */
    Rewriting worked(Placing placing, List<String> boards) {
        List<Predicate<Action>> all = new ArrayList<>();
        boards.forEach(b -> all.add(Rewriting.on(b)));
        return new Rewriting(good)
                .instead(a -> all.stream().anyMatch(p -> p.test(a)), BoardWork.on(placing, situation.scenario()));
    }
}
