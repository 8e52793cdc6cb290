package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.scenario.Stage;

/** In work taken over from another hand: each slip is named, on the board where it was made, and none that was not made. */
final class FaultNamed implements Rule {
    private static final double RIGHT_SLIP_WRONG_BOARD = 0.5;

    @Override
    public String id() {
        return "fault-named";
    }

    @Override
    public Stage stage() {
        return Stage.FACES;
    }

    @Override
    public double worth() {
        return 3;
    }

    @Override
    public boolean isAsked(Situation situation) {
        return situation.bench().takenOver() > 0;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        Optional<Faulty> other = other(situation);
        if (other.isEmpty()) return List.of();
        List<Action.Fault> named = new ArrayList<>(situation.bench().faults());
        List<Finding> findings = new ArrayList<>();
        List<Slipped> left = new ArrayList<>();
        for (Slipped slip : other.get().slips()) {
            Optional<Action.Fault> rightly = named.stream()
                    .filter(f ->
                            f.slip().equals(slip.slip().id()) && slip.touches().contains(f.board()))
                    .findFirst();
            rightly.ifPresent(named::remove);
            rightly.ifPresentOrElse(f -> findings.add(sound(situation, slip, f)), () -> left.add(slip));
        }
        for (Slipped slip : left) findings.add(missed(situation, slip, named));
        for (Action.Fault f : named) findings.add(notMade(situation, f));
        return findings;
    }

    /** What the other hand did; empty where the journal doesn't begin with it, as after a change of the program. */
    private static Optional<Faulty> other(Situation situation) {
        Bench bench = situation.bench();
        int step = bench.takenOver();
        if (step == 0 || !(bench.action(step) instanceof Action.TakeOver over)) return Optional.empty();
        Faulty other = situation.faulty(over.seed());
        return Optional.of(other).filter(o -> o.given().equals(bench.log().subList(0, step - 1)));
    }

    private Finding sound(Situation situation, Slipped slip, Action.Fault named) {
        return Found.by(this, Subject.board(named.board()))
                .at(step(situation, named))
                .sound(
                        "says.sound",
                        "board",
                        named.board(),
                        "slip",
                        title(slip.slip().id()));
    }

    private Finding missed(Situation situation, Slipped slip, List<Action.Fault> named) {
        Object[] values = {
            "board", slip.board(),
            "slip", title(slip.slip().id()),
            "rule", Texts.of(slip.rule()).title(),
            "why", Texts.of(slip.rule()).why()
        };
        if (!situation.bench().handedIn()) {
            return Found.by(this, Subject.JOB).at(situation.bench().takenOver()).open("says.open");
        }
        Optional<Action.Fault> elsewhere =
                named.stream().filter(f -> f.slip().equals(slip.slip().id())).findFirst();
        Found found = Found.by(this, Subject.board(slip.board())).instead("better.rule", values);
        if (elsewhere.isEmpty()) return found.wrong("says.missed", values);
        named.remove(elsewhere.get());
        Object[] other = {
            "board",
            slip.board(),
            "slip",
            title(slip.slip().id()),
            "named",
            elsewhere.get().board()
        };
        return found.at(step(situation, elsewhere.get())).close(RIGHT_SLIP_WRONG_BOARD, "says.elsewhere", other);
    }

    private Finding notMade(Situation situation, Action.Fault named) {
        Found found = Found.by(this, Subject.board(named.board())).at(step(situation, named));
        Object[] values = {"board", named.board(), "slip", title(named.slip())};
        return situation.bench().handedIn()
                ? found.instead("better.prove", values).wrong("says.not-made", values)
                : found.open("says.named", values);
    }

    private static int step(Situation situation, Action.Fault named) {
        return situation.bench().log().indexOf(named) + 1;
    }

    private static String title(String slip) {
        String title = SlipWords.title(slip);
        return Character.toLowerCase(title.charAt(0)) + title.substring(1);
    }
}
