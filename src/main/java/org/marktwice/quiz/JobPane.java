package org.marktwice.quiz;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.JobPicture;
import org.marktwice.picture.Palette;
import org.marktwice.picture.SurfacePainter;

/** The finished job. */
record JobPane(Picture.Job job, JobPicture drawn, Rectangle2D area) implements Pane {
    static JobPane in(Picture.Job job, Rectangle2D area) {
        double margin = 0.04 * Math.min(area.getWidth(), area.getHeight());
        return new JobPane(job, JobPicture.of(job.drawing()), Pane.grown(area, -margin));
    }

    @Override
    public void paint(Graphics2D g, SurfacePainter painter, Palette palette, Offer.@Nullable Place pointed) {
        String picked = pointed instanceof Offer.Place.OnPart on ? on.part() : job.picked();
        drawn.paint(g, area, JobPicture.Style.picking(picked), palette);
    }

    @Override
    public Optional<Offer.Place> at(Point2D point) {
        return drawn.partAt(point, area).map(Offer.Place.OnPart::new);
    }

    /** A small mark where the part is seen first, taken from a grid of points. */
    @Override
    public Optional<Shape> shape(Offer.Place place) {
        if (!(place instanceof Offer.Place.OnPart on)) return Optional.empty();
        int steps = 60;
        for (int i = 1; i < steps; i++) {
            for (int j = 1; j < steps; j++) {
                double x = area.getX() + area.getWidth() * i / steps;
                double y = area.getY() + area.getHeight() * j / steps;
                if (drawn.partAt(new Point2D.Double(x, y), area)
                        .filter(on.part()::equals)
                        .isPresent()) {
                    return Optional.of(new Rectangle2D.Double(x - 1, y - 1, 2, 2));
                }
            }
        }
        return Optional.empty();
    }
}
