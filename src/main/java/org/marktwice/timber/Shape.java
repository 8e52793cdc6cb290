package org.marktwice.timber;

import java.util.Map;

/**
 * The departures from a true box that machining left, each its own number, 0 where the board is true.
 *
 * @param bow sag of the faces over the length, millimetres, + hollow on face-1
 * @param spring sag of the edges over the length, millimetres, + hollow on edge-1
 * @param twist rise of the fourth corner of a face above the plane of the other three, millimetres
 * @param taper how much farther edge-2 is from edge-1 at end-2 than at end-1, millimetres
 * @param thickening the same for face-2 from face-1, millimetres
 * @param outOfSquare degrees off 90 to face-1, by edge and end; a missing surface is square
 */
public record Shape(
        double bow, double spring, double twist, double taper, double thickening, Map<Surface, Double> outOfSquare) {

    public static final Shape TRUE = new Shape(0, 0, 0, 0, 0, Map.of());

    public Shape {
        outOfSquare = Map.copyOf(outOfSquare);
    }

    /** Degrees off 90 to face-1; 0 for the faces themselves and for a surface that is square. */
    public double outOfSquare(Surface surface) {
        return outOfSquare.getOrDefault(surface, 0.0);
    }
}
