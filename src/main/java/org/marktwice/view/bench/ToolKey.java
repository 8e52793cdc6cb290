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

    /** How far an arrow moves to the right, millimetres: one, or ten; nothing for any other key. */
    public double right() {
        return way() * (stroke == Stroke.LEFT ? -1 : stroke == Stroke.RIGHT ? 1 : 0);
    }

    /** How far an arrow moves down, millimetres. */
    public double down() {
        return way() * (stroke == Stroke.UP ? -1 : stroke == Stroke.DOWN ? 1 : 0);
    }

    private double way() {
        return wide ? 10 : 1;
    }

    public static ToolKey of(Stroke stroke) {
        return new ToolKey(stroke, false, false);
    }

    public static ToolKey shifted(Stroke stroke) {
        return new ToolKey(stroke, true, false);
    }
}
