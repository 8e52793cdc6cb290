package org.marktwice.rulebook;

import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Placing;
import org.marktwice.fit.JointFit;
import org.marktwice.fit.JointFit.SeatFit;
import org.marktwice.fit.JointFit.Share;
import org.marktwice.fit.TrueLine;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/** What findings about the dry fit have in common. */
final class FitFindings {
    private FitFindings() {}

    /** About a joint: laid to the part that is farther out, or else to the part that it is cut into. */
    static Found of(Rule rule, Situation situation, JointFit fit) {
        if (fit.in() == null || fit.takes() == null) {
            return Found.by(
                    rule, new Subject(null, fit.joint().in(), fit.joint().id()));
        }
        Share out = fartherOut(fit);
        boolean takes = out == fit.takes();
        String part = takes ? fit.joint().takes() : fit.joint().in();
        Found found = Found.by(rule, new Subject(out.board(), part, fit.joint().id()));
        situation.dryFit().setOut(part).stream()
                .flatMap(
                        o -> o.marked().stream().filter(m -> m.isFor(fit.joint().id())))
                .flatMap(m -> m.struck().stream())
                .forEach(l -> found.showing(l.on()).showing(SetBoard.middle(board(situation, out), l)));
        if (fit.seats().isEmpty()) return found;
        return found.showing(shown(situation, fit, part));
    }

    /** Whether a part has no board because the rack has none that will do; what it belongs to can't be tried then. */
    static boolean waits(Situation situation, String part) {
        boolean named = situation.scenario().drawing().part(part)
                .filter(situation.bench()::isNamed)
                .isPresent();
        return !named && Workpiece.missing(situation).stream().noneMatch(p -> p.id().equals(part));
    }

    static boolean waits(Situation situation, JointFit fit) {
        return waits(situation, fit.joint().in())
                || waits(situation, fit.joint().takes());
    }

    /** Whether any part of the job waits. */
    static boolean waits(Situation situation) {
        return situation.scenario().drawing().parts().stream().anyMatch(p -> waits(situation, p.id()));
    }

    private static Board board(Situation situation, Share share) {
        return situation.bench().board(share.board()).board();
    }

    /** The surface of a part on which a joint comes together. */
    private static Surface shown(Situation situation, JointFit fit, String part) {
        boolean in = part.equals(fit.joint().in());
        SeatFit seat = fit.gap().map(JointFit.Gap::at).orElse(fit.seats().get(0));
        boolean below = seat.seat().inBelow() == in;
        Placing placing = situation.dryFit().setOut(part).orElseThrow().placing();
        return placing.turn().looking(Direction.on(seat.seat().axis(), below ? +1 : -1));
    }

    /** Of a joint whose parts both have their board. */
    static Share fartherOut(JointFit fit) {
        Share in = Optional.ofNullable(fit.in()).orElseThrow();
        Share takes = Optional.ofNullable(fit.takes()).orElseThrow();
        if (in.misplaced() > 0 || takes.misplaced() > 0) return takes.misplaced() > in.misplaced() ? takes : in;
        return Math.abs(takes.off()) > Math.abs(in.off()) ? takes : in;
    }

    /** The last line struck for the joint; null where there is none. */
    static @Nullable Integer decidedBy(Situation situation, JointFit fit) {
        return Stream.of(fit.joint().in(), fit.joint().takes())
                .flatMap(part -> situation.dryFit().setOut(part).stream())
                .flatMap(out -> out.marked(fit.joint().id()).stream())
                .flatMap(m -> m.round().stream())
                .map(TrueLine::step)
                .max(Integer::compare)
                .orElse(null);
    }

    /** The last line struck for anything; null where there is none. */
    static @Nullable Integer lastLine(Situation situation) {
        return situation.setOut().stream()
                .map(SetBoard::lastLine)
                .max(Integer::compare)
                .filter(step -> step > 0)
                .orElse(null);
    }
}
