package org.marktwice.drawing;

import static org.marktwice.Fixtures.timber;

import java.util.List;
import org.marktwice.Fixtures;

/** A stile that stands and a rail that lies across, to be joined in every way that frames are; and a box's side with a shelf. */
public final class Frames {
    private Frames() {}

    /** 200 high, 40 wide, 24 thick, its left edge at the origin, its front at y 0. */
    public static Part stile() {
        return timber("stile", "Stile")
                .size(200, 40, 24)
                .runs(JobAxis.HIGH, JobAxis.ACROSS)
                .marks(List.of(Direction.FRONT), List.of(Direction.RIGHT))
                .part();
    }

    /** 300 long, 40 wide, of this thickness, its least corner here, its face edge down. */
    public static Part rail(double thickness, double x, double y, double z) {
        return timber("rail", "Rail")
                .size(300, 40, thickness)
                .at(x, y, z)
                .runs(JobAxis.ACROSS, JobAxis.HIGH)
                .marks(List.of(Direction.FRONT), List.of(Direction.BOTTOM))
                .part();
    }

    public static Drawing joined(Part in, Part takes, Joint joint) {
        org.marktwice.timber.Box box = OverallCheck.around(List.of(in, takes));
        return Fixtures.drawing(new Overall(box.extent(0), box.extent(1), box.extent(2)), List.of(in, takes), joint);
    }

    /** The reason why these two can't be joined so, with its place: {@code joints[0]: why}. */
    public static String refusal(Part in, Part takes, Joint joint) {
        org.marktwice.timber.Box box = OverallCheck.around(List.of(in, takes));
        try {
            Drawing.of(new Overall(box.extent(0), box.extent(1), box.extent(2)), List.of(in, takes), List.of(joint));
            return "taken";
        } catch (DrawingRefused e) {
            return e.where() + ": " + e.getMessage();
        }
    }

    public static Joint tenon(double thickness, double width, @org.jspecify.annotations.Nullable Double inset) {
        return new Joint.MortiseTenon("j", "stile", "rail", new Joint.Tenon(thickness, width, inset), null);
    }

    public static Joint haunched(double thickness, double width, double inset, double haunch) {
        return new Joint.MortiseTenon(
                "j", "stile", "rail", new Joint.Tenon(thickness, width, inset), new Joint.Haunch(haunch));
    }

    public static Joint dowelled(int count, double diameter, double length) {
        return new Joint.Dowelled("j", "stile", "rail", new Joint.Dowels(count, diameter, length));
    }
}
