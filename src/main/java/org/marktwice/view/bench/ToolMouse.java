package org.marktwice.view.bench;

import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Look;

/** Carries the mouse from a view to the tool in hand, as points of the board. */
final class ToolMouse extends MouseAdapter {
    /** How near a point takes to an edge, pixels of the usual text size. */
    static final int REACH = 8;

    /** What is done where the menu is asked for. */
    interface Menu {
        void open(PatchView view, Point where, @Nullable Aim aim);
    }

    private final PatchView view;
    private final BenchModel model;
    private final Menu menu;
    private @Nullable Patch held;
    private boolean tilting;
    private Point pressed = new Point();

    private ToolMouse(PatchView view, BenchModel model, Menu menu) {
        this.view = view;
        this.model = model;
        this.menu = menu;
    }

    static void attach(PatchView view, BenchModel model, Menu menu) {
        ToolMouse mouse = new ToolMouse(view, model, menu);
        view.component().addMouseListener(mouse);
        view.component().addMouseMotionListener(mouse);
    }

    /** What the view's pixel points at; empty beside the board. */
    private Optional<Aim> aim(MouseEvent e) {
        Patch onto = held;
        if (onto != null) return onto.nearest(e.getPoint()).map(at -> aim(onto, at, e.isShiftDown()));
        return view.place(e.getPoint()).map(p -> aim(p.patch(), p.at(), e.isShiftDown()));
    }

    private Aim aim(Patch patch, SurfacePoint at, boolean shift) {
        Snapper snapper = new Snapper(model.board(), patch.surface(), model.shownCuts(), model.lines());
        return new Aim(at, snapper.snap(at.u(), at.v(), patch.surfaceToView(), Look.px(REACH)), shift);
    }

    @Override
    public void mouseMoved(MouseEvent e) {
        model.workOn(view instanceof UnrolledView);
        model.point(aim(e).orElse(null));
    }

    @Override
    public void mouseExited(MouseEvent e) {
        if (held == null) model.point(null);
    }

    @Override
    public void mousePressed(MouseEvent e) {
        view.component().requestFocusInWindow();
        pressed = e.getPoint();
        model.workOn(view instanceof UnrolledView);
        if (e.isPopupTrigger()) {
            menu.open(view, e.getPoint(), aim(e).orElse(null));
            return;
        }
        if (!SwingUtilities.isLeftMouseButton(e)) return;
        model.hush();
        Optional<Aim> aim = aim(e);
        model.point(aim.orElse(null));
        if (model.tool().isEmpty() || aim.isEmpty()) {
            tilting = true;
            return;
        }
        BenchTool tool = model.tool().get();
        tool.press(aim.get());
        Surface holding = tool.holding();
        held = holding == null ? null : patch(holding);
        model.changed();
    }

    private @Nullable Patch patch(Surface surface) {
        return view.patches().stream()
                .filter(p -> p.surface() == surface)
                .findFirst()
                .orElse(null);
    }

    @Override
    public void mouseDragged(MouseEvent e) {
        if (!SwingUtilities.isLeftMouseButton(e)) return;
        if (tilting) {
            if (view instanceof BoardView board) board.tilt(e.getX() - pressed.x, e.getY() - pressed.y);
            return;
        }
        Optional<Aim> aim = aim(e);
        if (aim.isEmpty() || model.tool().isEmpty()) return;
        BenchTool tool = model.tool().get();
        if (tool.holding() == null) tool.point(aim.get());
        tool.drag(aim.get());
        model.changed();
    }

    @Override
    public void mouseReleased(MouseEvent e) {
        if (e.isPopupTrigger()) {
            menu.open(view, e.getPoint(), aim(e).orElse(null));
            return;
        }
        if (!SwingUtilities.isLeftMouseButton(e)) return;
        if (tilting) {
            tilting = false;
            if (view instanceof BoardView board) board.letGo();
            return;
        }
        Optional<Aim> aim = aim(e);
        held = null;
        if (model.tool().isEmpty()) return;
        if (aim.isPresent()) model.tool().get().release(aim.get());
        model.changed();
    }
}
