package org.marktwice.view.bench;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;
import org.marktwice.view.Look;

/** Lays components out in lines like words, as many lines as the width asks for; lengths are of the usual text size. */
final class WrapLayout implements LayoutManager {
    private final int gap;
    private final int lineGap;

    WrapLayout(int gap, int lineGap) {
        this.gap = gap;
        this.lineGap = lineGap;
    }

    @Override
    public void addLayoutComponent(String name, Component component) {}

    @Override
    public void removeLayoutComponent(Component component) {}

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        int width = parent.getWidth() > 0 ? parent.getWidth() : Integer.MAX_VALUE;
        return run(parent, width, false);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        Dimension preferred = preferredLayoutSize(parent);
        return new Dimension(0, preferred.height);
    }

    @Override
    public void layoutContainer(Container parent) {
        run(parent, parent.getWidth(), true);
    }

    private Dimension run(Container parent, int width, boolean place) {
        Insets in = parent.getInsets();
        int left = in.left;
        int right = width == Integer.MAX_VALUE ? width : width - in.right;
        int x = left;
        int y = in.top;
        int line = 0;
        int widest = 0;
        for (Component c : parent.getComponents()) {
            if (!c.isVisible()) continue;
            Dimension d = c.getPreferredSize();
            if (x > left && x + d.width > right) {
                x = left;
                y += line + Look.px(lineGap);
                line = 0;
            }
            if (place) c.setBounds(x, y, d.width, d.height);
            widest = Math.max(widest, x + d.width);
            x += d.width + Look.px(gap);
            line = Math.max(line, d.height);
        }
        return new Dimension(widest + in.right, y + line + in.bottom);
    }
}
