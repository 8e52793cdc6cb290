package org.marktwice.view.desk;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The folders that exercises were handed out to, while the desk is open; what was handed out before lies on the desk. */
final class HandedOut {
    private final DeskFolder desk;
    private final Map<String, Path> known = new HashMap<>();
    private @Nullable Path last;

    HandedOut(DeskFolder desk) {
        this.desk = desk;
    }

    /** An exercise was handed out to this folder. */
    void to(String exercise, Path folder) {
        known.put(exercise, folder);
        last = folder;
    }

    /** Where an exercise's set is looked for. */
    Path of(String exercise) {
        Path usual = desk.folder().resolve("Handed out").resolve(exercise);
        return known.getOrDefault(exercise, usual);
    }

    /** Where to hand one out to, if nothing else is chosen: where it was before, else beside what was handed out last. */
    Path next(String exercise) {
        Path beside = last == null ? null : last.toAbsolutePath().getParent();
        return beside == null || known.containsKey(exercise) ? of(exercise) : beside.resolve(exercise);
    }
}
