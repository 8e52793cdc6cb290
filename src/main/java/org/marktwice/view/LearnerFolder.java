package org.marktwice.view;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Attempt;
import org.marktwice.feedback.SheetModel;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.Journal;
import org.marktwice.files.Save;
import org.marktwice.rulebook.Estimates;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Situation;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;

/**
 * Where a learner's attempts and settings live: the system property {@code marktwice.home}, else the environment's
 * {@code MARKTWICE_HOME}, else the folder {@code Marktwice} of the user. Marks are computed from the attempts each time the
 * program runs, and kept in memory only.
 */
public final class LearnerFolder {
    static final String ENDING = ".attempt.jsonl";
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final Path folder;
    /** Where attempts are kept from now on; the folder itself, unless it can't be written to. */
    private Path kept;

    private final Map<Path, Read> known = new HashMap<>();

    public LearnerFolder(Path folder) {
        this.folder = folder;
        this.kept = folder;
    }

    public static LearnerFolder ofThisUser() {
        String set = System.getProperty("marktwice.home");
        if (set == null || set.isBlank()) set = System.getenv("MARKTWICE_HOME");
        if (set == null || set.isBlank())
            return new LearnerFolder(Path.of(System.getProperty("user.home"), "Marktwice"));
        return new LearnerFolder(Path.of(set));
    }

    /**
     * How a learner stands with an exercise.
     *
     * @param best the mark sheet of the best attempt handed in; empty where none was
     * @param left the attempt to go on with, the latest; empty where all were handed in
     * @param tries how many attempts were handed in
     * @param refused files of this exercise that can't be read, one line each
     */
    public record Standing(Optional<Best> best, Optional<Path> left, int tries, List<String> refused) {
        public static final Standing NONE = new Standing(Optional.empty(), Optional.empty(), 0, List.of());
    }

    public record Best(double marks, double outOf, Path file) {
        double share() {
            return outOf > 0 ? marks / outOf : 0;
        }
    }

    /** @param stamp tells whether the file has changed since */
    private record Read(
            String stamp,
            AttemptFile.@Nullable Opened opened,
            @Nullable Best mark,
            @Nullable String refused) {}

    public Path folder() {
        return folder;
    }

    /** Where attempts are kept. */
    public synchronized Path kept() {
        return kept;
    }

    /** Keeps attempts in another folder from now on; those in this one are still found. */
    public synchronized void keepIn(Path other) {
        kept = other;
    }

    public Settings settings() {
        return Settings.read(settingsFile());
    }

    public void save(Settings settings) throws FileRefused {
        settings.write(settingsFile());
    }

    /** Where a learner's answers to the quiz are kept. */
    public Path quizJournal(String learner) {
        return folder.resolve("quiz-" + forFile(learner.strip()) + ".quiz.jsonl");
    }

    private Path settingsFile() {
        return folder.resolve("settings.json");
    }

    /** Begins an attempt's file. */
    public Journal begin(Scenario scenario, String learner, Instant now) throws FileRefused {
        return begin(header(scenario, learner, now));
    }

    /** Begins the file of an attempt with all that was done in it so far. */
    Journal begin(Attempt attempt) throws FileRefused {
        Path into = kept();
        Save.folder(into);
        String name = attempt.scenario() + "-" + forFile(attempt.learner()) + "-"
                + STAMP.format(Instant.parse(attempt.started()));
        Path file = into.resolve(name + ENDING);
        for (int more = 2; Files.exists(file); more++) file = into.resolve(name + "-" + more + ENDING);
        return Journal.create(file, attempt);
    }

    /** The attempt before anything was done. */
    public static Attempt header(Scenario scenario, String learner, Instant now) {
        String who = learner.isBlank() ? "unnamed" : learner.strip();
        return new Attempt(
                scenario.id(),
                scenario.digest(),
                who,
                now.truncatedTo(ChronoUnit.SECONDS).toString(),
                List.of());
    }

    /** How this learner stands with an exercise. Reads and marks what has changed since it was last asked. */
    public synchronized Standing standing(Scenario scenario, String learner) {
        List<Path> files = files(scenario);
        if (files.isEmpty()) return Standing.NONE;
        String who = header(scenario, learner, Instant.EPOCH).learner();
        Situation situation = Situation.of(org.marktwice.bench.Bench.of(scenario));
        List<String> refused = new ArrayList<>();
        List<Best> marks = new ArrayList<>();
        Path left = null;
        for (Path file : files) {
            Read read = read(file, situation);
            if (read.refused() != null) refused.add(read.refused());
            AttemptFile.Opened opened = read.opened();
            if (opened == null || !opened.file().attempt().learner().equals(who)) continue;
            Best mark = read.mark();
            boolean anothers = opened.bench().takenOver() > 0;
            if (mark == null) left = file;
            else if (!anothers) marks.add(mark);
        }
        // what an examination brought is the teacher's to tell
        if (scenario.practice().guidance() == Practice.Guidance.EXAMINATION) {
            return new Standing(Optional.empty(), Optional.ofNullable(left), marks.size(), List.copyOf(refused));
        }
        Optional<Best> best = marks.stream().max(Comparator.comparingDouble(Best::share));
        return new Standing(best, Optional.ofNullable(left), marks.size(), List.copyOf(refused));
    }

    /** How this learner's estimates have fared in all that was handed in at these exercises, examinations apart. */
    public synchronized Calibration calibration(List<Scenario> scenarios, String learner) {
        List<Calibration.Point> points = new ArrayList<>();
        for (Scenario scenario : scenarios) {
            if (scenario.practice().guidance() == Practice.Guidance.EXAMINATION) continue;
            Situation situation = Situation.of(org.marktwice.bench.Bench.of(scenario));
            for (Path file : files(scenario)) {
                AttemptFile.Opened opened = read(file, situation).opened();
                if (opened == null || !opened.bench().handedIn()) continue;
                if (!opened.file().attempt().learner().equals(learner)) continue;
                point(opened.file().attempt(), situation.at(opened.bench())).ifPresent(points::add);
            }
        }
        points.sort(Comparator.comparing(Calibration.Point::started));
        return new Calibration(points);
    }

    private static Optional<Calibration.Point> point(Attempt attempt, Situation situation) {
        List<Double> off = Estimates.clearances(situation).stream()
                .map(Estimates.Clearance::off)
                .toList();
        SheetModel sheet = SheetModel.of(situation);
        SheetModel.Estimate parts = sheet.parts();
        SheetModel.Estimate said = parts.given() ? parts : sheet.estimate();
        if (off.isEmpty() && !said.given()) return Optional.empty();
        int missed = said.given() ? said.missed().size() : 0;
        return Optional.of(new Calibration.Point(
                attempt.started(),
                situation.scenario().title(),
                off,
                said.foreseen().size(),
                missed,
                said.held().size()));
    }

    /** The attempts' files at an exercise, oldest first. */
    private List<Path> files(Scenario scenario) {
        return Stream.of(folder, kept)
                .distinct()
                .flatMap(in -> files(scenario, in).stream())
                .sorted(Comparator.comparing(LearnerFolder::changed).thenComparing(LearnerFolder::name))
                .toList();
    }

    private static List<Path> files(Scenario scenario, Path in) {
        if (!Files.isDirectory(in)) return List.of();
        try (Stream<Path> entries = Files.list(in)) {
            return entries.filter(f -> name(f).startsWith(scenario.id() + "-") && name(f).endsWith(ENDING))
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private Read read(Path file, Situation situation) {
        String stamp =
                changed(file) + " " + size(file) + " " + situation.scenario().digest();
        Read before = known.get(file);
        if (before != null && before.stamp().equals(stamp)) return before;
        Read now = readAnew(file, stamp, situation);
        known.put(file, now);
        return now;
    }

    private static Read readAnew(Path file, String stamp, Situation situation) {
        try {
            AttemptFile read = AttemptFile.read(file);
            // Another exercise whose id begins like this one's.
            if (!read.attempt().scenario().equals(situation.scenario().id())) return new Read(stamp, null, null, null);
            AttemptFile.Opened opened = read.on(situation.scenario());
            if (!opened.bench().handedIn()) return new Read(stamp, opened, null, null);
            MarkSheet sheet = RuleBook.judge(situation.at(opened.bench()));
            return new Read(stamp, opened, new Best(sheet.marks(), sheet.outOf(), file), null);
        } catch (FileRefused e) {
            return new Read(stamp, null, null, name(file) + ": " + e.reason());
        }
    }

    private static String name(Path file) {
        return file.getFileName().toString();
    }

    private static long changed(Path file) {
        try {
            return Files.getLastModifiedTime(file).toMillis();
        } catch (IOException e) {
            return 0;
        }
    }

    private static long size(Path file) {
        try {
            return Files.size(file);
        } catch (IOException e) {
            return 0;
        }
    }

    /** A name fit for every file system: letters, digits and hyphens only. */
    static String forFile(String learner) {
        String plain = learner.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-+|-+$", "");
        return plain.isEmpty() ? "unnamed" : plain;
    }
}
