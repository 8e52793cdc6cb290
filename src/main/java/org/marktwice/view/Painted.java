package org.marktwice.view;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look.Style;

/**
 * What is painted whole instead of being put together from the toolkit's parts. It tells whoever reads the screen aloud
 * what it is: a component that isn't {@link Accessible} is passed over there, whatever its context says.
 *
 * <p>Sizes are pixels of the usual text size, and follow the size that is set.
 */
public abstract class Painted extends JComponent implements Accessible {
    private static final long serialVersionUID = 1L;

    private final transient AccessibleRole role;
    private transient @Nullable Dimension wanted;
    private transient @Nullable Dimension least;

    /** As large as whoever lays it out makes it. */
    protected Painted(AccessibleRole role) {
        this.role = role;
    }

    /** As large as this, where there is a choice. */
    protected Painted(AccessibleRole role, int wide, int high) {
        this(role);
        wanted = new Dimension(wide, high);
    }

    protected final void setLeast(int wide, int high) {
        least = new Dimension(wide, high);
    }

    /** Says what is to be seen, to be read aloud. */
    public final void readAs(String name) {
        getAccessibleContext().setAccessibleName(name);
    }

    /** Paints it, on graphics of its own. */
    protected abstract void draw(Graphics2D g);

    @Override
    protected final void paintComponent(Graphics graphics) {
        Graphics2D g = Look.smooth((Graphics2D) graphics.create());
        draw(g);
        g.dispose();
    }

    /** Words in the middle, where there is nothing to paint yet. */
    protected final void drawInstead(Graphics2D g, String words) {
        g.setFont(Style.BODY.font());
        g.setColor(Look.colour(Ink.QUIET));
        int wide = g.getFontMetrics().stringWidth(words);
        g.drawString(words, Math.max(Look.px(8), (getWidth() - wide) / 2), getHeight() / 2);
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension size = wanted;
        return size == null ? super.getPreferredSize() : onScreen(size);
    }

    @Override
    public Dimension getMinimumSize() {
        Dimension size = least;
        return size == null ? super.getMinimumSize() : onScreen(size);
    }

    private static Dimension onScreen(Dimension size) {
        return new Dimension(Look.px(size.width), Look.px(size.height));
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return role;
                }
            };
        }
        return accessibleContext;
    }
}
