package org.marktwice.quiz;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.bench.Marker;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Struck;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.timber.Board;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * A line squared on from each surface to the next with a square that is out: how far apart do its ends come? On true stock
 * at most 2·s·(width + thickness), with s the square's error per millimetre.
 */
final class WalkedRound implements Maker {
    /** What is drawn so many times over. */
    private static final int DRAWN = 6;

    private static final double TOLERANCE = 0.04;

    @Override
    public Kind kind() {
        return Kind.WALKED_ROUND;
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        Board board = Boards.of(chance, Boards.anySize(chance), 0.3).next();
        double width = board.size().width();
        double thick = board.size().thickness();
        double in100 = 0.1 * chance.whole(4, 9);
        double s = in100 / 100;
        double right = rounded(2 * s * (width + thick));
        boolean half = level == 3 && chance.with(0.5);
        double asked = half ? rounded(s * (width + thick)) : right;
        List<Offer> slips = List.of(
                figure(
                        half ? right : rounded(s * (width + thick)),
                        half
                                ? "That is for all four surfaces."
                                : "That is for one face and one edge; it goes over four surfaces."),
                figure(2 * s * width, "The edges add their share too."),
                figure(s * width, "That is for one face alone."),
                figure(0, "A line carried on so meets itself only where square and stock are true."));
        BoardPicture picture = BoardPicture.of(board).struck(walked(board, s));
        String surfaces = half ? "one face and one edge" : "all four surfaces, back to where it began";
        return new Question.Draft(
                Say.of(
                        "Board %s is true, %s mm wide and %s mm thick. A try-square is out by %s mm in 100, always the same way."
                                + " A line is squared on from each surface to the next, over %s; in the picture it is drawn %d times as"
                                + " far out.",
                        board.id(), Say.number(width), Say.number(thick), Say.number(in100), surfaces, DRAWN),
                half
                        ? "How far from square is it by then?"
                        : "How far apart do its beginning and its end come at most?",
                Answers.figure(
                        chance,
                        figure(asked, "Every surface that it goes over adds its share."),
                        TOLERANCE,
                        "mm",
                        slips),
                new Picture.Unrolled(picture),
                new Question.Reason(
                        Say.of(
                                "%s × (%s + %s) × %s ÷ 100 = %s mm. With the stock on the face edge for both faces and on the"
                                        + " face side for both edges, no line begins where another ended, and nothing adds up.",
                                half ? "1" : "2",
                                Say.number(width),
                                Say.number(thick),
                                Say.number(in100),
                                Say.number(asked)),
                        new Picture.Unrolled(
                                picture.evidence(new Evidence(List.of(), ends(board, s), List.of()), Ink.WRONG))));
    }

    private static double rounded(double mm) {
        return Math.round(mm * 100) / 100.0;
    }

    private static Offer figure(double mm, String because) {
        return Offer.figure(rounded(mm), "mm", because);
    }

    /** The line on its way round, begun on face 1 at edge 2 and going over edge 1, face 2 and edge 2. */
    private static List<Struck> walked(Board board, double s) {
        List<Struck> lines = new ArrayList<>();
        double x = board.size().length() / 2;
        for (Surface on : Surface.LONG) {
            double across = board.vExtent(on);
            double next = x + DRAWN * s * across;
            // seen unrolled, each surface begins where the one above it ended
            boolean down = on == Surface.FACE_1 || on == Surface.EDGE_1;
            lines.add(new Struck.Line(
                    lines.size() + 1,
                    new SurfacePoint(on, x, down ? across : 0),
                    new SurfacePoint(on, next, down ? 0 : across),
                    Marker.PENCIL));
            x = next;
        }
        return lines;
    }

    private static List<SurfacePoint> ends(Board board, double s) {
        List<Struck> lines = walked(board, s);
        return List.of(((Struck.Line) lines.get(0)).from(), ((Struck.Line) lines.get(3)).to());
    }
}
