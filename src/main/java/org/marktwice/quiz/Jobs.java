package org.marktwice.quiz;

import java.util.ArrayList;
import java.util.List;
import org.joml.Vector3d;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.DrawingRefused;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Size;

/** Small jobs to ask about, in whole millimetres: cases with shelves, and frames. */
final class Jobs {
    private final List<Part> parts = new ArrayList<>();
    private final List<Joint> joints = new ArrayList<>();

    private Jobs() {}

    /** How a frame's corners are joined. */
    enum Corner {
        HALVED,
        BRIDLED,
        TENONED
    }

    /**
     * Two uprights with shelves between them in through housings a third deep. The lowest shelf stands in the lower two
     * fifths. Face sides are turned in and, on shelves, up; face edges are to the front.
     *
     * @param shelves one or two
     */
    static Drawing shelves(Chance chance, int shelves) {
        double thick = 3 * chance.whole(5, 7);
        double deep = 5 * chance.whole(18, 28);
        double high = 10 * chance.whole(26, 40);
        double across = 10 * chance.whole(38, 60);
        Jobs job = new Jobs();
        Size upright = new Size(high, deep, thick);
        job.upright("upright-left", "Left upright", upright, 0, Direction.RIGHT);
        job.upright("upright-right", "Right upright", upright, across - thick, Direction.LEFT);
        double lowest = chance.whole(50, (int) (0.4 * high - thick));
        for (int i = 0; i < shelves; i++) {
            String name = shelves == 1 ? "Shelf" : i == 0 ? "Lower shelf" : "Upper shelf";
            // never as far from the top as the other from the bottom: left and right would be alike
            double at = i == 0 ? lowest : high - lowest - thick + (chance.with(0.5) && lowest >= 65 ? 15 : -15);
            job.shelf("shelf-" + (i + 1), name, new Size(across - thick * 4 / 3, deep, thick), thick * 2 / 3, at);
        }
        return job.drawn(new Overall(across, deep, high));
    }

    private void upright(String id, String name, Size size, double x, Direction faceSide) {
        add(id, name, size, new Vector3d(x, 0, 0), JobAxis.HIGH, JobAxis.DEEP, faceSide, Direction.FRONT);
    }

    private void shelf(String id, String name, Size size, double x, double z) {
        add(id, name, size, new Vector3d(x, 0, z), JobAxis.ACROSS, JobAxis.DEEP, Direction.TOP, Direction.FRONT);
        joints.add(new Joint.ThroughHousing(id + "-left", "upright-left", id));
        joints.add(new Joint.ThroughHousing(id + "-right", "upright-right", id));
    }

    /**
     * A frame that stands on its stiles; the bottom rail is wider than the top one and stands clear of the floor. Face
     * sides are to the front, face edges towards the opening.
     */
    static Drawing frame(Chance chance, Corner corner) {
        double thick = corner == Corner.HALVED ? 2 * chance.whole(8, 12) : 3 * chance.whole(6, 8);
        double wide = 5 * chance.whole(8, 11);
        double bottom = wide + 5 * chance.whole(2, 4);
        double high = 10 * chance.whole(34, 48);
        double across = 10 * chance.whole(30, 44);
        double foot = chance.whole(40, 70);
        double top = corner == Corner.TENONED ? high - wide - chance.whole(20, 35) : high - wide;
        double into = corner == Corner.TENONED ? wide - chance.whole(10, 15) : wide;
        Jobs job = new Jobs();
        Size stile = new Size(high, wide, thick);
        job.stile("stile-left", "Left stile", stile, 0, Direction.RIGHT);
        job.stile("stile-right", "Right stile", stile, across - wide, Direction.LEFT);
        double length = across - 2 * wide + 2 * into;
        Corner low = corner == Corner.BRIDLED ? Corner.HALVED : corner;
        job.rail("rail-top", "Top rail", new Size(length, wide, thick), wide - into, top, Direction.BOTTOM, corner);
        job.rail("rail-bottom", "Bottom rail", new Size(length, bottom, thick), wide - into, foot, Direction.TOP, low);
        return job.drawn(new Overall(across, thick, high));
    }

    private void stile(String id, String name, Size size, double x, Direction edge) {
        add(id, name, size, new Vector3d(x, 0, 0), JobAxis.HIGH, JobAxis.ACROSS, Direction.FRONT, edge);
    }

    private void rail(String id, String name, Size size, double x, double z, Direction edge, Corner corner) {
        add(id, name, size, new Vector3d(x, 0, z), JobAxis.ACROSS, JobAxis.HIGH, Direction.FRONT, edge);
        for (String stile : List.of("stile-left", "stile-right")) {
            String joint = id + stile.substring("stile".length());
            joints.add(
                    switch (corner) {
                        case HALVED -> new Joint.Halving(joint, stile, id, Direction.FRONT);
                        case BRIDLED -> new Joint.Bridle(joint, stile, id);
                        case TENONED ->
                            new Joint.MortiseTenon(
                                    joint,
                                    stile,
                                    id,
                                    new Joint.Tenon(chisel(size.thickness()), size.width() - 10, null),
                                    null);
                    });
        }
    }

    /** The chisel nearest to a third of the thickness, millimetres. */
    private static double chisel(double thickness) {
        return thickness < 21 ? 6 : 8;
    }

    private void add(
            String id,
            String name,
            Size size,
            Vector3d at,
            JobAxis length,
            JobAxis width,
            Direction faceSide,
            Direction faceEdge) {
        parts.add(new Part(id, name, PartStuff.TIMBER, size, at, length, width, List.of(faceSide), List.of(faceEdge)));
    }

    private Drawing drawn(Overall overall) {
        try {
            return Drawing.of(overall, parts, joints);
        } catch (DrawingRefused e) {
            throw new IllegalStateException("a job for a question contradicts itself: " + e.getMessage(), e);
        }
    }
}
