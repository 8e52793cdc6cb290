package org.marktwice.view;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import org.marktwice.feedback.SheetModel;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look.Style;

/** A finding in one line: sign, word, what it is about, figure and limit, and the marks it brought. Pressing it opens it. */
final class FindingRow extends JButton {
    private static final long serialVersionUID = 1L;
    private static final int HEIGHT = 34;
    private final transient SheetModel.Line line;
    private boolean open;

    FindingRow(SheetModel.Line line) {
        this.line = line;
        setName("finding-" + line.finding().rule() + (line.board() == null ? "" : "-" + line.board()));
        setContentAreaFilled(false);
        setBorderPainted(false);
        setFocusPainted(false);
        setRolloverEnabled(true);
        setBorder(BorderFactory.createEmptyBorder());
        getAccessibleContext().setAccessibleName(spoken());
    }

    SheetModel.Line line() {
        return line;
    }

    private String spoken() {
        return line.word() + ", " + line.title() + (line.figure().isEmpty() ? "" : ", " + line.figure()) + ", "
                + line.marks() + " marks";
    }

    void open(boolean on) {
        open = on;
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Look.px(420), Look.px(HEIGHT));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Look.px(200), Look.px(HEIGHT));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Look.smooth((Graphics2D) graphics.create());
        int h = getHeight();
        RoundRectangle2D box = new RoundRectangle2D.Double(1, 1, getWidth() - 2, h - 2, Look.px(8), Look.px(8));
        if (open || getModel().isRollover()) {
            g.setColor(Look.palette().of(Ink.PICKED, open ? 0.55 : 0.28));
            g.fill(box);
        }
        if (isFocusOwner()) {
            g.setColor(Look.colour(Ink.ACTION));
            g.setStroke(new java.awt.BasicStroke(Look.px(2)));
            g.draw(box);
        }
        Ink ink = Ink.of(line.verdict());
        int baseline = h / 2 + Look.px(5);
        new Sign(line.verdict()).paint(g, Look.px(12), h / 2.0 - Look.px(7), Look.px(14));
        text(g, line.word(), Style.NOTE, ink, Look.px(34), baseline);
        int right = getWidth() - Look.px(12);
        String marks = line.marks();
        g.setFont(Style.NOTE.font());
        int marksAt = right - g.getFontMetrics().stringWidth(marks);
        text(g, marks, Style.NOTE, Ink.QUIET, marksAt, baseline);
        int figureRight = right - Look.px(80);
        int figureAt = figureRight - g.getFontMetrics().stringWidth(line.figure());
        text(g, line.figure(), Style.NOTE, line.entry().lost() > 1e-9 ? ink : Ink.QUIET, figureAt, baseline);
        int titleAt = Look.px(84);
        int room = (line.figure().isEmpty() ? marksAt : figureAt) - Look.px(12) - titleAt;
        g.setFont(Style.BODY.font());
        String title = ExerciseRow.clipped(line.title(), g.getFontMetrics(), room);
        text(g, title, Style.BODY, Ink.INK, titleAt, baseline);
        g.dispose();
    }

    private static void text(Graphics2D g, String text, Style style, Ink ink, int x, int y) {
        g.setFont(style.font());
        g.setColor(Look.colour(ink));
        g.drawString(text, x, y);
    }
}
