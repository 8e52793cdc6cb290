package org.marktwice;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
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
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.Species;
import org.marktwice.timber.Stuff;
import org.marktwice.timber.Surface;

/** Small jobs of our own invention, built from the Java types, for any test to start from. */
public final class Fixtures {
    /** The two figures are those of the species table; no test that uses this constant depends on them. */
    public static final Species PINE = new Species("scots-pine", "Scots pine", 4.0, 7.7, "test");

    public static final Part UPRIGHT_LEFT = timber("upright-left", "Left upright")
            .size(300, 120, 18)
            .at(0, 0, 0)
            .runs(JobAxis.HIGH, JobAxis.DEEP)
            .marks(List.of(Direction.RIGHT), List.of(Direction.FRONT))
            .part();
    public static final Part UPRIGHT_RIGHT = timber("upright-right", "Right upright")
            .size(300, 120, 18)
            .at(482, 0, 0)
            .runs(JobAxis.HIGH, JobAxis.DEEP)
            .marks(List.of(Direction.LEFT), List.of(Direction.FRONT))
            .part();
    public static final Part SHELF = timber("shelf", "Shelf")
            .size(476, 120, 18)
            .at(12, 0, 80)
            .runs(JobAxis.ACROSS, JobAxis.DEEP)
            .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
            .part();

    private Fixtures() {}

    /** Two uprights, one shelf in through housings: the porch shelf of the design, with four boards, A to D; no aids. */
    public static Scenario porchShelf() {
        return scenario("porch-shelf", porchShelfDrawing(), porchShelfBoards());
    }

    public static Drawing porchShelfDrawing() {
        return drawing(
                new Overall(500, 120, 300),
                List.of(UPRIGHT_LEFT, UPRIGHT_RIGHT, SHELF),
                new Joint.ThroughHousing("left-housing", "upright-left", "shelf"),
                new Joint.ThroughHousing("right-housing", "upright-right", "shelf"));
    }

    /** A to C serve as uprights, D as the shelf. */
    public static List<Board> porchShelfBoards() {
        return List.of(
                board("A")
                        .size(312, 120, 18)
                        .dressed(Surface.FACE_1, Surface.FACE_2, Surface.EDGE_1)
                        .pith(52, -40)
                        .knots(knot("k1", 71, 84, 72))
                        .shape(new Shape(0, 0, 0, 0.6, 0, Map.of(Surface.EDGE_2, 0.5)))
                        .board(),
                board("B")
                        .size(308, 120, 18)
                        .pith(70, 65)
                        .knots(knot("k1", 180, -95, 80))
                        .board(),
                board("C")
                        .size(304, 120, 18)
                        .pith(60, -55)
                        .knots(knot("k1", 88, 90, 85), knot("k2", 215, 80, 80))
                        .board(),
                board("D").size(480, 120, 18).pith(60, 90).board());
    }

    /** One rail of one board that needs no joint: faces and names only. */
    public static Scenario oneRail() {
        Part rail = timber("rail", "Peg rail")
                .size(400, 60, 20)
                .at(0, 0, 0)
                .runs(JobAxis.ACROSS, JobAxis.HIGH)
                .marks(List.of(Direction.FRONT), List.of(Direction.TOP, Direction.BOTTOM))
                .part();
        return scenario(
                "peg-rail",
                drawing(new Overall(400, 20, 60), List.of(rail)),
                List.of(board("A").size(406, 60, 20).pith(30, -60).board()));
    }

    /** The same exercise with every aid granted. */
    public static Scenario withAids(Scenario s) {
        Practice p = s.practice();
        Practice all = new Practice(
                p.faceSide(),
                p.heartSide(),
                p.knotMargin(),
                p.cupRatio(),
                p.size(),
                p.gap(),
                p.worth(),
                p.guidance(),
                EnumSet.allOf(Practice.Aid.class));
        return withPractice(s, all);
    }

    public static Scenario withPractice(Scenario s, Practice practice) {
        return new Scenario(
                s.id(), s.title(), s.level(), s.brief(), s.stages(), practice, s.drawing(), s.boards(), s.digest());
    }

    public static Scenario withBoards(Scenario s, List<Board> boards) {
        return new Scenario(
                s.id(), s.title(), s.level(), s.brief(), s.stages(), s.practice(), s.drawing(), boards, s.digest());
    }

    /** The first three stages, the usual practice, no aids. */
    public static Scenario scenario(String id, Drawing drawing, List<Board> boards) {
        return new Scenario(
                id,
                id,
                1,
                "An exercise of the tests.",
                List.of(Stage.FACES, Stage.NAMES, Stage.TURNS),
                Practice.DEFAULT,
                drawing,
                boards,
                "");
    }

    /** @throws AssertionError where the drawing is refused */
    public static Drawing drawing(Overall overall, List<Part> parts, Joint... joints) {
        try {
            return Drawing.of(overall, parts, List.of(joints));
        } catch (DrawingRefused e) {
            throw new AssertionError(e.where() + ": " + e.getMessage(), e);
        }
    }

    /** A knot of 16 mm that is dead from 60 mm on. */
    public static Knot knot(String id, double x, double azimuth, double lean) {
        return new Knot(id, x, azimuth, lean, 5.5, 8, 60, Double.POSITIVE_INFINITY);
    }

    /** A board of Scots pine, 300 × 120 × 18, dressed all round, true, its pith well below face-2; change what matters. */
    public static BoardMaker board(String id) {
        return new BoardMaker(id);
    }

    public static PartMaker timber(String id, String name) {
        return new PartMaker(id, name, PartStuff.TIMBER);
    }

    public static PartMaker sheet(String id, String name) {
        return new PartMaker(id, name, PartStuff.SHEET);
    }

    public static PartMaker shaped(String id, String name) {
        return new PartMaker(id, name, PartStuff.SHAPED);
    }

    /** A board described step by step. */
    public static final class BoardMaker {
        private final String id;
        private Stuff stuff = Stuff.TIMBER;
        private Size size = new Size(300, 120, 18);
        private double planedAt = 12;
        private double moisture = 12;
        private Set<Surface> dressed = EnumSet.allOf(Surface.class);
        private Pith pith = new Pith(60, -80);
        private List<Knot> knots = List.of();
        private Shape shape = Shape.TRUE;

        private BoardMaker(String id) {
            this.id = id;
        }

        public BoardMaker size(double length, double width, double thickness) {
            size = new Size(length, width, thickness);
            return this;
        }

        public BoardMaker sheet() {
            stuff = Stuff.SHEET;
            return this;
        }

        public BoardMaker moisture(double whenPlaned, double now) {
            planedAt = whenPlaned;
            moisture = now;
            return this;
        }

        /** The others are as sawn. */
        public BoardMaker dressed(Surface... surfaces) {
            dressed = Set.of(surfaces);
            return this;
        }

        public BoardMaker pith(double y, double z) {
            pith = new Pith(y, z);
            return this;
        }

        public BoardMaker knots(Knot... some) {
            knots = Arrays.asList(some);
            return this;
        }

        public BoardMaker shape(Shape given) {
            shape = given;
            return this;
        }

        public Board board() {
            boolean wood = stuff == Stuff.TIMBER;
            return Board.of(new Board.Facts(
                    id,
                    stuff,
                    wood ? PINE : null,
                    size,
                    planedAt,
                    moisture,
                    dressed,
                    wood ? pith : null,
                    2.4,
                    wood ? knots : List.of(),
                    shape,
                    1));
        }
    }

    /** A part described step by step; it takes no marks until these are given. */
    public static final class PartMaker {
        private final String id;
        private final String name;
        private final PartStuff stuff;
        private Size size = new Size(300, 120, 18);
        private Vector3d at = new Vector3d();
        private JobAxis length = JobAxis.ACROSS;
        private JobAxis width = JobAxis.DEEP;
        private List<Direction> faceSide = List.of();
        private List<Direction> faceEdge = List.of();

        private PartMaker(String id, String name, PartStuff stuff) {
            this.id = id;
            this.name = name;
            this.stuff = stuff;
        }

        public PartMaker size(double alongGrain, double across, double through) {
            size = new Size(alongGrain, across, through);
            return this;
        }

        public PartMaker at(double x, double y, double z) {
            at = new Vector3d(x, y, z);
            return this;
        }

        public PartMaker runs(JobAxis lengthAlong, JobAxis widthAlong) {
            length = lengthAlong;
            width = widthAlong;
            return this;
        }

        public PartMaker marks(List<Direction> side, List<Direction> edge) {
            faceSide = side;
            faceEdge = edge;
            return this;
        }

        public Part part() {
            return new Part(id, name, stuff, size, at, length, width, faceSide, faceEdge);
        }
    }
}
