package org.marktwice.view.quiz;

import java.awt.Cursor;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.accessibility.AccessibleRole;
import javax.swing.Timer;
import org.joml.Matrix3d;
import org.joml.Quaterniond;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Figures;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.quiz.Offer;
import org.marktwice.quiz.Picture;
import org.marktwice.quiz.PicturePainter;
import org.marktwice.view.Look;
import org.marktwice.view.Painted;

/** A question's picture. What can be answered with is outlined under the pointer; a board that lay otherwise before is seen turning. */
public final class PictureView extends Painted {
    private static final long serialVersionUID = 1L;
    private static final double TURN = 0.22;
    private static final int FRAME = 16;
    private static final int MARGIN = 16;

    private final transient SurfacePainter painter;
    private final Timer timer = new Timer(FRAME, e -> frame());
    private transient Picture picture;
    private transient @Nullable Quaterniond from;
    private long started;
    private boolean movement = true;
    private transient Predicate<Offer.Place> offered = place -> false;
    private transient Consumer<Offer.Place> onPoint = place -> {};
    private transient Consumer<Optional<Offer.Place>> onPass = place -> {};
    private transient Offer.@Nullable Place pointed;
    private transient Offer.@Nullable Place chosen;

    PictureView(FigureCache figures, Picture first) {
        super(AccessibleRole.CANVAS, 420, 320);
        setLeast(120, 90);
        painter = new SurfacePainter(Figures.live(figures, this::repaint), Look.Style.BODY.font());
        picture = first;
        setOpaque(false);
        Pointing pointing = new Pointing();
        addMouseListener(pointing);
        addMouseMotionListener(pointing);
    }

    void setMovement(boolean shown) {
        movement = shown;
    }

    /** Shows another picture; of the same board, lying otherwise, it turns to it. */
    void show(Picture next) {
        Picture before = picture;
        picture = next;
        chosen = null;
        pointed = null;
        from = null;
        if (movement
                && isShowing()
                && next instanceof Picture.Lying to
                && before instanceof Picture.Lying was
                && was.board().board().equals(to.board().board())) {
            from = attitude(was);
            started = System.nanoTime();
            timer.start();
        }
        repaint();
    }

    /** What can be pointed at, and what happens then; {@code pass} is told what the pointer is over. */
    void offer(Predicate<Offer.Place> places, Consumer<Offer.Place> point, Consumer<Optional<Offer.Place>> pass) {
        offered = places;
        onPoint = point;
        onPass = pass;
        pointed = null;
        setCursor(Cursor.getDefaultCursor());
    }

    void choose(Offer.@Nullable Place place) {
        chosen = place;
        repaint();
    }

    private static Quaterniond attitude(Picture.Lying lying) {
        return new Quaterniond().setFromNormalized(lying.turn().rotation());
    }

    private void frame() {
        if (share() >= 1) {
            from = null;
            timer.stop();
        }
        repaint();
    }

    private double share() {
        double t = Math.min(1, (System.nanoTime() - started) / 1e9 / TURN);
        return t * t * (3 - 2 * t);
    }

    private Optional<PicturePainter> laidOut() {
        int margin = Look.px(MARGIN);
        if (getWidth() <= 4 * margin || getHeight() <= 4 * margin) return Optional.empty();
        Rectangle2D area =
                new Rectangle2D.Double(margin, margin, getWidth() - 2.0 * margin, getHeight() - 2.0 * margin);
        Matrix3d pose = null;
        if (from != null && picture instanceof Picture.Lying to) {
            pose = from.slerp(attitude(to), share(), new Quaterniond()).get(new Matrix3d());
        }
        return Optional.of(PicturePainter.in(picture, area, painter.font(), pose));
    }

    @Override
    protected void draw(Graphics2D g) {
        Offer.Place shown = chosen != null ? chosen : pointed;
        laidOut().ifPresent(p -> p.paint(g, painter, Look.palette(), shown));
    }

    /** Where a place is to be seen; for tests that point there. */
    Optional<java.awt.Point> pointOf(Offer.Place place) {
        return laidOut().flatMap(p -> p.shape(place)).map(s -> {
            Rectangle2D b = s.getBounds2D();
            return new java.awt.Point((int) Math.round(b.getCenterX()), (int) Math.round(b.getCenterY()));
        });
    }

    private Optional<Offer.Place> under(MouseEvent event) {
        return laidOut().flatMap(p -> p.at(event.getPoint())).filter(offered);
    }

    @Override
    public void removeNotify() {
        timer.stop();
        super.removeNotify();
    }

    private final class Pointing extends MouseAdapter {
        @Override
        public void mouseMoved(MouseEvent event) {
            Optional<Offer.Place> now = under(event);
            if (now.equals(Optional.ofNullable(pointed))) return;
            pointed = now.orElse(null);
            setCursor(Cursor.getPredefinedCursor(now.isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
            onPass.accept(now);
            repaint();
        }

        @Override
        public void mouseExited(MouseEvent event) {
            if (pointed == null) return;
            pointed = null;
            onPass.accept(Optional.empty());
            repaint();
        }

        @Override
        public void mousePressed(MouseEvent event) {
            under(event).ifPresent(onPoint);
        }
    }
}
