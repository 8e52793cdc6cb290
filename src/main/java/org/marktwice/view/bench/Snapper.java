package org.marktwice.view.bench;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Marker;
import org.marktwice.drawing.Cut;
import org.marktwice.fit.TrueLine;
import org.marktwice.picture.Struck;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.Trace;

/**
 * What the ends of the rule take to on one surface: its corners, arrises and ends, the edges of knots, lines struck on it, and
 * cuts where these are shown. Reach is in the view's pixels, so that it feels the same at every scale.
 */
public final class Snapper {
    /** A straight piece of something, in surface millimetres. */
    private record Piece(Snap.To to, String what, double u1, double v1, double u2, double v2) {}

    private final Surface surface;
    private final double uExtent;
    private final double vExtent;
    private final List<Snap> points = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();

    /** @param shownCuts the cuts that lie on the board as a ghost, in the board's frame; empty where none are shown */
    public Snapper(BoardState state, Surface surface, List<Cut> shownCuts) {
        this(state, surface, shownCuts, List.of());
    }

    /** @param lines what is struck on the board, as it really lies */
    Snapper(BoardState state, Surface surface, List<Cut> shownCuts, List<TrueLine> lines) {
        Board board = state.board();
        this.surface = surface;
        this.uExtent = board.uExtent(surface);
        this.vExtent = board.vExtent(surface);
        addOutline();
        addKnots(board);
        addLines(board, lines);
        for (Cut cut : shownCuts) {
            for (Box box : cut.boxes()) addCut(box, board.size());
        }
    }

    private void addOutline() {
        String[] names = Words.arrisNames(surface);
        addPoint(Snap.To.CORNER, "corner", 0, 0);
        addPoint(Snap.To.CORNER, "corner", uExtent, 0);
        addPoint(Snap.To.CORNER, "corner", uExtent, vExtent);
        addPoint(Snap.To.CORNER, "corner", 0, vExtent);
        pieces.add(new Piece(Snap.To.ARRIS, names[0], 0, 0, 0, vExtent));
        pieces.add(new Piece(Snap.To.ARRIS, names[1], uExtent, 0, uExtent, vExtent));
        pieces.add(new Piece(Snap.To.ARRIS, names[2], 0, 0, uExtent, 0));
        pieces.add(new Piece(Snap.To.ARRIS, names[3], 0, vExtent, uExtent, vExtent));
    }

    private void addKnots(Board board) {
        for (Trace trace : board.traces(surface)) {
            String what = Words.knot(board, trace.knot());
            List<SurfacePoint> outline = trace.outline();
            for (int i = 0; i < outline.size(); i++) {
                SurfacePoint a = outline.get(i);
                SurfacePoint b = outline.get((i + 1) % outline.size());
                pieces.add(new Piece(Snap.To.KNOT, what, a.u(), a.v(), b.u(), b.v()));
            }
            addExtremes(outline, what);
        }
    }

    /** The four points of a knot that reach farthest, which is where one measures from. */
    private void addExtremes(List<SurfacePoint> outline, String what) {
        Comparator<SurfacePoint> byU = Comparator.comparingDouble(SurfacePoint::u);
        Comparator<SurfacePoint> byV = Comparator.comparingDouble(SurfacePoint::v);
        for (Comparator<SurfacePoint> order : List.of(byU, byU.reversed(), byV, byV.reversed())) {
            outline.stream().min(order).ifPresent(p -> points.add(new Snap(p, Snap.To.KNOT, what)));
        }
    }

    private void addLines(Board board, List<TrueLine> lines) {
        for (TrueLine line : lines) {
            if (line.on() != surface) continue;
            Struck.Line lies = Struck.line(line, board, Marker.KNIFE);
            String what = line.isSquared() ? "line" : "gauge line";
            SurfacePoint from = lies.from();
            SurfacePoint to = lies.to();
            pieces.add(new Piece(Snap.To.LINE, what, from.u(), from.v(), to.u(), to.v()));
        }
    }

    /** A cut's outline on this surface, where it reaches the surface at all. */
    private void addCut(Box box, Size size) {
        int axis = surface.axis();
        double plane = surface.sign() > 0 ? size.along(axis) : 0;
        double slack = 1.0;
        boolean reaches = surface.sign() > 0 ? box.max(axis) >= plane - slack : box.min(axis) <= plane + slack;
        if (!reaches) return;
        double u1 = Math.max(0, box.min(surface.uAxis()));
        double u2 = Math.min(uExtent, box.max(surface.uAxis()));
        double v1 = Math.max(0, box.min(surface.vAxis()));
        double v2 = Math.min(vExtent, box.max(surface.vAxis()));
        if (u1 >= u2 || v1 >= v2) return;
        pieces.add(new Piece(Snap.To.CUT, "cut", u1, v1, u1, v2));
        pieces.add(new Piece(Snap.To.CUT, "cut", u2, v1, u2, v2));
        pieces.add(new Piece(Snap.To.CUT, "cut", u1, v1, u2, v1));
        pieces.add(new Piece(Snap.To.CUT, "cut", u1, v2, u2, v2));
    }

    private void addPoint(Snap.To to, String what, double u, double v) {
        points.add(new Snap(new SurfacePoint(surface, u, v), to, what));
    }

    /**
     * The nearest thing within reach; points go before pieces.
     *
     * @param toView surface millimetres to view pixels
     * @param reach pixels
     */
    public Snap snap(double u, double v, AffineTransform toView, double reach) {
        Point2D here = toView.transform(new Point2D.Double(u, v), null);
        Snap best = null;
        double least = reach;
        for (Snap point : points) {
            double away = here.distance(toView.transform(flat(point.point()), null));
            if (away < least) {
                least = away;
                best = point;
            }
        }
        if (best != null) return best;
        for (Piece piece : pieces) {
            Point2D near = nearest(piece, here, toView, u, v);
            double away = here.distance(toView.transform(near, null));
            if (away < least) {
                least = away;
                best = new Snap(new SurfacePoint(surface, near.getX(), near.getY()), piece.to(), piece.what());
            }
        }
        return best != null ? best : free(u, v);
    }

    /** The very point, on the board and to half a millimetre. */
    private Snap free(double u, double v) {
        double atU = Math.max(0, Math.min(uExtent, Reading.toHalf(u)));
        double atV = Math.max(0, Math.min(vExtent, Reading.toHalf(v)));
        return new Snap(new SurfacePoint(surface, atU, atV), Snap.To.NOTHING, "");
    }

    /** The point of a piece that is nearest in the view; straight pieces stay straight there, so the share along it carries over. */
    private Point2D nearest(Piece piece, Point2D here, AffineTransform toView, double u, double v) {
        if (piece.to() != Snap.To.KNOT) {
            // Along an arris or a line the point keeps its own other coordinate, to half a millimetre.
            if (piece.u1() == piece.u2())
                return new Point2D.Double(piece.u1(), clamp(Reading.toHalf(v), piece.v1(), piece.v2()));
            if (piece.v1() == piece.v2())
                return new Point2D.Double(clamp(Reading.toHalf(u), piece.u1(), piece.u2()), piece.v1());
        }
        Point2D a = toView.transform(new Point2D.Double(piece.u1(), piece.v1()), null);
        Point2D b = toView.transform(new Point2D.Double(piece.u2(), piece.v2()), null);
        double dx = b.getX() - a.getX();
        double dy = b.getY() - a.getY();
        double square = dx * dx + dy * dy;
        double share = square == 0 ? 0 : ((here.getX() - a.getX()) * dx + (here.getY() - a.getY()) * dy) / square;
        share = clamp(share, 0, 1);
        return new Point2D.Double(
                piece.u1() + share * (piece.u2() - piece.u1()), piece.v1() + share * (piece.v2() - piece.v1()));
    }

    /** The points worth stepping to by key, from left to right and then across. */
    public List<Snap> stops() {
        List<Snap> stops = new ArrayList<>(points);
        for (Piece piece : pieces) {
            if (piece.to() == Snap.To.CUT || piece.to() == Snap.To.LINE) {
                double u = (piece.u1() + piece.u2()) / 2;
                double v = (piece.v1() + piece.v2()) / 2;
                stops.add(new Snap(new SurfacePoint(surface, u, v), piece.to(), piece.what()));
            }
        }
        stops.sort(Comparator.comparingDouble((Snap s) -> s.point().u())
                .thenComparingDouble(s -> s.point().v()));
        return stops;
    }

    private static double clamp(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }

    private static Point2D flat(SurfacePoint p) {
        return new Point2D.Double(p.u(), p.v());
    }
}
