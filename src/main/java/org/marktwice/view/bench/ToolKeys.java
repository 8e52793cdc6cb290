package org.marktwice.view.bench;

import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** What keys do to the tool in hand, while the focus is on a view of the board. */
final class ToolKeys {
    private static final int SHIFT = InputEvent.SHIFT_DOWN_MASK;
    private static final int CTRL = InputEvent.CTRL_DOWN_MASK;

    private ToolKeys() {}

    /** A key for the tool in hand; with none, the arrows roll the board and turn it end for end. */
    static void strike(BenchModel model, ToolKey key) {
        if (model.tool().isPresent()) {
            if (model.tool().get().key(key)) model.changed();
            return;
        }
        model.hush();
        switch (key.stroke()) {
            case LEFT -> model.layAs(model.lie().rollBack());
            case RIGHT -> model.layAs(model.lie().rollForward());
            case UP, DOWN -> model.layAs(model.lie().endForEnd());
            default -> model.changed();
        }
    }

    /**
     * Binds the keys that are no commands of their own: Shift and Ctrl with the arrows, figures, and Tab where the tool steps
     * by it; and the bare arrows, which the divider between the views would take otherwise.
     */
    static void attach(JComponent view, BenchModel model) {
        int[] codes = {KeyEvent.VK_LEFT, KeyEvent.VK_RIGHT, KeyEvent.VK_UP, KeyEvent.VK_DOWN};
        ToolKey.Stroke[] strokes = {ToolKey.Stroke.LEFT, ToolKey.Stroke.RIGHT, ToolKey.Stroke.UP, ToolKey.Stroke.DOWN};
        for (int i = 0; i < codes.length; i++) {
            for (int held : new int[] {0, SHIFT, CTRL, SHIFT | CTRL}) {
                ToolKey key = new ToolKey(strokes[i], (held & SHIFT) != 0, (held & CTRL) != 0);
                bind(view, KeyStroke.getKeyStroke(codes[i], held), () -> strike(model, key));
            }
        }
        for (char c : "0123456789.,\b".toCharArray()) {
            bind(view, KeyStroke.getKeyStroke(c), () -> {
                if (model.tool().map(t -> t.type(c)).orElse(false)) model.changed();
            });
        }
        ToolKey next = ToolKey.of(ToolKey.Stroke.NEXT);
        ToolKey before = ToolKey.of(ToolKey.Stroke.PREVIOUS);
        bind(view, KeyStroke.getKeyStroke(KeyEvent.VK_TAB, 0), () -> strike(model, next));
        bind(view, KeyStroke.getKeyStroke(KeyEvent.VK_TAB, SHIFT), () -> strike(model, before));
    }

    private static void bind(JComponent view, KeyStroke stroke, Runnable does) {
        view.getInputMap(JComponent.WHEN_FOCUSED).put(stroke, stroke);
        view.getActionMap().put(stroke, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                does.run();
            }
        });
    }
}
