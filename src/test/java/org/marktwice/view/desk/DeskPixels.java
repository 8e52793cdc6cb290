package org.marktwice.view.desk;

import java.awt.Component;
import java.awt.Point;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.concurrent.Future;
import org.marktwice.timber.SurfacePoint;

/** Where things are on the desk's pictures, for tests in the window. */
public final class DeskPixels {
    private DeskPixels() {}

    /** What the desk works at aside; on the event thread only. */
    public static List<Future<?>> underWay() {
        return Aside.underWay();
    }

    /** A point of the job drawing at which a part is seen. */
    public static Point ofPart(Component sheet, String part) {
        JobSheet drawing = (JobSheet) sheet;
        for (int y = 2; y < drawing.getHeight(); y += 3) {
            for (int x = 2; x < drawing.getWidth(); x += 3) {
                Point at = new Point(x, y);
                if (drawing.partAt(at).filter(part::equals).isPresent()) return at;
            }
        }
        throw new AssertionError(part + " is nowhere to be seen");
    }

    /** A point of one of the three views at which a part can be taken hold of. */
    public static Point handleOf(Component sheet, String part) {
        JobSheet drawing = (JobSheet) sheet;
        for (int y = 2; y < drawing.getHeight(); y += 3) {
            for (int x = 2; x < drawing.getWidth(); x += 3) {
                Point at = new Point(x, y);
                if (drawing.canDrag(at)
                        && drawing.partAt(at).filter(part::equals).isPresent()) return at;
            }
        }
        throw new AssertionError(part + " can't be taken hold of");
    }

    /** Where a place on a board that is drawn by hand is seen. */
    public static Point ofPlace(Component sheet, SurfacePoint place) {
        return ((KnotSheet) sheet).at(place).orElseThrow();
    }

    /** Where the pith is seen. */
    public static Point ofPith(Component section) {
        Point2D at = ((EndSection) section).pithAt();
        return new Point((int) Math.round(at.getX()), (int) Math.round(at.getY()));
    }
}
