package org.marktwice.view;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.function.IntConsumer;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleValue;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.feedback.ReplayModel;
import org.marktwice.feedback.SheetModel;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look.Style;

/**
 * The replay's bar: a tick for every action, the signs of findings above the ticks that decided them, the board in hand
 * below. Click or drag to go to a step.
 */
final class TickBar extends Painted {
    private static final long serialVersionUID = 1L;
    private static final int SIDE = 28;
    private static final int SIGN = 14;
    private static final int MOST_SIGNS = 3;

    private final transient ReplayModel model;
    private final transient IntConsumer go;
    private int step;
    private int hover = -1;

    /** @param go told the step that was clicked or dragged to */
    TickBar(ReplayModel model, IntConsumer go) {
        super(AccessibleRole.SLIDER, 600, 112);
        this.model = model;
        this.go = go;
        setName("ticks");
        setFocusable(true);
        MouseAdapter mouse = new Pointing();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
    }

    void at(int now) {
        int before = step;
        step = now;
        repaint();
        getAccessibleContext().firePropertyChange(AccessibleContext.ACCESSIBLE_VALUE_PROPERTY, before, now);
    }

    private double x(int s) {
        double side = Look.px(SIDE);
        double width = getWidth() - 2 * side;
        return side + (model.last() == 0 ? 0 : width * s / model.last());
    }

    private int stepAt(int x) {
        double side = Look.px(SIDE);
        double share = (x - side) / Math.max(1, getWidth() - 2 * side);
        return (int) Math.max(0, Math.min(model.last(), Math.round(share * model.last())));
    }

    private double baseline() {
        return getHeight() - Look.px(38);
    }

    @Override
    protected void draw(Graphics2D g) {
        double base = baseline();
        g.setStroke(new BasicStroke(Look.px(2)));
        g.setColor(Look.colour(Ink.BORDER));
        g.draw(new Line2D.Double(x(0), base, x(model.last()), base));
        g.setColor(Look.colour(Ink.ACTION));
        g.draw(new Line2D.Double(x(0), base, x(step), base));
        for (int s = 1; s <= model.last(); s++) tick(g, s, base);
        boards(g, base);
        marker(g, base);
    }

    private void tick(Graphics2D g, int s, double base) {
        boolean past = s <= step;
        g.setStroke(new BasicStroke(s == hover ? Look.px(3) : Look.px(2)));
        g.setColor(Look.colour(past ? Ink.ACTION : Ink.QUIET));
        double half = Look.px(model.action(s) instanceof Action.OnBoard ? 6 : 4);
        g.draw(new Line2D.Double(x(s), base - half, x(s), base + half));
        List<SheetModel.Line> decided = model.decidedBy(s);
        double top = base - Look.px(14);
        int shown = decided.size() > MOST_SIGNS ? MOST_SIGNS - 1 : decided.size();
        for (int i = 0; i < shown; i++) {
            top -= Look.px(SIGN + 3);
            new Sign(decided.get(i).verdict()).paint(g, x(s) - Look.px(SIGN) / 2.0, top, Look.px(SIGN));
        }
        if (decided.size() > shown) {
            String more = "+" + (decided.size() - shown);
            g.setFont(Style.NOTE.font());
            g.setColor(Look.colour(Ink.QUIET));
            g.drawString(more, (float) (x(s) - g.getFontMetrics().stringWidth(more) / 2.0), (float) (top - Look.px(4)));
        }
    }

    /** The letter of the board in hand, wherever it changes. */
    private void boards(Graphics2D g, double base) {
        g.setFont(Style.NOTE.font());
        @Nullable String before = null;
        for (int s = 1; s <= model.last(); s++) {
            if (!(model.action(s) instanceof Action.OnBoard on) || on.board().equals(before)) continue;
            before = on.board();
            g.setColor(Look.colour(Ink.QUIET));
            g.drawString(before, (float) (x(s) - g.getFontMetrics().stringWidth(before) / 2.0), (float)
                    (base + Look.px(26)));
        }
    }

    private void marker(Graphics2D g, double base) {
        double r = Look.px(7);
        Ellipse2D dot = new Ellipse2D.Double(x(step) - r, base - r, 2 * r, 2 * r);
        g.setColor(Look.colour(Ink.ACTION));
        g.fill(dot);
        g.setColor(Look.colour(Ink.PANEL));
        g.setStroke(new BasicStroke(Look.px(2)));
        g.draw(dot);
        if (isFocusOwner()) {
            double f = r + Look.px(3);
            g.setColor(Look.colour(Ink.ACTION));
            g.draw(new Ellipse2D.Double(x(step) - f, base - f, 2 * f, 2 * f));
        }
    }

    private final class Pointing extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            go.accept(stepAt(event.getX()));
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            go.accept(stepAt(event.getX()));
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            hover = stepAt(event.getX());
            List<SheetModel.Line> decided = hover == 0 ? List.of() : model.decidedBy(hover);
            setToolTipText(
                    decided.isEmpty()
                            ? "Step " + hover
                            : "Step " + hover + ": " + decided.get(0).word() + ", "
                                    + decided.get(0).title() + (decided.size() > 1 ? " and more" : ""));
            repaint();
        }

        @Override
        public void mouseExited(MouseEvent event) {
            hover = -1;
            repaint();
        }
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleBar();
            accessibleContext.setAccessibleName("Step");
        }
        return accessibleContext;
    }

    /** A slider, to whoever reads the screen aloud. */
    private final class AccessibleBar extends AccessibleJComponent implements AccessibleValue {
        private static final long serialVersionUID = 1L;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.SLIDER;
        }

        @Override
        public AccessibleValue getAccessibleValue() {
            return this;
        }

        @Override
        public Number getCurrentAccessibleValue() {
            return step;
        }

        @Override
        public boolean setCurrentAccessibleValue(Number n) {
            go.accept(Math.max(0, Math.min(model.last(), n.intValue())));
            return true;
        }

        @Override
        public Number getMinimumAccessibleValue() {
            return 0;
        }

        @Override
        public Number getMaximumAccessibleValue() {
            return model.last();
        }
    }
}
