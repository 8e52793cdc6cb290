package org.marktwice.view.desk;

import java.awt.Component;
import java.awt.Point;

/** Where things are on the desk's pictures, for tests in the window. */
public final class DeskPixels {
    private DeskPixels() {}

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
}
