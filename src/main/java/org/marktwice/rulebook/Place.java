package org.marktwice.rulebook;

import java.util.List;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Surface;

/**
 * A part's place in the job: the boards that lie in it, and while none does, the boards that might yet.
 *
 * @param lying boards named as the part and turned; more than one only where a name was given twice
 * @param mightBe boards that are not set aside and could be turned into it: those named as the part, or else those
 *     without a name that fit it; empty once a board lies in it
 */
record Place(Part part, List<Lying> lying, List<BoardState> mightBe) {

    /** A board as it lies in the job. @param step the action that turned it so */
    record Lying(BoardState state, Placing placing, int step) {
        String board() {
            return state.board().id();
        }

        Finding.Subject subject() {
            return Finding.Subject.boardAs(board(), placing.part().id());
        }

        Finding.Subject subject(String joint) {
            return new Finding.Subject(board(), placing.part().id(), joint);
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
        return situation.scenario().drawing().parts().stream()
                .map(part -> of(situation, part, workpieces))
                .toList();
    }

    private static Place of(Situation situation, Part part, List<Workpiece> workpieces) {
        List<Workpiece> here =
                workpieces.stream().filter(w -> part.equals(w.part())).toList();
        List<Lying> lying = here.stream()
                .flatMap(w -> w.placing().filter(Place::longEnough).stream()
                        .flatMap(p -> w.state().turned().stream().map(t -> new Lying(w.state(), p, t.step()))))
                .toList();
        if (!lying.isEmpty()) return new Place(part, lying, List.of());
        return new Place(
                part,
                lying,
                here.isEmpty()
                        ? free(situation, part)
                        : here.stream().map(Workpiece::state).toList());
    }

    /** A board that is too short, or would be trimmed short, lies nowhere. */
    private static boolean longEnough(Placing lies) {
        return lies.off(Surface.END_1) >= 0 && lies.off(Surface.END_2) >= 0;
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
