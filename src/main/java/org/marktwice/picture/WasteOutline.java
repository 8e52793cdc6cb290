package org.marktwice.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.marktwice.drawing.Placing;
import org.marktwice.fit.CutSide;
import org.marktwice.fit.CutSides;
import org.marktwice.fit.TrueLine;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * What is shaded where waste lies between two lines. Between two that run alike it is the strip from the one to the other; at
 * a corner it is what both cut off, on the side where the joint's cut lies once the board lies in the job, else towards
 * the nearer end or arris.
 */
public final class WasteOutline {
    /** A line no farther than this from a side of a cut is meant for it, millimetres. */
    private static final double NEAR = 25;

    private final Board board;
    private final List<CutSide> sides;

    public WasteOutline(Board board, Optional<Placing> placing) {
        this.board = board;
        this.sides = placing.map(CutSides::of).orElse(List.of());
    }

    public List<SurfacePoint> of(String joint, TrueLine one, TrueLine other) {
        if (one.axis() == other.axis()) return strip(one, other);
        TrueLine squared = one.isSquared() || !other.isSquared() ? one : other;
        TrueLine gauged = squared == one ? other : one;
        Surface on = squared.on();
        double to = bound(joint, squared);
        if (gauged.on() != on) {
            return List.of(
                    point(on, squared.axis(), squared.low(), 0),
                    point(on, squared.axis(), squared.high(), extent(on, squared.runs())),
                    point(on, squared.axis(), to, extent(on, squared.runs())),
                    point(on, squared.axis(), to, 0));
        }
        double across = gauged.at(squared.middle(), board);
        double edge = bound(joint, gauged);
        double from = squared.at(across, board);
        return List.of(
                point(on, squared.axis(), from, across),
                point(on, squared.axis(), squared.at(edge, board), edge),
                point(on, squared.axis(), to, edge),
                point(on, squared.axis(), to, gauged.at(to, board)));
    }

    private List<SurfacePoint> strip(TrueLine one, TrueLine other) {
        Surface on = one.on();
        double far = extent(on, one.runs());
        return List.of(
                point(on, one.axis(), one.low(), 0),
                point(on, one.axis(), one.high(), far),
                point(on, one.axis(), other.high(), far),
                point(on, one.axis(), other.low(), 0));
    }

    /** Where the waste beyond a line ends: at the board's side that the cut lies towards. */
    private double bound(String joint, TrueLine line) {
        double far = board.size().along(line.axis());
        int waste = sides.stream()
                .filter(s -> joint.equals(s.joint()) && s.axis() == line.axis() && s.waste() != 0)
                .min(Comparator.comparingDouble(s -> Math.abs(s.at() - line.middle())))
                .map(CutSide::waste)
                .orElse(line.middle() < far / 2 ? -1 : +1);
        return waste < 0 ? 0 : far;
    }

    /** On which side of a line the waste lies, once the board lies in the job: +1 or −1 along its axis; 0 where that isn't known. */
    int wasteSide(TrueLine line) {
        return sides.stream()
                .filter(s -> s.axis() == line.axis() && s.waste() != 0)
                .filter(s -> Math.abs(s.at() - line.middle()) < NEAR)
                .min(Comparator.comparingDouble(s -> Math.abs(s.at() - line.middle())))
                .map(CutSide::waste)
                .orElse(0);
    }

    private double extent(Surface on, int axis) {
        return axis == on.uAxis() ? board.uExtent(on) : board.vExtent(on);
    }

    /** A point by its place along one of the surface's axes and along the other. */
    private static SurfacePoint point(Surface on, int axis, double place, double other) {
        return axis == on.uAxis() ? new SurfacePoint(on, place, other) : new SurfacePoint(on, other, place);
    }
}
