package org.marktwice.view.dryfit;

import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.function.Consumer;
import javax.accessibility.AccessibleRole;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Figures;
import org.marktwice.picture.FitCamera;
import org.marktwice.picture.FitPicture;
import org.marktwice.picture.Palette;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Painted;

/** The job put together dry, to be walked round and drawn apart. Dragging tilts it for a look; let go, it springs back. */
final class FitPane extends Painted {
    private static final long serialVersionUID = 1L;
    private static final int FRAME_MS = 16;
    private static final double TURN_MS = 230;
    /** A drag as wide as this tilts by a radian, pixels. */
    private static final double RADIAN = 420;

    private final transient FitModel model;
    private final transient SurfacePainter painter;
    private final transient Timer walking = new Timer(FRAME_MS, e -> walkOn());
    private transient FitPicture picture;
    private transient FitCamera camera = FitCamera.FIRST;
    private transient FitCamera from = FitCamera.FIRST;
    private transient FitCamera to = FitCamera.FIRST;
    private long since;
    private double apart;
    private double times;
    private boolean timesSet;
    private boolean movement = true;
    private transient @Nullable Object pictured;
    private transient Consumer<String> onPart = part -> {};

    FitPane(FitModel model, FigureCache figures) {
        super(AccessibleRole.ICON, 760, 600);
        setLeast(240, 160);
        this.model = model;
        this.painter = new SurfacePainter(
                Figures.live(figures, () -> SwingUtilities.invokeLater(this::finer)), Style.BODY.font());
        this.picture = new FitPicture(model.sheet().fit(), model.bench(), painter);
        this.times = picture.times();
        setName("fit-picture");
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        readAs("The job put together dry");
    }

    private void finer() {
        picture.refresh();
        repaint();
    }

    void onPart(Consumer<String> does) {
        onPart = does;
    }

    void setMovement(boolean shown) {
        movement = shown;
    }

    /** What is judged has changed, or what is chosen. */
    void follow() {
        if (model.sheet().fit() != pictured) {
            pictured = model.sheet().fit();
            picture = new FitPicture(model.sheet().fit(), model.bench(), painter);
            if (!timesSet) times = picture.times();
        }
        repaint();
    }

    /** Turns to where what is chosen is seen best. */
    void turnToChosen() {
        FitPicture.Shown shown = shown();
        shown.spots().stream()
                .filter(FitPicture.Spot::chosen)
                .findFirst()
                .ifPresent(spot -> walkTo(
                        picture.showing(spot, new FitPicture.Shown(to, apart, times, shown.picked(), shown.spots()))));
    }

    double apart() {
        return apart;
    }

    void drawApart(double much) {
        apart = Math.max(0, Math.min(1, much));
        repaint();
    }

    double times() {
        return times;
    }

    void stepTimes(int step) {
        timesSet = true;
        times = FitPicture.times(times, step);
        repaint();
    }

    FitCamera camera() {
        return to;
    }

    void walk(int corners) {
        walkTo(new FitCamera(Math.round(to.corner()) + corners, to.height(), 0, 0));
    }

    void stoop() {
        walkTo(new FitCamera(Math.round(to.corner()), -to.height(), 0, 0));
    }

    private void walkTo(FitCamera next) {
        // the shorter way round
        double turns = Math.round((to.corner() - next.corner()) / 4) * 4;
        FitCamera there = new FitCamera(next.corner() + turns, next.height(), 0, 0);
        from = camera;
        to = there;
        since = System.nanoTime();
        if (movement && isShowing()) {
            walking.start();
        } else {
            camera = to;
            walking.stop();
        }
        getAccessibleContext().setAccessibleDescription("Seen " + to.spoken());
        repaint();
    }

    private void walkOn() {
        double t = Math.min(1, (System.nanoTime() - since) / 1e6 / TURN_MS);
        double s = t * t * (3 - 2 * t);
        camera = new FitCamera(
                from.corner() + (to.corner() - from.corner()) * s,
                from.height() + (to.height() - from.height()) * s,
                from.sideways() * (1 - s),
                from.upwards() * (1 - s));
        if (t >= 1) {
            camera = to;
            walking.stop();
        }
        repaint();
    }

    void stop() {
        walking.stop();
    }

    private FitPicture.Shown shown() {
        return new FitPicture.Shown(camera, apart, times, model.picked(), model.spots());
    }

    private Rectangle2D area() {
        return new Rectangle2D.Double(0, 0, Math.max(1, getWidth()), Math.max(1, getHeight()));
    }

    @Override
    protected void draw(Graphics2D g) {
        double device = Math.max(1, g.getTransform().getScaleX());
        picture.paint(g, area(), shown(), device, Look.isDark() ? Palette.DARK : Palette.LIGHT);
    }

    private final class Mouse extends MouseAdapter {
        private @Nullable Point pressed;
        private boolean dragged;

        @Override
        public void mousePressed(MouseEvent e) {
            pressed = e.getPoint();
            dragged = false;
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            Point start = pressed;
            if (start == null || (!dragged && start.distance(e.getPoint()) < Look.px(4))) return;
            dragged = true;
            walking.stop();
            camera = to.tilted((start.x - e.getX()) / RADIAN, (e.getY() - start.y) / RADIAN);
            repaint();
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            if (dragged) walkTo(to);
            else picture.partAt(e.getPoint()).ifPresent(onPart);
            pressed = null;
            dragged = false;
        }
    }
}
