package org.marktwice.view.desk;

import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JButton;
import org.marktwice.picture.Ink;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Look;

/** A button with its word, and its key after it in quiet. */
final class KeyButton extends JButton {
    private static final long serialVersionUID = 1L;
    private static final int GAP = 8;

    private final String key;
    private final boolean leads;

    private KeyButton(Deed deed, boolean leads) {
        super(deed);
        this.leads = leads;
        key = deed.command().keyText();
        setName(deed.command().id());
        setHorizontalAlignment(LEFT);
        if (leads) Look.primary(this);
    }

    static KeyButton of(Deed deed) {
        return new KeyButton(deed, false);
    }

    /** The one that leads on. */
    static KeyButton primary(Deed deed) {
        return new KeyButton(deed, true);
    }

    /** Pressed by the mouse it leaves the focus where it is, with what is being typed there. */
    KeyButton leavingFocus() {
        setRequestFocusEnabled(false);
        return this;
    }

    private int keyWidth() {
        FontMetrics note = getFontMetrics(Look.Style.NOTE.font());
        return key == null || key.isEmpty() ? 0 : note.stringWidth(key) + Look.px(GAP);
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension own = super.getPreferredSize();
        return new Dimension(own.width + keyWidth(), own.height);
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        if (keyWidth() == 0) return;
        Graphics2D g = Look.smooth((Graphics2D) graphics.create());
        g.setFont(Look.Style.NOTE.font());
        FontMetrics note = g.getFontMetrics();
        g.setColor(Look.colour(leads && isEnabled() ? Ink.ON_ACTION : Ink.QUIET));
        int x = getWidth() - getInsets().right - note.stringWidth(key);
        g.drawString(key, x, (getHeight() - note.getHeight()) / 2 + note.getAscent());
        g.dispose();
    }
}
