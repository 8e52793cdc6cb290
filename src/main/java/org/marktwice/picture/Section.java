package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.TrueForm;

/**
 * A board's end grain as moisture has bent it, the bend drawn many times over, with a straight-edge laid across the hollow
 * face. What the machine left out of true doesn't show.
 */
public final class Section {
    private static final double[] TIMES = {100, 50, 20, 10, 5, 2, 1};
    /** The gap is drawn no deeper than this share of the thickness. */
    private static final double DEEPEST = 0.30;

    /** Pixels of its figure a pixel of the page's. */
    private static final double FINE = 3;

    private final Board board;
    private final FormShown form;
    private final double scale;
    private final double cup;

    private Section(Board board, FormShown form, double scale, double cup) {
        this.board = board;
        this.form = form;
        this.scale = scale;
        this.cup = cup;
    }

    /**
     * @param moisture that it stands at, percent
     * @param times how many times over the bend is drawn
     * @param scale pixels a millimetre
     */
    public static Section of(Board board, double moisture, double times, double scale) {
        Board.Facts f = board.facts();
        Board truly = Board.of(new Board.Facts(
                f.id(),
                f.stuff(),
                f.species(),
                f.size(),
                f.planedAt(),
                f.moisture(),
                f.dressed(),
                f.pith(),
                f.ringWidth(),
                f.knots(),
                Shape.TRUE,
                f.seed()));
        double cup = Seasoned.of(board, moisture).cup(Surface.FACE_1).orElse(0);
        return new Section(truly, new FormShown(TrueForm.at(truly, moisture), times), scale, cup);
    }

    /** How many times over a cup, in millimetres, is best drawn: as many as leave the board a board. */
    public static double times(Board board, double cup) {
        for (double times : TIMES) {
            if (Math.abs(cup) * times <= DEEPEST * board.size().thickness()) return times;
        }
        return 1;
    }

    /** What it covers, about the origin of its true box's upper left corner. */
    public Rectangle2D bounds() {
        return bent(new AffineTransform()).outline().getBounds2D();
    }

    private BentSurface bent(AffineTransform to) {
        SurfaceFrame frame = SurfaceFrame.of(Surface.END_1, board);
        return new BentSurface(frame, p -> {
            Point2D.Double at = frame.toPage(form.seenSquareOn(p));
            at.setLocation(at.x * scale, at.y * scale);
            to.transform(at, at);
            return at;
        });
    }

    /** Draws it with the upper left corner of what it covers at (x, y). */
    public void paint(Graphics2D g, double x, double y, SurfacePainter painter, Palette palette) {
        Rectangle2D covers = bounds();
        AffineTransform to = AffineTransform.getTranslateInstance(x - covers.getX(), y - covers.getY());
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        AffineTransform lay = AffineTransform.getTranslateInstance(x, y);
        lay.scale(1 / FINE, 1 / FINE);
        own.drawImage(figure(covers, painter, palette), lay, null);
        own.setColor(new Color(0x4A, 0x33, 0x1E));
        own.setStroke(new BasicStroke(0.7f));
        own.draw(bent(to).outline());
        straightEdge(own, to, palette);
        own.dispose();
    }

    /** Its patches laid together beforehand: a printer need not cut along the seams between them. */
    private BufferedImage figure(Rectangle2D covers, SurfacePainter painter, Palette palette) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(covers.getWidth() * FINE),
                (int) Math.ceil(covers.getHeight() * FINE),
                BufferedImage.TYPE_INT_ARGB);
        Graphics2D on = image.createGraphics();
        on.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        on.scale(FINE, FINE);
        AffineTransform corner = AffineTransform.getTranslateInstance(-covers.getX(), -covers.getY());
        on.clip(bent(corner).outline());
        bent(corner).paint(on, BoardPicture.of(board), painter, scale, palette);
        on.dispose();
        return image;
    }

    private void straightEdge(Graphics2D g, AffineTransform to, Palette palette) {
        if (Math.abs(cup) * form.times() * scale < 0.5) return;
        double z = cup > 0 ? board.size().thickness() : 0;
        Point2D.Double a = at(0, z, to);
        Point2D.Double b = at(board.size().width(), z, to);
        g.setColor(palette.of(Ink.ACTION));
        g.setStroke(new BasicStroke(0.9f));
        double over = 6 / Math.max(1e-6, a.distance(b));
        double dx = (b.x - a.x) * over;
        double dy = (b.y - a.y) * over;
        g.draw(new Line2D.Double(a.x - dx, a.y - dy, b.x + dx, b.y + dy));
    }

    private Point2D.Double at(double y, double z, AffineTransform to) {
        SurfaceFrame frame = SurfaceFrame.of(Surface.END_1, board);
        Point2D.Double p = frame.toPage(form.seenSquareOn(new SurfacePoint(Surface.END_1, y, z)));
        p.setLocation(p.x * scale, p.y * scale);
        to.transform(p, p);
        return p;
    }
}
