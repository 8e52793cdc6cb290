package org.marktwice.timber;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A knot's body found from where it shows: the branch from the pith whose traces come nearest to the readings, by least
 * squares, the readings taken as good to {@link #READING}. What few readings leave open is filled from what branches are
 * like (a weak prior), and shows in the spread. Seen on one surface only, a branch can lean either way; it is taken to run
 * square to the pith, in the middle of what it can be.
 *
 * @param knot the body; it runs on through the board
 * @param given where it was found to show
 * @param worst the greatest difference between a reading and the body's trace, millimetres
 * @param spread how far the body may still be from where the fit has it, on whatever surface it comes through: one
 *     standard deviation, millimetres
 */
public record KnotFit(Knot knot, List<Showing> given, double worst, double spread) {
    /** How well a middle or a size is read with a rule: one standard deviation, millimetres. */
    public static final double READING = 0.7;

    /** Beyond this a reading is wrong, or belongs to another knot, millimetres. */
    private static final double WRONG = 4;

    private static final double SURE = 2.5;
    private static final double FAIR = 8;
    /** Two deviations of more than this say nothing of use, millimetres. */
    private static final double NOTHING = 50;

    /** Branches as they mostly are: our own default, the middle of the species' habits, and their spread. */
    private static final double LEAN_SPREAD = 20;

    private static final double SLOPE = 0.14;
    private static final double SLOPE_SPREAD = 0.6;
    /** How far the thickest part of a branch exceeds what shows of it, as a logarithm. */
    private static final double RADIUS_SPREAD = 0.2;

    /** x, azimuth, lean, and the logarithms of the cone's slope and of the greatest radius. */
    private static final double[] STEPS = {1e-3, 1e-3, 1e-3, 1e-4, 1e-4};

    public KnotFit {
        given = List.copyOf(given);
    }

    /** How far the body can be relied on. */
    public enum Sureness {
        /** It lies where the fit has it, as well as a rule tells. */
        SURE,
        /** Found from one surface, or from readings that don't quite agree; measure before deciding where it is near. */
        FAIR,
        /** The readings don't lie on one branch from this pith, or leave too much open: measure again. */
        DOUBTFUL;

        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** How far its flanks may be out, in words: two standard deviations, or that nothing can be said. */
    public String mayBeOut() {
        return 2 * spread > NOTHING
                ? "no telling how far it reaches"
                : String.format(Locale.ROOT, "give or take %.1f mm", 2 * spread);
    }

    public Sureness sureness() {
        if (!onOneBranch() || spread > FAIR) return Sureness.DOUBTFUL;
        return spread > SURE ? Sureness.FAIR : Sureness.SURE;
    }

    /** @throws IllegalArgumentException where it shows nowhere */
    public static KnotFit of(String id, List<Showing> given, Pith pith, Size size) {
        if (given.isEmpty()) throw new IllegalArgumentException("knot " + id + " shows nowhere");
        return new Search(id, given, pith, size).fit();
    }

    private static final class Search {
        private final String id;
        private final List<Showing> given;
        private final Pith pith;
        private final Size size;
        private final TraceModel model;
        private final double radiusSeen;

        Search(String id, List<Showing> given, Pith pith, Size size) {
            this.id = id;
            this.given = given;
            this.pith = pith;
            this.size = size;
            this.model = new TraceModel(pith, size);
            this.radiusSeen = given.stream()
                    .mapToDouble(s -> Math.max(0.25, Math.min(s.length(), s.width()) / 2))
                    .max()
                    .orElseThrow();
        }

        KnotFit fit() {
            LeastSquares squares = new LeastSquares(this::residuals, STEPS);
            LeastSquares.Found best = squares.from(start(SLOPE));
            // where the first valley is not the right one, its residuals tell
            for (double slope : new double[] {0.05, 0.35}) {
                if (best.cost() <= 2 * given.size()) break;
                LeastSquares.Found other = squares.from(start(slope));
                if (other.cost() < best.cost()) best = other;
            }
            Knot bare = knot(best.point(), Double.POSITIVE_INFINITY);
            Knot knot = knot(best.point(), deadFrom(bare));
            return new KnotFit(knot, given, worst(knot), spread(squares, best.point()));
        }

        /** Along the branch, the plane across it in which a surface's point lies. */
        private double along(Knot knot, Showing showing) {
            double[] o = {knot.x(), pith.y(), pith.z()};
            double s = 0;
            for (int axis = 0; axis < 3; axis++) {
                s += (showing.along(axis, size) - o[axis]) * knot.direction().get(axis);
            }
            return Math.max(0, s);
        }

        /** Halfway between the last place where it is live and the first where it is dead. */
        private double deadFrom(Knot knot) {
            double live = 0;
            double dead = Double.POSITIVE_INFINITY;
            for (Showing one : given) {
                double s = along(knot, one);
                if (one.dead()) dead = Math.min(dead, s);
                else live = Math.max(live, s);
            }
            if (Double.isInfinite(dead)) return dead;
            return dead > live ? (live + dead) / 2 : dead / 2;
        }

        private Knot knot(double[] p, double deadFrom) {
            double halfAngle = Math.toDegrees(Math.atan(Math.exp(p[3])));
            return new Knot(
                    id,
                    p[0],
                    p[1],
                    Math.max(1, Math.min(179, p[2])),
                    halfAngle,
                    Math.exp(p[4]),
                    deadFrom,
                    Double.POSITIVE_INFINITY);
        }

        /** A line through the pith and what shows, square to the pith where only one place is known. */
        private double[] start(double slope) {
            Showing far = given.get(0);
            for (Showing one : given) if (distance(one) > distance(far)) far = one;
            Showing near = given.get(0);
            for (Showing one : given) if (distance(one) < distance(near)) near = one;
            double azimuth = Math.toDegrees(Math.atan2(far.along(2, size) - pith.z(), far.along(1, size) - pith.y()));
            double apart = distance(far) - distance(near);
            double perMm = apart > 1 ? (far.along(0, size) - near.along(0, size)) / apart : 0;
            double lean = Math.toDegrees(Math.atan2(1, perMm));
            double x = far.along(0, size) - perMm * distance(far);
            return new double[] {x, azimuth, lean, Math.log(slope), Math.log(radiusSeen)};
        }

        private double distance(Showing showing) {
            return pith.distance(showing.along(1, size), showing.along(2, size));
        }

        /** In units of what each may be off. */
        private double[] residuals(double[] p) {
            Knot knot = knot(p, Double.POSITIVE_INFINITY);
            double[] off = new double[4 * given.size() + 4];
            int n = 0;
            for (Showing one : given) {
                double[] read = one.readings();
                double[] found = shown(knot, one.surface());
                for (int i = 0; i < 4; i++) off[n++] = (found[i] - read[i]) / READING;
            }
            off[n++] = (p[2] - 90) / LEAN_SPREAD;
            off[n++] = (p[3] - Math.log(SLOPE)) / SLOPE_SPREAD;
            off[n++] = (p[4] - Math.log(radiusSeen)) / RADIUS_SPREAD;
            // no branch runs along the pith
            off[n] = Math.max(0, Math.abs(p[2] - 90) - 75);
            return off;
        }

        /** Where a knot shows, or would beyond the surface's end; a knot that runs beside it is far off. */
        private double[] shown(Knot knot, Surface surface) {
            return model.readings(knot, surface)
                    .or(() -> model.beyond(knot, surface))
                    .orElse(new double[] {1e4, 1e4, 0, 0});
        }

        private double worst(Knot knot) {
            KnotBody body = KnotBody.of(knot, size, pith);
            double worst = 0;
            for (Showing one : given) {
                Optional<Trace> trace = body.trace(one.surface());
                double[] found = trace.map(t -> Showing.of(t).readings()).orElseGet(() -> shown(knot, one.surface()));
                for (int i = 0; i < 4; i++) worst = Math.max(worst, Math.abs(found[i] - one.readings()[i]));
            }
            return worst;
        }

        /** Of the flanks of every trace that it has, known or not. */
        private double spread(LeastSquares squares, double[] point) {
            double[][] covariance = squares.covariance(point);
            double wide = Math.max(1, Math.sqrt(2 * squares.from(point).cost() / Math.max(1, 4 * given.size() - 1)));
            Knot knot = knot(point, Double.POSITIVE_INFINITY);
            List<Double> spreads = new ArrayList<>();
            for (Surface surface : Surface.LONG) {
                if (model.readings(knot, surface).isEmpty()) continue;
                double[][] slopes = LeastSquares.slopes(p -> flanks(shown(knot(p, 0), surface)), point, STEPS);
                for (double[] slope : slopes) spreads.add(wide * Math.sqrt(variance(slope, covariance)));
            }
            return spreads.stream().mapToDouble(s -> s).max().orElse(READING);
        }

        private static double[] flanks(double[] readings) {
            double[] half = {readings[2] / 2, readings[3] / 2};
            return new double[] {
                readings[0] - half[0], readings[0] + half[0], readings[1] - half[1], readings[1] + half[1]
            };
        }

        private static double variance(double[] slope, double[][] covariance) {
            double sum = 0;
            for (int i = 0; i < slope.length; i++) {
                for (int j = 0; j < slope.length; j++) sum += slope[i] * covariance[i][j] * slope[j];
            }
            return Math.max(0, sum);
        }
    }

    /** Whether the readings lie on one branch from this pith, as well as readings can. */
    public boolean onOneBranch() {
        return worst <= WRONG;
    }

    /** The fit of one reading of a knot whose readings don't belong together: as doubtful as all of them are. */
    KnotFit asDoubtfulAs(KnotFit all) {
        return new KnotFit(knot, given, Math.max(worst, all.worst), spread);
    }

    /** How many surfaces it was measured on. */
    public int surfaces() {
        return (int) given.stream().map(Showing::surface).distinct().count();
    }

    @Override
    public String toString() {
        return knot + " from "
                + Arrays.toString(given.stream().map(s -> s.surface().id()).toArray());
    }
}
