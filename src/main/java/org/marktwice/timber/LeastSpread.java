package org.marktwice.timber;

/**
 * The least distance between two parallel planes that hold a field of heights between them, on a grid of places.
 *
 * <p>For a plane's two slopes the spread of the heights above it is a convex function, so one search by golden section
 * within another finds the least. Heights are small against the grid's extent, so distance is measured upright.
 */
final class LeastSpread {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int STEPS = 26;

    private final double[] heights;
    private final int rows;
    private final int columns;
    private final double[] levelled;

    /** @param heights rows × columns, row after row */
    LeastSpread(double[] heights, int rows, int columns) {
        this.heights = heights;
        this.rows = rows;
        this.columns = columns;
        levelled = heights.clone();
    }

    double solve() {
        double level = spread(heights);
        if (level == 0) return 0;
        // A plane that rises by more than twice the spread over the grid cannot do better than the level one.
        return least(level, rowSlope -> {
            for (int i = 0; i < rows; i++) {
                for (int j = 0; j < columns; j++) {
                    levelled[i * columns + j] = heights[i * columns + j] - rowSlope * i / (rows - 1.0);
                }
            }
            return least(level, this::spreadOverColumnSlope);
        });
    }

    private double spreadOverColumnSlope(double slope) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int j = 0; j < columns; j++) {
            double plane = slope * j / (columns - 1.0);
            for (int i = 0; i < rows; i++) {
                double height = levelled[i * columns + j] - plane;
                low = Math.min(low, height);
                high = Math.max(high, height);
            }
        }
        return high - low;
    }

    private static double spread(double[] values) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return high - low;
    }

    private interface Convex {
        double at(double slope);
    }

    private static double least(double level, Convex function) {
        double low = -2 * level;
        double high = 2 * level;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = function.at(left);
        double atRight = function.at(right);
        for (int step = 0; step < STEPS; step++) {
            if (atLeft > atRight) {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = function.at(right);
            } else {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = function.at(left);
            }
        }
        return Math.min(atLeft, atRight);
    }
}
