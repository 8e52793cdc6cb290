package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.scenario.Scenario;

/**
 * Makes slips in a good attempt: each is a transformation that changes what one board went through as a hand would that
 * slips there, and leaves the rest as it was. Where it can be made follows from the drawing, the boards and what was done,
 * never from what the rules say.
 */
public final class Slips {
    private Slips() {}

    /**
     * Every way to make this slip in an attempt; none where it can't occur.
     *
     * @param good an attempt that can be done in the scenario, such as {@link WorkedAttempt}
     */
    public static List<Slipped> all(Slip slip, Scenario scenario, Attempt good) {
        return all(slip, Situation.of(Bench.of(scenario)), good);
    }

    /** @param start the scenario with nothing done yet; what was computed for it serves again */
    public static List<Slipped> all(Slip slip, Situation start, Attempt good) {
        Slipping slipping = new Slipping(after(start, good), good);
        return switch (slip) {
            case MARKS_WITHOUT_SHARED_ARRIS -> MarkSlips.apart(slipping);
            case MARK_TO_WRONG_ARRIS -> MarkSlips.astray(slipping);
            case UNSOUND_SURFACE_MARKED -> MarkSlips.unsound(slipping);
            case THIRD_SURFACE_MARKED -> MarkSlips.third(slipping);
            case TWO_LEFTS -> HandSlips.twoLefts(slipping);
            case FACE_SIDES_NOT_AS_DRAWN -> HandSlips.notAsDrawn(slipping);
            case SQUARE_WALKED_ROUND -> SettingOutSlips.walkedRound(slipping);
            case GAUGED_FROM_BACK -> SettingOutSlips.gaugedFromBack(slipping);
            case CHAINED_SIZES -> SettingOutSlips.chained(slipping);
            case NOMINAL_THICKNESS -> SettingOutSlips.nominal(slipping);
            case WRONG_SIDE_OF_LINE -> SettingOutSlips.wrongSide(slipping);
            case RULE_MISREAD -> SettingOutSlips.misread(slipping);
            case HEART_SIDE_CONFUSED -> TurnSlips.heartSide(slipping);
            case KNOT_SEEN_ON_ONE_SURFACE -> TurnSlips.oneSurface(slipping);
            case HANDED_IN_UNCHECKED -> TurnSlips.unchecked(slipping);
            case MARKS_ON_SHEET_OR_SHAPED -> MarkSlips.unwanted(slipping);
            case TURNED_OVER_FOR_END_FOR_END -> TurnSlips.turnedOver(slipping);
            case REFUSED_OR_USED_WRONGLY -> RefusalSlips.all(slipping);
        };
    }

    /** One way to make the slip, the same for a seed on every machine; empty where it can't occur. */
    public static Optional<Slipped> one(Slip slip, Scenario scenario, Attempt good, long seed) {
        List<Slipped> all = all(slip, scenario, good);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(pick(seed, slip, all.size())));
    }

    /**
     * The attempt with each of these slips in turn, each on a board that none before it touched, where there is one. Those
     * that can't be made any more are left out.
     */
    public static List<Slipped> several(List<Slip> slips, Scenario scenario, Attempt good, long seed) {
        return several(slips, Situation.of(Bench.of(scenario)), good, seed);
    }

    /** @param start the scenario with nothing done yet; what was computed for it serves again */
    public static List<Slipped> several(List<Slip> slips, Situation start, Attempt good, long seed) {
        List<Slipped> made = new ArrayList<>();
        Set<String> touched = new HashSet<>();
        Attempt attempt = good;
        for (Slip slip : slips) {
            List<Slipped> all = all(slip, start, attempt);
            List<Slipped> free = all.stream()
                    .filter(s -> Collections.disjoint(touched, s.touches()))
                    .toList();
            if (free.isEmpty()) continue;
            Slipped next = free.get(pick(seed, slip, free.size()));
            touched.addAll(next.touches());
            attempt = next.attempt();
            made.add(next);
        }
        return List.copyOf(made);
    }

    /** A seed's choice among so many, spread by a finaliser of MurmurHash3 (a public-domain mixing function). */
    private static int pick(long seed, Slip slip, int of) {
        long h = seed * 31 + slip.number();
        h = (h ^ (h >>> 33)) * 0xff51afd7ed558ccdL;
        h = (h ^ (h >>> 33)) * 0xc4ceb9fe1a85ec53L;
        return (int) Math.floorMod(h ^ (h >>> 33), (long) of);
    }

    private static Situation after(Situation start, Attempt attempt) {
        try {
            return start.at(Bench.after(start.scenario(), attempt));
        } catch (CannotDo e) {
            throw new IllegalArgumentException("the attempt can't be done: " + e.getMessage(), e);
        }
    }
}
