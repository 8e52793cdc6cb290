package org.marktwice.view.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.marktwice.bench.Attempt;
import org.marktwice.classroom.BulkMarking;
import org.marktwice.classroom.ExerciseSet;
import org.marktwice.classroom.Marked;
import org.marktwice.classroom.Marker;
import org.marktwice.classroom.Results;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.scenario.Scenario;

/** A folder of attempts, marked: each file with its state, and the class's results. */
final class Marking {
    private final Path folder;
    private final ExerciseSet set;
    private final boolean evenIfChanged;
    private final List<Line> lines = new ArrayList<>();
    private final Results.Collector collector;
    private int files;

    /** Marks a folder: {@link Marking#of}. */
    interface Marks {
        Marking of(Path exercise, Path folder, boolean evenIfChanged, BulkMarking.Progress progress) throws FileRefused;
    }

    /**
     * What became of a file.
     *
     * @param marks and {@code outOf} NaN where it was not marked
     * @param madeFor another learner, on whose boards it was made; else empty
     * @param sameAs another file with the same actions at the same times; else empty
     * @param counts the file that counts instead, since it holds all of the same attempt; else empty
     */
    record Line(
            String file,
            Marked.State state,
            String learner,
            double marks,
            double outOf,
            String reason,
            String madeFor,
            String sameAs,
            String counts) {
        static Line of(Marked marked) {
            return new Line(
                    marked.file(),
                    marked.state(),
                    marked.learner(),
                    marked.sheet().map(s -> s.marks()).orElse(Double.NaN),
                    marked.sheet().map(s -> s.outOf()).orElse(Double.NaN),
                    marked.reason(),
                    marked.onAnothersBoards() ? marked.madeFor() : "",
                    marked.sameAs(),
                    "");
        }

        boolean isMarked() {
            return !Double.isNaN(marks);
        }

        /** Its state with the sign of it. */
        String said() {
            String sign = switch (state) {
                case WHOLE -> "✓ ";
                case UNFINISHED, TORN, CHANGED_SCENARIO -> "~ ";
                default -> "× ";
            };
            return sign + state.spoken();
        }

        Line countedIn(String other) {
            return new Line(file, state, learner, marks, outOf, reason, madeFor, sameAs, other);
        }

        /** Why it is in its state, and what else there is to know of it. */
        String more() {
            List<String> said = new ArrayList<>();
            if (!reason.isEmpty()) said.add(reason);
            if (!madeFor.isEmpty()) said.add("made on the boards of " + madeFor);
            if (!counts.isEmpty()) said.add("the same attempt as " + counts + ", which counts");
            else if (!sameAs.isEmpty())
                said.add("the same actions at the same times as " + sameAs + "; that alone says nothing about why");
            return String.join("; ", said);
        }
    }

    private Marking(Path folder, ExerciseSet set, boolean evenIfChanged) {
        this.folder = folder;
        this.set = set;
        this.evenIfChanged = evenIfChanged;
        collector = new Results.Collector(set);
    }

    /**
     * Marks all files of the folder and those below it; where the thread is interrupted, those that it has come to, and
     * it says so.
     *
     * @param exercise a scenario's file, or a folder of variants
     */
    static Marking of(Path exercise, Path folder, boolean evenIfChanged, BulkMarking.Progress progress)
            throws FileRefused {
        ExerciseSet set = ExerciseSet.read(exercise);
        Marking marking = new Marking(folder, set, evenIfChanged);
        BulkMarking files = BulkMarking.of(folder);
        marking.files = files.size();
        try {
            files.run(
                    new Marker(set, evenIfChanged),
                    Runtime.getRuntime().availableProcessors(),
                    marking::take,
                    progress);
        } catch (InterruptedException e) {
            // what was marked stands, and how many files are left is said
        }
        return marking;
    }

    private void take(Marked marked) {
        lines.add(Line.of(marked));
        collector.accept(marked);
    }

    /** Every file, by name. @param results of the same marking */
    List<Line> lines(Results results) {
        Map<String, String> counts = new HashMap<>();
        for (Results.Repeat repeat : results.repeats()) counts.put(repeat.file(), repeat.of());
        return lines.stream()
                .map(l -> counts.containsKey(l.file()) ? l.countedIn(counts.getOrDefault(l.file(), "")) : l)
                .toList();
    }

    long leftOut() {
        return lines.stream().filter(l -> !l.isMarked()).count();
    }

    Results results(Results.Counting counting) {
        return collector.results(counting);
    }

    /** The marked attempts with their sheets, marked once more: so many sheets are not kept at hand. */
    List<Marked> sheets() throws FileRefused, InterruptedException {
        List<Marked> marked = new ArrayList<>();
        BulkMarking.of(folder)
                .run(
                        new Marker(set, evenIfChanged),
                        Runtime.getRuntime().availableProcessors(),
                        m -> {
                            if (m.sheet().isPresent()) marked.add(m);
                        },
                        BulkMarking.Progress.NONE);
        return marked;
    }

    /** How many files there are, and how many of them were marked, in one line. */
    String says() {
        long left = leftOut();
        String marked = lines.size() - left + " of " + files + (files == 1 ? " file" : " files") + " marked"
                + (left == 0 ? "" : "; " + left + " left out, each with its reason under Files");
        return unread() == 0 ? marked : "Stopped: " + marked + "; " + unread() + " not looked at";
    }

    /** How many files it hadn't come to when it was stopped. */
    private int unread() {
        return files - lines.size();
    }

    /** What to know of whatever is made of it, as a sentence; empty where all files were looked at. */
    String caution() {
        return unread() == 0 ? "" : ". It was stopped: " + unread() + " of " + files + " files are not in it";
    }

    /** An attempt as its file has it, with the scenario that it was made on. */
    record Opened(Scenario scenario, Attempt attempt) {}

    /** @throws FileRefused where the file can't be read any more, or belongs to none of the scenarios */
    Opened open(String file) throws FileRefused {
        Attempt attempt = AttemptFile.read(folder.resolve(file)).attempt();
        ExerciseSet.Place place = set.placeOf(attempt);
        if (place instanceof ExerciseSet.Place.At at) return new Opened(at.scenario(), attempt);
        if (place instanceof ExerciseSet.Place.Changed changed) return new Opened(changed.now(), attempt);
        throw new FileRefused(file, "it belongs to none of these exercises");
    }
}
