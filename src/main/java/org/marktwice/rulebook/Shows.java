package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.marktwice.drawing.Placing;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.Trace;

/** Where on a board a finding about a knot and a place can be seen. */
final class Shows {
    /** Below this a clearance is told as none, millimetres. */
    static final double NOTHING = 0.05;

    private Shows() {}

    /** The knot's traces, the one nearest to the cut first, and the place of the cut. */
    static Evidence knotAndCut(Placing lies, Nearness near) {
        return knotAndPlace(lies.board(), near.knot().id(), near.cut().boxes().get(0));
    }

    /** The knot's traces, the one nearest to a place first, and the place on that surface. */
    static Evidence knotAndPlace(Board board, String knot, Box place) {
        Comparator<Trace> nearest =
                Comparator.comparingDouble(t -> distance(t.middle().in(board.size()), place));
        List<Trace> traces = board.traces().stream()
                .filter(t -> t.knot().equals(knot))
                .sorted(nearest)
                .toList();
        List<Surface> surfaces = traces.stream().map(Trace::surface).toList();
        List<SurfacePoint> points =
                new ArrayList<>(traces.stream().map(Trace::middle).toList());
        Surface on = surfaces.isEmpty() ? Surface.FACE_1 : surfaces.get(0);
        points.add(points.isEmpty() ? 0 : 1, project(place.centre(), on));
        return new Evidence(surfaces, points, List.of(knot));
    }

    /** The surfaces on which a knot comes out, in the surfaces' order. */
    static List<Surface> surfaces(Board board, String knot) {
        return board.traces().stream()
                .filter(t -> t.knot().equals(knot))
                .map(Trace::surface)
                .toList();
    }

    static SurfacePoint project(Vector3dc point, Surface on) {
        return new SurfacePoint(on, point.get(on.uAxis()), point.get(on.vAxis()));
    }

    private static double distance(Vector3dc point, Box box) {
        Vector3d nearest = new Vector3d(point).max(box.min()).min(box.max());
        return nearest.distance(point);
    }
}
