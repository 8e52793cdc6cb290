package org.marktwice.quiz;

import java.util.List;
import java.util.Optional;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.timber.Board;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;

/** A statement about very boards, true or false by what is computed for them. The false ones are what the known slips believe. */
final class TrueOrFalse implements Maker {
    @Override
    public Kind kind() {
        return Kind.TRUE_OR_FALSE;
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        int about = level == 1 ? chance.whole(0, 1) : level == 2 ? chance.whole(1, 3) : chance.whole(2, 4);
        return switch (about) {
            case 0 -> sides(chance);
            case 1 -> marks(chance);
            case 2 -> cups(chance);
            case 3 -> halving(chance);
            default -> faceOver(chance);
        };
    }

    private static Question.Draft draft(
            String given,
            String beside,
            String statement,
            boolean isTrue,
            String computed,
            Picture asked,
            Picture shows) {
        List<Offer> offers = List.of(Offer.words("True", computed), Offer.words("False", computed));
        return new Question.Draft(
                given,
                beside,
                Say.of("True or false? %s", statement),
                Answers.choose(offers, isTrue ? 0 : 1),
                asked,
                new Question.Reason((isTrue ? "True. " : "False. ") + computed, shows));
    }

    /** Which side hollows. */
    private static Question.Draft sides(Chance chance) {
        Size size = new Size(240, 5 * chance.whole(28, 36), chance.whole(18, 24));
        double dry = chance.whole(7, 9);
        Board board = Boards.seasoned(
                chance,
                size,
                chance.whole(12, 14),
                b -> cup(b, dry) > 0.25 && Seasoned.barkSide(b).isPresent());
        Surface face = chance.with(0.5) ? Surface.FACE_1 : Surface.FACE_2;
        double cup = Seasoned.of(board, dry).cup(face).orElseThrow();
        boolean isTrue = cup > 0;
        Surface bark = Seasoned.barkSide(board).orElseThrow();
        BoardPicture picture = BoardPicture.of(board);
        return draft(
                Say.of(
                        "Board %s, planed true at %s %% moisture: %s.",
                        board.id(), Say.number(board.facts().planedAt()), Say.pith(board)),
                Say.of(
                        "Board %s, planed true at %s %% moisture.",
                        board.id(), Say.number(board.facts().planedAt())),
                Say.of("Dried to %s %%, %s hollows.", Say.number(dry), face.spoken()),
                isTrue,
                Say.of(
                        "%s is the bark side, and that hollows: at %s %% it is %s deep in the middle, and %s is rounded. In the"
                                + " picture its shape is drawn ten times over.",
                        Say.capital(bark.spoken()),
                        Say.number(dry),
                        Say.mm(Math.abs(cup)),
                        bark.opposite().spoken()),
                Picture.SquareOn.whole(picture, Surface.END_1),
                Picture.Lying.showing(picture.evidence(Evidence.on(bark), Ink.SOUND), bark, Surface.EDGE_1)
                        .settled(dry, Hollow.DRAWN));
    }

    /** Whether two ways to mark a board bring the same end to the bottom. */
    private static Question.Draft marks(Chance chance) {
        Board board = Boards.of(chance, Boards.anySize(chance), 0.4).next();
        Boards.Pair one = Boards.anyPair(chance);
        Boards.Pair other = Boards.anyPair(chance);
        while (other.equals(one)) other = Boards.anyPair(chance);
        Surface first = bottom(one);
        Surface second = bottom(other);
        boolean isTrue = first == second;
        String computed = Say.of(
                "Marked on %s, %s is at the bottom; marked on %s, %s is. Changing one of the two marks to the opposite"
                        + " surface changes the hand; changing both does not.",
                told(one), first.spoken(), told(other), second.spoken());
        return draft(
                Say.of(
                        "Board %s is to stand with its face side to the left and its face edge to the front.",
                        board.id()),
                Say.of(
                        "Board %s is to stand with its face side to the left and its face edge to the front.",
                        board.id()),
                Say.of(
                        "Whether it is marked on %s or on %s, the same end comes to the bottom.",
                        told(one), told(other)),
                isTrue,
                computed,
                Picture.Beside.of(shown(board, one), shown(board, other)),
                Picture.Beside.of(
                        new Picture.Lying(BoardPicture.of(one.on(board), null), turn(one)),
                        new Picture.Lying(BoardPicture.of(other.on(board), null), turn(other))));
    }

    private static Picture shown(Board board, Boards.Pair pair) {
        return Picture.Lying.showing(
                BoardPicture.of(pair.on(board), null),
                pair.side().on(),
                pair.edge().on());
    }

    private static String told(Boards.Pair pair) {
        return pair.side().on().spoken() + " and " + pair.edge().on().spoken();
    }

    private static Turn turn(Boards.Pair pair) {
        return Turn.facing(pair.side().on(), Direction.LEFT, pair.edge().on(), Direction.FRONT)
                .orElseThrow();
    }

    private static Surface bottom(Boards.Pair pair) {
        return turn(pair).looking(Direction.BOTTOM);
    }

    /** Which of two boards cups more. */
    private static Question.Draft cups(Chance chance) {
        Size size = new Size(240, 5 * chance.whole(28, 36), chance.whole(18, 24));
        double wet = chance.whole(13, 15);
        double dry = chance.whole(7, 9);
        Board one = Boards.seasoned(chance, size, wet, b -> cup(b, dry) > 0.2);
        double first = cup(one, dry);
        Board other = Boards.seasoned(chance, size, wet, b -> {
            double apart = Math.abs(cup(b, dry) - first);
            return cup(b, dry) > 0.1 && apart > 0.15 && apart > 0.2 * first;
        });
        double second = cup(other, dry);
        boolean isTrue = first > second;
        return draft(
                Say.of(
                        "Two boards, of %s and of %s, %s mm wide and planed true at %s %%. On the first %s; on the second %s.",
                        species(one),
                        species(other),
                        Say.number(size.width()),
                        Say.number(wet),
                        Say.pith(one),
                        Say.pith(other)),
                Say.of(
                        "Two boards, of %s and of %s, %s mm wide and planed true at %s %%.",
                        species(one), species(other), Say.number(size.width()), Say.number(wet)),
                Say.of("Dried to %s %%, the first cups more than the second.", Say.number(dry)),
                isTrue,
                Say.of(
                        "The first cups by %s, the second by %s. The nearer to the heart a board is cut, with the arcs"
                                + " bending across its width, and the more its wood moves along the rings than across them, the more it cups."
                                + " In the picture their shape is drawn ten times over.",
                        Say.mm(first), Say.mm(second)),
                Picture.Beside.of(end(one), end(other)),
                Picture.Beside.of(cupped(one, dry), cupped(other, dry)));
    }

    private static String species(Board board) {
        return Say.of(
                "%s (%s %% along the rings, %s %% across them)",
                board.species().orElseThrow().name(),
                Say.number(board.species().orElseThrow().tangential()),
                Say.number(board.species().orElseThrow().radial()));
    }

    private static Picture end(Board board) {
        return Picture.SquareOn.whole(BoardPicture.of(board), Surface.END_1);
    }

    private static Picture cupped(Board board, double dry) {
        Surface up = Seasoned.barkSide(board).orElse(Surface.FACE_1);
        return Picture.Lying.showing(BoardPicture.of(board), up, Surface.EDGE_1).settled(dry, Hollow.DRAWN);
    }

    private static double cup(Board board, double dry) {
        return Math.abs(Seasoned.of(board, dry).cup(Surface.FACE_1).orElse(0));
    }

    /** Two halves gauged from the flush faces, or one of them from its back. */
    private static Question.Draft halving(Chance chance) {
        Drawing drawing = Jobs.frame(chance, Jobs.Corner.HALVED);
        Part stile = drawing.parts().get(0);
        double thick = stile.size().thickness();
        double off = Chance.tenth(chance.between(0.2, 0.6));
        double set = thick / 2 + off;
        boolean fromBack = chance.with(0.5);
        double step = fromBack ? 2 * set - thick : 0;
        boolean isTrue = !fromBack;
        Board board = Boards.of(chance, stile.size(), 0.3).next();
        BoardPicture cut = KnotFouls.laid(
                BoardPicture.of(board),
                PartOfDrawing.placed(drawing, stile, board, Boards.pair(Surface.FACE_1, Surface.EDGE_1))
                        .cuts(),
                null);
        String given = Say.of(
                "A halving of two pieces, each %s mm thick. The gauge is set to %s instead of %s mm. %s",
                Say.number(thick),
                Say.mm(set),
                Say.number(thick / 2),
                fromBack
                        ? "One piece is gauged from its face side, the other from its back."
                        : "Both pieces are gauged from the faces that are to come flush.");
        return draft(
                given,
                given,
                "The two faces come flush.",
                isTrue,
                fromBack
                        ? Say.of(
                                "They step by 2 × %s − %s = %s: gauged once from a back, an error of the setting counts twice.",
                                Say.number(set), Say.number(thick), Say.mm(step))
                        : "Both halves are left from the same face by the same setting, so whatever the one is too thick the"
                                + " other is cut too deep by.",
                new Picture.Job(drawing, stile.id()),
                new Picture.Unrolled(cut));
    }

    /** Whether turning face over clears a board. */
    private static Question.Draft faceOver(Chance chance) {
        Drawing drawing = Jobs.shelves(chance, 1);
        Part part = drawing.parts().get(chance.whole(0, 1));
        Boards boards = Boards.of(chance, part.size(), 0.5);
        for (int tries = 0; tries < 400; tries++) {
            Board board = boards.next();
            Turn turn = Turn.in(part, false).get(chance.whole(0, 3));
            Placing lies = new Placing(drawing, part, board, turn, Trim.ALL_OFF_END_2);
            if (WhichTurn.clear(lies).orElse(true)) continue;
            Placing over = WhichTurn.turned(lies, WhichTurn.faceOver(turn));
            Optional<Boolean> clears = WhichTurn.clear(over);
            if (clears.isPresent()) return faceOver(lies, over, clears.get());
        }
        throw new IllegalStateException("four hundred boards, and none fouls");
    }

    private static Question.Draft faceOver(Placing lies, Placing over, boolean isTrue) {
        Board board = lies.board();
        BoardPicture now = KnotFouls.laid(BoardPicture.of(board), lies.cuts(), null);
        List<String> knots = board.bodies().stream()
                .filter(b -> !b.isEmpty() && !b.traces().isEmpty())
                .map(b -> Say.of(
                        "%s (margin %s) on %s",
                        Say.knotName(b.knot().id()),
                        Say.mm(KnotFouls.margin(b.knot())),
                        Say.knot(b.knot().id(), b.traces())))
                .toList();
        String given = Say.of(
                "Board %s, %s, fouls its housing as it lies: to be cut out of it %s. Knots: %s.",
                board.id(), Say.size(board.size()), PartOfDrawing.cuts(lies.cuts(), board), String.join("; ", knots));
        return draft(
                given,
                Say.of(
                        "Board %s fouls its housing, which is hatched, as it lies: %s from end 1. %s",
                        board.id(), WhichTurn.along(lies.cuts()), WhichTurn.reach(board)),
                "Turned face over, the same end staying down, every knot keeps its margin.",
                isTrue,
                Say.of(
                        "Turned over, the housing is cut %s, and %s",
                        PartOfDrawing.cuts(over.cuts(), board),
                        isTrue
                                ? "every knot keeps its margin: on that side none comes so near."
                                : "a knot is still too near. One that goes through is no farther from it than before: only end"
                                        + " for end, or sliding it along, moves it away."),
                new Picture.Unrolled(WhichTurn.noted(now)),
                WhichTurn.tried(over, "Turned face over", isTrue));
    }
}
