package org.marktwice.view;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.files.FileRefused;
import org.marktwice.files.Journal;
import org.marktwice.scenario.Scenario;

/**
 * Keeps a session's actions in a journal. The file of a new attempt is begun with its first action, so that looking at an
 * exercise leaves nothing behind.
 */
final class Keeper implements Session.Sink, Closeable {
    /** Begins the journal when the first action comes. */
    interface Beginning {
        Journal begin() throws FileRefused;
    }

    private static final Beginning NOTHING = () -> {
        throw new IllegalStateException("nothing is to be kept");
    };

    private final Beginning beginning;
    private @Nullable Journal journal;

    private Keeper(Beginning beginning, @Nullable Journal journal) {
        this.beginning = beginning;
        this.journal = journal;
    }

    static Keeper of(Journal journal) {
        return new Keeper(() -> journal, journal);
    }

    static Keeper beginning(LearnerFolder folder, Scenario scenario, String learner, Instant now) {
        return new Keeper(() -> folder.begin(scenario, learner, now), null);
    }

    /** Can't keep anything, for this reason, until another place is found. */
    static Keeper refusing(FileRefused why) {
        return new Keeper(
                () -> {
                    throw why;
                },
                null);
    }

    /** Keeps nothing, as when a teacher tries an exercise. */
    static Keeper ofNothing() {
        return new Keeper(NOTHING, null);
    }

    /** The file that it is kept in; empty where nothing is kept yet, or at all. */
    Optional<Path> file() {
        return Optional.ofNullable(journal).map(Journal::file);
    }

    @Override
    public void append(Action action) throws IOException {
        if (beginning == NOTHING) return;
        try {
            Journal open = journal;
            if (open == null) {
                open = beginning.begin();
                journal = open;
            }
            open.append(action);
        } catch (FileRefused e) {
            throw new IOException(e.reason(), e);
        }
    }

    @Override
    public void close() {
        Journal open = journal;
        if (open != null) open.close();
    }
}
