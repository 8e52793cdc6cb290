package org.marktwice.picture;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import org.marktwice.timber.Board;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * How a surface is laid on a page, as it is seen from outside the board: never mirrored. The page's frame has its origin at
 * the top left corner of the surface, runs to the right and down, and is in millimetres.
 *
 * <p>On the four long surfaces the first coordinate (x) runs to the right. The second then has no choice: it runs up on
 * face-1 and edge-1 and down on face-2 and edge-2. So the four lie under each other in the order face-1, edge-1, face-2,
 * edge-2 with every arris shared. Both ends are seen with face-1 at the top.
 *
 * @param uFlipped whether the surface's first coordinate runs to the left
 * @param vFlipped whether its second coordinate runs up
 * @param width the extent of the first coordinate, millimetres
 * @param height the extent of the second coordinate, millimetres
 */
public record SurfaceFrame(Surface surface, boolean uFlipped, boolean vFlipped, double width, double height) {

    public static SurfaceFrame of(Surface surface, Size size) {
        boolean uFlipped = surface == Surface.END_1;
        boolean vFlipped = switch (surface) {
            case FACE_1, EDGE_1, END_1, END_2 -> true;
            case FACE_2, EDGE_2 -> false;
        };
        return new SurfaceFrame(surface, uFlipped, vFlipped, size.along(surface.uAxis()), size.along(surface.vAxis()));
    }

    public static SurfaceFrame of(Surface surface, Board board) {
        return of(surface, board.size());
    }

    /** From the surface's (u, v) to the page. */
    public AffineTransform toPage() {
        return new AffineTransform(
                uFlipped ? -1 : 1, 0, 0, vFlipped ? -1 : 1, uFlipped ? width : 0, vFlipped ? height : 0);
    }

    /** From the page to the surface's (u, v). The map is its own inverse. */
    public AffineTransform toSurface() {
        return toPage();
    }

    public Point2D.Double toPage(double u, double v) {
        return new Point2D.Double(uFlipped ? width - u : u, vFlipped ? height - v : v);
    }

    public Point2D.Double toPage(SurfacePoint p) {
        return toPage(p.u(), p.v());
    }

    public SurfacePoint toSurface(Point2D page) {
        Point2D.Double p = toPage(page.getX(), page.getY());
        return new SurfacePoint(surface, p.x, p.y);
    }
}
