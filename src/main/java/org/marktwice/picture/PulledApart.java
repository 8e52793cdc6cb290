package org.marktwice.picture;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.joml.Vector3d;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Box;

/**
 * A joint's two parts drawn apart, the way they come out of each other, seen from the side at which most of the joint shows.
 *
 * @param flipped whether it is looked at from the right instead of the left: what is drawn is then its mirror image, turned
 *     over on the page
 */
record PulledApart(JobPicture picture, List<Shape> bores, boolean flipped) {
    static PulledApart of(Drawing drawing, Joint joint, Box window) {
        Part in = drawing.part(joint.in()).orElseThrow();
        Part takes = drawing.part(joint.takes()).orElseThrow();
        Direction way = way(joint, in, takes);
        PartSolid stays = PartSolid.unbored(drawing, in).within(window);
        PartSolid taken = PartSolid.unbored(drawing, takes).within(window);
        double entering =
                Math.min(stays.part().box().max(way.axis()), takes.box().max(way.axis()))
                        - Math.max(in.box().min(way.axis()), takes.box().min(way.axis()));
        double widest = Math.max(window.extent(0), Math.max(window.extent(1), window.extent(2)));
        double apart = Math.max(0, entering) + (joint instanceof Joint.Halving ? 0.6 : 0.25) * widest;
        Vector3d by = new Vector3d().setComponent(way.axis(), way.sign() * apart);
        boolean flipped = way == Direction.RIGHT;
        List<PartSolid> solids = List.of(stays, taken.moved(by));
        List<Box> bores = new ArrayList<>();
        if (joint instanceof Joint.Dowelled) {
            // the holes that open towards the eye
            boolean eye =
                    way == Direction.RIGHT || way == Direction.LEFT || way == Direction.FRONT || way == Direction.TOP;
            for (Box hole : Bores.cut(drawing, joint, eye ? in.id() : takes.id())) {
                if (!window.contains(hole.centre(), 0)) continue;
                Box open = mouth(hole, way, eye);
                bores.add(eye ? open : open.moved(by.x, by.y, by.z));
            }
        }
        if (flipped) {
            solids = solids.stream().map(s -> s.mirrored(0)).toList();
            bores.replaceAll(b -> b.with(0, -b.max(0), -b.min(0)));
        }
        List<Shape> rings = bores.stream().map(b -> ring(b, way.axis())).toList();
        return new PulledApart(JobPicture.of(solids), rings, flipped);
    }

    /** Where a hole opens: a flat box. */
    private static Box mouth(Box hole, Direction way, boolean ofStaying) {
        boolean high = way.sign() > 0 == ofStaying;
        double at = high ? hole.max(way.axis()) : hole.min(way.axis());
        return hole.with(way.axis(), at, at);
    }

    /** The way in which the part that is taken comes out. */
    private static Direction way(Joint joint, Part in, Part takes) {
        if (joint instanceof Joint.Halving halving) return halving.from();
        int axis = takes.length().ordinal();
        if (joint instanceof Joint.Bridle) axis = in.length().ordinal();
        else if (!(joint instanceof Joint.MortiseTenon)) axis = followed(in, takes);
        double from = in.box().centre().get(axis);
        return Direction.on(axis, takes.box().centre().get(axis) >= from ? 1 : -1);
    }

    /** The axis along which two parts overlap least, or not at all, for what there is of them. */
    private static int followed(Part in, Part takes) {
        int least = 0;
        double share = Double.POSITIVE_INFINITY;
        for (int axis = 0; axis < 3; axis++) {
            double common = Math.min(in.box().max(axis), takes.box().max(axis))
                    - Math.max(in.box().min(axis), takes.box().min(axis));
            double of = common / Math.min(in.box().extent(axis), takes.box().extent(axis));
            if (of < share) {
                share = of;
                least = axis;
            }
        }
        return least;
    }

    /** A circle as the picture shows it. */
    private static Shape ring(Box mouth, int axis) {
        int b = (axis + 1) % 3;
        int c = (axis + 2) % 3;
        double radius = mouth.extent(b) / 2;
        Vector3d middle = new Vector3d(mouth.centre());
        Point2D.Double o = JobView.ISOMETRIC.project(middle);
        Point2D.Double one = JobView.ISOMETRIC.project(new Vector3d().setComponent(b, radius));
        Point2D.Double other = JobView.ISOMETRIC.project(new Vector3d().setComponent(c, radius));
        return new AffineTransform(one.x, one.y, other.x, other.y, o.x, o.y)
                .createTransformedShape(new Ellipse2D.Double(-1, -1, 2, 2));
    }

    double aspect() {
        return picture.aspect();
    }

    /** Pixels a millimetre of what it is drawn with, in an area. */
    double scale(Rectangle2D area) {
        return picture.scale(area);
    }

    void paint(Graphics2D g, Rectangle2D area, Palette palette) {
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        if (flipped) {
            own.translate(2 * area.getCenterX(), 0);
            own.scale(-1, 1);
        }
        picture.paint(own, area, JobPicture.Style.PLAIN, palette);
        AffineTransform to = picture.placed(area);
        own.setColor(palette.of(Ink.INK));
        own.setStroke(new BasicStroke(1, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (Shape bore : bores) own.draw(to.createTransformedShape(bore));
        own.dispose();
    }
}
