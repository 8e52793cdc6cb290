package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.advice.Options;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.Reason;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Turn;
import org.marktwice.fit.WorkedSettingOut;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Surface;

/**
 * The whole exercise worked as a careful hand would, from the model answer: boards that serve nothing are set aside, a
 * part that none of them clears is left waiting, each board in use is proved, marked, named, measured where a knot is
 * near, and turned. Where several turns are as good for the joints, the one that loses least on the other rules is taken.
 */
public final class WorkedAttempt {
    /** Turns whose clearance is no more than this below the best are tried as equals, millimetres. */
    private static final double AS_GOOD = 0.5;

    private WorkedAttempt() {}

    /** The attempt, handed in. */
    public static Attempt of(Scenario scenario, String learner, String started) {
        ModelAnswer answer = clearOnly(ModelAnswer.of(scenario));
        boolean waits = answer.supplied() < scenario.drawing().parts().size();
        Attempt attempt = new Attempt(scenario.id(), scenario.digest(), learner, started, List.of());
        for (Board board : scenario.boards()) {
            if (answer.of(board).isPresent()) continue;
            Optional<Reason> refused = refusal(scenario, board);
            if (refused.isEmpty() && waits) refused = Optional.of(leftOver(scenario, answer, board));
            if (refused.isEmpty()) continue;
            Reason reason = refused.get();
            attempt = add(attempt, t -> new Action.SetAside(t, board.id(), reason));
        }
        Situation start = Situation.of(Bench.of(scenario));
        List<Placing> chosen =
                new ArrayList<>(answer.placings().stream().map(Option::placing).toList());
        for (int i = 0; i < chosen.size(); i++) chosen.set(i, leastLost(start, attempt, chosen, i));
        return add(setOut(work(attempt, scenario, chosen), scenario, chosen), Action.HandIn::new);
    }

    /** Once every board has its place, so that mates are at hand. */
    private static Attempt setOut(Attempt attempt, Scenario scenario, List<Placing> placings) {
        if (!scenario.stages().contains(Stage.SETTING_OUT) && !scenario.stages().contains(Stage.FIT)) return attempt;
        Map<String, String> boards = placings.stream()
                .collect(Collectors.toMap(p -> p.part().id(), p -> p.board().id()));
        Attempt done = attempt;
        for (Placing placing : placings) {
            int before = done.actions().size();
            for (WorkedSettingOut.Timed step : WorkedSettingOut.steps(placing, boards, before)) {
                done = add(done, step::at);
            }
        }
        return done;
    }

    /** A part that none clears is left waiting. */
    private static ModelAnswer clearOnly(ModelAnswer answer) {
        return new ModelAnswer(answer.placings().stream().filter(Option::clear).toList());
    }

    /** Why a board that could serve elsewhere doesn't help while parts wait. */
    private static Reason leftOver(Scenario scenario, ModelAnswer answer, Board board) {
        boolean fits = scenario.drawing().parts().stream()
                .filter(p -> answer.of(p).isEmpty())
                .anyMatch(p -> Options.unfit(scenario, board, p).isEmpty());
        return fits ? Reason.KNOT_IN_EVERY_TURN : Reason.NOT_NEEDED;
    }

    private static Attempt work(Attempt attempt, Scenario scenario, List<Placing> placings) {
        Attempt done = attempt;
        for (Placing placing : placings) {
            for (BoardWork.Step step : BoardWork.on(placing, scenario)) done = add(done, step);
        }
        return done;
    }

    private static Placing leastLost(Situation start, Attempt before, List<Placing> placings, int which) {
        return alternatives(start.scenario(), placings.get(which)).stream()
                .min(Comparator.comparingDouble(alternative -> {
                    List<Placing> tried = new ArrayList<>(placings);
                    tried.set(which, alternative);
                    return lost(start, work(before, start.scenario(), tried));
                }))
                .orElseThrow();
    }

    /** The placing itself, and the best trim of every other turn that does as well by the joints. */
    private static List<Placing> alternatives(Scenario scenario, Placing best) {
        Option given = Options.judge(scenario, best);
        List<Placing> all = new ArrayList<>(List.of(best));
        Part part = best.part();
        for (Turn turn : Options.turns(best.board(), part)) {
            Option other = Options.best(scenario, best.board(), part, turn);
            boolean asGood = other.clear() == given.clear() && other.clearance() >= given.clearance() - AS_GOOD;
            if (asGood && !turn.equals(best.turn())) all.add(other.placing());
        }
        return all;
    }

    private static double lost(Situation start, Attempt attempt) {
        MarkSheet sheet = RuleBook.judge(start.at(bench(start.scenario(), attempt)));
        return sheet.outOf() - sheet.marks();
    }

    private static Bench bench(Scenario scenario, Attempt attempt) {
        try {
            return Bench.after(scenario, attempt);
        } catch (CannotDo e) {
            throw new IllegalStateException("the model answer can always be done: " + e.getMessage(), e);
        }
    }

    /** Why this board can serve nothing; empty where it is merely left over. */
    private static Optional<Reason> refusal(Scenario scenario, Board board) {
        List<Part> parts = scenario.drawing().parts();
        List<Option> options = parts.stream()
                .flatMap(p -> Options.best(scenario, board, p).stream())
                .toList();
        if (options.stream().anyMatch(Option::clear)) return Optional.empty();
        if (!options.isEmpty()) return Optional.of(Reason.KNOT_IN_EVERY_TURN);
        return Optional.of(cupped(scenario, board) ? Reason.CUPPED : Reason.WRONG_SIZE);
    }

    private static boolean cupped(Scenario scenario, Board board) {
        double limit = scenario.practice().cupRatio().poorLimit(board.size().width());
        double cup = Seasoned.now(board).cup(Surface.FACE_1).orElse(0);
        return Math.abs(cup) > limit;
    }

    /** Adds an action some seconds after the one before; a careful hand takes about six. */
    private static Attempt add(Attempt attempt, BoardWork.Step step) {
        double t = attempt.actions().size() * 6.0 + 4;
        return attempt.with(step.at(t));
    }
}
