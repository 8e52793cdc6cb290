package org.marktwice.view;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.marktwice.feedback.SheetModel;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;

/** The exercises on the start page and how the learner stands with each; no Swing. */
final class Exercises {
    private final List<Scenario> scenarios = new ArrayList<>();
    private final Map<Scenario, LearnerFolder.Standing> standings = new HashMap<>();

    Exercises(List<Scenario> shelf) {
        scenarios.addAll(shelf);
    }

    List<Scenario> all() {
        return List.copyOf(scenarios);
    }

    /** Puts an exercise from a file among the others, after those of its level; in the place of one with the same id. */
    void add(Scenario opened) {
        scenarios.removeIf(s -> s.id().equals(opened.id()));
        int at = 0;
        while (at < scenarios.size() && scenarios.get(at).level() <= opened.level()) at++;
        scenarios.add(at, opened);
    }

    /** Whether this is the first exercise of its level. */
    boolean opensLevel(int index) {
        return index == 0
                || scenarios.get(index - 1).level() != scenarios.get(index).level();
    }

    void stands(Scenario scenario, LearnerFolder.Standing standing) {
        standings.put(scenario, standing);
    }

    void forgetStandings() {
        standings.clear();
    }

    LearnerFolder.Standing standing(Scenario scenario) {
        return standings.getOrDefault(scenario, LearnerFolder.Standing.NONE);
    }

    /** How many of a level's exercises have been handed in, in words; nothing before the first. */
    String done(int level) {
        List<Scenario> all = scenarios.stream().filter(s -> s.level() == level).toList();
        long done = all.stream().filter(s -> standing(s).best().isPresent()).count();
        return done == 0 ? "" : done + " of " + all.size() + " done";
    }

    /** The mark in words: {@code best 17.5 of 21}, {@code begun} or nothing. */
    String mark(Scenario scenario) {
        LearnerFolder.Standing standing = standing(scenario);
        Optional<String> best = standing.best()
                .map(b -> "best " + SheetModel.number(b.marks()) + " of " + SheetModel.number(b.outOf()));
        if (scenario.practice().guidance() == Practice.Guidance.EXAMINATION && standing.tries() > 0) {
            return standing.left().isPresent() ? "handed in · begun" : "handed in";
        }
        if (standing.left().isPresent()) return best.map(b -> b + " · begun").orElse("begun");
        return best.orElse("");
    }

    static String stages(Scenario scenario) {
        return scenario.stages().stream().map(Stage::title).collect(Collectors.joining(", "));
    }

    static String stuff(Scenario scenario) {
        int parts = scenario.drawing().parts().size();
        int boards = scenario.boards().size();
        return count(parts, "part") + " to make, " + count(boards, "board") + " on the rack";
    }

    static String count(int n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }

    /** When one is told, and about how long it takes where the exercise says so. */
    static String told(Scenario scenario) {
        String when = whenTold(scenario);
        return scenario.minutes().isPresent()
                ? when + " Allow about " + count(scenario.minutes().getAsInt(), "minute") + "."
                : when;
    }

    private static String whenTold(Scenario scenario) {
        return switch (scenario.practice().guidance()) {
            case EACH_STEP -> "You are told after each step.";
            case EACH_PART -> "You are told when a part is settled.";
            case AT_HAND_IN -> "You are told when you hand in.";
            case EXAMINATION -> "An examination: nothing is told; what you hand in is kept for your teacher.";
        };
    }
}
