package org.marktwice.view.bench;

import java.awt.Graphics2D;
import java.util.Locale;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.FormShown;
import org.marktwice.picture.Ink;
import org.marktwice.timber.Board;
import org.marktwice.timber.TrueForm;
import org.marktwice.view.Look;

/**
 * How the views show a board's true shape, which they always say.
 *
 * @param times how many times over its departures from a true box are drawn, 1 to 20
 * @param room where the board is looked at as it would settle; null for the board as it is now
 */
public record ShapeShown(int times, @Nullable Room room) {
    /** The steps that one goes through. */
    static final int[] STEPS = {1, 2, 5, 10, 20};

    /** What its label takes at the foot of a view, at the usual text size. */
    static final int ROOM = 16;

    public static final ShapeShown AS_IT_IS = new ShapeShown(1, null);

    /**
     * A room that the board is looked at in, once it has settled there.
     *
     * @param name as a person calls it: {@code 21 °C, 40 %}; empty where only a moisture is thought of
     * @param moisture what the board comes to there, percent
     */
    public record Room(String name, double moisture) {}

    public ShapeShown {
        times = Math.max(1, Math.min(20, times));
    }

    ShapeShown times(int next) {
        return new ShapeShown(next, room);
    }

    ShapeShown in(@Nullable Room next) {
        return new ShapeShown(times, next);
    }

    /** The next step up (+1) or down (−1), going round. */
    ShapeShown stepped(int by) {
        int at = 0;
        for (int i = 0; i < STEPS.length; i++) if (STEPS[i] <= times) at = i;
        return times(STEPS[Math.floorMod(at + by, STEPS.length)]);
    }

    /** {@code shape ×10}. */
    String says() {
        String scale = "shape ×" + times;
        if (room == null) return scale;
        String at = room.name().isEmpty() ? "" : room.name() + ", ";
        return scale + String.format(Locale.ROOT, " · once settled at %s%.1f %% moisture", at, room.moisture());
    }

    static double times(@Nullable ShapeShown shape) {
        return shape == null ? 1 : shape.times();
    }

    static FormShown form(@Nullable ShapeShown shape, Board board) {
        if (shape == null) return FormShown.asItIs(board);
        Room in = shape.room();
        TrueForm form = in == null || board.isSheet() ? TrueForm.now(board) : TrueForm.at(board, in.moisture());
        return new FormShown(form, shape.times());
    }

    /** Writes at the foot of a view how it shows the shape. */
    static void label(Graphics2D g, JComponent view, int left, @Nullable ShapeShown shape) {
        if (shape == null) return;
        boolean plain = shape.equals(AS_IT_IS);
        g.setFont((plain ? Look.Style.NOTE : Look.Style.STRONG).font());
        g.setColor(Look.colour(plain ? Ink.QUIET : Ink.INK));
        g.drawString(shape.says(), left, view.getHeight() - Look.px(6));
    }
}
