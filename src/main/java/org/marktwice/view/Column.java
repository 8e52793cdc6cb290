package org.marktwice.view;

import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ScrollPaneConstants;
import javax.swing.Scrollable;

/** What scrolls up and down and is as wide as its window, so that prose in it wraps. */
public final class Column extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;

    public Column(LayoutManager layout) {
        super(layout);
        setOpaque(false);
    }

    public JScrollPane scrolling() {
        JScrollPane scroll = new JScrollPane(
                this, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        return scroll;
    }

    /** The same where the arrows go from line to line and the list follows: it doesn't scroll of its own. */
    public JScrollPane scrollingBehindArrows() {
        JScrollPane scroll = scrolling();
        for (String key : new String[] {"UP", "DOWN", "LEFT", "RIGHT"}) {
            scroll.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), "none");
        }
        return scroll;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return Look.px(24);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(Look.px(24), visible.height - Look.px(48));
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() > getPreferredSize().height;
    }
}
