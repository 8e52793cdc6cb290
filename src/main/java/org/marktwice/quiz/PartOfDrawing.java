package org.marktwice.quiz;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.picture.BoardPicture;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Surface;

/** A board with its marks and its cuts: which part of the drawing is it? Slip: the left for the right, or a part of like size. */
final class PartOfDrawing implements Maker {
    @Override
    public Kind kind() {
        return Kind.PART_OF_DRAWING;
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        Drawing drawing = level == 1 || chance.with(0.4)
                ? Jobs.shelves(chance, level == 1 ? 1 : chance.whole(1, 2))
                : Jobs.frame(chance, chance.with(0.5) ? Jobs.Corner.HALVED : Jobs.Corner.BRIDLED);
        List<Part> parts = drawing.parts().stream()
                .filter(p -> isUnlike(drawing, p))
                .filter(p -> level < 3 || p.id().contains("left") || p.id().contains("right"))
                .toList();
        Part part = parts.get(chance.whole(0, parts.size() - 1));
        Board board = Boards.of(chance, part.size(), 0.3).next();
        Boards.Pair pair = level == 1 ? Boards.pair(Surface.FACE_1, Surface.EDGE_1) : Boards.anyPair(chance);
        Placing placing = placed(drawing, part, board, pair);
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.part(part.id(), part.name(), "Its size, its marks and its cuts all agree."));
        for (Part other : drawing.parts()) {
            if (!other.equals(part)) offers.add(Offer.part(other.id(), other.name(), unlike(part, other)));
        }
        BoardPicture picture = KnotFouls.laid(BoardPicture.of(pair.on(board), null), placing.cuts(), null);
        return new Question.Draft(
                Say.of(
                        "The job: %s. Board %s, %s: face side on %s, face edge on %s; to be cut out of it: %s.",
                        told(drawing),
                        board.id(),
                        Say.size(board.size()),
                        pair.side().on().spoken(),
                        pair.edge().on().spoken(),
                        cuts(placing.cuts(), board)),
                Say.of(
                        "The job, and board %s, %s, with its marks. What is to be cut out of it is hatched.",
                        board.id(), Say.size(board.size())),
                "Which part of the drawing is this board?",
                Answers.point(offers),
                Picture.Beside.of(new Picture.Job(drawing, null), new Picture.Unrolled(picture)),
                new Question.Reason(
                        why(part),
                        Picture.Beside.of(
                                new Picture.Lying(picture, placing.turn()), new Picture.Job(drawing, part.id()))));
    }

    private static String why(Part part) {
        return Say.of(
                "Turned so that its face side looks %s and its face edge %s, the board is the %s: its cuts lie where the"
                        + " drawing has them, and in no other part would they.",
                EndDown.looks(part.faceSide().get(0)),
                EndDown.looks(part.faceEdge().get(0)),
                part.name().substring(0, 1).toLowerCase(java.util.Locale.ROOT)
                        + part.name().substring(1));
    }

    private static String unlike(Part part, Part other) {
        if (other.size().equals(part.size())) {
            return "It has the same size, but with the marks as drawn its cuts lie as in a mirror.";
        }
        return Say.of("That part is %s.", Say.size(other.size()));
    }

    /** The board laid in the part so that its marks look as drawn. */
    static Placing placed(Drawing drawing, Part part, Board board, Boards.Pair pair) {
        Turn turn = Turn.facing(
                        pair.side().on(),
                        part.faceSide().get(0),
                        pair.edge().on(),
                        part.faceEdge().get(0))
                .orElseThrow();
        return new Placing(drawing, part, board, turn, Trim.ALL_OFF_END_2);
    }

    /** Whether no other part has this part's size, and the same cuts where a board that is marked alike bears them. */
    static boolean isUnlike(Drawing drawing, Part part) {
        String own = signature(drawing, part);
        return drawing.parts().stream()
                .noneMatch(p -> !p.equals(part) && signature(drawing, p).equals(own));
    }

    /** Size and cuts as a board has them whose face side is face 1 and whose face edge is edge 1. */
    private static String signature(Drawing drawing, Part part) {
        Turn turn = Turn.facing(
                        Surface.FACE_1,
                        part.faceSide().get(0),
                        Surface.EDGE_1,
                        part.faceEdge().get(0))
                .orElseThrow();
        Set<String> boxes = new TreeSet<>();
        for (Cut cut : drawing.cuts(part)) {
            for (Box box : cut.boxes())
                boxes.add(along(turn, part, box, 0) + along(turn, part, box, 1) + along(turn, part, box, 2));
        }
        return part.size() + " " + boxes;
    }

    /** Where a cut lies along a board axis, from the board's own zero, in tenths of a millimetre. */
    private static String along(Turn turn, Part part, Box box, int axis) {
        int job = turn.along(axis).axis();
        Box whole = part.box();
        boolean same = turn.along(axis).sign() > 0;
        double from = same ? box.min(job) - whole.min(job) : whole.max(job) - box.max(job);
        return Math.round(10 * from) + "+" + Math.round(10 * box.extent(job)) + " ";
    }

    private static String told(Drawing drawing) {
        return drawing.parts().stream()
                .map(p -> Say.of(
                        "%s %s, its length %s, face side %s, face edge %s%s",
                        p.name(),
                        Say.size(p.size()),
                        p.length().id(),
                        EndDown.looks(p.faceSide().get(0)),
                        EndDown.looks(p.faceEdge().get(0)),
                        places(drawing, p)))
                .collect(Collectors.joining("; "));
    }

    /** Where along a part it is cut, from its bottom or its left end. */
    private static String places(Drawing drawing, Part part) {
        int axis = part.length().ordinal();
        String from = axis == 2 ? "bottom" : "left";
        List<String> places = drawing.cuts(part).stream()
                .flatMap(c -> c.boxes().stream())
                .map(b -> Say.of(
                        "%s to %s",
                        Say.number(b.min(axis) - part.box().min(axis)),
                        Say.number(b.max(axis) - part.box().min(axis))))
                .distinct()
                .toList();
        return places.isEmpty() ? "" : Say.of(", cut %s mm from its %s", Say.and(places), from);
    }

    /** The cuts in words, in the board's frame. */
    static String cuts(Collection<Cut> cuts, Board board) {
        if (cuts.isEmpty()) return "nothing";
        return Say.and(cuts.stream()
                .flatMap(c -> c.boxes().stream())
                .map(b -> Say.of(
                        "%s to %s mm from end 1, %s", Say.number(b.min(0)), Say.number(b.max(0)), depth(b, board)))
                .toList());
    }

    private static String depth(Box box, Board board) {
        double thickness = board.size().thickness();
        if (box.max(2) >= thickness - 0.01) return Say.mm(box.extent(2)) + " deep from face 1";
        if (box.min(2) <= 0.01) return Say.mm(box.extent(2)) + " deep from face 2";
        return "in the middle of the thickness";
    }
}
