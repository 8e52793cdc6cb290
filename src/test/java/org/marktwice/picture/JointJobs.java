package org.marktwice.picture;

import static org.marktwice.Fixtures.timber;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;

/** A small job for each kind of joint, in the sizes that are usual for its stuff: to be drawn and looked at, and measured. */
final class JointJobs {
    private JointJobs() {}

    static final Drawing THROUGH_HOUSING = Samples.shelf();
    static final Drawing STOPPED_HOUSING = boxed(
            shelf(344, 80),
            new Joint.StoppedHousing("left", "left", "shelf", Direction.FRONT, 10),
            new Joint.StoppedHousing("right", "right", "shelf", Direction.FRONT, 10));
    static final Drawing REBATE = boxed(
            shelf(350, 232), new Joint.Rebate("left", "left", "shelf"), new Joint.Rebate("right", "right", "shelf"));
    static final Drawing CORNER_HALVING = framed(rail(0, 0, 300), halved());
    static final Drawing T_HALVING = framed(rail(0, 120, 300), halved());
    static final Drawing CROSS_HALVING = framed(rail(-60, 120, 300), halved());
    static final Drawing BRIDLE = framed(rail(0, 0, 300), new Joint.Bridle("joint", "stile", "rail"));
    static final Drawing THROUGH_TENON = framed(rail(0, 120, 300), tenon(8, 30, null, null));
    static final Drawing STUB_TENON = framed(rail(15, 120, 285), tenon(8, 30, null, null));
    static final Drawing HAUNCHED_TENON = framed(rail(0, 0, 300), tenon(8, 26, 14.0, new Joint.Haunch(10)));
    static final Drawing DOWELLED =
            framed(rail(44, 0, 256), new Joint.Dowelled("joint", "stile", "rail", new Joint.Dowels(2, 8, 40)));
    static final Drawing BUTT = framed(rail(44, 0, 256), new Joint.Butt("joint", "stile", "rail"));

    /** All of them by name. */
    static Map<String, Drawing> all() {
        Map<String, Drawing> all = new LinkedHashMap<>();
        all.put("through-housing", THROUGH_HOUSING);
        all.put("stopped-housing", STOPPED_HOUSING);
        all.put("rebate", REBATE);
        all.put("corner-halving", CORNER_HALVING);
        all.put("t-halving", T_HALVING);
        all.put("cross-halving", CROSS_HALVING);
        all.put("bridle", BRIDLE);
        all.put("through-tenon", THROUGH_TENON);
        all.put("stub-tenon", STUB_TENON);
        all.put("haunched-tenon", HAUNCHED_TENON);
        all.put("dowelled", DOWELLED);
        all.put("butt", BUTT);
        return all;
    }

    private static Joint halved() {
        return new Joint.Halving("joint", "stile", "rail", Direction.FRONT);
    }

    private static Joint tenon(double thick, double wide, @Nullable Double inset, Joint.@Nullable Haunch haunch) {
        return new Joint.MortiseTenon("joint", "stile", "rail", new Joint.Tenon(thick, wide, inset), haunch);
    }

    /** 44 wide, 24 thick, 260 high, its left edge at 0. */
    private static Part stile() {
        return timber("stile", "Stile")
                .size(260, 44, 24)
                .runs(JobAxis.HIGH, JobAxis.ACROSS)
                .marks(List.of(Direction.FRONT), List.of(Direction.RIGHT))
                .part();
    }

    /** 40 wide and 24 thick. */
    private static Part rail(double from, double up, double length) {
        return timber("rail", "Rail")
                .size(length, 40, 24)
                .at(from, 0, up)
                .runs(JobAxis.ACROSS, JobAxis.HIGH)
                .marks(List.of(Direction.FRONT), List.of(Direction.TOP))
                .part();
    }

    private static Drawing framed(Part rail, Joint joint) {
        Part stile = stile();
        double left = Math.min(0, rail.box().min(0));
        return Samples.drawing(new Overall(rail.box().max(0) - left, 24, 260), List.of(stile, rail), List.of(joint));
    }

    private static Part shelf(double length, double up) {
        return timber("shelf", "Shelf")
                .size(length, 140, 18)
                .at((368 - length) / 2, 0, up)
                .runs(JobAxis.ACROSS, JobAxis.DEEP)
                .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
                .part();
    }

    private static Part upright(String id, String name, double x, Direction inside) {
        return timber(id, name)
                .size(250, 140, 18)
                .at(x, 0, 0)
                .runs(JobAxis.HIGH, JobAxis.DEEP)
                .marks(List.of(inside), List.of(Direction.FRONT))
                .part();
    }

    private static Drawing boxed(Part shelf, Joint left, Joint right) {
        return Samples.drawing(
                new Overall(368, 140, 250),
                List.of(
                        upright("left", "Left upright", 0, Direction.RIGHT),
                        upright("right", "Right upright", 350, Direction.LEFT),
                        shelf),
                List.of(left, right));
    }
}
