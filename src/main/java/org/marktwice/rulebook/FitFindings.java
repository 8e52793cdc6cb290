package org.marktwice.rulebook;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Placing;
import org.marktwice.fit.JointFit;
import org.marktwice.fit.JointFit.SeatFit;
import org.marktwice.fit.JointFit.Share;
import org.marktwice.fit.SetOut;
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
        Board board = board(situation, out);
        for (SetOut.Marked m : marked(situation, part, fit)) {
            TrueLine l = m.line();
            if (l != null) found.showing(l.on()).showing(SetBoard.middle(board, l));
        }
        if (fit.seats().isEmpty()) return found;
        return found.showing(shown(situation, fit, part));
    }

    /** Whether a part has no board because the rack has none that will do; what it belongs to can't be tried then. */
    static boolean waits(Situation situation, String part) {
        return situation.waiting().contains(part);
    }

    static boolean waits(Situation situation, JointFit fit) {
        return waits(situation, fit.joint().in())
                || waits(situation, fit.joint().takes());
    }

    /** Whether any part of the job waits. */
    static boolean waits(Situation situation) {
        return !situation.waiting().isEmpty();
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
        int last = 0;
        for (String part : List.of(fit.joint().in(), fit.joint().takes())) {
            for (SetOut.Marked m : marked(situation, part, fit)) last = Math.max(last, SetBoard.latest(m.round()));
        }
        return last == 0 ? null : (Integer) last;
    }

    /** The sides of a joint's cut on the board of one of its parts. */
    private static List<SetOut.Marked> marked(Situation situation, String part, JointFit fit) {
        return situation
                .dryFit()
                .setOut(part)
                .map(out -> out.marked(fit.joint().id()))
                .orElse(List.of());
    }

    /** The last line struck for anything; null where there is none. */
    static @Nullable Integer lastLine(Situation situation) {
        int last = 0;
        for (SetBoard board : situation.setOut()) last = Math.max(last, board.lastLine());
        return last == 0 ? null : (Integer) last;
    }
}
