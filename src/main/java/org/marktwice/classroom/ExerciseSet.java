package org.marktwice.classroom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.LearnerName;
import org.marktwice.files.FileRefused;
import org.marktwice.scenario.Scenario;

/**
 * The scenarios that a class worked at: one for all, or a variant for each learner. Which one an attempt belongs to is
 * told by the digest in its header, never by a file's name.
 */
public final class ExerciseSet {
    private static final String SUFFIX = ".scenario.json";

    private final List<Scenario> scenarios;
    private final Map<String, List<Scenario>> byId;
    /** By the digest of the variant; empty where the scenarios were not made for anyone. */
    private final Map<String, String> learnerOf = new LinkedHashMap<>();

    private ExerciseSet(List<Scenario> scenarios, List<ClassSet.Entry> entries) {
        this.scenarios = List.copyOf(scenarios);
        for (ClassSet.Entry entry : entries) learnerOf.put(entry.digest(), entry.learner());
        this.byId = this.scenarios.stream()
                .collect(Collectors.groupingBy(Scenario::id, LinkedHashMap::new, Collectors.toList()));
    }

    public static ExerciseSet of(Scenario... scenarios) {
        return new ExerciseSet(List.of(scenarios), List.of());
    }

    /** A scenario's file, or a folder of them, with the index of a class set or without. @throws FileRefused where one of them is refused, or there is none */
    public static ExerciseSet read(Path fileOrFolder) throws FileRefused {
        if (!Files.isDirectory(fileOrFolder)) return of(Exercise.read(fileOrFolder));
        List<Scenario> read = new ArrayList<>();
        for (Path file : files(fileOrFolder)) read.add(Exercise.read(file));
        if (read.isEmpty()) {
            throw new FileRefused(
                    fileOrFolder.toString(), "expected a scenario or a folder of them: no *" + SUFFIX + " in it");
        }
        return new ExerciseSet(read, ClassSet.entries(fileOrFolder));
    }

    private static List<Path> files(Path folder) throws FileRefused {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(f -> f.toString().endsWith(SUFFIX)).sorted().toList();
        } catch (IOException e) {
            throw new FileRefused(folder.toString(), "the folder can't be read");
        }
    }

    public List<Scenario> scenarios() {
        return scenarios;
    }

    /** Whom the class set was made for, in the index's order; empty where these are just scenarios. */
    public List<String> learners() {
        return List.copyOf(learnerOf.values());
    }

    /** Those of {@link #learners()} who are not among these, however the names are typed. */
    public List<String> missing(Collection<String> handedIn) {
        Set<String> here = handedIn.stream().map(LearnerName::key).collect(Collectors.toSet());
        return learners().stream()
                .filter(l -> !here.contains(LearnerName.key(l)))
                .toList();
    }

    /** Whom a variant was made for; empty where it was made for no one. */
    public String madeFor(Scenario scenario) {
        return learnerOf.getOrDefault(scenario.digest(), "");
    }

    /** What to call the exercise: the titles of its scenarios, each once. */
    public String title() {
        Set<String> titles =
                scenarios.stream().map(Scenario::title).collect(Collectors.toCollection(LinkedHashSet::new));
        return String.join(", ", titles);
    }

    /** Where an attempt belongs. */
    public sealed interface Place {
        record At(Scenario scenario) implements Place {}

        /** None of the scenarios has the attempt's id, or several have and the attempt doesn't say which. */
        record Elsewhere(String why) implements Place {}

        /** A scenario of this id is here, but not as it was when the attempt was made. */
        record Changed(Scenario now, String why) implements Place {}
    }

    public Place placeOf(Attempt attempt) {
        List<Scenario> named = byId.getOrDefault(attempt.scenario(), List.of());
        if (named.isEmpty()) {
            String here = byId.keySet().stream().map(id -> "\"" + id + "\"").collect(Collectors.joining(", "));
            return new Place.Elsewhere("an attempt at \"" + attempt.scenario() + "\", not at " + here);
        }
        if (!attempt.digest().isEmpty()) {
            for (Scenario one : named) if (one.digest().equals(attempt.digest())) return new Place.At(one);
            return byDigest(named);
        }
        if (named.size() == 1) return new Place.At(named.get(0));
        return new Place.Elsewhere("an attempt at \"" + attempt.scenario() + "\" without a digest, so that it can't be"
                + " told which of the " + named.size() + " variants it was made on");
    }

    /** No scenario has the attempt's digest. One that was not read from a file has none to compare. */
    private static Place byDigest(List<Scenario> named) {
        if (named.size() > 1) {
            return new Place.Elsewhere(
                    "made on none of the " + named.size() + " variants here: from another set, or changed since");
        }
        Scenario only = named.get(0);
        if (only.digest().isEmpty()) return new Place.At(only);
        return new Place.Changed(
                only, "the scenario was changed since this attempt was made, or comes from another set");
    }
}
