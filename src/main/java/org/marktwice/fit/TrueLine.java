package org.marktwice.fit;

import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/**
 * A line as it really lies on a board, struck or gauged. Its place is counted along one board axis, and given at both its
 * ends, so that a line out of square shows: one squared across a face has its x at edge-1 ({@code low}) and at edge-2
 * ({@code high}); one gauged along a face has its y at end-1 and at end-2.
 *
 * @param step the action that struck it
 * @param on the surface that carries it
 * @param axis the board axis that its place is counted along: 0 = x, 1 = y, 2 = z
 * @param low its place at the low end of the line, millimetres
 * @param high its place at the high end
 * @param meant its place if every surface were true and the rule read as said
 * @param reference the surface that stock or fence bore on
 */
public record TrueLine(int step, Surface on, int axis, double low, double high, double meant, Surface reference) {

    /** The board axis along which the line runs. */
    public int runs() {
        return 3 - on.axis() - axis;
    }

    public boolean isSquared() {
        return axis == 0;
    }

    public double middle() {
        return (low + high) / 2;
    }

    /** How far out of line it is from one end to the other, millimetres. */
    public double lean() {
        return high - low;
    }

    /** Its place where it runs through a coordinate of the axis along which it runs. */
    public double at(double along, Board board) {
        return low + (high - low) * along / board.size().along(runs());
    }

    /** Its place at the arris that its surface shares with an adjoining one; half-way where that one bounds no end of it. */
    public double at(Surface adjoining) {
        if (adjoining.axis() != runs()) return middle();
        return adjoining.sign() > 0 ? high : low;
    }

    /** Its place where it was measured: at the surface that the stock bore on. */
    public double measured() {
        return at(reference);
    }
}
