package org.marktwice.view;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleFunction;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.rulebook.Situation;
import org.marktwice.scenario.Scenario;

/**
 * An attempt being made: the one way by which the screens change anything. The attempt is the state; bench and situation
 * are folded from it. To be used from the event thread alone, on which listeners are called too.
 */
public final class Session {
    /** Where actions are kept. An action is whole on disk once {@code append} returns. */
    public interface Sink {
        void append(Action action) throws IOException;

        /** Keeps nothing: for replays, pictures and tests. */
        static Sink none() {
            return action -> {};
        }
    }

    private Sink sink;
    private final LongSupplier nanos;
    private final double startedAt;
    private final long startedNanos;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Deque<Action> unwritten = new ArrayDeque<>();
    private Attempt attempt;
    private Bench bench;
    private Situation situation;
    private @Nullable String trouble;

    private Session(Attempt attempt, Bench bench, Sink sink, LongSupplier nanos) {
        this.attempt = attempt;
        this.bench = bench;
        this.situation = Situation.of(bench);
        this.sink = sink;
        this.nanos = nanos;
        this.startedNanos = nanos.getAsLong();
        List<Action> done = attempt.actions();
        // The time of an attempt that is gone on with runs on from its last action: time away from the bench doesn't
        // count.
        this.startedAt = done.isEmpty() ? 0 : done.get(done.size() - 1).t();
    }

    /**
     * Begins an attempt, or goes on with one.
     *
     * @param attempt what was done so far, all of it already in {@code sink}
     * @param nanos a clock in nanoseconds that never runs backwards
     * @throws CannotDo where an action of the attempt can't be done in this scenario
     */
    public static Session of(Scenario scenario, Attempt attempt, Sink sink, LongSupplier nanos) throws CannotDo {
        return new Session(attempt, Bench.after(scenario, attempt), sink, nanos);
    }

    public Scenario scenario() {
        return bench.scenario();
    }

    public Attempt attempt() {
        return attempt;
    }

    public Bench bench() {
        return bench;
    }

    public Situation situation() {
        return situation;
    }

    /**
     * Does one action: tried on the bench first, then kept, then seen. Where it can't be written at once it counts all the
     * same, {@link #trouble()} says so, and it is written before the next one.
     *
     * @param action made from the seconds since the attempt was started
     * @throws CannotDo with the reason; nothing has changed then
     */
    public void perform(DoubleFunction<Action> action) throws CannotDo {
        Action next = action.apply(seconds());
        Bench after = bench.after(next);
        unwritten.add(next);
        write();
        attempt = attempt.with(next);
        bench = after;
        situation = situation.at(after);
        for (Runnable listener : List.copyOf(listeners)) listener.run();
    }

    public void undo() throws CannotDo {
        perform(Action.Undo::new);
    }

    public void redo() throws CannotDo {
        perform(Action.Redo::new);
    }

    public boolean canUndo() {
        return bench.canUndo();
    }

    public boolean canRedo() {
        return bench.canRedo();
    }

    /** Called after every action that was done. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    /** Why the last actions are not on disk, in one line; empty while all is written. */
    public Optional<String> trouble() {
        return Optional.ofNullable(trouble);
    }

    /**
     * Keeps what is done from now on somewhere else.
     *
     * @param other where all that was done so far is kept already
     */
    public void keepIn(Sink other) {
        sink = other;
        unwritten.clear();
        trouble = null;
    }

    /** Tries again to write what could not be written. */
    public void write() {
        try {
            while (!unwritten.isEmpty()) {
                sink.append(unwritten.getFirst());
                unwritten.removeFirst();
            }
            trouble = null;
        } catch (IOException e) {
            String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
            trouble = "Not saved yet (" + why + "). Your work stands, and is tried again with the next action.";
        }
    }

    /** Seconds since the attempt was started, to a tenth, never less than those of the action before. */
    private double seconds() {
        double since = (nanos.getAsLong() - startedNanos) / (double) TimeUnit.SECONDS.toNanos(1);
        return Math.max(lastTime(attempt), Math.round((startedAt + since) * 10) / 10.0);
    }

    private static double lastTime(Attempt attempt) {
        List<Action> done = attempt.actions();
        return done.isEmpty() ? 0 : done.get(done.size() - 1).t();
    }
}
