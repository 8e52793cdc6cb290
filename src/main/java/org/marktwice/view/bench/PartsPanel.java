package org.marktwice.view.bench;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The parts of the job and how far each has got. */
final class PartsPanel extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;
    private final transient BenchModel model;

    PartsPanel(BenchModel model) {
        super(new MigLayout("insets 0, gap 6lp 0, wrap 2", "[16lp!,center][grow,fill]", "[]"));
        this.model = model;
        setName("parts");
        setOpaque(false);
        refresh();
    }

    void refresh() {
        removeAll();
        Optional<String> current = model.part().map(p -> p.id());
        List<PartState> states = PartState.of(model.session().bench());
        for (PartState state : states) {
            boolean now = current.filter(id -> id.equals(state.part().id())).isPresent();
            JLabel sign = Look.inked(new JLabel(state.sign()), Style.STRONG, ink(state));
            JLabel title = Look.inked(new JLabel(state.title()), Style.STRONG, now ? Ink.ACTION : Ink.INK);
            title.setName("part-" + state.part().id());
            JLabel says = Look.quiet(state.says(), Style.NOTE);
            says.setToolTipText(state.says());
            title.getAccessibleContext().setAccessibleName(state.title() + ": " + state.says());
            add(sign, "aligny top");
            add(title, "wmin 0");
            add(says, "skip, wmin 0, gapbottom 10lp");
        }
        revalidate();
        repaint();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return Look.px(20);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }

    private static Ink ink(PartState state) {
        return switch (state.sign()) {
            case "✓" -> Ink.SOUND;
            case "!" -> Ink.WRONG;
            default -> Ink.INK;
        };
    }
}
