package org.marktwice.feedback;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.scenario.Scenario;

/** An attempt step by step: the bench as it was after each, and the findings that each decided. No Swing. */
public final class ReplayModel {
    private final List<Bench> benches;
    private final List<SheetModel.Line> findings;

    private ReplayModel(List<Bench> benches, SheetModel sheet) {
        this.benches = List.copyOf(benches);
        this.findings = sheet.groups().stream()
                .flatMap(g -> g.lines().stream())
                .filter(l -> l.finding().step() != null)
                .toList();
    }

    /** @throws CannotDo where an action of the attempt can't be done in this scenario */
    public static ReplayModel of(Scenario scenario, Attempt attempt, SheetModel sheet) throws CannotDo {
        List<Bench> benches = new ArrayList<>();
        Bench bench = Bench.of(scenario);
        benches.add(bench);
        for (Action action : attempt.actions()) {
            bench = bench.after(action);
            benches.add(bench);
        }
        return new ReplayModel(benches, sheet);
    }

    /** How many actions there are; step 0 is the bench before the first. */
    public int last() {
        return benches.size() - 1;
    }

    public Bench after(int step) {
        return benches.get(step);
    }

    /** @param step from 1 */
    public Action action(int step) {
        return benches.get(last()).log().get(step - 1);
    }

    /** Such as {@code Step 3 of 12}; another hand's step is told as that. */
    public String place(int step) {
        boolean anothers = step > 0 && step < benches.get(last()).takenOver();
        return (anothers ? "Another hand · step " : "Step ") + step + " of " + last();
    }

    /** When it was done, minutes and seconds after the start; empty for step 0. */
    public String time(int step) {
        if (step == 0) return "";
        long seconds = Math.round(action(step).t());
        return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
    }

    /** The findings that this step decided, worst first. */
    public List<SheetModel.Line> decidedBy(int step) {
        return findings.stream()
                .filter(l -> l.finding().step() != null && l.finding().step() == step)
                .toList();
    }

    /** The next step after this one (or the one before it) that decided a finding; empty where there is none. */
    public OptionalInt nextDeciding(int step, boolean forwards) {
        IntStream steps = findings.stream().mapToInt(l -> step(l)).sorted();
        return forwards
                ? steps.filter(s -> s > step).min()
                : steps.filter(s -> s < step).max();
    }

    private static int step(SheetModel.Line line) {
        Integer step = line.finding().step();
        return step == null ? 0 : step;
    }

    /** The board that was in hand at this step: the one last worked on, or at first the first on the rack. */
    public String boardAt(int step) {
        Optional<String> worked = benches.get(step).log().stream()
                .filter(Action.OnBoard.class::isInstance)
                .map(a -> ((Action.OnBoard) a).board())
                .reduce((earlier, later) -> later);
        return worked.orElseGet(() -> benches.get(0).boards().get(0).board().id());
    }
}
