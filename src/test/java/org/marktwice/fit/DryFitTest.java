package org.marktwice.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.CutAt;
import org.marktwice.bench.Cutter;
import org.marktwice.bench.Marker;
import org.marktwice.drawing.AnyJoint;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.timber.Board;
import org.marktwice.timber.Climate;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Surface;

/** What comes of the lines when the boards are cut to them and put together. */
class DryFitTest {
    private static final int JOBS = 40;

    /** True boards, a careful hand: the job is the drawing. */
    @ParameterizedTest
    @EnumSource(AnyJoint.Kind.class)
    void whatWasDoneRightComesOutAsDrawn(AnyJoint.Kind kind) {
        Random random = new Random(kind.ordinal());
        for (int i = 0; i < JOBS; i++) {
            Drawing drawing = AnyJoint.drawing(kind, random);
            DryFit fit =
                    DryFit.of(Laid.true_(drawing, i % 2 == 0 ? 0 : 9).setsOut().bench());
            assertAsDrawn(fit);
        }
    }

    static void assertAsDrawn(DryFit fit) {
        assertThat(fit.isWhole()).isTrue();
        assertThat(fit.joints()).allSatisfy(j -> {
            assertThat(j.state()).isEqualTo(JointFit.State.TOGETHER);
            assertThat(j.seats()).isNotEmpty();
            assertThat(j.seats()).allSatisfy(s -> {
                assertThat(s.tight()).isEqualTo(0, within(1e-6));
                assertThat(s.wide()).isEqualTo(0, within(1e-6));
            });
            assertThat(j.clash()).isEqualTo(0, within(1e-6));
            assertThat(j.off().orElseThrow()).isEqualTo(0, within(1e-6));
        });
        assertThat(fit.parts()).allSatisfy(p -> assertThat(p.moved().length()).isEqualTo(0, within(1e-6)));
        assertThat(fit.sizes())
                .allSatisfy(s -> assertThat(s.off().orElseThrow()).isEqualTo(0, within(1e-6)));
        assertThat(fit.steps()).allSatisfy(s -> assertThat(s.step()).isEqualTo(0, within(1e-6)));
        assertThat(fit.rectangles()).allSatisfy(r -> assertThat(r.difference()).isEqualTo(0, within(1e-6)));
    }

    @Test
    void aWholeJobOfThreePartsComesOutAsDrawn() {
        DryFit fit = DryFit.of(porchShelf().setsOut().bench());

        assertAsDrawn(fit);
        assertThat(fit.rectangles()).hasSize(1);
        assertThat(fit.rectangles().get(0).one()).isEqualTo(Math.hypot(500, 300), within(1e-6));
        assertThat(fit.steps()).as("front and back of the shelf at either end").hasSize(4);
    }

    static List<Path> scenarios() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files.filter(f -> f.toString().endsWith(".scenario.json")).toList();
        }
    }

    /**
     * A shelf housing's two lines, sawn: in the waste it fits as drawn; on the lines half the kerf goes on either side, and on
     * the sides that were to stay all of it.
     */
    @ParameterizedTest
    @CsvSource({"SAW, WASTE, 0", "SAW, LINE, 1", "SAW, KEPT, 2", "CHISEL, LINE, 0", "CHISEL, KEPT, 1"})
    void sawnOnTheWrongSideOfItsLinesAHousingIsTooWide(Cutter with, CutAt side, double gap) throws CannotDo {
        Bench bench = porchShelf().setsOut().bench();
        BoardState upright = bench.namedAs(Fixtures.UPRIGHT_LEFT).get(0);
        SetOut out = SetOut.of(bench.placing(upright).orElseThrow(), upright, TrueLines.of(bench, upright));
        for (SetOut.Marked m : out.marked("left-housing")) {
            if (!m.side().isSquared()) continue;
            int line = m.struck().orElseThrow().step();
            bench = bench.after(new Action.Cut(1e6, upright.board().id(), line, with, side));
        }

        assertThat(DryFit.of(bench)
                        .joint("left-housing")
                        .gap()
                        .map(JointFit.Gap::mm)
                        .orElse(0.0))
                .isEqualTo(gap, within(1e-6));
    }

    /** Every shipped job, set out rightly on true boards, is its drawing. */
    @ParameterizedTest
    @MethodSource("scenarios")
    void everyShippedJobComesOutAsDrawn(Path file) throws FileRefused {
        Drawing drawing = ScenarioFile.read(file).drawing();

        DryFit fit = DryFit.of(Laid.true_(drawing, 6).setsOut().bench());

        if (drawing.joints().isEmpty()) assertThat(fit.isWhole()).isTrue();
        else assertAsDrawn(fit);
    }

    private static Laid porchShelf() {
        return Laid.true_(Fixtures.porchShelfDrawing(), 6);
    }

    @Test
    void beforeAnythingIsSetOutNothingCanBePutTogether() {
        DryFit fit = DryFit.of(porchShelf().bench());

        assertThat(fit.joints()).extracting(JointFit::state).containsOnly(JointFit.State.NOT_SET_OUT);
        assertThat(fit.sizes()).allMatch(s -> s.made().isEmpty());
        assertThat(fit.rectangles()).isEmpty();
    }

    /** The right upright of the porch shelf: a housing 10 mm too high lifts nothing apart, but it stands 10 mm out. */
    @Test
    void aHousingInTheWrongPlaceThrowsTheJobOutOfSquare() {
        Laid laid = porchShelf();
        laid.setsOut("A").setsOut("C");
        housing(laid, "B", 10, 18, 6);
        DryFit fit = DryFit.of(laid.bench());

        assertThat(fit.joint("right-housing").off().orElseThrow()).isEqualTo(10, within(1e-6));
        assertThat(fit.joint("right-housing").gap().orElseThrow().mm()).isEqualTo(0, within(1e-3));
        assertThat(size(fit, JobAxis.HIGH)).isEqualTo(310, within(1e-3));
        Rectangle r = fit.rectangles().get(0);
        assertThat(r.difference()).isEqualTo(Math.hypot(500, 310) - Math.hypot(500, 290), within(1e-2));
    }

    /** The shelf is 18 thick; the housing takes its play from its width. */
    @ParameterizedTest
    @CsvSource({"18.8, 0.8, 0", "18, 0, 0", "17.6, 0, 0.2"})
    void aHousingGapsByWhatItIsTooWideAndClashesByWhatItIsTooNarrow(double wide, double gap, double clash) {
        Laid laid = porchShelf();
        laid.setsOut("A").setsOut("C");
        housing(laid, "B", 0, wide, 6);
        JointFit joint = DryFit.of(laid.bench()).joint("right-housing");

        assertThat(joint.gap().orElseThrow().mm()).isEqualTo(gap, within(1e-3));
        assertThat(joint.clash()).as("on either side").isEqualTo(clash, within(1e-3));
    }

    /** 6 deep as drawn; cut 1 mm less deep the job comes out 1 mm too wide. */
    @Test
    void aHousingTooShallowMakesTheJobTooWide() {
        Laid laid = porchShelf();
        laid.setsOut("A").setsOut("C");
        housing(laid, "B", 0, 18, 5);

        assertThat(size(DryFit.of(laid.bench()), JobAxis.ACROSS)).isEqualTo(501, within(1e-3));
    }

    /** Sets out the right upright, its face side face 1, bottom at end 1 or end 2: the housing so much too high. */
    private static void housing(Laid laid, String board, double up, double wide, double deep) {
        var placing = laid.placing(board);
        boolean low1 = placing.turn().along(0) == Direction.TOP;
        Surface bottom = low1 ? Surface.END_1 : Surface.END_2;
        double off = placing.off(bottom);
        double long_ = placing.part().size().length();
        int first = laid.bench().steps() + 1;
        for (Surface on : List.of(Surface.FACE_1, Surface.EDGE_1, Surface.EDGE_2)) {
            Surface stock = on.isFace() ? Surface.EDGE_1 : Surface.FACE_1;
            line(laid, board, on, stock, bottom, off + 80 + up);
            line(laid, board, on, stock, bottom, off + 80 + up + wide);
        }
        for (Surface on : Surface.LONG) {
            Surface stock = on.isFace() ? Surface.EDGE_1 : Surface.FACE_1;
            line(laid, board, on, stock, bottom, off);
            line(laid, board, on, stock, bottom, off + long_);
        }
        laid.does(new Action.Gauge(3, board, Surface.EDGE_1, Surface.FACE_1, deep));
        laid.does(new Action.Gauge(3, board, Surface.EDGE_2, Surface.FACE_1, deep));
        laid.does(new Action.Waste(3, board, "right-housing", first, first + 1));
    }

    private static void line(Laid laid, String board, Surface on, Surface stock, Surface end, double at) {
        laid.does(new Action.Line(3, board, on, stock, new Datum.End(end), at, null, Marker.KNIFE));
    }

    private static double size(DryFit fit, JobAxis axis) {
        return fit.sizes().get(axis.ordinal()).made().orElseThrow();
    }

    /** A corner halving of two pieces 20 thick; the upright is gauged from its back, the rail from its face. Derived: the step is T − 2g. */
    @ParameterizedTest
    @CsvSource({"20, 10.3, 0.6", "20, 9.7, 0.6", "20, 10, 0", "21, 10, 1.0"})
    void aHalvingGaugedOnceFromABackSteps(double thick, double set, double step) {
        DryFit fit = halved(thick, set, Surface.FACE_2);

        assertThat(front(fit)).isEqualTo(step, within(1e-3));
    }

    /** Whatever the gauge is set to, from the faces that are to be flush the joint comes flush. */
    @ParameterizedTest
    @CsvSource({"20, 10.3", "20, 9", "21, 10"})
    void aHalvingGaugedFromBothFacesComesFlush(double thick, double set) {
        DryFit fit = halved(thick, set, Surface.FACE_1);

        assertThat(front(fit)).isEqualTo(0, within(1e-3));
    }

    private static double front(DryFit fit) {
        return fit.steps().stream()
                .filter(s -> s.looks() == Direction.FRONT)
                .mapToDouble(s -> Math.abs(s.step()))
                .max()
                .orElseThrow();
    }

    /** Both gauged at one setting; the fence of the rail's gauge on its face, of the stile's as said. */
    private static DryFit halved(double thick, double set, Surface fence) {
        var stile = Fixtures.timber("stile", "Stile")
                .size(300, 50, thick)
                .runs(JobAxis.HIGH, JobAxis.ACROSS)
                .marks(List.of(Direction.FRONT), List.of(Direction.RIGHT))
                .part();
        var rail = Fixtures.timber("rail", "Rail")
                .size(400, 50, thick)
                .at(0, 0, 250)
                .runs(JobAxis.ACROSS, JobAxis.HIGH)
                .marks(List.of(Direction.FRONT), List.of(Direction.BOTTOM))
                .part();
        Drawing drawing = Fixtures.drawing(
                new Overall(400, thick, 300),
                List.of(stile, rail),
                new Joint.Halving("corner", "stile", "rail", Direction.BACK));
        Laid laid = Laid.true_(drawing, 0);
        for (String board : new String[] {"A", "B"}) {
            var steps = WorkedSettingOut.steps(
                    laid.placing(board), laid.boards(), laid.bench().steps());
            for (var step : steps) {
                Action action = step.at(3);
                if (action instanceof Action.Gauge g) {
                    Surface from = board.equals("A") ? fence : Surface.FACE_1;
                    action = new Action.Gauge(3, board, g.on(), from, set);
                }
                laid.does(action);
            }
        }
        return DryFit.of(laid.bench());
    }

    /** A rail whose back edge runs out of parallel by 3 mm in 300: squared from there, its shoulder is 0.6 out over 60 mm. */
    @Test
    void aShoulderSquaredFromATaperedEdgeGaps() {
        var stile = Fixtures.timber("stile", "Stile")
                .size(300, 50, 20)
                .runs(JobAxis.HIGH, JobAxis.ACROSS)
                .marks(List.of(Direction.FRONT), List.of(Direction.RIGHT))
                .part();
        var rail = Fixtures.timber("rail", "Rail")
                .size(300, 60, 20)
                .at(20, 0, 100)
                .runs(JobAxis.ACROSS, JobAxis.HIGH)
                .marks(List.of(Direction.FRONT), List.of(Direction.TOP))
                .part();
        Drawing drawing = Fixtures.drawing(
                new Overall(320, 20, 300),
                List.of(stile, rail),
                new Joint.MortiseTenon("j", "stile", "rail", new Joint.Tenon(7, 40, null), null));
        List<Board> boards = List.of(
                Fixtures.board("A").size(300, 50, 20).board(),
                Fixtures.board("B")
                        .size(300, 60, 20)
                        .shape(new Shape(0, 0, 0, 3, 0, Map.of()))
                        .board());
        Laid laid = Laid.of(drawing, boards, 0).setsOut("A");
        for (var step : WorkedSettingOut.steps(
                laid.placing("B"), laid.boards(), laid.bench().steps())) {
            Action action = step.at(3);
            if (action instanceof Action.Line l && l.square() == Surface.EDGE_1) {
                action = new Action.Line(3, "B", l.on(), Surface.EDGE_2, l.from(), l.at(), l.mate(), l.with());
            }
            laid.does(action);
        }
        DryFit fit = DryFit.of(laid.bench());

        assertThat(fit.joint("j").gap().orElseThrow().mm()).isEqualTo(0.6, within(0.05));
        assertThat(DryFit.of(Laid.of(drawing, boards, 0).setsOut().bench())
                        .joint("j")
                        .gap()
                        .orElseThrow()
                        .mm())
                .as("squared from the face edge")
                .isEqualTo(0, within(0.05));
    }

    @Test
    void linesOnTheWrongFaceAreSeenToCutTheWrongSide() {
        Laid laid = porchShelf();
        laid.setsOut("A").setsOut("C");
        for (var step : WorkedSettingOut.steps(
                laid.placing("B"), laid.boards(), laid.bench().steps())) {
            Action a = step.at(3);
            boolean end = a instanceof Action.Line l && l.on() != Surface.FACE_1;
            if (a instanceof Action.Line l && !end && l.from() instanceof Datum.Step) {
                a = new Action.Line(3, "B", Surface.FACE_2, l.square(), l.from(), l.at(), l.mate(), l.with());
            }
            laid.does(a);
        }
        assertThat(DryFit.of(laid.bench()).joint("right-housing").state()).isEqualTo(JointFit.State.WRONG_SIDE);
    }

    /** Pine at 12 % dries to about 7 %: everything shrinks across the grain, and the housing gapes by what the shelf loses. */
    @Test
    void inAHeatedRoomTheShelfGetsThinnerAndItsHousingGapes() {
        DryFit now = DryFit.of(porchShelf().setsOut().bench());
        DryFit then = now.in(new Climate(21, 35));
        var shelf = then.parts().get(2);

        assertThat(shelf.wider()).isBetween(-3.0, -0.5);
        assertThat(shelf.thicker()).isBetween(-0.4, -0.1);
        assertThat(then.joint("left-housing").gap().orElseThrow().mm()).isEqualTo(-shelf.thicker(), within(1e-3));
        assertThat(size(then, JobAxis.DEEP)).isEqualTo(120 + shelf.wider(), within(0.05));
        assertThat(size(then, JobAxis.HIGH)).isEqualTo(300, within(1e-3));
        assertThat(now.parts()).allMatch(p -> p.wider() == 0 && p.thicker() == 0);
    }

    @Test
    void aCarefulHandIsOutByALittleAndTheSameForASeed() {
        var bench = porchShelf().setsOut().bench();
        DryFit once = DryFit.of(bench, Hand.careful(3), Tools.TRUE);

        assertThat(once.joints())
                .isEqualTo(DryFit.of(bench, Hand.careful(3), Tools.TRUE).joints());
        assertThat(once.joints())
                .isNotEqualTo(DryFit.of(bench, Hand.careful(4), Tools.TRUE).joints());
        assertThat(once.joints())
                .allSatisfy(j -> assertThat(j.gap().orElseThrow().mm()).isLessThan(2.5));
        assertThat(once.sizes().get(0).off().orElseThrow()).isNotEqualTo(0).isBetween(-2.5, 2.5);
    }
}
