package org.marktwice.scenario;

import org.marktwice.timber.Species;

/**
 * Boards asked for by a seed instead of one by one: the same on every machine.
 *
 * @param seed 0 or above
 * @param spare boards beyond one for each part
 * @param difficulty the share of the turns of each board in its part, on average, that should be wrong; 0 to 1. One turn at
 *     least is right, so that 1 is the most that can be had
 */
public record Stock(int seed, Species species, int spare, double difficulty) {
    /** Where a file doesn't say. */
    public static final double DIFFICULTY = 0.5;
    /** No rack holds more. */
    public static final int MOST_SPARE = 20;
}
