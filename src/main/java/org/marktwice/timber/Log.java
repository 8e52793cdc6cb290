package org.marktwice.timber;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A log: a straight stem about its pith, with the branches grown into it. Its frame is a board's with the pith on the x
 * axis, and x runs up the tree.
 *
 * <p>Besides {@link Habit}'s ranges: the branches of a whorl stand evenly round the stem to ±14°, within 8 mm along it;
 * up to two in three of a whorl's branches, and half to all of the others, died early and were overgrown 10 to 60 mm beyond
 * where they were live, so that the outer wood is clear of them; the rest run out through the bark. All of this is a default of this
 * program's own.
 *
 * <p>How knotty it is, 0 to 1, says how near to the crown it was cut: there whorls are closer and have more branches, more
 * branches stand alone, and fewer are overgrown.
 *
 * @param radius under the bark, millimetres
 * @param length millimetres
 * @param ringWidth mean, millimetres
 * @param branches by their place along the stem; figures are whole tenths
 */
public record Log(double radius, double length, double ringWidth, List<Knot> branches) {
    private static final double WHORL_JITTER = 8;
    private static final double AZIMUTH_JITTER = 14;
    /** Branches of a log pruned young end this near to the pith, millimetres: all the wood beyond is clear. */
    static final double PRUNED = 18;

    public Log {
        branches = List.copyOf(branches);
    }

    /**
     * @param radius millimetres
     * @param length millimetres
     * @param knotty 0 to 1
     * @param pruned whether its branches were cut off while the stem was thin
     */
    static Log grow(Species species, double radius, double length, double knotty, boolean pruned, Chance chance) {
        Habit habit = Habit.of(species);
        double ringWidth = habit.ring().tenths(chance);
        List<Knot> branches = new ArrayList<>();
        if (habit.hasWhorls()) whorls(branches, habit, length, knotty, chance);
        scattered(branches, habit, length, knotty, chance);
        if (pruned) branches.replaceAll(Log::pruned);
        branches.sort(Comparator.comparingDouble(Knot::x));
        return new Log(radius, length, ringWidth, branches);
    }

    private static Knot pruned(Knot branch) {
        return new Knot(
                branch.id(),
                branch.x(),
                branch.azimuth(),
                branch.lean(),
                branch.halfAngle(),
                branch.maxRadius(),
                branch.deadFrom(),
                PRUNED);
    }

    private static void whorls(List<Knot> branches, Habit habit, double length, double knotty, Chance chance) {
        // A branch leans up the stem, so those that start below the log come into it as well.
        double x = -chance.between(0, habit.spacing().most());
        while (x < length) {
            int count = (int) StrictMath.rint(habit.perWhorl().towards(knotty, chance));
            double first = chance.between(-180, 180);
            for (int i = 0; i < count; i++) {
                double azimuth = first + 360.0 * i / count + chance.between(-AZIMUTH_JITTER, AZIMUTH_JITTER);
                double at = x + chance.between(-WHORL_JITTER, WHORL_JITTER);
                double radius = habit.whorlRadius().tenths(chance);
                branches.add(branch(branches.size(), at, azimuth, radius, (1 - knotty) * 2 / 3, habit, chance));
            }
            x += habit.spacing().towards(1 - knotty, chance);
        }
    }

    private static void scattered(List<Knot> branches, Habit habit, double length, double knotty, Chance chance) {
        double perMetre = habit.scattered().towards(knotty, chance);
        if (perMetre <= 0) return;
        double gap = 1000 / perMetre;
        for (double x = -gap * chance.share(); x < length; x += gap * chance.between(0.4, 1.6)) {
            double azimuth = chance.between(-180, 180);
            double radius = habit.scatteredRadius().tenths(chance);
            branches.add(branch(branches.size(), x, azimuth, radius, 1 - knotty / 2, habit, chance));
        }
    }

    private static Knot branch(
            int number, double x, double azimuth, double radius, double overgrown, Habit habit, Chance chance) {
        double live = habit.live().tenths(chance);
        // It thickens as long as it lives, and reaches its full thickness somewhat before it dies.
        double cone = live * chance.between(0.6, 1);
        double halfAngle = Math.max(0.1, Chance.tenth(StrictMath.atan(radius / cone) * 180 / Math.PI));
        double lean = habit.lean().tenths(chance);
        double stub = chance.tenths(10, 60);
        double endsAt = chance.with(overgrown) ? Chance.tenth(live + stub) : Double.POSITIVE_INFINITY;
        return new Knot("b" + (number + 1), Chance.tenth(x), azimuth(azimuth), lean, halfAngle, radius, live, endsAt);
    }

    /** In tenths, above -180 and up to 180. */
    static double azimuth(double degrees) {
        double turned = Chance.tenth(degrees);
        while (turned > 180) turned = Chance.tenth(turned - 360);
        while (turned <= -180) turned = Chance.tenth(turned + 360);
        return turned;
    }
}
