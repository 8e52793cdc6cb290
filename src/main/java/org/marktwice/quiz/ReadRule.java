package org.marktwice.quiz;

import java.util.List;
import org.marktwice.bench.Marker;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Struck;
import org.marktwice.timber.Board;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** A steel rule lies on a board: what does it read at the line? Slips: ten out, counted back from the figure, digits swapped. */
final class ReadRule implements Maker {
    /** So much of the board is seen, millimetres. */
    private static final double SEEN = 110;

    /** And so much to both sides of the rule's upper edge. */
    private static final double ASIDE = 24;

    @Override
    public Kind kind() {
        return Kind.READ_RULE;
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        Board board = Boards.of(chance, Boards.anySize(chance), 0.2).next();
        // never on a figure, and never half-way between two: counting back would come out the same
        int units = List.of(1, 2, 3, 4, 6, 7, 8, 9).get(chance.whole(0, 7));
        int tens = chance.whole(3, 13);
        double at = 10 * tens + units + (level == 1 ? 0 : 0.5 * chance.whole(0, 1));
        double tolerance = level == 1 ? 0.5 : 0.25;
        Surface end = level == 3 || level == 2 && chance.with(0.4) ? Surface.END_2 : Surface.END_1;
        Surface face = chance.with(0.5) ? Surface.FACE_1 : Surface.FACE_2;
        double back = 20 * tens + 10 - at;
        List<Offer> slips = List.of(
                Offer.figure(at - 10, "mm", "Ten out: the figure to count on from is the one before the mark."),
                Offer.figure(at + 10, "mm", "Ten out: that figure is not reached yet."),
                Offer.figure(
                        back, "mm", "Counted back from the wrong figure: the rule runs up from the end it is laid on."),
                Offer.figure(swapped(tens, units) + at % 1, "mm", "The digits are swapped."));
        Answers answers = Answers.figure(
                chance, Offer.figure(at, "mm", "From the end along the rule to the line."), tolerance, "mm", slips);
        double length = board.size().length();
        double x = end == Surface.END_1 ? at : length - at;
        double zero = end == Surface.END_1 ? 0 : length;
        double v = board.size().width() / 2;
        BoardPicture lined = BoardPicture.of(board)
                .struck(List.of(new Struck.Line(
                        1,
                        new SurfacePoint(face, x, 0),
                        new SurfacePoint(face, x, board.size().width()),
                        Marker.KNIFE)));
        BoardPicture asked = lined.rule(laid(face, zero, x, v, "?"));
        BoardPicture told = lined.rule(laid(face, zero, x, v, Say.number(at)));
        double from = Math.max(0, at - 75);
        // so near that single millimetres can be told apart
        double low = end == Surface.END_1 ? from : length - from - SEEN;
        String why = Say.of(
                "The rule's zero is at %s. The line stands %s past the %d: %s mm.",
                end.spoken(), Say.mm(at - 10 * tens), 10 * tens, Say.number(at));
        return new Question.Draft(
                Say.of(
                        "A steel rule lies on %s with its zero at %s; its strokes about the line are:\n%s",
                        face.spoken(), end.spoken(), strokes(at, tens)),
                Say.of("A steel rule lies on %s with its zero at %s.", face.spoken(), end.spoken()),
                "What does the rule read at the knife line?",
                answers,
                Picture.SquareOn.part(asked, face, low, low + SEEN, ASIDE),
                new Question.Reason(why, Picture.SquareOn.part(told, face, low, low + SEEN, ASIDE)));
    }

    private static BoardPicture.LaidRule laid(Surface face, double zero, double x, double v, String reading) {
        return new BoardPicture.LaidRule(new SurfacePoint(face, zero, v), new SurfacePoint(face, x, v), reading);
    }

    /** Tens and units the other way round; the hundreds stay. */
    private static int swapped(int tens, int units) {
        return tens / 10 * 100 + units * 10 + tens % 10;
    }

    /** The rule in letters, two to a millimetre: a bar at every ten, a colon at every five, a stop at every other one. */
    private static String strokes(double at, int tens) {
        StringBuilder figures = new StringBuilder();
        StringBuilder strokes = new StringBuilder();
        int from = 10 * (tens - 1);
        for (int half = 0; half <= 60; half++) {
            int mm = from + half / 2;
            boolean whole = half % 2 == 0;
            strokes.append(!whole ? ' ' : mm % 10 == 0 ? '|' : mm % 5 == 0 ? ':' : '.');
            if (whole && mm % 10 == 0) {
                while (figures.length() < half) figures.append(' ');
                figures.append(mm);
            }
        }
        String pointer = " ".repeat((int) Math.round(2 * (at - from))) + "^";
        return "    " + figures + "\n    " + strokes + "\n    " + pointer;
    }
}
