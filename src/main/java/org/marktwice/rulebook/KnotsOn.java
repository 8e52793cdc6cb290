package org.marktwice.rulebook;

import java.util.List;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.Trace;

/**
 * The knots that show on a surface.
 *
 * @param together the diameter of one knot as large as all of them together, millimetres
 */
record KnotsOn(int count, double together) {
    static KnotsOn of(Board board, Surface surface) {
        List<Trace> traces = board.traces(surface);
        double area = traces.stream().mapToDouble(Trace::area).sum();
        return new KnotsOn(traces.size(), 2 * Math.sqrt(area / Math.PI));
    }

    /** Whether there are at most so many more of them, and these at most so much larger. */
    boolean isWithin(int more, double larger, KnotsOn other) {
        return count <= other.count + more && together <= other.together + larger;
    }
}
