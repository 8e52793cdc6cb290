package org.marktwice.view.bench;

/**
 * A key given to the tool in hand.
 *
 * @param shift with Shift held
 * @param wide with Ctrl held: a longer way
 */
public record ToolKey(Stroke stroke, boolean shift, boolean wide) {
    /** What was struck. */
    public enum Stroke {
        LEFT,
        RIGHT,
        UP,
        DOWN,
        ENTER,
        NEXT,
        PREVIOUS
    }

    public static ToolKey of(Stroke stroke) {
        return new ToolKey(stroke, false, false);
    }

    public static ToolKey shifted(Stroke stroke) {
        return new ToolKey(stroke, true, false);
    }
}
