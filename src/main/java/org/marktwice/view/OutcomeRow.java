package org.marktwice.view;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.RoundRectangle2D;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.OutcomeWords;
import org.marktwice.rulebook.Verdict;
import org.marktwice.view.Look.Style;

/** What follows for one joint or part: its sign, what it is about, and what comes of it. */
final class OutcomeRow extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int SIGN = 14;
    private final transient OutcomeWords.Line line;
    private boolean chosen;

    OutcomeRow(OutcomeWords.Line line, Runnable onChoose) {
        super(new MigLayout(
                "insets 9 " + (line.verdict() == null ? 12 : 36) + " 10 12, gap 0 2, wrap 1", "[grow,fill]"));
        this.line = line;
        setOpaque(false);
        setFocusable(true);
        setName("outcome-" + (line.joint() != null ? line.joint() : line.part()));
        add(Look.label(line.title(), Style.STRONG), "wmin 0");
        JTextArea says = Look.prose(line.says(), Style.BODY, Ink.INK);
        says.setName(getName() + "-says");
        // or the list would scroll to wherever text was set last
        if (says.getCaret() instanceof DefaultCaret caret) caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        add(says, "growx, wmin 0");
        listen(this, new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                onChoose.run();
            }
        });
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                if (!chosen) onChoose.run();
            }
        });
    }

    private static void listen(Component component, MouseAdapter mouse) {
        component.addMouseListener(mouse);
        if (component instanceof Container all) for (Component one : all.getComponents()) listen(one, mouse);
    }

    OutcomeWords.Line line() {
        return line;
    }

    void choose(boolean on) {
        chosen = on;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Look.smooth((Graphics2D) graphics.create());
        RoundRectangle2D box =
                new RoundRectangle2D.Double(1, 1, getWidth() - 2, getHeight() - 2, Look.px(8), Look.px(8));
        if (chosen) {
            g.setColor(Look.palette().of(Ink.PICKED, 0.55));
            g.fill(box);
        }
        if (isFocusOwner()) {
            g.setColor(Look.colour(Ink.ACTION));
            g.setStroke(new java.awt.BasicStroke(Look.px(2)));
            g.draw(box);
        }
        Verdict verdict = line.verdict();
        if (verdict != null) {
            g.setColor(Look.colour(Ink.of(verdict)));
            new Sign(verdict).paint(g, Look.px(11), Look.px(10), Look.px(SIGN));
        }
        g.dispose();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJPanel() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.PUSH_BUTTON;
                }

                @Override
                public String getAccessibleName() {
                    Verdict verdict = line.verdict();
                    return (verdict == null ? "" : verdict.id() + ", ") + line.title() + ": " + line.says();
                }
            };
        }
        return accessibleContext;
    }
}
