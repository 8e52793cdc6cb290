package org.marktwice.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.joml.Vector3d;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.DrawingRefused;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.Species;
import org.marktwice.timber.Stuff;
import org.marktwice.timber.Surface;

/** Boards and drawings of our own invention, for the tests of pictures. */
final class Samples {
    static final List<String> SPECIES = List.of(
            "scots-pine",
            "norway-spruce",
            "eastern-white-pine",
            "douglas-fir",
            "sugar-maple",
            "american-beech",
            "white-ash",
            "black-cherry",
            "yellow-poplar",
            "black-walnut");

    private static final Set<Surface> ALL = Set.of(Surface.values());

    private Samples() {}

    static Species species(String id) {
        return new Species(id, id, 4, 8, "invented");
    }

    /** A pine board with one live, one dying and one dead knot. */
    static Board pine() {
        List<Knot> knots = List.of(
                new Knot("k1", 71, 84, 72, 5.5, 8, 60, Double.POSITIVE_INFINITY),
                new Knot("k2", 205, 118, 66, 6, 8, 95, Double.POSITIVE_INFINITY),
                new Knot("k3", 226, 55, 80, 6, 8, 52, Double.POSITIVE_INFINITY));
        return board("A", "scots-pine", new Size(312, 120, 18), new Pith(52, -40), 2.4, knots, 4711, ALL);
    }

    static Board board(
            String id,
            String species,
            Size size,
            Pith pith,
            double ringWidth,
            List<Knot> knots,
            long seed,
            Set<Surface> dressed) {
        return Board.of(new Board.Facts(
                id,
                Stuff.TIMBER,
                species(species),
                size,
                16,
                11,
                dressed,
                pith,
                ringWidth,
                knots,
                new Shape(0, 0, 0, 0, 0, Map.of()),
                seed));
    }

    static Board sheet() {
        return Board.of(new Board.Facts(
                "S", Stuff.SHEET, null, new Size(300, 120, 9), 12, 12, ALL, null, 0, List.of(), Shape.TRUE, 5));
    }

    /** Any board: size, pith, rings and up to four knots from the seed. */
    static Board random(String species, long seed) {
        Random r = new Random(seed);
        double w = 60 + 10 * r.nextInt(11);
        double t = 15 + r.nextInt(14);
        Pith pith = new Pith(
                w * (r.nextDouble() * 1.2 - 0.1),
                r.nextBoolean() ? -5 - 60 * r.nextDouble() : t + 5 + 70 * r.nextDouble());
        double up = pith.z() < 0 ? 90 : -90;
        List<Knot> knots = new ArrayList<>();
        int n = r.nextInt(5);
        double l = 260 + 20 * r.nextInt(10);
        for (int i = 0; i < n; i++) {
            knots.add(new Knot(
                    "k" + (i + 1),
                    30 + (l - 60) * (i + r.nextDouble()) / n,
                    up + 70 * (r.nextDouble() - 0.5),
                    60 + 25 * r.nextDouble(),
                    4 + 4 * r.nextDouble(),
                    3 + 7 * r.nextDouble(),
                    20 + 90 * r.nextDouble(),
                    r.nextInt(4) == 0 ? 60 : Double.POSITIVE_INFINITY));
        }
        Set<Surface> dressed = r.nextInt(3) == 0 ? Set.of(Surface.FACE_1, Surface.EDGE_1) : ALL;
        return board("R" + seed, species, new Size(l, w, t), pith, 1.6 + 2.4 * r.nextDouble(), knots, seed, dressed);
    }

    /** Two uprights and a shelf in through housings. */
    static Drawing shelf() {
        return drawing(
                new Overall(500, 120, 300),
                List.of(
                        part("upright-left", "Left upright", 300, 120, 18, 0, 0, 0, JobAxis.HIGH, JobAxis.DEEP),
                        part("upright-right", "Right upright", 300, 120, 18, 482, 0, 0, JobAxis.HIGH, JobAxis.DEEP),
                        part("shelf", "Shelf", 476, 120, 18, 12, 0, 80, JobAxis.ACROSS, JobAxis.DEEP)),
                List.of(
                        new Joint.ThroughHousing("left-housing", "upright-left", "shelf"),
                        new Joint.ThroughHousing("right-housing", "upright-right", "shelf")));
    }

    /** Two rails halved over two posts: each of the four hides and is hidden. */
    static Drawing trellis() {
        return drawing(
                new Overall(400, 20, 300),
                List.of(
                        part("post-left", "Left post", 300, 40, 20, 60, 0, 0, JobAxis.HIGH, JobAxis.ACROSS),
                        part("post-right", "Right post", 300, 40, 20, 300, 0, 0, JobAxis.HIGH, JobAxis.ACROSS),
                        part("rail-low", "Low rail", 400, 40, 20, 0, 0, 50, JobAxis.ACROSS, JobAxis.HIGH),
                        part("rail-high", "High rail", 400, 40, 20, 0, 0, 210, JobAxis.ACROSS, JobAxis.HIGH)),
                List.of(
                        new Joint.Halving("a", "post-left", "rail-low", Direction.FRONT),
                        new Joint.Halving("b", "post-right", "rail-low", Direction.FRONT),
                        new Joint.Halving("c", "post-left", "rail-high", Direction.FRONT),
                        new Joint.Halving("d", "post-right", "rail-high", Direction.FRONT)));
    }

    static Part part(
            String id,
            String name,
            double l,
            double w,
            double t,
            double x,
            double y,
            double z,
            JobAxis length,
            JobAxis width) {
        JobAxis thickness = JobAxis.values()[3 - length.ordinal() - width.ordinal()];
        return new Part(
                id,
                name,
                PartStuff.TIMBER,
                new Size(l, w, t),
                new Vector3d(x, y, z),
                length,
                width,
                List.of(Direction.on(thickness.ordinal(), 1)),
                List.of(Direction.on(width.ordinal(), -1)));
    }

    static Drawing drawing(Overall overall, List<Part> parts, List<Joint> joints) {
        try {
            return Drawing.of(overall, parts, joints);
        } catch (DrawingRefused e) {
            throw new IllegalArgumentException(e.where() + ": " + e.getMessage(), e);
        }
    }
}
