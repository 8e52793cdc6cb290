package org.marktwice.quiz;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Knot;
import org.marktwice.timber.KnotBody;
import org.marktwice.timber.KnotReach;
import org.marktwice.timber.Surface;

/** A board turned in its part, and one of its knots: does it keep clear of the joint? Slip: judging it on one surface alone. */
final class KnotFouls implements Maker {
    /** Nearer to a limit than this, in millimetres, nothing is asked. */
    static final double GUARD = 1.5;

    /** How a knot lies to a cut. */
    enum Lies {
        CLEAR,
        NEAR,
        IN
    }

    @Override
    public Kind kind() {
        return Kind.KNOT_FOULS;
    }

    /** A knot and the cut of its board that it is asked about. */
    record Case(Placing placing, Cut cut, KnotBody body, Lies lies) {
        double clearance() {
            return KnotFouls.clearance(body, cut);
        }

        Knot knot() {
            return body.knot();
        }
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        Drawing drawing = Jobs.shelves(chance, level == 3 ? 2 : 1);
        Part part = drawing.parts().get(chance.whole(0, 1));
        Lies wanted = Lies.values()[chance.whole(0, 2)];
        Case found = find(drawing, part, wanted, chance);
        double margin = margin(found.knot());
        List<Offer> offers = offers(found, margin);
        BoardPicture asked = laid(BoardPicture.of(found.placing().board()), List.of(found.cut()), null)
                .evidence(
                        new Evidence(List.of(), List.of(), List.of(found.knot().id())), Ink.ACTION);
        return new Question.Draft(
                given(found),
                beside(found),
                Say.of(
                        "Turned so, how does %s lie to the housing? Its margin is %s.",
                        Say.knotName(found.knot().id()), Say.mm(margin)),
                Answers.choose(offers, found.lies().ordinal()),
                new Picture.Unrolled(asked),
                reason(found, margin));
    }

    private static String given(Case found) {
        return Say.of(
                "Board %s, %s, turned as the %s: %s. The housing is to be cut %s. %s, %s mm across, comes out on %s.",
                found.placing().board().id(),
                Say.size(found.placing().board().size()),
                lower(found),
                facing(found.placing().turn()),
                cut(found),
                Say.capital(Say.knotName(found.knot().id())),
                Say.number(found.knot().diameter()),
                comesOut(found));
    }

    private static String beside(Case found) {
        return Say.of(
                "Board %s, turned as the %s. The housing, hatched, is to be cut %s. %s, outlined, is %s mm across and comes"
                        + " out on %s.",
                found.placing().board().id(),
                lower(found),
                cut(found),
                Say.capital(Say.knotName(found.knot().id())),
                Say.number(found.knot().diameter()),
                comesOut(found));
    }

    private static String lower(Case found) {
        return found.placing().part().name().toLowerCase(java.util.Locale.ROOT);
    }

    private static String cut(Case found) {
        return PartOfDrawing.cuts(List.of(found.cut()), found.placing().board());
    }

    private static String comesOut(Case found) {
        String traces = Say.knot(found.knot().id(), found.body().traces());
        return traces.isEmpty() ? "no surface" : traces;
    }

    static String facing(Turn turn) {
        return Say.of(
                "face 1 looks %s, edge 1 %s",
                EndDown.looks(turn.of(Surface.FACE_1)), EndDown.looks(turn.of(Surface.EDGE_1)));
    }

    private static List<Offer> offers(Case found, double margin) {
        String truly = found.lies() == Lies.IN
                ? "Within the board the knot meets what is to be cut out."
                : Say.of("Within the board it comes to %s of the housing.", Say.mm(found.clearance()));
        return List.of(
                Offer.words(Say.of("Clear: it keeps at least %s", Say.mm(margin)), truly),
                Offer.words(Say.of("Too near: it does not touch, but comes nearer than %s", Say.mm(margin)), truly),
                Offer.words("In the way: it runs into what is to be cut out", truly));
    }

    /** The face that a housing is cut into. */
    static Surface opens(Box box, Board board) {
        return box.max(2) >= board.size().thickness() - 0.01 ? Surface.FACE_1 : Surface.FACE_2;
    }

    private static Question.Reason reason(Case found, double margin) {
        BoardPicture shows = laid(
                        BoardPicture.of(found.placing().board()),
                        List.of(found.cut()),
                        found.lies() == Lies.CLEAR ? null : found.cut().joint())
                .evidence(
                        new Evidence(List.of(), List.of(), List.of(found.knot().id())),
                        found.lies() == Lies.CLEAR ? Ink.SOUND : Ink.WRONG);
        String distance = found.lies() == Lies.IN
                ? "runs into the wood to be cut out"
                : Say.of("comes to %s of the housing", Say.mm(found.clearance()));
        String why = Say.of(
                "The knot %s; it should keep %s, the larger of 10 mm and its own diameter, because the grain bends round"
                        + " it. It goes through the wood as it leans: one surface alone does not tell.",
                distance, Say.mm(margin));
        return new Question.Reason(why, new Picture.Unrolled(shows));
    }

    /** Boards are sawn until one has a knot that lies so beyond doubt; or, after a few, one that lies in any way beyond doubt. */
    private static Case find(Drawing drawing, Part part, Lies wanted, Chance chance) {
        Boards boards = Boards.of(chance, part.size(), 0.7);
        List<Turn> turns = Turn.in(part, false);
        for (int tries = 0; tries < 400; tries++) {
            Board board = boards.next();
            List<KnotReach> reaches =
                    board.knots().stream().map(k -> reach(k, board)).toList();
            int first = chance.whole(0, 3);
            for (int i = 0; i < turns.size(); i++) {
                Turn turn = turns.get((first + i) % turns.size());
                Placing placing = new Placing(drawing, part, board, turn, Trim.ALL_OFF_END_2);
                Optional<Case> one = in(placing, reaches, tries < 8 ? wanted : null);
                if (one.isPresent()) return one.get();
            }
        }
        throw new IllegalStateException("four hundred boards without a knot near a cut");
    }

    /**
     * A knot that lies so to the cut nearest to it.
     *
     * @param reaches of the board's knots, in their order
     * @param wanted null for any way that it lies beyond doubt
     */
    private static Optional<Case> in(Placing placing, List<KnotReach> reaches, @Nullable Lies wanted) {
        Board board = placing.board();
        List<Cut> cuts = placing.cuts();
        for (int i = 0; i < reaches.size(); i++) {
            Knot knot = board.knots().get(i);
            KnotReach reach = reaches.get(i);
            Cut nearest = cuts.get(0);
            double least = Double.POSITIVE_INFINITY;
            for (Cut cut : cuts) {
                double gap = gap(reach, cut);
                if (gap >= least) continue;
                least = gap;
                nearest = cut;
            }
            if (least > margin(knot) + 30) continue;
            Optional<Lies> lies = lies(reach, margin(knot), nearest);
            if (lies.isEmpty() || wanted != null && lies.get() != wanted) continue;
            KnotBody body = KnotBody.of(knot, board.facts());
            if (!body.traces().isEmpty()) return Optional.of(new Case(placing, nearest, body, lies.get()));
        }
        return Optional.empty();
    }

    static KnotReach reach(Knot knot, Board board) {
        return KnotReach.of(knot, board.pith().orElseThrow(), board.size());
    }

    private static double gap(KnotReach reach, Cut cut) {
        double least = Double.POSITIVE_INFINITY;
        for (Box box : cut.boxes()) least = Math.min(least, reach.gap(box));
        return least;
    }

    private static double reaches(KnotReach reach, Cut cut, boolean shrunk) {
        double least = Double.POSITIVE_INFINITY;
        for (Box box : cut.boxes()) least = Math.min(least, reach.reaches(shrunk ? shrunk(box) : box));
        return least;
    }

    /** How a knot lies to a cut; empty where it is nearer to a limit than {@link #GUARD}. */
    private static Optional<Lies> lies(KnotReach reach, double margin, Cut cut) {
        double least = gap(reach, cut);
        if (least >= margin + GUARD) return Optional.of(Lies.CLEAR);
        if (least >= GUARD && reaches(reach, cut, false) <= margin - GUARD) return Optional.of(Lies.NEAR);
        return reaches(reach, cut, true) == 0 ? Optional.of(Lies.IN) : Optional.empty();
    }

    private static Box shrunk(Box box) {
        return Box.of(
                box.min(0) + GUARD,
                box.min(1) + GUARD,
                box.min(2) + GUARD,
                box.max(0) - GUARD,
                box.max(1) - GUARD,
                box.max(2) - GUARD);
    }

    static double margin(Knot knot) {
        return Practice.DEFAULT.knotMargin().of(knot);
    }

    static double clearance(KnotBody body, Cut cut) {
        double least = Double.POSITIVE_INFINITY;
        for (Box box : cut.boxes()) least = Math.min(least, body.clearance(box));
        return least;
    }

    /** With cuts laid on the board. @param foul the joint whose cut is drawn as fouled; null for none */
    static BoardPicture laid(BoardPicture picture, List<Cut> cuts, @Nullable String foul) {
        return picture.cuts(cuts.stream()
                .map(c -> new BoardPicture.LaidCut(c, c.joint().equals(foul)))
                .toList());
    }
}
