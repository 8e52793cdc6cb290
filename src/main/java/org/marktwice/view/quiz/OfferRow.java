package org.marktwice.view.quiz;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Verdict;
import org.marktwice.view.Card;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Sign;

/** One of the answers offered: its key, its words or its picture; afterwards, whether it was the right one. */
final class OfferRow extends JPanel {
    private static final long serialVersionUID = 1L;
    private final JLabel key;
    private boolean chosen;
    private transient @Nullable Verdict verdict;

    /** @param content words, or a picture */
    OfferRow(String letter, JComponent content, Runnable onChoose, boolean drawn) {
        super(
                drawn
                        ? new BorderLayout(0, 0)
                        : new MigLayout("insets 9 12 9 12, gapx 10", "[]8[grow,fill][18lp!]", "[]"));
        setOpaque(false);
        setName("offer-" + letter);
        key = Look.quiet(letter, Style.STRONG);
        if (drawn) {
            JPanel head = new JPanel(new MigLayout("insets 8 12 0 12", "[]"));
            head.setOpaque(false);
            head.add(key);
            add(head, BorderLayout.NORTH);
            add(content, BorderLayout.CENTER);
        } else {
            add(key, "aligny top");
            add(content, "growx, wmin 0");
            add(new JLabel());
        }
        setBorder(BorderFactory.createEmptyBorder());
        listen(this, new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                onChoose.run();
            }
        });
    }

    private static void listen(Component component, MouseAdapter mouse) {
        component.addMouseListener(mouse);
        if (component instanceof Container all) for (Component one : all.getComponents()) listen(one, mouse);
    }

    void choose(boolean on) {
        chosen = on;
        repaint();
    }

    /** Shows how it came out; null for an answer that was neither given nor right. */
    void tell(@Nullable Verdict how) {
        verdict = how;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Look.smooth((Graphics2D) graphics.create());
        Card.paint(g, 0, 0, getWidth(), getHeight(), chosen);
        g.dispose();
    }

    @Override
    protected void paintChildren(Graphics graphics) {
        super.paintChildren(graphics);
        Verdict how = verdict;
        if (how == null) return;
        Graphics2D g = Look.smooth((Graphics2D) graphics.create());
        double side = Look.px(15);
        g.setColor(Look.colour(Ink.of(how)));
        new Sign(how).paint(g, getWidth() - side - Look.px(12), Look.px(11), side);
        g.dispose();
    }
}
