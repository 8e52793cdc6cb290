package org.marktwice.view.quiz;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Collectors;
import javax.accessibility.AccessibleRole;
import javax.swing.Icon;
import org.marktwice.picture.Ink;
import org.marktwice.quiz.Progress;
import org.marktwice.quiz.Standing;
import org.marktwice.view.Look;
import org.marktwice.view.Painted;

/** All ideas in one bar, by how they stand. The figures beside it say the same. */
final class Standings extends Painted {
    private static final long serialVersionUID = 1L;

    /** From the firmest on. */
    static final List<Standing.Word> ORDER =
            List.of(Standing.Word.FIRM, Standing.Word.ON_THE_WAY, Standing.Word.SHAKY, Standing.Word.NOT_MET);

    private final transient Progress progress;

    Standings(Progress progress) {
        super(AccessibleRole.ICON);
        this.progress = progress;
        readAs(ORDER.stream().map(w -> progress.count(w) + " " + w.spoken()).collect(Collectors.joining(", ")));
    }

    private static void paint(Graphics2D g, Standing.Word word, double x, double y, double wide, double high) {
        Ink ink = switch (word) {
            case FIRM -> Ink.SOUND;
            case ON_THE_WAY -> Ink.ACTION;
            case SHAKY -> Ink.CLOSE;
            case NOT_MET -> Ink.BORDER;
        };
        g.setColor(Look.colour(ink));
        g.fill(new Rectangle2D.Double(x, y, wide, high));
    }

    @Override
    protected void draw(Graphics2D g) {
        double high = getHeight();
        int all = Math.max(1, progress.rows().size());
        double x = 0;
        double gap = Look.px(2);
        for (Standing.Word word : ORDER) {
            double wide = getWidth() * (double) progress.count(word) / all;
            if (wide > 0) paint(g, word, x, 0, Math.max(1, wide - gap), high);
            x += wide;
        }
    }

    /** The colour that a standing has in the bar. */
    static Icon swatch(Standing.Word word) {
        return new Icon() {
            @Override
            public void paintIcon(Component c, Graphics graphics, int x, int y) {
                Graphics2D g = Look.smooth((Graphics2D) graphics.create());
                paint(g, word, x, y, getIconWidth(), getIconHeight());
                g.dispose();
            }

            @Override
            public int getIconWidth() {
                return Look.px(10);
            }

            @Override
            public int getIconHeight() {
                return Look.px(10);
            }
        };
    }
}
