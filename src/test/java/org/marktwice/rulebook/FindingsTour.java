package org.marktwice.rulebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Scenario;

/**
 * Findings as learners get them: shipped exercises worked well, worked badly, with every slip that can be made in them, and
 * left off after every step.
 */
final class FindingsTour {
    private static final Path FOLDER = Path.of("scenarios");
    private static final List<String> EXERCISES =
            List.of("peg-rail", "key-ledge", "porch-shelf", "herb-trough", "plant-stage", "lantern-stand", "jar-shelf");

    private FindingsTour() {}

    /** @param finding what was found in this situation */
    record Met(String exercise, Situation situation, MarkSheet.Entry entry) {
        Finding finding() {
            return entry.finding();
        }

        Scenario scenario() {
            return situation.scenario();
        }

        String says() {
            return Texts.says(finding(), scenario());
        }

        String instead() {
            return Texts.instead(finding(), scenario());
        }
    }

    /** Every finding of the tour, in an order that stays the same. */
    static Stream<Met> all() {
        return EXERCISES.stream().flatMap(FindingsTour::of);
    }

    private static Stream<Met> of(String exercise) {
        Scenario scenario = scenario(exercise);
        List<Attempt> attempts = new ArrayList<>();
        attempts.add(shipped(exercise, "perfect", scenario));
        Attempt flawed = shipped(exercise, "flawed", scenario);
        for (int steps = flawed.actions().size(); steps >= 0; steps--) attempts.add(flawed.upTo(steps));
        Attempt good = WorkedAttempt.of(scenario, "P07", "2026-01-12T09:30:00Z");
        for (Slip slip : Slip.values()) {
            Slips.all(slip, scenario, good).forEach(s -> attempts.add(s.attempt()));
        }
        for (int seed = 1; seed <= 3; seed++) attempts.addAll(anothersWork(scenario, seed));
        Situation start = Situation.of(Bench.of(scenario));
        return attempts.stream().flatMap(attempt -> {
            Situation situation = start.at(bench(scenario, attempt));
            return RuleBook.judge(situation).entries().stream().map(e -> new Met(exercise, situation, e));
        });
    }

    /** Another's work taken over: nothing named yet; nothing named, and handed in; named rightly; named on the wrong board. */
    private static List<Attempt> anothersWork(Scenario scenario, int seed) {
        Faulty other = Faulty.of(scenario, seed);
        List<Action> over = new ArrayList<>(other.given());
        over.add(new Action.TakeOver(900, seed));
        Attempt taken = new Attempt(scenario.id(), "", "P07", "2026-01-12T09:30:00Z", over);
        Attempt rightly = taken;
        Attempt elsewhere = taken;
        for (Slipped slip : other.slips()) {
            String id = slip.slip().id();
            rightly = rightly.with(new Action.Fault(910, slip.board(), id));
            String otherBoard = scenario.boards().stream()
                    .map(b -> b.id())
                    .filter(b -> !slip.touches().contains(b))
                    .findFirst()
                    .orElse(slip.board());
            elsewhere = elsewhere.with(new Action.Fault(910, otherBoard, id));
        }
        Attempt madeUp =
                taken.with(new Action.Fault(910, scenario.boards().get(0).id(), "handed-in-unchecked"));
        return List.of(
                taken,
                taken.with(new Action.HandIn(920)),
                rightly.with(new Action.HandIn(920)),
                elsewhere.with(new Action.HandIn(920)),
                madeUp,
                madeUp.with(new Action.HandIn(920)));
    }

    private static Scenario scenario(String exercise) {
        try {
            return ScenarioFile.read(FOLDER.resolve(exercise + ".scenario.json"));
        } catch (FileRefused e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private static Attempt shipped(String exercise, String kind, Scenario scenario) {
        Path file = FOLDER.resolve("attempts").resolve(exercise + "-" + kind + ".attempt.jsonl");
        try {
            return AttemptFile.open(file, scenario).file().attempt();
        } catch (FileRefused e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private static Bench bench(Scenario scenario, Attempt attempt) {
        try {
            return Bench.after(scenario, attempt);
        } catch (CannotDo e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }
}
