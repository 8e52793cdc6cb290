package org.marktwice.view.bench;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Figures;
import org.marktwice.picture.SurfaceFrame;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.picture.Unrolled;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.view.Look;
import org.marktwice.view.Painted;

/** A board unrolled: its four long surfaces under each other, with both ends beside them, all to one scale. */
public final class UnrolledView extends Painted implements PatchView {
    private static final long serialVersionUID = 1L;
    private static final int MARGIN = 10;

    private final transient SurfacePainter painter;
    private transient @Nullable BoardPicture picture;
    private transient List<Overlay> over = List.of();
    private transient @Nullable ShapeShown shape;

    public UnrolledView(FigureCache cache) {
        super(AccessibleRole.CANVAS, 420, 240);
        setLeast(160, 90);
        readAs("Board unrolled");
        painter = new SurfacePainter(Figures.live(cache, this::repaint), Look.Style.BODY.font());
        setName("unrolled-view");
        setFocusable(true);
        setOpaque(false);
    }

    public void show(BoardPicture next) {
        show(next, List.of());
    }

    void show(BoardPicture next, List<Overlay> lying) {
        picture = next;
        over = List.copyOf(lying);
        repaint();
    }

    /** Draws the board's true shape so; it is drawn as it is, once over, until it is told otherwise. */
    public void show(@Nullable ShapeShown next) {
        shape = next;
        repaint();
    }

    private @Nullable Unrolled layoutNow() {
        BoardPicture shown = picture;
        int margin = Look.px(MARGIN);
        if (shown == null || getWidth() <= 8 * margin || getHeight() <= 4 * margin) return null;
        int label = shape == null ? 0 : Look.px(ShapeShown.ROOM);
        Rectangle2D area =
                new Rectangle2D.Double(margin, margin, getWidth() - 2 * margin, getHeight() - 2 * margin - label);
        return Unrolled.in(area, shown.board(), painter.font(), ShapeShown.form(shape, shown.board()));
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
        Unrolled unrolled = layoutNow();
        if (unrolled == null) return List.of();
        List<Patch> found = new ArrayList<>();
        for (Surface surface : Surface.values()) {
            SurfaceFrame frame = SurfaceFrame.of(surface, unrolled.board());
            AffineTransform map = unrolled.transform(surface);
            map.concatenate(frame.toSurface());
            found.add(new Patch(frame, map, unrolled::project));
        }
        return found;
    }

    @Override
    public double times() {
        return ShapeShown.times(shape);
    }

    @Override
    protected void draw(Graphics2D g) {
        BoardPicture shown = picture;
        Unrolled unrolled = layoutNow();
        if (shown == null || unrolled == null) return;
        unrolled.paint(g, shown, painter, Look.palette());
        new OverlayPainter(g, this, Look.palette()).paint(over);
        ShapeShown.label(g, this, 0, shape);
    }
}
