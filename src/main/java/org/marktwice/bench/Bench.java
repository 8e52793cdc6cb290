package org.marktwice.bench;

import java.util.List;
import java.util.Optional;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.scenario.Scenario;

/** The bench folded from a learner's actions: state is start + log, and nothing else. Immutable. */
public final class Bench {
    private final Scenario scenario;

    private Bench(Scenario scenario) {
        this.scenario = scenario;
    }

    /** The bench before anything was done. */
    public static Bench of(Scenario scenario) {
        return new Bench(scenario);
    }

    /** @throws CannotDo where an action of the attempt can't be done; the message begins with its step */
    public static Bench after(Scenario scenario, Attempt attempt) throws CannotDo {
        throw new UnsupportedOperationException();
    }

    /** The bench after one more action. @throws CannotDo with the reason; this bench stays as it was */
    public Bench after(Action action) throws CannotDo {
        throw new UnsupportedOperationException();
    }

    public Scenario scenario() {
        return scenario;
    }

    /** How many actions there have been; undone ones count. */
    public int steps() {
        throw new UnsupportedOperationException();
    }

    /** All actions, in order, undone ones included. */
    public List<Action> log() {
        throw new UnsupportedOperationException();
    }

    /** The boards in the rack's order. */
    public List<BoardState> boards() {
        throw new UnsupportedOperationException();
    }

    public BoardState board(String id) {
        return boards().stream()
                .filter(b -> b.board().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The boards that carry this part's name and are not set aside, in the rack's order. */
    public List<BoardState> namedAs(Part part) {
        throw new UnsupportedOperationException();
    }

    /** The board laid in the job as it is named and turned; empty where it is not both, or doesn't lie so in that part. */
    public Optional<Placing> placing(BoardState board) {
        throw new UnsupportedOperationException();
    }

    public boolean handedIn() {
        throw new UnsupportedOperationException();
    }

    public boolean canUndo() {
        throw new UnsupportedOperationException();
    }

    public boolean canRedo() {
        throw new UnsupportedOperationException();
    }
}
