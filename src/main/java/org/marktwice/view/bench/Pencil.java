package org.marktwice.view.bench;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.bench.Marker;
import org.marktwice.picture.FaceMarks;
import org.marktwice.picture.SurfaceFrame;
import org.marktwice.timber.Board;
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
    public static List<Pencil> on(BoardState state) {
        List<Pencil> found = new ArrayList<>();
        for (Mark mark : state.marks()) {
            String word = mark.kind().spoken() + " mark on " + mark.on().spoken();
            found.add(new Pencil(mark.step(), word, mark.on(), markBounds(state, mark)));
        }
        state.named().ifPresent(n -> found.add(name(n)));
        for (BoardState.Done<? extends Action.OnBoard> done : state.struck()) {
            if (done.action() instanceof Action.Line line && line.with() == Marker.PENCIL && line.at() != null) {
                found.add(line(state.board(), done.step(), line, line.at()));
            }
        }
        found.sort((a, b) -> Integer.compare(a.step(), b.step()));
        return found;
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

    private static Pencil line(Board board, int step, Action.Line line, double at) {
        boolean first = line.from() instanceof Action.Datum.End e && e.end() == Surface.END_1;
        double x = first ? at : board.size().length() - at;
        return new Pencil(
                step,
                "pencil line on " + line.on().spoken(),
                line.on(),
                new Rectangle2D.Double(x - LINE / 2, 0, LINE, board.vExtent(line.on())));
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
    public static Optional<Pencil> at(BoardState state, SurfacePoint point) {
        return on(state).stream()
                .filter(p -> p.surface() == point.surface() && p.bounds().contains(point.u(), point.v()))
                .reduce((older, newer) -> newer);
    }
}
