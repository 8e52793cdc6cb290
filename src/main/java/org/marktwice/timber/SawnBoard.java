package org.marktwice.timber;

/**
 * A board and where in its log it comes from.
 *
 * @param inLog its box in the log's frame
 * @param lie how it was turned after it came off the saw
 */
public record SawnBoard(Board board, Log log, Box inLog, Lie lie) {

    /** How a board's frame lies in its log's: the two are alike but for half turns. */
    public enum Lie {
        AS_SAWN(+1, +1),
        /** About its length. */
        ROLLED_OVER(+1, -1),
        /** About its thickness. */
        END_FOR_END(-1, -1),
        /** About its width. */
        TUMBLED(-1, +1);

        private final int x;
        private final int y;

        Lie(int x, int y) {
            this.x = x;
            this.y = y;
        }

        /** Whether the log's axis (0 = x, 1 = y, 2 = z) runs the same way in the board: +1, or −1. */
        public int sign(int axis) {
            return axis == 0 ? x : axis == 1 ? y : x * y;
        }
    }

    /** A branch of the log as the board's frame has it. */
    static Knot knot(Knot branch, String id, Box inLog, Lie lie) {
        double x = lie.sign(0) > 0 ? branch.x() - inLog.min(0) : inLog.max(0) - branch.x();
        double azimuth = branch.azimuth();
        if (lie.sign(1) < 0) azimuth = 180 - azimuth;
        if (lie.sign(2) < 0) azimuth = -azimuth;
        double lean = lie.sign(0) > 0 ? branch.lean() : 180 - branch.lean();
        return new Knot(
                id,
                Chance.tenth(x),
                Log.azimuth(azimuth),
                Chance.tenth(lean),
                branch.halfAngle(),
                branch.maxRadius(),
                branch.deadFrom(),
                branch.endsAt());
    }

    /** The log's pith as the board's frame has it. */
    static Pith pith(Box inLog, Lie lie) {
        double y = lie.sign(1) > 0 ? -inLog.min(1) : inLog.max(1);
        double z = lie.sign(2) > 0 ? -inLog.min(2) : inLog.max(2);
        return new Pith(Chance.tenth(y), Chance.tenth(z));
    }
}
