package org.marktwice.view.desk;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.function.Consumer;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Figures;
import org.marktwice.picture.Ink;
import org.marktwice.picture.SurfaceFrame;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Surface;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Painted;

/**
 * The board in the stem it was sawn from, seen from end-2: its end grain, the rings about the pith, and the branches. The
 * pith is dragged, or moved by the arrow keys.
 */
final class EndSection extends Painted {
    private static final long serialVersionUID = 1L;
    private static final double REACH = 14;
    private static final double RINGS = 10;

    private final transient FigureCache cache;
    private final transient Consumer<Pith> attempt;
    private final transient Consumer<Pith> settle;
    private transient @Nullable Board board;
    /** Kept while the pith is dragged, so that nothing else moves under the hand. */
    private transient @Nullable AffineTransform held;

    private boolean dragging;

    /** @param attempt is told while the pith is dragged, and {@code settle} when it is let go */
    EndSection(FigureCache cache, Consumer<Pith> attempt, Consumer<Pith> settle) {
        super(AccessibleRole.CANVAS, 360, 240);
        this.cache = cache;
        this.attempt = attempt;
        this.settle = settle;
        setName("end-section");
        setFocusable(true);
        Hand hand = new Hand();
        addMouseListener(hand);
        addMouseMotionListener(hand);
        arrow(KeyEvent.VK_LEFT, -1, 0);
        arrow(KeyEvent.VK_RIGHT, 1, 0);
        arrow(KeyEvent.VK_UP, 0, 1);
        arrow(KeyEvent.VK_DOWN, 0, -1);
    }

    private void arrow(int key, int dy, int dz) {
        String name = "pith " + dy + " " + dz;
        getInputMap(WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key, 0), name);
        getActionMap().put(name, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(java.awt.event.ActionEvent event) {
                Board now = board;
                if (now == null) return;
                now.pith().ifPresent(p -> settle.accept(new Pith(p.y() + dy, p.z() + dz)));
            }
        });
    }

    void show(@Nullable Board next) {
        board = next;
        String where = next == null
                ? ""
                : next.pith()
                        .map(p -> ", pith at y " + NumberField.spoken(p.y()) + ", z " + NumberField.spoken(p.z()))
                        .orElse("");
        readAs("The board in its stem, seen from end 2" + where);
        repaint();
    }

    /** From the board's y and z, in millimetres, to the screen: z runs up. */
    private AffineTransform toScreen(Board of) {
        AffineTransform now = held;
        if (now != null) return now;
        Rectangle2D seen =
                new Rectangle2D.Double(0, 0, of.size().width(), of.size().thickness());
        of.pith().ifPresent(p -> seen.add(p.y(), p.z()));
        double margin = 0.12 * Math.max(seen.getWidth(), seen.getHeight()) + 6;
        double scale =
                Math.min(getWidth() / (seen.getWidth() + 2 * margin), getHeight() / (seen.getHeight() + 2 * margin));
        AffineTransform t = AffineTransform.getTranslateInstance(getWidth() / 2.0, getHeight() / 2.0);
        t.scale(scale, -scale);
        t.translate(-seen.getCenterX(), -seen.getCenterY());
        return t;
    }

    /** Where the pith is on the screen. */
    Point2D pithAt() {
        Board now = board;
        if (now == null || now.pith().isEmpty()) return new Point2D.Double(-1, -1);
        return on(toScreen(now), now.pith().get().y(), now.pith().get().z());
    }

    private static Point2D on(AffineTransform t, double y, double z) {
        return t.transform(new Point2D.Double(y, z), null);
    }

    @Override
    protected void draw(Graphics2D g) {
        Board now = board;
        if (now == null || getWidth() < 20 || getHeight() < 20) return;
        AffineTransform t = toScreen(now);
        double scale = t.getScaleX();
        if (now.pith().isPresent()) rings(g, now.pith().get(), now, t, scale);
        end(g, now, t, scale);
        if (now.pith().isPresent()) {
            branches(g, now, now.pith().get(), t);
            face(g, now, t, scale);
            cross(g, on(t, now.pith().get().y(), now.pith().get().z()));
        }
        if (isFocusOwner()) {
            g.setColor(Look.colour(Ink.ACTION));
            g.draw(new Rectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 1));
        }
    }

    private void rings(Graphics2D g, Pith pith, Board of, AffineTransform t, double scale) {
        Point2D at = on(t, pith.y(), pith.z());
        g.setColor(Look.colour(Ink.BORDER));
        g.setStroke(new BasicStroke(1));
        double step = Math.max(of.facts().ringWidth() * 4, RINGS);
        double farthest = Math.hypot(getWidth(), getHeight()) * 1.5;
        for (double r = step; r * scale < farthest && r < 2000; r += step) {
            g.draw(new Ellipse2D.Double(at.getX() - r * scale, at.getY() - r * scale, 2 * r * scale, 2 * r * scale));
        }
    }

    private void end(Graphics2D g, Board of, AffineTransform t, double scale) {
        SurfacePainter painter = new SurfacePainter(Figures.live(cache, this::repaint), Style.NOTE.font());
        Graphics2D flat = (Graphics2D) g.create();
        // the surface's own page has z running up already
        Point2D corner = on(t, 0, of.size().thickness());
        flat.translate(corner.getX(), corner.getY());
        flat.scale(scale, scale);
        flat.transform(SurfaceFrame.of(Surface.END_2, of).toPage());
        painter.paint(flat, BoardPicture.of(of), Surface.END_2, scale, Look.palette());
        flat.dispose();
        g.setColor(Look.colour(Ink.INK));
        g.setStroke(new BasicStroke(1.2f));
        g.draw(new Rectangle2D.Double(
                corner.getX(),
                corner.getY(),
                of.size().width() * scale,
                of.size().thickness() * scale));
    }

    /** Says which face is which, on a ground of its own: branches run behind it. */
    private static void face(Graphics2D g, Board of, AffineTransform t, double scale) {
        Point2D corner = on(t, 0, of.size().thickness());
        double middle = corner.getX() + of.size().width() * scale / 2;
        var metrics = g.getFontMetrics(Style.NOTE.font());
        double wide = metrics.stringWidth("face 1") + Look.px(8);
        g.setColor(Look.colour(Ink.PANEL));
        g.fill(new Rectangle2D.Double(
                middle - wide / 2, corner.getY() - metrics.getHeight() - Look.px(2), wide, metrics.getHeight()));
        label(g, "face 1", middle, corner.getY() - Look.px(6));
    }

    private static void label(Graphics2D g, String words, double middle, double base) {
        g.setFont(Style.NOTE.font());
        g.setColor(Look.colour(Ink.QUIET));
        g.drawString(words, (float) (middle - g.getFontMetrics().stringWidth(words) / 2.0), (float) base);
    }

    private void branches(Graphics2D g, Board of, Pith pith, AffineTransform t) {
        Point2D from = on(t, pith.y(), pith.z());
        g.setStroke(new BasicStroke(1.4f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1, new float[] {6, 5}, 0));
        g.setColor(Look.colour(Ink.QUIET));
        double far =
                Math.hypot(of.size().width() + Math.abs(pith.y()), of.size().thickness() + Math.abs(pith.z()));
        for (Knot knot : of.knots()) {
            double a = Math.toRadians(knot.azimuth());
            Point2D to = on(t, pith.y() + far * Math.cos(a), pith.z() + far * Math.sin(a));
            g.draw(new Line2D.Double(from, to));
        }
    }

    private void cross(Graphics2D g, Point2D at) {
        double r = Look.px(dragging ? 9 : 7);
        g.setStroke(new BasicStroke(1.6f));
        g.setColor(Look.colour(Ink.PANEL));
        g.fill(new Ellipse2D.Double(at.getX() - r, at.getY() - r, 2 * r, 2 * r));
        g.setColor(Look.colour(Ink.ACTION));
        g.draw(new Ellipse2D.Double(at.getX() - r, at.getY() - r, 2 * r, 2 * r));
        g.draw(new Line2D.Double(at.getX() - r / 2, at.getY(), at.getX() + r / 2, at.getY()));
        g.draw(new Line2D.Double(at.getX(), at.getY() - r / 2, at.getX(), at.getY() + r / 2));
        label(g, "pith", at.getX() + r + Look.px(16), at.getY() + Look.px(4));
    }

    private final class Hand extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            Board now = board;
            if (now == null || pithAt().distance(event.getPoint()) > Look.px(REACH)) return;
            held = toScreen(now);
            dragging = true;
            repaint();
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            if (dragging) attempt.accept(pith(event));
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            if (!dragging) return;
            Pith last = pith(event);
            dragging = false;
            held = null;
            settle.accept(last);
            repaint();
        }

        private Pith pith(MouseEvent event) {
            AffineTransform t = held;
            if (t == null) throw new IllegalStateException("nothing is held");
            try {
                Point2D at = t.inverseTransform(event.getPoint(), null);
                return new Pith(Math.rint(at.getX()) + 0.0, Math.rint(at.getY()) + 0.0);
            } catch (java.awt.geom.NoninvertibleTransformException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
