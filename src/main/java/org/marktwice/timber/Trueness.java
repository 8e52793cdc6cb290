package org.marktwice.timber;

import java.util.OptionalDouble;
import org.joml.Vector3d;

/**
 * What the measuring tools read on a board's true shape: machining departures and cup together. In millimetres, angles in
 * degrees.
 *
 * <p>The shape is read as follows; the numbers of {@link Shape} are small against the sizes, and are added up.
 *
 * <ul>
 *   <li>Bow and spring are parabolas over the length, the same for opposite surfaces: what is hollow on one is rounded on
 *       the other.
 *   <li>Twist turns the section evenly from end-1 to end-2, so that the fourth corner of a face rises by it; on an edge
 *       the corner rises less, in the ratio of thickness to width. Turning a board over doesn't change the sense.
 *   <li>Face-1 and edge-1 are the planes that taper and thickening are counted from.
 * </ul>
 */
public final class Trueness {
    private static final int ALONG_SAMPLES = 17;
    private static final int ACROSS_SAMPLES = 13;

    private Trueness() {}

    /**
     * Straight-edge laid across a surface at x: the deepest gap, + hollow, − rounded; empty with a boxed heart. The board
     * cups alike over its whole length.
     */
    public static OptionalDouble across(Board board, Surface surface, double x) {
        return Seasoned.now(board).cup(surface);
    }

    /** Straight-edge laid along a long surface: + hollow, − rounded; ends are straight. */
    public static double along(Board board, Surface surface) {
        Shape shape = board.shape();
        return switch (surface) {
            case FACE_1 -> shape.bow();
            case FACE_2 -> 0 - shape.bow();
            case EDGE_1 -> shape.spring();
            case EDGE_2 -> 0 - shape.spring();
            case END_1, END_2 -> 0;
        };
    }

    /** Winding sticks on a face: the rise of the far corner; 0 out of wind. On an edge the same over its own width; ends are out of wind. */
    public static double wind(Board board, Surface face) {
        if (face.isEnd()) return 0;
        return board.shape().twist() * board.vExtent(face) / board.size().width();
    }

    /**
     * Try-square, stock on one surface and blade on an adjoining one: degrees off 90, + where the angle in the wood is more
     * than 90. It doesn't matter which of the two the stock bears on.
     *
     * <p>The angle is that between the two surfaces' planes, so that taper shows between edge-2 and an end, and thickening
     * between face-2 and an end. Between a face and an edge the change of moisture since planing adds what it does to the
     * right angle at their arris, where a small square is held; how far the cup beyond would tip a longer stock is left
     * out.
     *
     * @throws IllegalArgumentException where the two surfaces share no arris
     */
    public static double square(Board board, Surface stock, Surface blade) {
        if (!stock.adjoins(blade)) {
            throw new IllegalArgumentException(stock.id() + " and " + blade.id() + " share no arris");
        }
        double between = normal(board, stock).dot(normal(board, blade));
        double machined = Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, between))));
        if (stock.isEnd() || blade.isEnd()) return machined;
        Surface face = stock.isFace() ? stock : blade;
        Surface edge = stock.isFace() ? blade : stock;
        return machined + Seasoned.now(board).diamonding(face, edge);
    }

    /**
     * The outward unit normal of the plane that a surface was machined to, in the board's frame: out of square, tapered,
     * thickening. Bow, spring, twist and cup bend the surface about that plane.
     */
    public static Vector3d normal(Board board, Surface surface) {
        Shape shape = board.shape();
        double lean = Math.sin(Math.toRadians(shape.outOfSquare(surface)));
        double length = board.size().length();
        Vector3d normal = new Vector3d(surface.normal());
        switch (surface) {
            case FACE_1 -> {}
            case FACE_2 -> normal.x = -shape.thickening() / length;
            case EDGE_1, END_1, END_2 -> normal.z = lean;
            case EDGE_2 -> normal.set(-shape.taper() / length, 1, lean);
        }
        // The part across face-1 is the sine of the angle off 90, so the others make up the rest of the unit length.
        double rest = Math.sqrt(1 - lean * lean) / Math.hypot(normal.x, normal.y);
        return surface.isFace() ? normal.normalize() : normal.mul(rest, rest, 1);
    }

    /**
     * The least distance between two parallel planes that hold the surface between them; what {@code truest-in} compares.
     * To 0.001 mm, of heights taken at 17 places along and 13 across. With a boxed heart only
     * the machining counts. Computed once for a board.
     */
    public static double departure(Board board, Surface surface) {
        return board.departures().get(surface.ordinal());
    }

    static double departureAfresh(Board board, Surface surface) {
        if (surface.isEnd()) return 0;
        return new LeastSpread(heights(board, surface), ALONG_SAMPLES, ACROSS_SAMPLES).solve();
    }

    /** How far the surface stands out beyond its plane, at places evenly spread along and across it, along first. */
    private static double[] heights(Board board, Surface surface) {
        double hollow = along(board, surface);
        double rise = wind(board, surface) * (surface == Surface.FACE_1 || surface == Surface.EDGE_1 ? 1 : -1);
        double[] across = Seasoned.now(board).profile(surface, ACROSS_SAMPLES);
        double[] heights = new double[ALONG_SAMPLES * ACROSS_SAMPLES];
        for (int i = 0; i < ALONG_SAMPLES; i++) {
            double t = i / (ALONG_SAMPLES - 1.0);
            for (int j = 0; j < ACROSS_SAMPLES; j++) {
                double v = j / (ACROSS_SAMPLES - 1.0);
                heights[i * ACROSS_SAMPLES + j] = rise * t * v - hollow * 4 * t * (1 - t) + across[j];
            }
        }
        return heights;
    }
}
