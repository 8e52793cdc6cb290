package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.marktwice.advice.Option;
import org.marktwice.advice.Options;
import org.marktwice.bench.Action;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Practice.HeartSide;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Surface;

/** Slips in how a board is turned. */
final class TurnSlips {
    private TurnSlips() {}

    /** Heart and bark side taken for each other: the best turn with the heart the wrong way. */
    static List<Slipped> heartSide(Slipping s) {
        HeartSide set = s.situation().practice().heartSide();
        List<Slipped> all = new ArrayList<>();
        if (set == HeartSide.ANY) return all;
        s.lies().forEach(lying -> {
            Placing lies = lying.placing();
            Optional<Surface> bark = Seasoned.barkSide(lies.board());
            if (bark.isEmpty()) return;
            Direction looks = lies.turn().of(bark.get());
            if (HeartSideAsSet.wanted(s.situation(), lies.part(), set, looks.axis())
                    .isEmpty()) return;
            turns(lies).stream()
                    .filter(t -> t.of(bark.get()) == looks.opposite())
                    .map(t -> Options.best(s.situation().scenario(), lies.board(), lies.part(), t))
                    .reduce((a, b) -> b.betterThan(a) ? b : a)
                    .map(o -> worked(s, Slip.HEART_SIDE_CONFUSED, o.placing(), new HeartSideAsSet()))
                    .ifPresent(all::add);
        });
        return all;
    }

    private static Slipped worked(Slipping s, Slip slip, Placing placing, Rule rule) {
        String board = placing.board().id();
        return s.made(slip, board, rule, s.worked(placing, List.of(board)));
    }

    /** The turns that the drawing and the planing allow; all of them where these leave but one. */
    private static List<Turn> turns(Placing lies) {
        List<Turn> allowed = Options.turns(lies.board(), lies.part());
        return allowed.size() > 1 ? allowed : all(lies);
    }

    private static List<Turn> all(Placing lies) {
        boolean square = lies.board().isSquare() && lies.part().size().isSquare(Board.SIZE_TOLERANCE);
        return Turn.in(lies.part(), square);
    }

    /**
     * A knot that goes through judged on the face on which the joint doesn't show: it looks clear there, and is not. One
     * for each turn in which that can happen, with the trim that comes nearest to what was right.
     */
    static List<Slipped> oneSurface(Slipping s) {
        List<Slipped> all = new ArrayList<>();
        s.lies().forEach(lying -> {
            Placing lies = lying.placing();
            for (Turn turn : turns(lies)) {
                trims(lies, turn)
                        .filter(p -> s.situation().near(p).stream().anyMatch(n -> looksClearOnOneFace(p, n)))
                        .findFirst()
                        .ifPresent(p -> all.add(worked(s, Slip.KNOT_SEEN_ON_ONE_SURFACE, p, new KnotClearOfJoint())));
            }
        });
        return all;
    }

    /** The placings with this turn, trimmed in whole millimetres, those nearest to the trim as it is first. */
    private static Stream<Placing> trims(Placing lies, Turn turn) {
        double now = lies.off(Surface.END_1);
        int surplus = (int) Math.floor(Math.max(0, lies.surplus()));
        return Stream.iterate(0, i -> i + 1)
                .limit(surplus + 1L)
                .sorted(Comparator.comparingDouble(off -> Math.abs(off - now)))
                .map(off -> new Placing(lies.drawing(), lies.part(), lies.board(), turn, new Trim(Surface.END_1, off)));
    }

    private static boolean looksClearOnOneFace(Placing lies, Nearness near) {
        if (near.clearance() >= near.margin() / 2) return false;
        List<Surface> comesOut = Shows.surfaces(lies.board(), near.knot().id());
        return comesOut.stream()
                .filter(on -> comesOut.contains(on.opposite()))
                .anyMatch(on -> near.cut().boxes().stream().noneMatch(box -> shows(lies.board(), box, on)));
    }

    private static boolean shows(Board board, Box cut, Surface on) {
        return on.sign() > 0
                ? cut.max(on.axis()) >= board.size().along(on.axis()) - Board.SIZE_TOLERANCE
                : cut.min(on.axis()) <= Board.SIZE_TOLERANCE;
    }

    /** The distances near the limit not measured. */
    static List<Slipped> unchecked(Slipping s) {
        return s.lies()
                .map(Place.Lying::board)
                .distinct()
                .filter(board -> s.good().actions().stream().anyMatch(a -> isMeasure(a, board)))
                .map(board -> s.made(
                        Slip.HANDED_IN_UNCHECKED,
                        board,
                        checks(s, board) ? new CheckedBeforeHandIn() : new MeasuredWhenNear(),
                        new Rewriting(s.good()).without(a -> isMeasure(a, board))))
                .toList();
    }

    /** Whether what was measured on the board checked its lines. */
    private static boolean checks(Slipping s, String board) {
        return s.situation().asks(Stage.SETTING_OUT)
                && SetBoard.all(s.situation()).stream().anyMatch(b -> b.id().equals(board) && b.lastLine() > 0);
    }

    private static boolean isMeasure(Action action, String board) {
        return action instanceof Action.Measure m && m.board().equals(board);
    }

    /** Not clear as it lay at first, turned over to no avail, where turning it end for end would have cleared it. */
    static List<Slipped> turnedOver(Slipping s) {
        List<Slipped> all = new ArrayList<>();
        s.lies().forEach(lying -> {
            Placing lies = lying.placing();
            if (!s.situation().judged(lies).clear()) return;
            for (Turn over : turns(lies)) {
                Option is = best(s, lies, over);
                Option before = best(s, lies, faceOver(over));
                if (is.clear()
                        || before.clear()
                        || !best(s, lies, endForEnd(over)).clear()) continue;
                all.add(turnedOver(s, before.placing(), is.placing()));
            }
        });
        return all;
    }

    private static Option best(Slipping s, Placing lies, Turn turn) {
        return s.situation().best(lies.board(), lies.part(), turn);
    }

    private static Slipped turnedOver(Slipping s, Placing before, Placing over) {
        String board = over.board().id();
        Part part = over.part();
        BoardWork.Step first =
                t -> new Action.Turning(t, board, before.turn().named(), before.surplus() > 0 ? before.trim() : null);
        Rewriting worked = s.worked(over, List.of(board))
                .after(
                        a -> a instanceof Action.Name n
                                && n.board().equals(board)
                                && n.part().equals(part.id()),
                        List.of(first));
        return s.made(Slip.TURNED_OVER_FOR_END_FOR_END, board, new BestTurn(), worked);
    }

    private static Turn faceOver(Turn turn) {
        return new Turn(turn.x(), turn.y().opposite(), turn.z().opposite());
    }

    private static Turn endForEnd(Turn turn) {
        return new Turn(turn.x().opposite(), turn.y().opposite(), turn.z());
    }
}
