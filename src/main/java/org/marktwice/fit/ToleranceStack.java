package org.marktwice.fit;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;

/**
 * Sizes that add up to one: by how much the sum may be out when each may. At worst all are out the same way; likely is the
 * root of the sum of the squares, as for errors that know nothing of one another.
 */
public record ToleranceStack(List<Link> links) {
    /** Of a link's errors in the trial, one in about 370 lies outside its tolerance: three standard deviations, as is usual. */
    private static final double DEVIATIONS = 3;

    public ToleranceStack {
        links = List.copyOf(links);
    }

    /** The sizes that add up to an overall size; empty where no parts that bear on each other lead through the job. */
    public static Optional<ToleranceStack> of(Drawing drawing, JobAxis axis, Tolerances tolerances) {
        return Chain.of(drawing, axis, tolerances);
    }

    /**
     * One size of the chain.
     *
     * @param part the part's id that it is made on
     * @param of what it is
     * @param size millimetres
     * @param plusMinus by how much it may be out
     * @param sign +1 where it adds to the sum, −1 where it takes from it
     */
    public record Link(String part, Of of, double size, double plusMinus, int sign) {
        /** What a size of the chain is. */
        public enum Of {
            LENGTH,
            WIDTH,
            THICKNESS,
            /** From the end that lengths are measured from to a shoulder. */
            SHOULDER,
            /** From a reference surface to a line that is gauged from it. */
            GAUGED;

            public String spoken() {
                return this == SHOULDER ? "end to shoulder" : name().toLowerCase(Locale.ROOT);
            }
        }
    }

    /** The sum as drawn. */
    public double nominal() {
        return links.stream().mapToDouble(l -> l.sign() * l.size()).sum();
    }

    /** ± at worst. */
    public double worst() {
        return links.stream().mapToDouble(Link::plusMinus).sum();
    }

    /** ± likely. */
    public double likely() {
        return Math.sqrt(
                links.stream().mapToDouble(l -> l.plusMinus() * l.plusMinus()).sum());
    }

    /**
     * So many jobs made at random, the error of each link normal, its tolerance three standard deviations. The same for a
     * seed.
     */
    public Trial trial(int jobs, long seed) {
        Random random = new Random(seed);
        double[] off = new double[jobs];
        for (int i = 0; i < jobs; i++) {
            for (Link link : links) off[i] += link.sign() * link.plusMinus() / DEVIATIONS * random.nextGaussian();
        }
        Arrays.sort(off);
        return new Trial(off);
    }

    /** How much too large the sums of a trial came out, sorted. */
    public static final class Trial {
        private final double[] off;

        private Trial(double[] sorted) {
            this.off = sorted;
        }

        public int jobs() {
            return off.length;
        }

        public double mean() {
            double sum = 0;
            for (double o : off) sum += o;
            return sum / off.length;
        }

        public double deviation() {
            double mean = mean();
            double sum = 0;
            for (double o : off) sum += (o - mean) * (o - mean);
            return Math.sqrt(sum / off.length);
        }

        /** Below which so large a share of all sums lies. */
        public double below(double share) {
            return off[(int) Math.min(off.length - 1L, Math.max(0L, Math.round(share * (off.length - 1))))];
        }

        /** The share of the jobs that are out by no more than ± so much. */
        public double within(double plusMinus) {
            int in = 0;
            for (double o : off) {
                if (Math.abs(o) <= plusMinus) in++;
            }
            return (double) in / off.length;
        }

        /** How many sums fall into each of so many even bars from −most to +most; what lies beyond counts in the last bars. */
        public int[] bars(int bars, double most) {
            int[] counts = new int[bars];
            for (double o : off) {
                int bar = most > 0 ? (int) Math.floor((o + most) / (2 * most) * bars) : bars / 2;
                counts[Math.max(0, Math.min(bars - 1, bar))]++;
            }
            return counts;
        }
    }
}
