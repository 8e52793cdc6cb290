package org.marktwice.view.desk;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.accessibility.AccessibleRole;
import org.joml.Vector3dc;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Figures;
import org.marktwice.picture.Hull;
import org.marktwice.picture.Ink;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.picture.Unrolled;
import org.marktwice.timber.KnotBody;
import org.marktwice.timber.Showing;
import org.marktwice.timber.Surface;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Painted;

/**
 * A real board unrolled, as it was found: every knot as it must come through, dashed how its body runs inside the board as
 * seen square through each surface, and in plain lines what was measured.
 */
final class RackBoard extends Painted {
    private static final long serialVersionUID = 1L;

    private final transient FigureCache cache;
    private transient @Nullable BoardPicture picture;
    private transient List<Showing> measured = List.of();
    private String nothing = "";

    RackBoard(String name, FigureCache cache) {
        super(AccessibleRole.CANVAS, 480, 220);
        this.cache = cache;
        setName(name);
    }

    /**
     * @param next null where there is nothing to be seen
     * @param readings what was measured of its knots
     * @param otherwise what is said in its place
     */
    void show(@Nullable BoardPicture next, List<Showing> readings, String otherwise) {
        picture = next;
        measured = List.copyOf(readings);
        nothing = otherwise;
        readAs(next == null ? otherwise : "Board " + next.board().id() + " unrolled");
        repaint();
    }

    @Override
    protected void draw(Graphics2D g) {
        BoardPicture now = picture;
        int margin = Look.px(4);
        if (now == null) {
            drawInstead(g, nothing);
        } else if (getWidth() > Look.px(120) && getHeight() > Look.px(40)) {
            Rectangle2D area =
                    new Rectangle2D.Double(margin, margin, getWidth() - 2.0 * margin, getHeight() - 2.0 * margin);
            Unrolled unrolled = Unrolled.in(area, now.board(), Style.NOTE.font());
            SurfacePainter painter = new SurfacePainter(Figures.live(cache, this::repaint), Style.NOTE.font());
            unrolled.paint(g, now, painter, Look.palette());
            bodies(g, now, unrolled);
            for (Showing one : measured) reading(g, one, unrolled);
        }
    }

    private static void bodies(Graphics2D g, BoardPicture now, Unrolled unrolled) {
        float[] dashes = {Look.px(4), Look.px(3)};
        g.setStroke(new BasicStroke(Look.px(1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0));
        g.setColor(Look.palette().of(Ink.PENCIL, 0.75));
        for (KnotBody body : now.board().bodies()) {
            if (body.isEmpty()) continue;
            for (Surface surface : Surface.LONG) {
                AffineTransform to = unrolled.transform(surface);
                List<Point2D.Double> seen =
                        body.corners().stream().map(c -> on(to, c, surface)).toList();
                g.draw(Hull.of(seen));
            }
        }
    }

    private static Point2D.Double on(AffineTransform to, Vector3dc corner, Surface surface) {
        Point2D.Double at = new Point2D.Double(corner.get(surface.uAxis()), corner.get(surface.vAxis()));
        to.transform(at, at);
        return at;
    }

    private static void reading(Graphics2D g, Showing one, Unrolled unrolled) {
        Shape outline = unrolled.transform(one.surface())
                .createTransformedShape(new Ellipse2D.Double(
                        one.u() - one.length() / 2, one.v() - one.width() / 2, one.length(), one.width()));
        g.setStroke(new BasicStroke(Look.px(1)));
        g.setColor(Look.palette().of(Ink.PENCIL, 1));
        g.draw(outline);
    }
}
