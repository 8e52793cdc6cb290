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
                        told(right, half),
                        "That is under a straight-edge half as long as the board is wide; over the whole width it is far more."),
                Offer.words(
                        "It stays flat",
                        "It shrinks and swells more along the rings than across them, so a flat-sawn board can't stay flat."));
        BoardPicture picture = BoardPicture.of(planed);
        String why = Say.of(
                "Wood moves more along the rings than across them. %s the rings %s, so the %s, %s, hollows: by %s under a"
                        + " straight-edge across its %s mm.",
                dries ? "Drying," : "Taking up moisture,",
                dries ? "straighten" : "bend more",
                side,
                right.spoken(),
                Say.mm(whole),
                Say.number(size.width()));
        return new Question.Draft(
                Say.of(
                        "Board %s, %s, %s mm wide and %s mm thick, was planed true at %s %% moisture: %s. It %s to %s %%.",
                        planed.id(),
                        planed.species().orElseThrow().name(),
                        Say.number(size.width()),
                        Say.number(size.thickness()),
                        Say.number(from),
                        Say.pith(planed),
                        dries ? "dries" : "takes up moisture",
                        Say.number(to)),
                Say.of(
                        "Board %s, %s, %s mm wide and %s mm thick, was planed true at %s %% moisture. It %s to %s %%.",
                        planed.id(),
                        planed.species().orElseThrow().name(),
                        Say.number(size.width()),
                        Say.number(size.thickness()),
                        Say.number(from),
                        dries ? "dries" : "takes up moisture",
                        Say.number(to)),
                "Which way does it hollow, and how deep under a straight-edge across the whole face?",
                Answers.choose(chance, offers),
                Picture.SquareOn.whole(picture, Surface.END_1),
                new Question.Reason(
                        why,
                        Picture.Lying.showing(picture.evidence(Evidence.on(right), Ink.SOUND), right, Surface.EDGE_1)));
    }

    private static String told(Surface face, double mm) {
        return Say.of("%s hollows, by %s", Say.capital(face.spoken()), Say.mm(mm));
    }

    private static double depth(Seasoned board, Surface face, double over) {
        return board.cup(face, 0, over).orElseThrow();
    }

    private static boolean cups(Board planed, double to) {
        return Seasoned.barkSide(planed).isPresent()
                && Math.abs(Seasoned.of(planed, to).cup(Surface.FACE_1).orElse(0)) >= DEEP_ENOUGH;
    }
}
