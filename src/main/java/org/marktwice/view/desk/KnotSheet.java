package org.marktwice.view.desk;

import java.awt.Cursor;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Figures;
import org.marktwice.picture.Pointed;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.picture.Unrolled;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.Trace;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Painted;

/** A board that is drawn by hand, unrolled: a knot is dragged over the surfaces, a double click makes one. */
final class KnotSheet extends Painted {
    private static final long serialVersionUID = 1L;
    /** A hand that shakes less than this drags nothing, pixels of the usual size. */
    private static final int STILL = 3;

    /** What the hand does to the board. */
    interface Host {
        void picked(String knot);

        /** @param settled whether it has been let go */
        void moved(Knot knot, boolean settled);
    }

    private final transient FigureCache cache;
    private final transient Host host;
    private transient @Nullable Board board;
    private String picked = "";

    KnotSheet(FigureCache cache, Host host) {
        super(AccessibleRole.CANVAS, 640, 360);
        this.cache = cache;
        this.host = host;
        setName("knot-sheet");
        Hand hand = new Hand();
        addMouseListener(hand);
        addMouseMotionListener(hand);
    }

    void show(@Nullable Board next, String knot) {
        board = next;
        picked = knot;
        readAs(next == null ? "No board" : "Board " + next.id() + " unrolled");
        repaint();
    }

    private @Nullable Unrolled layoutNow() {
        Board now = board;
        int margin = Look.px(8);
        if (now == null || getWidth() < Look.px(120) || getHeight() < Look.px(60)) return null;
        Rectangle2D area = new Rectangle2D.Double(margin, margin, getWidth() - 2 * margin, getHeight() - 2 * margin);
        return Unrolled.in(area, now, Style.BODY.font());
    }

    /** Where a place on the board is on the screen. */
    Optional<Point> at(SurfacePoint place) {
        Unrolled now = layoutNow();
        if (now == null) return Optional.empty();
        var p = now.project(place);
        return Optional.of(new Point((int) Math.round(p.x), (int) Math.round(p.y)));
    }

    @Override
    protected void draw(Graphics2D g) {
        Board now = board;
        Unrolled unrolled = layoutNow();
        if (now == null) drawInstead(g, "Add a board: its surfaces and its stem appear here.");
        if (now == null || unrolled == null) return;
        SurfacePainter painter = new SurfacePainter(Figures.live(cache, this::repaint), Style.BODY.font());
        BoardPicture picture = BoardPicture.of(now);
        if (now.knot(picked).isPresent()) picture = picture.pointed(new Pointed.AtKnot(picked));
        unrolled.paint(g, picture, painter, Look.palette());
    }

    private static boolean contains(Trace trace, SurfacePoint place) {
        List<SurfacePoint> outline = trace.outline();
        Path2D.Double path = new Path2D.Double();
        for (int i = 0; i < outline.size(); i++) {
            SurfacePoint p = outline.get(i);
            if (i == 0) path.moveTo(p.u(), p.v());
            else path.lineTo(p.u(), p.v());
        }
        path.closePath();
        return path.contains(place.u(), place.v());
    }

    private final class Hand extends MouseAdapter {
        private @Nullable Knot held;
        private double offU;
        private double offV;
        private Point from = new Point();
        private boolean moved;

        private Optional<SurfacePoint> place(MouseEvent event) {
            Unrolled now = layoutNow();
            return now == null ? Optional.empty() : now.pick(event.getPoint());
        }

        private Optional<Trace> trace(SurfacePoint at) {
            Board now = board;
            if (now == null) return Optional.empty();
            return now.traces(at.surface()).stream()
                    .filter(t -> contains(t, at))
                    .findFirst();
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            boolean over = place(event).flatMap(this::trace).isPresent();
            setCursor(Cursor.getPredefinedCursor(over ? Cursor.MOVE_CURSOR : Cursor.DEFAULT_CURSOR));
        }

        @Override
        public void mousePressed(MouseEvent event) {
            held = null;
            moved = false;
            from = event.getPoint();
            Board now = board;
            Optional<SurfacePoint> at = place(event);
            if (now == null || at.isEmpty()) return;
            Optional<Trace> trace = trace(at.get());
            if (trace.isPresent()) {
                host.picked(trace.get().knot());
                held = now.knot(trace.get().knot()).orElse(null);
                // the branch's own middle stays as far from the hand as it was
                SurfacePoint middle = trace.get().middle();
                offU = middle.u() - at.get().u();
                offV = middle.v() - at.get().v();
            } else if (event.getClickCount() == 2) {
                BoardEdits.freshThrough(now, at.get()).ifPresent(k -> {
                    host.moved(k, true);
                    host.picked(k.id());
                });
            }
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            moved |= from.distance(event.getPoint()) > Look.px(STILL);
            if (moved) move(event, false);
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            if (moved) move(event, true);
            held = null;
        }

        private void move(MouseEvent event, boolean settled) {
            Knot knot = held;
            Board now = board;
            if (knot == null || now == null) return;
            Optional<Knot> next = place(event)
                    .map(p -> new SurfacePoint(p.surface(), p.u() + offU, p.v() + offV))
                    .flatMap(p -> BoardEdits.through(now, knot, p));
            // let go beside the board, it stays where it was last seen
            if (next.isPresent()) host.moved(next.get(), settled);
            else if (settled) now.knot(knot.id()).ifPresent(k -> host.moved(k, true));
        }
    }
}
