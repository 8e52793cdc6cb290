package org.marktwice.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;

/**
 * The bench folded from a learner's actions: state is start + log, and nothing else. Immutable.
 *
 * <p>Undo and redo are actions like the others: the log only grows. What an undone action did is found by folding the
 * actions that still count once more from the start, never by working an effect backwards.
 */
public final class Bench {
    private final Scenario scenario;
    private final List<Action> log;
    /** Steps that still count, oldest first; undo takes the last one away. */
    private final List<Integer> counting;
    /** Steps taken back that redo can restore, the next one last. */
    private final List<Integer> takenBack;

    private final Rack boards;
    /** The boards that lie in a cramp, by their ids. */
    private final Map<String, Pairing> pairs;

    private final boolean handedIn;
    private volatile @Nullable List<BoardState> inRackOrder;

    private Bench(
            Scenario scenario,
            List<Action> log,
            List<Integer> counting,
            List<Integer> takenBack,
            Rack boards,
            Map<String, Pairing> pairs,
            boolean handedIn) {
        this.scenario = scenario;
        this.log = log;
        this.counting = counting;
        this.takenBack = takenBack;
        this.boards = boards;
        this.pairs = pairs;
        this.handedIn = handedIn;
    }

    /** The bench before anything was done. */
    public static Bench of(Scenario scenario) {
        return new Bench(scenario, List.of(), List.of(), List.of(), Rack.fresh(scenario.boards()), Map.of(), false);
    }

    /** @throws CannotDo where an action of the attempt can't be done; the message begins with its step */
    public static Bench after(Scenario scenario, Attempt attempt) throws CannotDo {
        Bench bench = of(scenario);
        for (Action action : attempt.actions()) {
            try {
                bench = bench.after(action);
            } catch (CannotDo e) {
                throw e.at(bench.steps() + 1);
            }
        }
        return bench;
    }

    /** The bench after one more action. @throws CannotDo with the reason; this bench stays as it was */
    public Bench after(Action action) throws CannotDo {
        if (handedIn) throw new CannotDo("Already handed in");
        if (action instanceof Action.Undo) return afterUndo(action);
        if (action instanceof Action.Redo) return afterRedo(action);
        if (action instanceof Action.HandIn) {
            return new Bench(scenario, and(log, action), counting, takenBack, boards, pairs, true);
        }
        Checks.possible(this, action);
        if (action instanceof Action.Remark) {
            return new Bench(scenario, and(log, action), counting, takenBack, boards, pairs, false);
        }
        int step = steps() + 1;
        Rack next = boards.copied();
        Map<String, Pairing> cramped = new HashMap<>(pairs);
        Effects.apply(next, cramped, step, action, this::action);
        return new Bench(scenario, and(log, action), and(counting, step), List.of(), next, cramped, false);
    }

    private Bench afterUndo(Action undo) throws CannotDo {
        Checks.undoGranted(scenario);
        if (counting.isEmpty()) throw new CannotDo("There is nothing to take back");
        if (lastCounting() < takenOver()) {
            throw new CannotDo("Another hand did that: rub it out, or do it again");
        }
        List<Integer> fewer = counting.subList(0, counting.size() - 1);
        int last = counting.get(counting.size() - 1);
        return folded(undo, List.copyOf(fewer), and(takenBack, last));
    }

    private Bench afterRedo(Action redo) throws CannotDo {
        Checks.undoGranted(scenario);
        if (takenBack.isEmpty()) throw new CannotDo("There is nothing to do again");
        List<Integer> fewer = takenBack.subList(0, takenBack.size() - 1);
        int last = takenBack.get(takenBack.size() - 1);
        return folded(redo, and(counting, last), List.copyOf(fewer));
    }

    private Bench folded(Action action, List<Integer> count, List<Integer> back) {
        Rack next = Rack.fresh(scenario.boards());
        Map<String, Pairing> cramped = new HashMap<>();
        for (int step : count) Effects.apply(next, cramped, step, action(step), this::action);
        return new Bench(scenario, and(log, action), count, back, next, cramped, false);
    }

    private static <T> List<T> and(List<T> list, T last) {
        return Growing.of(list).and(last);
    }

    public Scenario scenario() {
        return scenario;
    }

    /** How many actions there have been; undone ones count. */
    public int steps() {
        return log.size();
    }

    /** All actions, in order, undone ones included. */
    public List<Action> log() {
        return log;
    }

    /** The action of a step, 1 being the first. */
    public Action action(int step) {
        return log.get(step - 1);
    }

    /** Whether the step was done and has not been taken back since; undo, redo and hand-in themselves never count. */
    public boolean counts(int step) {
        return counting.contains(step);
    }

    /** The boards in the rack's order. */
    public List<BoardState> boards() {
        List<BoardState> known = inRackOrder;
        if (known == null) {
            known = boards.all();
            inRackOrder = known;
        }
        return known;
    }

    public BoardState board(String id) {
        return find(id).orElseThrow();
    }

    /** The board of this id; empty where it is not on the rack. */
    public Optional<BoardState> find(String id) {
        return Optional.ofNullable(boards.find(id));
    }

    /** What a board lies against in the cramp; empty where it lies in none. */
    public Optional<Pairing> paired(String board) {
        return Optional.ofNullable(pairs.get(board));
    }

    /** The boards that carry this part's name and are not set aside, in the rack's order. */
    public List<BoardState> namedAs(Part part) {
        List<BoardState> named = new ArrayList<>();
        for (BoardState b : boards()) {
            if (b.isNamedAs(part)) named.add(b);
        }
        return named;
    }

    /** Whether any board that is not set aside carries this part's name. */
    public boolean isNamed(Part part) {
        for (BoardState b : boards()) {
            if (b.isNamedAs(part)) return true;
        }
        return false;
    }

    /** The board laid in the job as it is named and turned; empty where it is not both, or doesn't lie so in that part. */
    public Optional<Placing> placing(BoardState state) {
        Optional<Part> named = state.named().flatMap(n -> scenario.drawing().part(n.part()));
        if (named.isEmpty() || state.turned().isEmpty()) return Optional.empty();
        Part part = named.get();
        Board board = state.board();
        Turn turn = state.turned().get().turn();
        Trim trim = state.turned().get().trimOrDefault();
        double surplus = board.size().length() - part.size().length();
        boolean square = board.isSquare() && part.size().isSquare(Board.SIZE_TOLERANCE);
        if (surplus < 0 || trim.mm() > surplus || !turn.isIn(part, square)) return Optional.empty();
        return Optional.of(new Placing(scenario.drawing(), part, board, turn, trim));
    }

    /** The rules that the learner expects to lose marks on, as last said; empty where nothing was said. */
    public Optional<Set<String>> estimate() {
        for (int i = counting.size() - 1; i >= 0; i--) {
            if (action(counting.get(i)) instanceof Action.Estimate said) return Optional.of(said.expects());
        }
        return Optional.empty();
    }

    private int lastCounting() {
        return counting.isEmpty() ? 0 : counting.get(counting.size() - 1);
    }

    /** The parts that the learner expects to lose marks on, as last said; empty where nothing was said of parts. */
    public Optional<Set<String>> expectedParts() {
        for (int i = counting.size() - 1; i >= 0; i--) {
            if (action(counting.get(i)) instanceof Action.Estimate said) return Optional.ofNullable(said.parts());
        }
        return Optional.empty();
    }

    /** When the learner is told: as the scenario says, or later where the learner wanted it so. */
    public Practice.Guidance guidance() {
        Practice.Guidance now = scenario.practice().guidance();
        for (Action action : log) {
            if (action instanceof Action.LessHelp less) now = less.to();
        }
        return now;
    }

    /** The hints given so far, oldest first. */
    public List<Action.Hint> hints() {
        return log.stream()
                .filter(Action.Hint.class::isInstance)
                .map(Action.Hint.class::cast)
                .toList();
    }

    /** The last step before the learner's own: the one at which another hand's work was taken over; 0 where there is none. */
    public int takenOver() {
        for (int step = steps(); step > 0; step--) {
            if (action(step) instanceof Action.TakeOver) return step;
        }
        return 0;
    }

    /** The slips that the learner named and did not take back. */
    public List<Action.Fault> faults() {
        return counting.stream()
                .map(this::action)
                .filter(Action.Fault.class::isInstance)
                .map(Action.Fault.class::cast)
                .toList();
    }

    public boolean handedIn() {
        return handedIn;
    }

    public boolean canUndo() {
        return !handedIn && scenario.grants(Practice.Aid.UNDO) && lastCounting() > takenOver();
    }

    public boolean canRedo() {
        return !handedIn && scenario.grants(Practice.Aid.UNDO) && !takenBack.isEmpty();
    }
}
