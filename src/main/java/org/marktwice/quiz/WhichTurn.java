package org.marktwice.quiz;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.rulebook.Verdict;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Knot;
import org.marktwice.timber.KnotBody;
import org.marktwice.timber.KnotReach;

/** A knot is too near a joint: which turn clears the board? Slips: face over where only end for end helps; refusing it. */
final class WhichTurn implements Maker {
    @Override
    public Kind kind() {
        return Kind.WHICH_TURN;
    }

    /**
     * A board whose knots foul the housing as it lies.
     *
     * @param endForEnd whether all its knots keep their margins once it is turned end for end
     * @param faceOver whether they do once it is turned face over, the same end staying down
     */
    record Case(Placing placing, boolean endForEnd, boolean faceOver) {}

    @Override
    public Question.Draft make(int level, Chance chance) {
        Drawing drawing = Jobs.shelves(chance, level == 1 ? 1 : chance.whole(1, 2));
        Part part = drawing.parts().get(chance.whole(0, 1));
        Case found = find(drawing, part, chance.whole(0, 3), chance);
        String truth = truth(found);
        int right = (found.endForEnd() ? 0 : 2) + (found.endForEnd() == found.faceOver() ? 0 : 1);
        List<Offer> offers = List.of(
                Offer.words("Either: end for end, or face over", truth),
                Offer.words("Only end for end", truth),
                Offer.words("Neither: it needs another remedy, or another board", truth),
                Offer.words("Only face over", truth));
        List<Cut> cuts = found.placing().cuts();
        BoardPicture picture = KnotFouls.laid(BoardPicture.of(found.placing().board()), cuts, null);
        return new Question.Draft(
                given(found.placing()),
                Say.of(
                        "Board %s, meant for the %s, fouls as it lies. What is to be cut out of it is hatched: %s from end 1. %s",
                        found.placing().board().id(),
                        part.name().toLowerCase(java.util.Locale.ROOT),
                        along(cuts),
                        reach(found.placing().board())),
                "Which single turn makes every knot keep its margin from the cuts: end for end about the board's"
                        + " thickness, or face over about its length?",
                Answers.choose(offers, right),
                new Picture.Unrolled(noted(picture)),
                reason(found, truth));
    }

    private static String truth(Case found) {
        if (found.endForEnd() && found.faceOver()) return "Either of the two clears it.";
        if (found.endForEnd()) return "End for end clears it; face over does not.";
        return found.faceOver() ? "Face over clears it; end for end does not." : "Neither of the two clears it.";
    }

    /** Where along the board it is cut. */
    static String along(List<Cut> cuts) {
        return Say.and(cuts.stream()
                        .flatMap(c -> c.boxes().stream())
                        .sorted(Comparator.comparingDouble(b -> b.min(0)))
                        .map(b -> Say.of("%s to %s", Say.number(b.min(0)), Say.number(b.max(0))))
                        .toList())
                + " mm";
    }

    /** With its name at each knot. */
    static BoardPicture noted(BoardPicture picture) {
        return picture.callouts(shown(picture.board()).stream()
                .map(k -> new BoardPicture.Callout(
                        k.traces().get(0).middle(), null, Say.knotName(k.knot().id()), ""))
                .toList());
    }

    /** How far along the board each knot reaches, over all its surfaces, and what it has to keep. */
    static String reach(Board board) {
        List<String> all = new ArrayList<>();
        for (KnotBody body : shown(board)) {
            List<Double> along = body.traces().stream()
                    .flatMap(t -> t.outline().stream())
                    .map(p -> p.in(board.size()).x())
                    .toList();
            all.add(Say.of(
                    "%s reaches from %d to %d mm and has to keep %s",
                    Say.knotName(body.knot().id()),
                    Math.round(Collections.min(along)),
                    Math.round(Collections.max(along)),
                    Say.mm(KnotFouls.margin(body.knot()))));
        }
        return Say.capital(String.join("; ", all)) + ".";
    }

    private static List<KnotBody> shown(Board board) {
        return board.bodies().stream()
                .filter(b -> !b.isEmpty() && !b.traces().isEmpty())
                .toList();
    }

    private static String given(Placing placing) {
        Board board = placing.board();
        List<String> knots = shown(board).stream()
                .map(b -> Say.of(
                        "%s (margin %s) comes out on %s",
                        Say.knotName(b.knot().id()),
                        Say.mm(KnotFouls.margin(b.knot())),
                        Say.knot(b.knot().id(), b.traces())))
                .toList();
        return Say.of(
                "Board %s, %s, is meant for the %s, and fouls as it lies: %s. To be cut out of it: %s. %s.",
                board.id(),
                Say.size(board.size()),
                placing.part().name().toLowerCase(java.util.Locale.ROOT),
                KnotFouls.facing(placing.turn()),
                PartOfDrawing.cuts(placing.cuts(), board),
                Say.capital(String.join("; ", knots)));
    }

    private static Question.Reason reason(Case found, String truth) {
        Placing lies = found.placing();
        String why = truth
                + " Turned face over, a knot that goes through stays as far from the ends as it was; turned end for end, it"
                + " goes to the other end. Measure both before deciding.";
        return new Question.Reason(
                why,
                Picture.Beside.of(
                        tried(turned(lies, endForEnd(lies.turn())), "Turned end for end", found.endForEnd()),
                        tried(turned(lies, faceOver(lies.turn())), "Turned face over", found.faceOver())));
    }

    /** A board with the cuts where a turn brings them, and whether it is clear so. */
    static Picture tried(Placing placing, String turned, boolean clears) {
        List<String> knots = placing.board().bodies().stream()
                .filter(b -> !b.isEmpty())
                .map(b -> b.knot().id())
                .toList();
        Picture.Unrolled.Caption caption = new Picture.Unrolled.Caption(
                clears ? Verdict.SOUND : Verdict.WRONG, turned + (clears ? ": clear" : ": too near"));
        BoardPicture shows = BoardPicture.of(placing.board())
                .evidence(new Evidence(List.of(), List.of(), knots), clears ? Ink.SOUND : Ink.WRONG);
        return new Picture.Unrolled(KnotFouls.laid(shows, placing.cuts(), null), caption);
    }

    static Placing turned(Placing placing, Turn turn) {
        return new Placing(placing.drawing(), placing.part(), placing.board(), turn, placing.trim());
    }

    /** About the thickness: both ends and both edges change places, the faces look where they did. */
    static Turn endForEnd(Turn turn) {
        return new Turn(turn.x().opposite(), turn.y().opposite(), turn.z());
    }

    /** About the length: both faces and both edges change places, the ends look where they did. */
    static Turn faceOver(Turn turn) {
        return new Turn(turn.x(), turn.y().opposite(), turn.z().opposite());
    }

    /** Whether every knot keeps its margin; empty where it is nearer to it than {@link KnotFouls#GUARD}, either way. */
    static Optional<Boolean> clear(Placing placing) {
        return new Knots(placing.board()).clear(placing);
    }

    /** A board's knots, looked at once for all turns. */
    private static final class Knots {
        private final List<KnotReach> reaches = new ArrayList<>();
        private final List<Double> margins = new ArrayList<>();

        Knots(Board board) {
            for (Knot knot : board.knots()) {
                reaches.add(KnotFouls.reach(knot, board));
                margins.add(KnotFouls.margin(knot));
            }
        }

        Optional<Boolean> clear(Placing placing) {
            boolean sure = true;
            List<Cut> cuts = placing.cuts();
            for (int i = 0; i < reaches.size(); i++) {
                KnotReach reach = reaches.get(i);
                double margin = margins.get(i);
                for (Cut cut : cuts) {
                    for (Box box : cut.boxes()) {
                        if (reach.gap(box) >= margin + KnotFouls.GUARD) continue;
                        if (reach.reaches(box) <= margin - KnotFouls.GUARD) return Optional.of(false);
                        sure = false;
                    }
                }
            }
            return sure ? Optional.of(true) : Optional.empty();
        }
    }

    /** @param wanted which of the four answers is looked for first */
    private static Case find(Drawing drawing, Part part, int wanted, Chance chance) {
        Boards boards = Boards.of(chance, part.size(), 0.5);
        List<Case> found = new ArrayList<>();
        List<Turn> turns = Turn.in(part, false);
        for (int tries = 0; tries < 400; tries++) {
            Board board = boards.next();
            Knots knots = new Knots(board);
            Map<Turn, Optional<Boolean>> known = new HashMap<>();
            Function<Turn, Optional<Boolean>> clear = turn -> known.computeIfAbsent(
                    turn, t -> knots.clear(new Placing(drawing, part, board, t, Trim.ALL_OFF_END_2)));
            for (Turn turn : turns) {
                if (clear.apply(turn).orElse(true)) continue;
                Optional<Boolean> ends = clear.apply(endForEnd(turn));
                Optional<Boolean> faces = clear.apply(faceOver(turn));
                if (ends.isEmpty() || faces.isEmpty()) continue;
                Placing placing = new Placing(drawing, part, board, turn, Trim.ALL_OFF_END_2);
                Case one = new Case(placing, ends.get(), faces.get());
                if ((ends.get() ? 1 : 0) + (faces.get() ? 2 : 0) == wanted) return one;
                found.add(one);
            }
            if (tries > 3 && !found.isEmpty()) return found.get(chance.whole(0, found.size() - 1));
        }
        if (found.isEmpty()) throw new IllegalStateException("four hundred boards, and none fouls");
        return found.get(0);
    }
}
