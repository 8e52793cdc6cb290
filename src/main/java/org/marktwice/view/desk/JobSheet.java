package org.marktwice.view.desk;

import java.awt.Cursor;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import org.joml.Vector3d;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Drawing;
import org.marktwice.picture.Ink;
import org.marktwice.picture.WorkingDrawing;
import org.marktwice.scenario.Draft;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Painted;

/**
 * The job drawing beside the parts table: three views with sizes and the isometric picture, as far as the job is drawn.
 * Pointing at a part picks it out, or joins it; in the three views a part can be dragged.
 */
final class JobSheet extends Painted {
    private static final long serialVersionUID = 1L;
    /** A hand that shakes less than this drags nothing, pixels of the usual size. */
    private static final int STILL = 3;

    private static final int LEAST = 120;

    private final transient SetModel model;
    private transient @Nullable WorkingDrawing drawn;

    JobSheet(SetModel model) {
        super(AccessibleRole.CANVAS, 460, 560);
        setLeast(240, 240);
        this.model = model;
        setName("job-sheet");
        Hand hand = new Hand();
        addMouseListener(hand);
        addMouseMotionListener(hand);
        setFocusable(true);
        key("LEFT", () -> model.pickBy(-1));
        key("UP", () -> model.pickBy(-1));
        key("RIGHT", () -> model.pickBy(1));
        key("DOWN", () -> model.pickBy(1));
        key("ENTER", () -> model.picked().ifPresent(model::point));
        key("SPACE", () -> model.picked().ifPresent(model::point));
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
        refresh();
    }

    private void key(String key, Runnable does) {
        getInputMap(WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
        getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                does.run();
            }
        });
    }

    void refresh() {
        Optional<Drawing> drawing = model.draft().drawn();
        WorkingDrawing before = drawn;
        if (drawing.isEmpty()) drawn = null;
        else if (before == null || !before.drawing().equals(drawing.get()))
            drawn = WorkingDrawing.of(drawing.get(), WorkingDrawing.Method.FIRST_ANGLE);
        String picked = model.picked().map(p -> ", picked out: " + p).orElse("");
        readAs("Working drawing" + picked);
        setCursor(Cursor.getPredefinedCursor(model.isJoining() ? Cursor.CROSSHAIR_CURSOR : Cursor.DEFAULT_CURSOR));
        repaint();
    }

    private Rectangle2D area() {
        double margin = Look.px(8);
        return new Rectangle2D.Double(margin, margin, getWidth() - 2 * margin, getHeight() - 2 * margin);
    }

    private static Font font() {
        return Style.NOTE.font();
    }

    private boolean hasRoom() {
        return getWidth() > Look.px(LEAST) && getHeight() > Look.px(LEAST);
    }

    /** The part at a point, on the picture or in one of the views. */
    Optional<String> partAt(Point at) {
        WorkingDrawing now = drawn;
        if (now == null || !hasRoom()) return Optional.empty();
        return now.handle(at, area(), font()).map(WorkingDrawing.Handle::part).or(() -> now.partAt(at, area(), font()));
    }

    /** Whether a part can be taken hold of at this point. */
    boolean canDrag(Point at) {
        WorkingDrawing now = drawn;
        return now != null && hasRoom() && now.handle(at, area(), font()).isPresent();
    }

    @Override
    protected void draw(Graphics2D g) {
        WorkingDrawing now = drawn;
        if (now == null) {
            drawInstead(g, "The drawing appears as soon as a part has its sizes.");
        } else if (hasRoom()) {
            now.paint(g, area(), model.picked().orElse(null), Look.palette(), font());
        }
        if (isFocusOwner()) {
            g.setColor(Look.colour(Ink.ACTION));
            g.draw(new Rectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 1));
        }
    }

    /** Points at parts and drags them. */
    private final class Hand extends MouseAdapter {
        private @Nullable Point from;
        private WorkingDrawing.@Nullable Handle held;
        private @Nullable Draft before;
        private boolean moving;

        @Override
        public void mouseMoved(MouseEvent event) {
            if (!model.isJoining()) setCursor(Cursor.getPredefinedCursor(cursorAt(event.getPoint())));
        }

        private int cursorAt(Point at) {
            return canDrag(at)
                    ? Cursor.MOVE_CURSOR
                    : partAt(at).isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR;
        }

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            moving = false;
            held = null;
            partAt(event.getPoint()).ifPresent(part -> {
                boolean joining = model.isJoining();
                model.point(part);
                WorkingDrawing now = drawn;
                if (joining || now == null) return;
                held = now.handle(event.getPoint(), area(), font()).orElse(null);
                from = event.getPoint();
                before = model.draft();
            });
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            Point start = from;
            if (held == null || start == null) return;
            moving |= start.distance(event.getPoint()) > Look.px(STILL);
            if (moving) move(event, false);
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            if (moving) move(event, true);
            held = null;
            moving = false;
        }

        private void move(MouseEvent event, boolean dropped) {
            WorkingDrawing.Handle handle = held;
            Point start = from;
            Draft draft = before;
            if (handle == null || start == null || draft == null) return;
            Vector3d by = new Vector3d();
            double right = (event.getX() - start.x) * handle.mmPerPixel() * handle.rightSign();
            double up = (start.y - event.getY()) * handle.mmPerPixel();
            by.setComponent(handle.right().ordinal(), right);
            by.setComponent(handle.up().ordinal(), up);
            model.move(handle.part(), draft, by, dropped);
        }
    }
}
