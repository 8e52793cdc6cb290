package org.marktwice.timber;

/**
 * How wood shrinks and swells with the moisture in it (percent of the oven-dry mass), by the rules of the Wood Handbook
 * (Forest Products Laboratory, FPL-GTR-282, chapters 4 and 13).
 */
public final class Moisture {
    /** Above this moisture, in percent, wood neither shrinks nor swells; the Wood Handbook's figure for all species. */
    public static final double FIBRE_SATURATION = 30;

    /** The moisture about which the table of coefficients of change is made, in percent. */
    private static final double TABLE_MOISTURE = 10;

    private Moisture() {}

    /**
     * Shrinkage from green to a moisture, in percent of the green size: {@code S₀(1 − M/30)}, none above 30 % (Wood
     * Handbook eq. 4-9).
     *
     * @param total shrinkage from green to oven-dry, percent
     * @param moisture percent, 0 or above
     */
    public static double shrinkage(double total, double moisture) {
        return total * Math.max(0, 1 - moisture / FIBRE_SATURATION);
    }

    /** The size at one moisture as a multiple of the size at another. */
    public static double ratio(double total, double from, double to) {
        return (1 - shrinkage(total, to) / 100) / (1 - shrinkage(total, from) / 100);
    }

    /**
     * The change of size for each percent of moisture, as a share of the size at 10 %; good from 6 to 14 %. It is the
     * rule by which the Wood Handbook's Table 13-5 follows from its Table 4-3: {@code (S/100)/30 ÷ [1 − (S/100)·20/30]}.
     */
    public static double changeCoefficient(double total) {
        double share = total / 100;
        double dry = (FIBRE_SATURATION - TABLE_MOISTURE) / FIBRE_SATURATION;
        return share / FIBRE_SATURATION / (1 - share * dry);
    }

    /** How much a size in millimetres grows between two moistures, by a coefficient of change; good from 6 to 14 %. */
    public static double movement(double size, double coefficient, double from, double to) {
        return size * coefficient * (to - from);
    }
}
