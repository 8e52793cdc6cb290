package org.marktwice.view.bench;

import java.awt.event.KeyEvent;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import javax.swing.event.MenuKeyEvent;
import javax.swing.event.MenuKeyListener;
import org.marktwice.advice.Option;
import org.marktwice.bench.CutAt;
import org.marktwice.bench.Reason;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.rulebook.Slip;
import org.marktwice.rulebook.SlipWords;
import org.marktwice.timber.SurfacePoint;

/** Asks by a short list at the place: by mouse, by the arrows and Enter, or by the number before the word. */
final class Choosers implements Chooser {
    /** Estimates go by so many millimetres: an eye is no finer. */
    private static final double STEP = 5;

    private final BenchModel model;
    private final BoardView boardView;
    private final UnrolledView unrolledView;

    Choosers(BenchModel model, BoardView boardView, UnrolledView unrolledView) {
        this.model = model;
        this.boardView = boardView;
        this.unrolledView = unrolledView;
    }

    @Override
    public void part(SurfacePoint at, List<Part> parts, Consumer<Part> chosen) {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("choose-part");
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            add(menu, i, part.name(), "part-" + part.id(), () -> chosen.accept(part));
        }
        showAt(menu, at);
    }

    @Override
    public void joint(SurfacePoint at, List<Joint> joints, Consumer<Joint> chosen) {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("choose-joint");
        for (int i = 0; i < joints.size(); i++) {
            Joint joint = joints.get(i);
            add(menu, i, word(joint), "joint-" + joint.id(), () -> chosen.accept(joint));
        }
        showAt(menu, at);
    }

    @Override
    public void side(SurfacePoint at, Consumer<CutAt> chosen) {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("choose-side");
        CutAt[] sides = CutAt.values();
        for (int i = 0; i < sides.length; i++) {
            CutAt side = sides[i];
            add(menu, i, Words.capital(side.spoken()), "side-" + side.id(), () -> chosen.accept(side));
        }
        showAt(menu, at);
    }

    /** {@code Housing with the Shelf}: told by the part at its other side. */
    private String word(Joint joint) {
        String here = model.part().map(Part::id).orElse("");
        String other = joint.in().equals(here) ? joint.takes() : joint.in();
        String name =
                model.session().scenario().drawing().part(other).map(Part::name).orElse(other);
        return Words.capital(joint.noun()) + " with the " + name;
    }

    @Override
    public void reason(Consumer<Reason> chosen) {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("choose-reason");
        Reason[] reasons = Reason.values();
        for (int i = 0; i < reasons.length; i++) {
            Reason reason = reasons[i];
            add(menu, i, Words.capital(reason.spoken()), "reason-" + reason.id(), () -> chosen.accept(reason));
        }
        showAt(menu, Caret.middle(model.board().board(), model.lie().up()));
    }

    @Override
    public void slip(Consumer<Slip> chosen) {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("choose-slip");
        List<Slip> slips = SlipWords.toBeNamed();
        for (int i = 0; i < slips.size(); i++) {
            Slip slip = slips.get(i);
            add(menu, i, SlipWords.title(slip), "slip-" + slip.id(), () -> chosen.accept(slip));
        }
        showAt(menu, Caret.middle(model.board().board(), model.lie().up()));
    }

    @Override
    public void clearance(DoubleConsumer chosen) {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("choose-clearance");
        for (int i = 0; i * STEP <= Option.CAP; i++) {
            double mm = i * STEP;
            String word = mm == 0 ? "in the joint" : Reading.mm(mm) + (mm < Option.CAP ? "" : " or more");
            add(menu, i, word, "clearance-" + Math.round(mm), () -> chosen.accept(mm));
        }
        showAt(menu, Caret.middle(model.board().board(), model.lie().up()));
    }

    private static void add(JPopupMenu menu, int index, String word, String name, Runnable does) {
        boolean numbered = index < 9;
        JMenuItem item = new JMenuItem(numbered ? (index + 1) + "  " + word : word);
        item.setName("choose-" + name);
        item.addActionListener(e -> does.run());
        item.addMenuKeyListener(new NumberKey(menu));
        menu.add(item);
    }

    /** Picks a line by its number, whichever line is picked out just now. */
    private record NumberKey(JPopupMenu menu) implements MenuKeyListener {
        @Override
        public void menuKeyPressed(MenuKeyEvent e) {
            int number = e.getKeyCode() - KeyEvent.VK_1;
            if (number < 0 || number > 8 || number >= menu.getComponentCount()) return;
            e.consume();
            MenuSelectionManager.defaultManager().clearSelectedPath();
            if (menu.getComponent(number) instanceof JMenuItem chosen) chosen.doClick(0);
        }

        @Override
        public void menuKeyTyped(MenuKeyEvent e) {}

        @Override
        public void menuKeyReleased(MenuKeyEvent e) {}
    }

    /** Opens a menu where the place is seen, with its first line picked. */
    void showAt(JPopupMenu menu, SurfacePoint at) {
        boolean flat = unrolledView.isFocusOwner();
        Optional<Point2D> pixel = pixel(flat ? unrolledView : boardView, at);
        PatchView view = flat || pixel.isEmpty() ? unrolledView : boardView;
        Point2D where = pixel(view, at).orElse(new Point2D.Double(20, 20));
        JComponent component = view.component();
        if (!component.isShowing()) return;
        menu.show(component, (int) where.getX() + 6, (int) where.getY() + 6);
        if (menu.getComponentCount() > 0 && menu.getComponent(0) instanceof MenuElement first) {
            MenuSelectionManager.defaultManager().setSelectedPath(new MenuElement[] {menu, first});
        }
    }

    private static Optional<Point2D> pixel(PatchView view, SurfacePoint at) {
        return view.patches().stream()
                .filter(p -> p.surface() == at.surface())
                .findFirst()
                .map(p -> p.toView(at));
    }
}
