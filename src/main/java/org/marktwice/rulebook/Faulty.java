package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Chance;

/**
 * Work by another hand, with slips in it to be found: a perfect attempt that slips were made in, not handed in. The same
 * for a seed on every machine.
 *
 * @param given what the other hand did
 * @param slips the slips in it, each on boards of its own
 */
public record Faulty(List<Action> given, List<Slipped> slips) {
    /** When it was begun makes no difference to what was done. */
    private static final String ANY_TIME = "2026-01-01T09:00:00Z";

    public Faulty {
        given = List.copyOf(given);
        slips = List.copyOf(slips);
    }

    /** Empty of slips where none can be made in this scenario. */
    public static Faulty of(Scenario scenario, int seed) {
        Attempt good = WorkedAttempt.of(scenario, "another hand", ANY_TIME);
        int wanted = wanted(scenario.level());
        List<Slipped> made = List.of();
        List<Slip> tried = new ArrayList<>();
        for (Slip slip : shuffled(seed)) {
            tried.add(slip);
            made = Slips.several(tried, scenario, good, seed);
            if (made.size() == wanted) break;
        }
        Attempt last = made.isEmpty() ? good : made.get(made.size() - 1).attempt();
        List<Action> given = last.actions().stream()
                .filter(a -> !(a instanceof Action.HandIn))
                .toList();
        return new Faulty(given, made);
    }

    /** More of them at higher levels. */
    private static int wanted(int level) {
        return level <= 2 ? 1 : level <= 4 ? 2 : 3;
    }

    private static List<Slip> shuffled(int seed) {
        Chance chance = Chance.of(seed);
        List<Slip> left = new ArrayList<>(SlipWords.toBeNamed());
        List<Slip> order = new ArrayList<>();
        while (!left.isEmpty()) order.add(left.remove(chance.whole(0, left.size() - 1)));
        return order;
    }
}
