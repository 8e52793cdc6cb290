package org.marktwice.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Box;

/**
 * How large the parts of a joint usually are for the stuff that it is made of. Common practice, and a teacher's to
 * change.
 *
 * @param housing depth of a housing, of the thickness that it is cut into
 * @param stop how far a stopped housing stops short of the edge, millimetres
 * @param rebate depth of a rebate, of the thickness that it is cut into
 * @param haunch length of a haunch, of the width of its part
 * @param stub depth of a mortise that doesn't go through, of the width that it is cut into
 * @param dowel diameter of a dowel, of the thickness of the thinner part
 * @param chisels widths of chisels, millimetres: a tenon is as thick as one of them
 */
public record Proportions(
        Range housing, Range stop, Range rebate, Range haunch, Range stub, Range dowel, List<Double> chisels) {
    public static final Proportions USUAL = new Proportions(
            new Range(1.0 / 4, 1.0 / 3, 1.0 / 2),
            new Range(6, 10, 20),
            new Range(1.0 / 2, 1.0 / 2, 2.0 / 3),
            new Range(1.0 / 4, 1.0 / 3, 1.0 / 3),
            new Range(2.0 / 3, 3.0 / 4, 7.0 / 8),
            new Range(1.0 / 3, 2.0 / 5, 1.0 / 2),
            List.of(6.0, 8.0, 10.0, 12.0, 13.0, 16.0));

    /** The slack with which a proportion is kept, millimetres: a drawing's sizes are round figures. */
    private static final double SLACK = 0.5;

    public Proportions {
        chisels = List.copyOf(chisels);
    }

    /** What is still accepted, and what is usual. */
    public record Range(double least, double usual, double most) {
        Range times(double size) {
            return new Range(least * size, usual * size, most * size);
        }
    }

    /** What of a joint is proportioned. */
    public enum Of {
        HOUSING_DEPTH,
        STOP,
        REBATE_DEPTH,
        HALF,
        THIRD,
        TENON_THICKNESS,
        HAUNCH_LENGTH,
        STUB_DEPTH,
        DOWEL_DIAMETER
    }

    /** One size of a joint as drawn beside what is usual, millimetres. */
    public record Proportion(Of of, double drawn, Range usual) {
        public boolean isUsual() {
            return drawn >= usual.least() - SLACK && drawn <= usual.most() + SLACK;
        }
    }

    /** The proportions of a joint as it is drawn; none for a butt. */
    public List<Proportion> of(Drawing drawing, Joint joint) {
        Part in = drawing.part(joint.in()).orElseThrow();
        Part takes = drawing.part(joint.takes()).orElseThrow();
        Optional<Box> overlap = drawing.overlap(joint);
        List<Proportion> all = new ArrayList<>();
        if (joint instanceof Joint.Dowelled d) {
            double thin = Math.min(in.size().thickness(), takes.size().thickness());
            all.add(new Proportion(Of.DOWEL_DIAMETER, d.dowels().diameter(), dowel.times(thin)));
        }
        if (overlap.isEmpty()) return all;
        Box box = overlap.get();
        double thick = in.size().thickness();
        double deep = box.extent(in.thickness().ordinal());
        if (joint instanceof Joint.ThroughHousing || joint instanceof Joint.StoppedHousing) {
            all.add(new Proportion(Of.HOUSING_DEPTH, deep, housing.times(thick)));
        }
        if (joint instanceof Joint.StoppedHousing s) all.add(new Proportion(Of.STOP, s.mm(), stop));
        if (joint instanceof Joint.Rebate) all.add(new Proportion(Of.REBATE_DEPTH, deep, rebate.times(thick)));
        if (joint instanceof Joint.Halving h) {
            double whole = box.extent(h.from().axis());
            all.add(new Proportion(Of.HALF, whole / 2, new Range(whole / 2, whole / 2, whole / 2)));
        }
        if (joint instanceof Joint.Bridle) {
            double whole = box.extent(3 - in.length().ordinal() - takes.length().ordinal());
            all.add(new Proportion(Of.THIRD, whole / 3, new Range(whole / 3, whole / 3, whole / 3)));
        }
        if (joint instanceof Joint.MortiseTenon m) all.addAll(tenoned(m, in, takes, box));
        return all;
    }

    private List<Proportion> tenoned(Joint.MortiseTenon joint, Part in, Part takes, Box overlap) {
        int entering = takes.length().ordinal();
        int through = 3 - entering - in.length().ordinal();
        double whole = in.box().extent(entering);
        double deep = overlap.extent(entering);
        double thick = takes.box().extent(through);
        List<Proportion> all = new ArrayList<>();
        double chisel = chisel(thick / 3);
        all.add(new Proportion(
                Of.TENON_THICKNESS,
                joint.tenon().thickness(),
                new Range(Math.min(thick / 3, chisel), chisel, Math.max(thick / 3, chisel))));
        Joint.Haunch h = joint.haunch();
        if (h != null) {
            double wide = takes.box().extent(in.length().ordinal());
            all.add(new Proportion(Of.HAUNCH_LENGTH, h.length(), haunch.times(wide)));
        }
        if (deep < whole - Drawing.TOLERANCE) all.add(new Proportion(Of.STUB_DEPTH, deep, stub.times(whole)));
        return all;
    }

    /** The chisel that is nearest to a width. */
    public double chisel(double width) {
        return chisels.stream()
                .min(Comparator.comparingDouble(c -> Math.abs(c - width)))
                .orElse(width);
    }
}
