package org.marktwice.view.dryfit;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.FitSheet.Line;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Sign;

/** One thing judged in one line: sign, word, what it is, and the figure. Pressing it shows the place and the reasons. */
final class FitRow extends JButton {
    private static final long serialVersionUID = 1L;
    private static final int HEIGHT = 30;
    private final transient Line line;
    private final boolean chosen;

    FitRow(Line line, boolean chosen) {
        this.line = line;
        this.chosen = chosen;
        setName("fit-" + line.kind().name().toLowerCase(java.util.Locale.ROOT) + "-"
                + line.id().replace(' ', '-'));
        setContentAreaFilled(false);
        setBorderPainted(false);
        setFocusPainted(false);
        setRolloverEnabled(true);
        setBorder(BorderFactory.createEmptyBorder());
        setToolTipText(line.says());
        getAccessibleContext().setAccessibleName(line.verdict().id() + ", " + line.title() + ", " + line.figure());
        getAccessibleContext().setAccessibleDescription(line.says());
    }

    Line line() {
        return line;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Look.px(380), Look.px(HEIGHT));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Look.px(160), Look.px(HEIGHT));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Look.smooth((Graphics2D) graphics.create());
        int h = getHeight();
        RoundRectangle2D box = new RoundRectangle2D.Double(1, 1, getWidth() - 2, h - 2, Look.px(8), Look.px(8));
        if (chosen || getModel().isRollover()) {
            g.setColor(Look.palette().of(Ink.PICKED, chosen ? 0.55 : 0.28));
            g.fill(box);
        }
        if (isFocusOwner()) {
            g.setColor(Look.colour(Ink.ACTION));
            g.setStroke(new BasicStroke(Look.px(2)));
            g.draw(box);
        }
        Ink ink = Ink.of(line.verdict());
        new Sign(line.verdict()).paint(g, Look.px(10), h / 2.0 - Look.px(7), Look.px(14));
        int baseline = h / 2 + Look.px(5);
        write(g, line.verdict().id(), Style.NOTE, ink, Look.px(30), baseline);
        g.setFont(Style.NOTE.font());
        int figureAt = getWidth() - Look.px(10) - g.getFontMetrics().stringWidth(line.figure());
        write(g, line.figure(), Style.NOTE, ink, figureAt, baseline);
        int titleAt = Look.px(76);
        g.setFont(Style.BODY.font());
        String title = clipped(line.title(), g.getFontMetrics(), figureAt - Look.px(10) - titleAt);
        write(g, title, Style.BODY, Ink.INK, titleAt, baseline);
        g.dispose();
    }

    private static String clipped(String text, FontMetrics metrics, int room) {
        return org.marktwice.view.ExerciseRow.clipped(text, metrics, room);
    }

    private static void write(Graphics2D g, String text, Style style, Ink ink, int x, int y) {
        g.setFont(style.font());
        g.setColor(Look.colour(ink));
        g.drawString(text, x, y);
    }
}
