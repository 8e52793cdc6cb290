package org.marktwice.picture;

import org.joml.Vector3d;
import org.marktwice.timber.Board;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.TrueForm;

/**
 * A board's true shape as it is drawn.
 *
 * @param times how many times over its departures from the true box are drawn; 1 is as it is
 */
public record FormShown(TrueForm form, double times) {
    public FormShown {
        if (!(times >= 0)) throw new IllegalArgumentException("times " + times);
    }

    /** The board as it is. */
    public static FormShown asItIs(Board board) {
        return new FormShown(TrueForm.now(board), 1);
    }

    /** Where a surface's point is drawn, in the board's frame; a point beside the surface goes with the nearest on it. */
    public Vector3d place(SurfacePoint p) {
        Board board = form.board();
        SurfacePoint on = nearest(board, p);
        Vector3d there = new Vector3d(p.in(board.size()));
        return form.displacement(on.in(board.size())).mul(times).add(there);
    }

    /** The point as the surface is seen square on: moved in its own plane alone. */
    public SurfacePoint seenSquareOn(SurfacePoint p) {
        Vector3d there = place(p);
        return new SurfacePoint(
                p.surface(),
                there.get(p.surface().uAxis()),
                there.get(p.surface().vAxis()));
    }

    private static SurfacePoint nearest(Board board, SurfacePoint p) {
        double u = Math.max(0, Math.min(board.uExtent(p.surface()), p.u()));
        double v = Math.max(0, Math.min(board.vExtent(p.surface()), p.v()));
        return new SurfacePoint(p.surface(), u, v);
    }
}
