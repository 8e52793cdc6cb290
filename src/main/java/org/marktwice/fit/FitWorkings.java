package org.marktwice.fit;

import java.util.List;
import org.marktwice.bench.Kept;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;

/**
 * What setting out and dry fit need that follows from one drawing and one rack alone, whatever lines are struck, computed
 * when first asked for and kept. Safe for several threads.
 */
public final class FitWorkings {
    private final Drawing drawing;
    private final boolean rectangles;
    private final Kept<String, List<Seat>> seats = new Kept<>();
    private final Kept<Lie, Wanted> wanted = new Kept<>();

    private record Lie(String board, String part, Turn turn, Trim trim) {}

    public FitWorkings(Drawing drawing) {
        this.drawing = drawing;
        this.rectangles = Rectangle.has(drawing);
    }

    /** Whether the drawing has any rectangle whose diagonals can be compared. */
    public boolean hasRectangles() {
        return rectangles;
    }

    /** Where a joint's two parts bear on each other. */
    List<Seat> seats(Joint joint) {
        return seats.of(joint.id(), () -> Seats.of(drawing, joint));
    }

    /** What the drawing wants of a board that lies in the job so. */
    Wanted wanted(Placing lies) {
        Lie lie = new Lie(lies.board().id(), lies.part().id(), lies.turn(), lies.trim());
        return wanted.of(lie, () -> new Wanted(lies));
    }
}
