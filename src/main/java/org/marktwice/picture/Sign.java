package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import org.marktwice.rulebook.Verdict;

/** The verdicts' signs as drawn strokes, so that they never depend on what a font holds. */
public final class Sign {
    private Sign() {}

    /** Draws the sign in g's colour, in a square of this side whose lower left corner is (x, y). */
    public static void draw(Graphics2D g, Verdict verdict, double x, double y, double side) {
        Graphics2D s = (Graphics2D) g.create();
        s.translate(x, y - side);
        s.scale(side, side);
        s.setStroke(new BasicStroke(0.15f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        switch (verdict) {
            case SOUND -> s.draw(path(0.12, 0.55, 0.40, 0.84, 0.90, 0.20));
            case CLOSE -> s.draw(wave());
            case WRONG -> {
                s.draw(path(0.18, 0.18, 0.84, 0.84));
                s.draw(path(0.84, 0.18, 0.18, 0.84));
            }
            case OPEN -> s.draw(new Ellipse2D.Double(0.16, 0.16, 0.68, 0.68));
        }
        s.dispose();
    }

    private static Path2D.Double path(double... xy) {
        Path2D.Double p = new Path2D.Double();
        p.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) p.lineTo(xy[i], xy[i + 1]);
        return p;
    }

    private static Path2D.Double wave() {
        Path2D.Double p = new Path2D.Double();
        p.moveTo(0.08, 0.60);
        p.curveTo(0.25, 0.25, 0.40, 0.35, 0.50, 0.50);
        p.curveTo(0.60, 0.65, 0.75, 0.75, 0.92, 0.40);
        return p;
    }
}
