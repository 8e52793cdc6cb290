package org.marktwice.quiz;

import java.util.List;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.timber.Board;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;

/** A board planed true changes its moisture: which face hollows, and by how much? Slips: the other side, half the straight-edge. */
final class Hollow implements Maker {
    /** Nothing shallower is asked about, millimetres. */
    private static final double DEEP_ENOUGH = 0.5;

    /** Nothing shallower is told, millimetres. */
    private static final double LEAST = 0.1;

    /** So much deeper it is over the whole width than over half of it, millimetres. */
    private static final double APART = 0.25;

    /** What is drawn so many times over. */
    static final int DRAWN = 10;

    @Override
    public Kind kind() {
        return Kind.HOLLOW;
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        boolean dries = level < 3 || chance.with(0.5);
        double least = chance.whole(7, 9);
        double most = least + chance.whole(6, 9);
        Size size = new Size(250, 5 * chance.whole(26, 36), chance.whole(18, 24));
        double from = dries ? most : least;
        double to = dries ? least : most;
        Board planed = Boards.seasoned(chance, size, from, b -> cups(b, to));
        Seasoned then = Seasoned.of(planed, to);
        Surface bark = Seasoned.barkSide(planed).orElseThrow();
        Surface right = dries ? bark : bark.opposite();
        double whole = depth(then, right, size.width());
        double half = depth(then, right, size.width() / 2);
        String side = dries ? "bark side" : "heart side";
        String turned = Say.of(
                "It is the %s that hollows when a board %s.",
                dries ? "bark side" : "heart side", dries ? "dries" : "takes up moisture");
        List<Offer> offers = List.of(
                Offer.words(told(right, whole), Say.of("Computed for this board: the %s, over its whole width.", side)),
                Offer.words(told(right.opposite(), whole), turned),
                Offer.words(
                        told(right, half), "So deep it is over half the width; over the whole width it is far deeper."),
                Offer.words(
                        "It stays flat",
                        "It shrinks and swells more along the rings than across them, so a flat-sawn board can't stay flat."));
        BoardPicture picture = BoardPicture.of(planed);
        String why = Say.of(
                "Wood moves more along the rings than across them. %s the rings %s, so the %s, %s, hollows: by %s under a"
                        + " straight-edge across its %s mm. In the picture its shape is drawn %d times over.",
                dries ? "Drying," : "Taking up moisture,",
                dries ? "straighten" : "bend more",
                side,
                right.spoken(),
                Say.mm(whole),
                Say.number(size.width()),
                DRAWN);
        String given = given(planed, from, to, half);
        return new Question.Draft(
                Say.of("%s On its end grain %s.", given, Say.pith(planed)),
                given,
                "Which way does it hollow, and how deep under a straight-edge across the whole face?",
                Answers.choose(chance, offers),
                Picture.SquareOn.whole(picture, Surface.END_1),
                new Question.Reason(
                        why,
                        Picture.Lying.showing(picture.evidence(Evidence.on(right), Ink.SOUND), right, Surface.EDGE_1)
                                .settled(to, DRAWN)));
    }

    /** @param half how deep it is over the half of its width that is nearer to edge 1 */
    private static String given(Board planed, double from, double to, double half) {
        return Say.of(
                "Board %s, %s, %s mm wide and %s mm thick, was planed true at %s %% moisture. It %s to %s %%. A straight-edge over"
                        + " half its width, from edge 1, then shows a hollow of %s on one of its faces.",
                planed.id(),
                planed.species().orElseThrow().name(),
                Say.number(planed.size().width()),
                Say.number(planed.size().thickness()),
                Say.number(from),
                to < from ? "dries" : "takes up moisture",
                Say.number(to),
                Say.mm(half));
    }

    private static String told(Surface face, double mm) {
        return Say.of("%s hollows, by %s", Say.capital(face.spoken()), Say.mm(mm));
    }

    private static double depth(Seasoned board, Surface face, double over) {
        return board.cup(face, 0, over).orElseThrow();
    }

    private static boolean cups(Board planed, double to) {
        if (Seasoned.barkSide(planed).isEmpty()) return false;
        Seasoned then = Seasoned.of(planed, to);
        double whole = then.cup(Surface.FACE_1).orElse(0);
        double half = then.cup(Surface.FACE_1, 0, planed.size().width() / 2).orElse(0);
        return half * whole > 0
                && Math.abs(half) >= LEAST
                && Math.abs(whole) >= Math.max(DEEP_ENOUGH, Math.abs(half) + APART);
    }
}
