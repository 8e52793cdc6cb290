package org.marktwice.view.desk;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.SwingWorker;
import org.jspecify.annotations.Nullable;
import org.marktwice.files.FileRefused;

/** Slow work away from the event thread, with its answer brought back to it. */
final class Aside {
    private Aside() {}

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
        worker.execute();
        return worker;
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
