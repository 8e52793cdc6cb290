package org.marktwice.view.bench;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.bench.Marker;
import org.marktwice.picture.FaceMarks;
import org.marktwice.picture.Struck;
import org.marktwice.picture.SurfaceFrame;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * Pencil on a board that can be rubbed out.
 *
 * @param step the action that left it
 * @param word what it is
 * @param bounds where it lies, in surface millimetres
 */
public record Pencil(int step, String word, Surface surface, Rectangle2D bounds) {
    /** How near to pencil counts as on it, millimetres. */
    private static final double AROUND = 3;

    private static final double LINE = 4;

    /** All pencil on the board, oldest first. */
    public static List<Pencil> on(Bench bench, BoardState state) {
        List<Pencil> found = new ArrayList<>();
        for (Mark mark : state.marks()) {
            String word = mark.kind().spoken() + " mark on " + mark.on().spoken();
            found.add(new Pencil(mark.step(), word, mark.on(), markBounds(state, mark)));
        }
        state.named().ifPresent(n -> found.add(name(n)));
        for (Struck struck : Struck.on(bench, state)) {
            if (struck instanceof Struck.Line line && line.with() == Marker.PENCIL) {
                found.add(new Pencil(
                        line.step(),
                        "pencil line on " + line.on().spoken(),
                        line.on(),
                        around(List.of(line.from(), line.to()), LINE / 2)));
            } else if (struck instanceof Struck.Waste waste) {
                String word = "waste shaded on " + waste.on().spoken();
                found.add(new Pencil(waste.step(), word, waste.on(), around(waste.outline(), 0)));
            }
        }
        found.sort((a, b) -> Integer.compare(a.step(), b.step()));
        return found;
    }

    private static Rectangle2D around(List<SurfacePoint> points, double more) {
        double u1 = points.stream().mapToDouble(SurfacePoint::u).min().orElse(0) - more;
        double u2 = points.stream().mapToDouble(SurfacePoint::u).max().orElse(0) + more;
        double v1 = points.stream().mapToDouble(SurfacePoint::v).min().orElse(0) - more;
        double v2 = points.stream().mapToDouble(SurfacePoint::v).max().orElse(0) + more;
        return new Rectangle2D.Double(u1, v1, u2 - u1, v2 - v1);
    }

    private static Pencil name(BoardState.Named name) {
        SurfacePoint at = name.at();
        double half = 34;
        return new Pencil(
                name.step(),
                "the name",
                at.surface(),
                new Rectangle2D.Double(at.u() - half, at.v() - 10, 2 * half, 20));
    }

    private static Rectangle2D markBounds(BoardState state, Mark mark) {
        Path2D path = FaceMarks.path(mark, state.marks(), state.board());
        path.transform(SurfaceFrame.of(mark.on(), state.board()).toSurface());
        Rectangle2D tight = path.getBounds2D();
        return new Rectangle2D.Double(
                tight.getX() - AROUND,
                tight.getY() - AROUND,
                tight.getWidth() + 2 * AROUND,
                tight.getHeight() + 2 * AROUND);
    }

    public SurfacePoint middle() {
        return new SurfacePoint(surface, bounds.getCenterX(), bounds.getCenterY());
    }

    /** The pencil at a point: the newest where several lie there. */
    public static Optional<Pencil> at(Bench bench, BoardState state, SurfacePoint point) {
        return on(bench, state).stream()
                .filter(p -> p.surface() == point.surface() && p.bounds().contains(point.u(), point.v()))
                .reduce((older, newer) -> newer);
    }
}
