package org.marktwice.advice;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/**
 * One column a row, exactly the best: most rows supplied, most of them clear, greatest least clearance, greatest sum.
 *
 * <p>The first two and the last of these go into one weight an entry, in whole micrometres, each worth more than all the
 * later ones together; the Hungarian method of JGraphT finds the greatest sum of weights. The third, a bottleneck, is
 * found by leaving out entries below a threshold. Thresholds are first sifted by what must hold at least (so many rows
 * can be supplied at all, so many with clear entries), which is cheap and nearly always settles it; only between that
 * bound and the best solution known does the method run again.
 */
public final class Assignment {
    /** A whole number below this is exact in a {@code double}, which the library reckons in. */
    private static final double EXACT = 0x1p53;

    private static final int NONE = -1;

    private final int rows;
    private final int columns;
    /** The clearance of each entry; −1 where there is none. */
    private final long[][] microns;

    private final boolean[][] clear;

    private Assignment(List<? extends List<Optional<Worth>>> table) {
        rows = table.size();
        columns = rows == 0 ? 0 : table.get(0).size();
        microns = new long[rows][columns];
        clear = new boolean[rows][columns];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Optional<Worth> worth = table.get(row).get(column);
                microns[row][column] = worth.map(Worth::microns).orElse((long) NONE);
                clear[row][column] = worth.isPresent() && worth.get().clear();
            }
        }
    }

    /** What an entry is worth: whether it is clear, and its clearance in whole micrometres, from 0 to 25 mm. */
    public record Worth(boolean clear, long microns) {
        /** @throws IllegalArgumentException where the clearance is out of range */
        public Worth {
            if (microns < 0 || microns > LIMIT) throw new IllegalArgumentException("clearance of " + microns + " µm");
        }

        private static final long LIMIT = Math.round(Option.CAP * 1000);

        static Worth of(boolean clear, double mm) {
            return new Worth(clear, Math.round(mm * 1000));
        }
    }

    /**
     * The best assignment of columns to rows.
     *
     * @param table by row and column; empty where the column can't serve the row
     * @return each row's column, −1 where it has none
     */
    public static int[] best(List<? extends List<Optional<Worth>>> table) {
        return new Assignment(table).solve();
    }

    private int[] solve() {
        int[] best = heaviest(0);
        Score goal = score(best);
        if (goal.supplied == 0) return best;
        long[] thresholds = Arrays.stream(microns)
                .flatMapToLong(Arrays::stream)
                .filter(c -> c > goal.least)
                .sorted()
                .distinct()
                .toArray();
        int possible = 0; // how many of the thresholds may still do
        for (int top = thresholds.length; possible < top; ) {
            int middle = (possible + top + 1) / 2;
            if (mayDo(thresholds[middle - 1], goal)) possible = middle;
            else top = middle - 1;
        }
        int sure = 0;
        for (int trial = possible; sure < possible; trial = (sure + possible + 1) / 2) {
            int[] found = heaviest(thresholds[trial - 1]);
            Score score = score(found);
            if (score.supplied == goal.supplied && score.clear == goal.clear) {
                best = found;
                sure = trial;
            } else {
                possible = trial - 1;
            }
        }
        return best;
    }

    private record Score(int supplied, int clear, long least) {}

    private Score score(int[] columnOf) {
        int supplied = 0;
        int cleared = 0;
        long least = Worth.LIMIT;
        for (int row = 0; row < rows; row++) {
            if (columnOf[row] == NONE) continue;
            supplied++;
            if (clear[row][columnOf[row]]) cleared++;
            least = Math.min(least, microns[row][columnOf[row]]);
        }
        return new Score(supplied, cleared, least);
    }

    /** Whether enough rows can be supplied, and enough with clear entries, by entries from the threshold up. */
    private boolean mayDo(long threshold, Score goal) {
        return most(threshold, false) >= goal.supplied && most(threshold, true) >= goal.clear;
    }

    /** The greatest number of rows supplied, by augmenting paths. */
    private int most(long threshold, boolean clearOnly) {
        int[] rowOf = new int[columns];
        Arrays.fill(rowOf, NONE);
        int count = 0;
        for (int row = 0; row < rows; row++) {
            if (augment(row, threshold, clearOnly, rowOf, new boolean[columns])) count++;
        }
        return count;
    }

    private boolean augment(int row, long threshold, boolean clearOnly, int[] rowOf, boolean[] seen) {
        for (int column = 0; column < columns; column++) {
            if (seen[column] || microns[row][column] < threshold || (clearOnly && !clear[row][column])) continue;
            seen[column] = true;
            if (rowOf[column] == NONE || augment(rowOf[column], threshold, clearOnly, rowOf, seen)) {
                rowOf[column] = row;
                return true;
            }
        }
        return false;
    }

    /** The assignment of the greatest weight, by entries from the threshold up. */
    private int[] heaviest(long threshold) {
        int size = Math.max(rows, columns);
        Weights weights = new Weights(size);
        var graph = new SimpleWeightedGraph<Integer, DefaultWeightedEdge>(DefaultWeightedEdge.class);
        Set<Integer> left = new LinkedHashSet<>();
        Set<Integer> right = new LinkedHashSet<>();
        for (int i = 0; i < size; i++) {
            left.add(i);
            right.add(size + i);
            graph.addVertex(i);
            graph.addVertex(size + i);
        }
        // rows and columns are made up to a square with entries that are worth nothing
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < size; column++) {
                boolean there = row < rows && column < columns && microns[row][column] >= threshold;
                double weight = there ? weights.of(microns[row][column], clear[row][column], row - column) : 0;
                graph.setEdgeWeight(graph.addEdge(row, size + column), -weight);
            }
        }
        int[] columnOf = new int[rows];
        Arrays.fill(columnOf, NONE);
        for (DefaultWeightedEdge edge :
                new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, left, right).getMatching()) {
            if (graph.getEdgeWeight(edge) < 0) columnOf[graph.getEdgeSource(edge)] = graph.getEdgeTarget(edge) - size;
        }
        return columnOf;
    }

    /** Weights such that one more row supplied outweighs all else, one more clear all clearances. */
    private static final class Weights {
        private final double supplied;
        private final double clear;
        /** What a micrometre counts; above 1 so that ties can be broken below it. */
        private final double micron;

        Weights(int size) {
            // of equal sets, the one that keeps to the order of rows and columns; given up where it would cost
            // exactness
            double ties = Math.pow(size, 3) + 1;
            double clearances = (double) Worth.LIMIT * size + 1;
            double all = clearances * (size + 1) * (size + 1);
            micron = all * ties < EXACT ? ties : 1;
            clear = clearances * micron;
            supplied = clear * (size + 1);
        }

        double of(long microns, boolean isClear, int outOfOrder) {
            double tie = micron > 1 ? (double) outOfOrder * outOfOrder : 0;
            return supplied + (isClear ? clear : 0) + microns * micron - tie;
        }
    }
}
