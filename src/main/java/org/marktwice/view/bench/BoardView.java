package org.marktwice.view.bench;

import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Figures;
import org.marktwice.picture.FormShown;
import org.marktwice.picture.Isometric;
import org.marktwice.picture.IsometricPainter;
import org.marktwice.picture.Lie;
import org.marktwice.picture.SurfaceFrame;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.view.Look;
import org.marktwice.view.Painted;

/**
 * A board in isometric projection. It rolls and turns visibly from one way of lying to another, so that the eye can follow
 * each surface; dragging beside the tools tilts it for a look, and it springs back.
 *
 * <p>It shows what it is given and changes nothing: the bench points at it with tools, the mark sheet and the replay only
 * show it.
 */
public final class BoardView extends Painted implements PatchView {
    private static final long serialVersionUID = 1L;
    private static final int FRAME = 15;
    private static final double SPRING = 0.2;
    /** How far a drag across the whole view tilts, radians. */
    private static final double TILT = 1.1;

    private static final double MOST_TILT = 0.55;
    private static final int MARGIN = 14;

    private final transient IsometricPainter painter;
    private final Timer timer = new Timer(FRAME, e -> frame());
    private transient @Nullable BoardPicture picture;
    private transient List<Overlay> over = List.of();
    private transient Lie lie = Lie.FIRST;
    private transient Lie left = Lie.FIRST;
    private transient Motion motion = Motion.still(Lie.FIRST.rotation());
    private long motionStarted;
    private boolean movement = true;
    private transient @Nullable ShapeShown shape;
    private double sideways;
    private double upwards;
    private long released;
    private double sidewaysAtRelease;
    private double upwardsAtRelease;

    public BoardView(FigureCache cache) {
        super(AccessibleRole.CANVAS, 420, 260);
        setLeast(160, 110);
        readAs("Board");
        painter = new IsometricPainter(new SurfacePainter(Figures.live(cache, this::repaint), Look.Style.BODY.font()));
        setName("board-view");
        setFocusable(true);
        setOpaque(false);
    }

    /** Lets it be tilted by dragging anywhere on it; at the bench the tools decide what a drag is. */
    public BoardView tiltable() {
        TiltMouse mouse = new TiltMouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        return this;
    }

    /** Whether turns are shown moving, or done at once. */
    public void setMovement(boolean shown) {
        movement = shown;
    }

    /** Shows a board as it lies; another board is shown at once, the same one moves there. */
    public void show(BoardPicture next, Lie way) {
        show(next, List.of(), way);
    }

    void show(BoardPicture next, List<Overlay> lying, Lie way) {
        BoardPicture before = picture;
        boolean sameBoard = before != null && before.board().equals(next.board());
        picture = next;
        over = List.copyOf(lying);
        if (!way.equals(lie) || !sameBoard) {
            boolean move = movement && sameBoard && isShowing();
            motion = move ? new Motion(attitude(), way.rotation(), Motion.TURN) : Motion.still(way.rotation());
            motionStarted = System.nanoTime();
            left = lie;
            lie = way;
            if (move) timer.start();
        }
        repaint();
    }

    /** Turns the board so that its evidence faces whoever looks: the first surface named there that isn't seen yet. */
    public void showEvidence(BoardPicture next) {
        List<Surface> telling = next.evidence().surfaces();
        show(next, telling.isEmpty() || lie.shows(telling.get(0)) ? lie : lie.showing(telling.get(0)));
    }

    public Lie lie() {
        return lie;
    }

    /** Whether the board is turning, or springing back. */
    public boolean isMoving() {
        return timer.isRunning();
    }

    private static double since(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    private org.joml.Quaterniond attitude() {
        return motion.at(since(motionStarted));
    }

    private void frame() {
        double share = movement ? Math.min(1, since(released) / SPRING) : 1;
        if (released != 0) {
            sideways = sidewaysAtRelease * (1 - Motion.eased(share));
            upwards = upwardsAtRelease * (1 - Motion.eased(share));
            if (share >= 1) released = 0;
        }
        if (motion.isOver(since(motionStarted)) && released == 0) timer.stop();
        repaint();
    }

    /** Tilted by a drag of so many pixels. */
    void tilt(double dx, double dy) {
        released = 0;
        sideways = clamp(TILT * dx / Math.max(200, getWidth()));
        upwards = clamp(TILT * dy / Math.max(200, getHeight()));
        repaint();
    }

    /** Springs back from a tilt. */
    void letGo() {
        if (sideways == 0 && upwards == 0) return;
        sidewaysAtRelease = sideways;
        upwardsAtRelease = upwards;
        released = System.nanoTime();
        timer.start();
    }

    private static double clamp(double angle) {
        return Math.max(-MOST_TILT, Math.min(MOST_TILT, angle));
    }

    /** Draws the board's true shape so; it is drawn as it is, once over, until it is told otherwise. */
    public void show(@Nullable ShapeShown next) {
        shape = next;
        repaint();
    }

    private @Nullable Isometric projection() {
        BoardPicture shown = picture;
        // Room for tools that stand over the board, and for how its shape is shown; neither where it is only looked at.
        int margin = Look.px(shape == null ? MARGIN / 2 : MARGIN);
        if (shown == null || getWidth() <= 2 * margin || getHeight() <= 2 * margin) return null;
        // the shadow falls to the right and below, and fades within a margin and a half
        Rectangle2D area = shape == null
                ? new Rectangle2D.Double(margin, 0, getWidth() - 4 * margin, getHeight() - 3 * margin)
                : new Rectangle2D.Double(margin, 1.4 * margin, getWidth() - 3 * margin, getHeight() - 3.5 * margin);
        Board board = shown.board();
        FormShown form = ShapeShown.form(shape, board);
        // While it moves, the scale goes over from that of the old lie to that of the new one.
        double share = motion.share(since(motionStarted));
        double scale = (1 - share) * fitting(board, form, left, area) + share * fitting(board, form, lie, area);
        Isometric view = Isometric.of(board.size(), lie.matrix())
                .formed(form)
                .scaled(scale)
                .posed(attitude());
        return (sideways == 0 && upwards == 0 ? view : view.tilted(sideways, upwards)).in(area);
    }

    private static double fitting(Board board, FormShown form, Lie way, Rectangle2D area) {
        return Isometric.of(board.size(), way.matrix())
                .formed(form)
                .fitted(area)
                .scale();
    }

    @Override
    public JComponent component() {
        return this;
    }

    @Override
    public Board board() {
        return Objects.requireNonNull(picture, "nothing is shown yet").board();
    }

    @Override
    public List<Patch> patches() {
        BoardPicture shown = picture;
        Isometric view = projection();
        if (shown == null || view == null) return List.of();
        List<Patch> found = new ArrayList<>();
        for (Surface surface : view.visible()) {
            SurfaceFrame frame = SurfaceFrame.of(surface, shown.board());
            AffineTransform map = view.transform(surface);
            map.concatenate(frame.toSurface());
            found.add(new Patch(frame, map, view::project));
        }
        Collections.reverse(found);
        return found;
    }

    @Override
    public Optional<Point2D.Double> rise(Surface surface) {
        return Optional.ofNullable(projection()).map(v -> v.rise(surface));
    }

    @Override
    public double times() {
        return ShapeShown.times(shape);
    }

    @Override
    protected void draw(Graphics2D g) {
        BoardPicture shown = picture;
        Isometric view = projection();
        if (shown == null || view == null) return;
        painter.paint(g, shown, view, Look.palette());
        new OverlayPainter(g, this, Look.palette()).paint(over);
        ShapeShown.label(g, this, Look.px(18), shape);
    }

    @Override
    public void removeNotify() {
        timer.stop();
        super.removeNotify();
    }

    /** Tilts while dragged with no tool in the hand. */
    private final class TiltMouse extends MouseAdapter {
        private int fromX;
        private int fromY;

        @Override
        public void mousePressed(MouseEvent e) {
            fromX = e.getX();
            fromY = e.getY();
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            if (SwingUtilities.isLeftMouseButton(e)) tilt(e.getX() - fromX, e.getY() - fromY);
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            letGo();
        }
    }
}
