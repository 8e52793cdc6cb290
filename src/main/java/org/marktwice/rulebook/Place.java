package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;

/**
 * A part's place in the job: the boards that lie in it, and while none does, the boards that might yet.
 *
 * @param lying boards named as the part and turned; more than one only where a name was given twice
 * @param mightBe boards that are not set aside and could be turned into it: those named as the part, or else those
 *     without a name that fit it; empty once a board lies in it
 */
record Place(Part part, List<Lying> lying, List<BoardState> mightBe) {

    /** A board as it lies in the job. @param step the action that turned it so */
    record Lying(BoardState state, Laid laid, int step) {
        Placing placing() {
            return laid.placing();
        }

        String board() {
            return state.board().id();
        }

        Finding.Subject subject() {
            return Finding.Subject.boardAs(board(), placing().part().id());
        }

        Finding.Subject subject(String joint) {
            return new Finding.Subject(board(), placing().part().id(), joint);
        }
    }

    Place {
        lying = List.copyOf(lying);
        mightBe = List.copyOf(mightBe);
    }

    /** All places, in the order of the drawing's parts. */
    static List<Place> all(Situation situation) {
        return situation.places();
    }

    /** Computed anew; nearly every rule asks for them. */
    static List<Place> afresh(Situation situation) {
        List<Workpiece> workpieces = Workpiece.all(situation);
        List<Place> all = new ArrayList<>();
        for (Part part : situation.scenario().drawing().parts()) all.add(of(situation, part, workpieces));
        return all;
    }

    private static Place of(Situation situation, Part part, List<Workpiece> workpieces) {
        List<Lying> lying = new ArrayList<>();
        List<BoardState> here = new ArrayList<>();
        for (Workpiece w : workpieces) {
            if (w.part() == null || !w.part().id().equals(part.id())) continue;
            here.add(w.state());
            w.lying().ifPresent(lying::add);
        }
        if (!lying.isEmpty()) return new Place(part, lying, List.of());
        return new Place(part, lying, here.isEmpty() ? free(situation, part) : here);
    }

    /** Boards on the rack, neither named nor set aside, that fit the part. */
    private static List<BoardState> free(Situation situation, Part part) {
        return situation.bench().boards().stream()
                .filter(b -> b.named().isEmpty() && b.setAside().isEmpty())
                .filter(b -> situation.fits(b.board(), part))
                .toList();
    }

    /** Whether it is still to be decided which board lies here, and how. */
    boolean isOpen() {
        return !mightBe.isEmpty();
    }

    /** Whether a knot of a board that might lie here could come near a cut. */
    boolean hasKnotsNearCuts(Situation situation) {
        return !situation.scenario().drawing().cuts(part).isEmpty()
                && mightBe.stream().flatMap(b -> b.board().bodies().stream()).anyMatch(body -> !body.isEmpty());
    }

    /** The place while no board lies in it yet: about its board where one is named as the part. */
    Finding open(Rule rule, String says) {
        boolean known = mightBe.size() == 1 && mightBe.get(0).named().isPresent();
        Finding.Subject subject = known
                ? Finding.Subject.boardAs(mightBe.get(0).board().id(), part.id())
                : Finding.Subject.part(part.id());
        return Found.by(rule, subject).open(says, "part", part.id());
    }
}
