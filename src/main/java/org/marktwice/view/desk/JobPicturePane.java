package org.marktwice.view.desk;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import javax.accessibility.AccessibleRole;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Drawing;
import org.marktwice.picture.JobPicture;
import org.marktwice.view.Look;
import org.marktwice.view.Painted;

/** A job in isometric projection, as far as it is drawn. */
final class JobPicturePane extends Painted {
    private static final long serialVersionUID = 1L;
    private transient @Nullable JobPicture picture;

    JobPicturePane() {
        super(AccessibleRole.ICON, 300, 240);
        readAs("The job as drawn");
    }

    void show(@Nullable Drawing drawing) {
        picture = drawing == null ? null : JobPicture.of(drawing);
        repaint();
    }

    @Override
    protected void draw(Graphics2D g) {
        JobPicture now = picture;
        int margin = Look.px(12);
        if (now == null || getWidth() < 4 * margin || getHeight() < 4 * margin) return;
        now.paint(
                g,
                new Rectangle2D.Double(margin, margin, getWidth() - 2 * margin, getHeight() - 2 * margin),
                JobPicture.Style.PLAIN,
                Look.palette());
    }
}
