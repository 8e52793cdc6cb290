package org.marktwice.view.desk;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.SwingWorker;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.BulkMarking;
import org.marktwice.files.FileRefused;

/** Slow work away from the event thread, with its answer brought back to it. */
final class Aside {
    /** On the event thread only. */
    private static final Set<SwingWorker<?, ?>> UNDER_WAY = new LinkedHashSet<>();

    private Aside() {}

    /** What is under way, the longest first; nothing once every answer has been brought back. On the event thread only. */
    static List<Future<?>> underWay() {
        return List.copyOf(UNDER_WAY);
    }

    /**
     * @param done takes what comes out, on the event thread
     * @param failed takes one line, on the event thread, where the work was refused
     */
    static <T> SwingWorker<T, Void> run(Callable<T> work, Consumer<T> done, Consumer<String> failed) {
        SwingWorker<T, Void> worker = new SwingWorker<>() {
            @Override
            protected T doInBackground() throws Exception {
                return work.call();
            }

            @Override
            protected void done() {
                UNDER_WAY.remove(this);
                if (isCancelled()) return;
                try {
                    done.accept(get());
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                } catch (ExecutionException e) {
                    failed.accept(said(e.getCause()));
                }
            }
        };
        UNDER_WAY.add(worker);
        worker.execute();
        return worker;
    }

    /** Work that tells how far it is. */
    interface Telling<T> {
        /** @param progress told on whichever thread, as often as it likes */
        T call(BulkMarking.Progress progress) throws Exception;
    }

    /** @param shown is told how far the work is, on the event thread, not oftener than the eye follows */
    static <T> SwingWorker<T, Void> run(
            Telling<T> work, BulkMarking.Progress shown, Consumer<T> done, Consumer<String> failed) {
        AtomicBoolean waiting = new AtomicBoolean();
        int[] last = new int[2];
        return run(
                () -> work.call((at, of) -> {
                    synchronized (last) {
                        last[0] = at;
                        last[1] = of;
                    }
                    if (waiting.getAndSet(true)) return;
                    SwingUtilities.invokeLater(() -> {
                        waiting.set(false);
                        synchronized (last) {
                            shown.at(last[0], last[1]);
                        }
                    });
                }),
                done,
                failed);
    }

    /**
     * Asks work to come to an end early and to answer with what it has so far; a cancelled worker's answer would be lost.
     * The work is told by an interrupt of its thread.
     */
    static final class Stop {
        private @Nullable Thread working;
        private boolean asked;

        synchronized boolean asked() {
            return asked;
        }

        synchronized void ask() {
            asked = true;
            if (working != null) working.interrupt();
        }

        /** Does the work on this thread, which no interrupt reaches once it is done. */
        <T> T during(Callable<T> work) throws Exception {
            begin();
            try {
                return work.call();
            } finally {
                end();
            }
        }

        private synchronized void begin() {
            working = Thread.currentThread();
            if (asked) working.interrupt();
        }

        private synchronized void end() {
            working = null;
            Thread.interrupted();
        }
    }

    private static String said(@Nullable Throwable cause) {
        if (cause instanceof FileRefused || cause instanceof Said) return String.valueOf(cause.getMessage());
        if (cause instanceof RuntimeException e) throw e;
        throw new IllegalStateException(cause);
    }

    /** A refusal in one line that is none of a file. */
    static final class Said extends Exception {
        private static final long serialVersionUID = 1L;

        Said(String line) {
            super(line);
        }
    }
}
