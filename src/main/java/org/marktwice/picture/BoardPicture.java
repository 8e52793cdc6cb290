package org.marktwice.picture;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Placing;
import org.marktwice.rulebook.Finding;
import org.marktwice.rulebook.Verdict;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * Everything that is to be seen on one board. Painters draw this and nothing else.
 *
 * @param state the board with what was marked on it
 * @param written the part's name as it is written on the board; null where {@code state} carries no name
 * @param struck lines, gauge lines and waste shading, resolved to places on the board
 * @param cuts cuts laid on the board in its frame
 * @param offcuts what is trimmed off, ranges along x
 * @param evidence surfaces, points and knots picked out, in the ink {@code evidenceInk}
 * @param callouts notes that stand beside the board and point at places on it
 * @param pointed what is under the pointer; null for nothing
 * @param rule the steel rule as it lies on the board; null where it doesn't
 * @param ghost a mark not made yet, under the pointer; null for none
 */
public record BoardPicture(
        BoardState state,
        @Nullable String written,
        List<Struck> struck,
        List<LaidCut> cuts,
        List<Offcut> offcuts,
        Finding.Evidence evidence,
        Ink evidenceInk,
        List<Callout> callouts,
        @Nullable Pointed pointed,
        @Nullable LaidRule rule,
        @Nullable Mark ghost) {

    /** A cut in the board's frame, and whether it fouls a knot. */
    public record LaidCut(Cut cut, boolean foul) {}

    /** A range along the grain that is cut off, millimetres. */
    public record Offcut(double from, double to) {}

    /** A rule laid from its zero to the point read; the reading stands at its end. */
    public record LaidRule(SurfacePoint from, SurfacePoint to, String reading) {}

    /**
     * A note that points at a place.
     *
     * @param verdict whose sign and ink it carries; null for a plain note in the ink of action
     * @param text the note's line; {@code more} a quieter second line, or empty
     */
    public record Callout(SurfacePoint at, @Nullable Verdict verdict, String text, String more) {
        Ink ink() {
            return verdict == null ? Ink.ACTION : Ink.of(verdict);
        }
    }

    public BoardPicture {
        struck = List.copyOf(struck);
        cuts = List.copyOf(cuts);
        offcuts = List.copyOf(offcuts);
        callouts = List.copyOf(callouts);
    }

    /** The board as it is, unmarked. */
    public static BoardPicture of(Board board) {
        return of(BoardState.fresh(board), null);
    }

    /** @param written the part's name as it is to be written; null where the board carries none */
    public static BoardPicture of(BoardState state, @Nullable String written) {
        return new BoardPicture(
                state,
                written,
                List.of(),
                List.of(),
                List.of(),
                Finding.Evidence.NONE,
                Ink.ACTION,
                List.of(),
                null,
                null,
                null);
    }

    public Board board() {
        return state.board();
    }

    /** With what was struck on the board; see {@link Struck#on}. */
    public BoardPicture struck(List<Struck> more) {
        return new BoardPicture(
                state, written, more, cuts, offcuts, evidence, evidenceInk, callouts, pointed, rule, ghost);
    }

    public BoardPicture cuts(List<LaidCut> laid) {
        return new BoardPicture(
                state, written, struck, laid, offcuts, evidence, evidenceInk, callouts, pointed, rule, ghost);
    }

    public BoardPicture offcuts(List<Offcut> off) {
        return new BoardPicture(
                state, written, struck, cuts, off, evidence, evidenceInk, callouts, pointed, rule, ghost);
    }

    /** With what a placing trims off shaded; its cuts are laid on by {@link #cuts(List)}, where they may be seen. */
    public BoardPicture offcutsOf(Placing placing) {
        List<Offcut> off = new ArrayList<>();
        double length = board().size().length();
        double one = placing.off(Surface.END_1);
        double two = placing.off(Surface.END_2);
        if (one > 1e-6) off.add(new Offcut(0, one));
        if (two > 1e-6) off.add(new Offcut(length - two, length));
        return offcuts(off);
    }

    public BoardPicture evidence(Finding.Evidence shown, Ink ink) {
        return new BoardPicture(state, written, struck, cuts, offcuts, shown, ink, callouts, pointed, rule, ghost);
    }

    public BoardPicture callouts(List<Callout> notes) {
        return new BoardPicture(
                state, written, struck, cuts, offcuts, evidence, evidenceInk, notes, pointed, rule, ghost);
    }

    public BoardPicture pointed(@Nullable Pointed at) {
        return new BoardPicture(
                state, written, struck, cuts, offcuts, evidence, evidenceInk, callouts, at, rule, ghost);
    }

    public BoardPicture rule(@Nullable LaidRule laid) {
        return new BoardPicture(
                state, written, struck, cuts, offcuts, evidence, evidenceInk, callouts, pointed, laid, ghost);
    }

    /** With a mark not made yet; its step does not matter. */
    public BoardPicture ghost(@Nullable Mark mark) {
        return new BoardPicture(
                state, written, struck, cuts, offcuts, evidence, evidenceInk, callouts, pointed, rule, mark);
    }
}
