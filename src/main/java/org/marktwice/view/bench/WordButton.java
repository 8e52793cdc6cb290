package org.marktwice.view.bench;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JToggleButton;
import org.marktwice.picture.Ink;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Look;

/** A word with its key before it; chosen while what it names is in the hand. */
public final class WordButton extends JToggleButton {
    private static final long serialVersionUID = 1L;
    private static final int PAD = 7;
    private static final int KEY_PAD = 4;
    private static final int GAP = 6;

    private String word;
    private final String key;

    public WordButton(Command command, Runnable pressed) {
        this(command, command.word(), command.keyText(), pressed);
    }

    public WordButton(Command command, String word, String key, Runnable pressed) {
        super(word);
        this.word = word;
        this.key = key;
        setName("tool-" + command.id());
        setToolTipText(command.help());
        getAccessibleContext().setAccessibleName(word);
        getAccessibleContext().setAccessibleDescription(command.help() + (key.isEmpty() ? "" : ", key " + key));
        setOpaque(false);
        setContentAreaFilled(false);
        setBorderPainted(false);
        setFocusable(false);
        setRolloverEnabled(true);
        addActionListener(e -> {
            // The model says what is in the hand; the button only follows.
            setSelected(!isSelected());
            pressed.run();
        });
    }

    /** Says another word, which tells how things stand. */
    public void say(String next) {
        if (next.equals(word)) return;
        word = next;
        setText(next);
        getAccessibleContext().setAccessibleName(next);
        revalidate();
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        FontMetrics body = getFontMetrics(Look.Style.BODY.font());
        int width = 2 * Look.px(PAD) + body.stringWidth(word) + (key.isEmpty() ? 0 : keyWidth() + Look.px(GAP));
        return new Dimension(width, body.getHeight() + Look.px(8));
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    private int keyWidth() {
        FontMetrics note = getFontMetrics(Look.Style.NOTE.font());
        return Math.max(note.stringWidth(key) + 2 * Look.px(KEY_PAD), note.getHeight() + Look.px(2));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Look.smooth((Graphics2D) graphics.create());
        boolean on = isSelected();
        boolean hot = getModel().isRollover() || getModel().isPressed();
        double arc = Look.px(6);
        RoundRectangle2D box = new RoundRectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 1, arc, arc);
        if (on || hot) {
            g.setColor(on ? Look.colour(Ink.ACTION) : Look.colour(Ink.PAPER));
            g.fill(box);
        }
        if (hot && !on) {
            g.setColor(Look.colour(Ink.BORDER));
            g.draw(box);
        }
        int x = Look.px(PAD);
        if (!key.isEmpty()) {
            paintKey(g, x, on);
            x += keyWidth() + Look.px(GAP);
        }
        g.setFont(Look.Style.BODY.font());
        g.setColor(on ? Look.colour(Ink.ON_ACTION) : isEnabled() ? Look.colour(Ink.INK) : Look.colour(Ink.QUIET));
        g.drawString(word, x, baseline(g.getFontMetrics()));
        g.dispose();
    }

    private void paintKey(Graphics2D g, int x, boolean on) {
        FontMetrics note = getFontMetrics(Look.Style.NOTE.font());
        int width = keyWidth();
        int height = note.getHeight() + Look.px(2);
        double y = (getHeight() - height) / 2.0;
        Color ink = on ? Look.colour(Ink.ON_ACTION) : Look.colour(Ink.QUIET);
        g.setColor(on ? ink : Look.colour(Ink.BORDER));
        g.setStroke(new BasicStroke(1));
        double arc = Look.px(5);
        g.draw(new RoundRectangle2D.Double(x + 0.5, y + 0.5, width - 1, height - 1, arc, arc));
        g.setColor(ink);
        g.setFont(Look.Style.NOTE.font());
        g.drawString(key, x + (width - note.stringWidth(key)) / 2, baseline(note));
    }

    private int baseline(FontMetrics metrics) {
        return (getHeight() - metrics.getHeight()) / 2 + metrics.getAscent();
    }
}
