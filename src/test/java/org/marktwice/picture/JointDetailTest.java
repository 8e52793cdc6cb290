package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.picture.WorkingDrawing.Method;

/** Each kind of joint is drawn larger, its edges seen or hidden as they are, its main sizes written once. */
class JointDetailTest {
    private static JointDetail detail(Drawing drawing) {
        List<JointDetail> details = JointDetail.of(drawing, Method.FIRST_ANGLE);
        assertThat(details).hasSize(1);
        return details.get(0);
    }

    private static Closeup view(Drawing drawing, JobAxis looking) {
        return detail(drawing).views().stream()
                .filter(v -> v.looking() == looking)
                .findFirst()
                .orElseThrow();
    }

    static Stream<Arguments> sizes() {
        return Stream.of(
                arguments("through housing", JointJobs.THROUGH_HOUSING, "18 high, 6 across, 18 across"),
                // 18 is the shelf, 6 of 18 the depth, and it stops 10 short of the front
                arguments("stopped housing", JointJobs.STOPPED_HOUSING, "18 high, 6 across, 18 across, 10 deep"),
                arguments("rebate", JointJobs.REBATE, "18 high, 9 across, 18 across"),
                // all 24 of the thickness stand among the overall sizes
                arguments("corner halving", JointJobs.CORNER_HALVING, "12 deep, 44 across, 40 high"),
                arguments("T halving", JointJobs.T_HALVING, "12 deep, 44 across, 40 high"),
                arguments("cross halving", JointJobs.CROSS_HALVING, "12 deep, 44 across, 40 high"),
                arguments("bridle", JointJobs.BRIDLE, "8 deep, 44 across, 40 high"),
                arguments("mortise and tenon", JointJobs.THROUGH_TENON, "8 deep, 44 across, 30 high, 5 high"),
                arguments(
                        "stub mortise and tenon",
                        JointJobs.STUB_TENON,
                        "8 deep, 29 across, 44 across, 30 high, 5 high"),
                arguments(
                        "haunched mortise and tenon",
                        JointJobs.HAUNCHED_TENON,
                        "8 deep, 44 across, 26 high, 14 high, 10 across"),
                arguments(
                        "dowelled joint",
                        JointJobs.DOWELLED,
                        "10 high, 20 high, 12 deep, 2 × Ø8 deep, 20 across, 20 across"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sizes")
    void itsMainSizesAreWrittenOnce(String title, Drawing drawing, String sizes) {
        JointDetail detail = detail(drawing);

        assertThat(detail.title()).isEqualTo(title);
        assertThat(detail.said()).isEqualTo(sizes);
    }

    @Test
    void aButtTakesNothingAndHasNoDetail() {
        assertThat(JointDetail.of(JointJobs.BUTT, Method.FIRST_ANGLE)).isEmpty();
    }

    @Test
    void jointsAlikeHaveOneDetailThatSaysSo() {
        JointDetail detail = detail(JointJobs.THROUGH_HOUSING);

        assertThat(detail.letter()).isEqualTo("A");
        assertThat(detail.joints()).hasSize(2);
        assertThat(detail.where()).isEqualTo("Left upright, Shelf; and 1 more alike");
    }

    /** The shelf lies 6 mm in the upright, which is 18 thick, from 80 to 98 up. */
    @Test
    void aThroughHousingShowsItsOutlineFromTheFront() {
        Closeup front = view(JointJobs.THROUGH_HOUSING, JobAxis.DEEP);

        assertThat(upright(front.lines().seen(), 12, -98, -80)).isTrue();
        assertThat(front.lines().hidden()).isEmpty();
        assertThat(front.broken())
                .as("upright above and below, shelf on the right")
                .hasSize(3);
    }

    @Test
    void aStoppedHousingIsHiddenFromTheFrontWhereItStopsShort() {
        Closeup front = view(JointJobs.STOPPED_HOUSING, JobAxis.DEEP);

        assertThat(upright(front.lines().hidden(), 12, -98, -80)).isTrue();
        assertThat(upright(front.lines().seen(), 12, -98, -80)).isFalse();
        assertThat(upright(front.lines().seen(), 18, -98, -80))
                .as("the shelf's shoulder")
                .isTrue();
        // seen from above, the notch's end 10 mm from the front lies under wood
        assertThat(level(view(JointJobs.STOPPED_HOUSING, JobAxis.HIGH).lines().hidden(), -10, 12, 18))
                .isTrue();
    }

    @Test
    void aRebateComesOutAtTheEnd() {
        Closeup front = view(JointJobs.REBATE, JobAxis.DEEP);

        assertThat(upright(front.lines().seen(), 9, -250, -232)).isTrue();
        assertThat(level(front.lines().seen(), -232, 9, 18)).isTrue();
    }

    @Test
    void ofAHalvingTheFrontHalfIsSeenAndTheOtherShoulderHidden() {
        Closeup front = view(JointJobs.T_HALVING, JobAxis.DEEP);
        assertThat(upright(front.lines().hidden(), 44, -160, -120)).isTrue();
        // from the left the rail's end shows, 12 of 24 thick; the front lies on the right
        Closeup side = view(JointJobs.T_HALVING, JobAxis.ACROSS);
        assertThat(upright(side.lines().seen(), -12, -160, -120)).isTrue();
        // where the rail runs on, nothing comes out
        assertThat(upright(view(JointJobs.CROSS_HALVING, JobAxis.ACROSS).lines().hidden(), -12, -160, -120))
                .isTrue();
    }

    @Test
    void aBridlesThirdsShowAtItsEnd() {
        Closeup side = view(JointJobs.BRIDLE, JobAxis.ACROSS);

        assertThat(upright(side.lines().seen(), -8, -40, 0)).isTrue();
        assertThat(upright(side.lines().seen(), -16, -40, 0)).isTrue();
    }

    @Test
    void aTenonShowsOnlyWhereItComesThrough() {
        assertThat(upright(view(JointJobs.THROUGH_TENON, JobAxis.ACROSS).lines().seen(), -8, -155, -125))
                .isTrue();
        Closeup stub = view(JointJobs.STUB_TENON, JobAxis.ACROSS);
        assertThat(upright(stub.lines().seen(), -8, -155, -125)).isFalse();
        assertThat(upright(stub.lines().hidden(), -8, -155, -125)).isTrue();
        assertThat(upright(view(JointJobs.STUB_TENON, JobAxis.DEEP).lines().hidden(), 15, -155, -125))
                .as("the mortise's bottom")
                .isTrue();
    }

    @Test
    void aHaunchIsHiddenBesideItsTenon() {
        Closeup front = view(JointJobs.HAUNCHED_TENON, JobAxis.DEEP);

        assertThat(level(front.lines().hidden(), -14, 0, 34)).isTrue();
        assertThat(upright(front.lines().hidden(), 34, -14, 0)).isTrue();
    }

    @Test
    void dowelsAreCirclesFromTheEndWithCentreLines() {
        Closeup end = view(JointJobs.DOWELLED, JobAxis.ACROSS);
        Closeup front = view(JointJobs.DOWELLED, JobAxis.DEEP);

        assertThat(end.bores().outlines()).hasSize(2).allSatisfy(s -> {
            assertThat(s).isInstanceOf(java.awt.geom.Ellipse2D.class);
            assertThat(s.getBounds2D().getWidth()).isCloseTo(8, within(1e-9));
        });
        assertThat(end.bores().centres()).as("a cross each").hasSize(4);
        assertThat(front.bores().outlines())
                .allSatisfy(s -> assertThat(s.getBounds2D().getWidth())
                        .as("20 into either part")
                        .isCloseTo(40, within(1e-9)));
        assertThat(front.bores().centres()).hasSize(2);
        assertThat(front.bores().centres())
                .allSatisfy(l -> assertThat(l.x2 - l.x1).isCloseTo(46, within(1e-9)));
    }

    static Stream<Drawing> everyJob() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            List<Drawing> shipped = files.filter(f -> f.toString().endsWith(".scenario.json"))
                    .map(JointDetailTest::read)
                    .toList();
            return Stream.concat(shipped.stream(), JointJobs.all().values().stream());
        }
    }

    private static Drawing read(Path file) {
        try {
            return ScenarioFile.read(file).drawing();
        } catch (FileRefused e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @MethodSource("everyJob")
    void everythingHasItsPlaceInNarrowAndWideRoom(Drawing drawing) {
        for (Method method : Method.values()) {
            for (JointDetail detail : JointDetail.of(drawing, method)) {
                for (Rectangle2D room : List.of(
                        new Rectangle2D.Double(5, 5, 170, 230),
                        new Rectangle2D.Double(0, 0, 280, 540),
                        new Rectangle2D.Double(0, 0, 560, 300))) {
                    DetailLayout layout = DetailLayout.fitting(detail, room, s -> s, Contact.font())
                            .orElseThrow();
                    List<Rectangle2D> all = Stream.concat(
                                    layout.views().values().stream(), Stream.of(layout.picture(), layout.caption()))
                            .toList();
                    for (Rectangle2D one : all) {
                        assertThat(room.contains(one)).as(one + " in " + room).isTrue();
                        for (Rectangle2D other : all) {
                            if (one != other) assertThat(one.intersects(other)).isFalse();
                        }
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("everyJob")
    void noSizeIsWrittenTwice(Drawing drawing) {
        for (JointDetail detail : JointDetail.of(drawing, Method.FIRST_ANGLE)) {
            List<JointSize> sizes =
                    detail.views().stream().flatMap(v -> v.sizes().stream()).toList();
            assertThat(sizes.stream().map(s -> s.axis() + " " + s.from() + " " + s.to()))
                    .doesNotHaveDuplicates();
            assertThat(sizes).allSatisfy(s -> {
                int a = s.axis().ordinal();
                boolean overall = s.from() == drawing.box().min(a)
                        && s.to() == drawing.box().max(a);
                assertThat(overall).as("an overall size: " + s).isFalse();
            });
        }
    }

    @ParameterizedTest
    @EnumSource(Method.class)
    void theRingInTheViewsLeadsToTheDetail(Method method) {
        Rectangle2D room = new Rectangle2D.Double(0, 0, 400, 500);
        WorkingDrawing sheet = WorkingDrawing.of(JointJobs.BRIDLE, method).lettered();
        SheetLayout layout = sheet.layout(room, Contact.font());
        // the bridle lies at the lower left of whichever view it is ringed in
        Rectangle2D front = layout.front();
        Rectangle2D side = layout.side();
        boolean fromSide = sheet.details().get(0).looking() == JobAxis.ACROSS;
        Rectangle2D view = fromSide ? side : front;
        Point2D corner = new Point2D.Double(view.getMinX() + 4, view.getMaxY() - 4);

        assertThat(sheet.detailAt(corner, room, Contact.font()))
                .hasValue(sheet.details().get(0));
        assertThat(sheet.detailAt(new Point2D.Double(view.getMinX(), view.getMinY()), room, Contact.font()))
                .isEmpty();
        assertThat(WorkingDrawing.of(JointJobs.BRIDLE, method).details()).isEmpty();
    }

    /** Whether pieces cover an upright line at x between two heights of the page. */
    private static boolean upright(List<Linework.Piece> pieces, double x, double from, double to) {
        return covers(
                pieces.stream()
                        .map(Linework.Piece::line)
                        .filter(l -> Math.abs(l.x1 - x) < 0.05 && Math.abs(l.x2 - x) < 0.05)
                        .map(l -> new double[] {Math.min(l.y1, l.y2), Math.max(l.y1, l.y2)}),
                from,
                to);
    }

    private static boolean level(List<Linework.Piece> pieces, double y, double from, double to) {
        return covers(
                pieces.stream()
                        .map(Linework.Piece::line)
                        .filter(l -> Math.abs(l.y1 - y) < 0.05 && Math.abs(l.y2 - y) < 0.05)
                        .map(JointDetailTest::span),
                from,
                to);
    }

    private static double[] span(Line2D.Double l) {
        return new double[] {Math.min(l.x1, l.x2), Math.max(l.x1, l.x2)};
    }

    private static boolean covers(Stream<double[]> spans, double from, double to) {
        double at = from;
        for (double[] s : spans.sorted((a, b) -> Double.compare(a[0], b[0])).toList()) {
            if (s[0] <= at + 0.1) at = Math.max(at, s[1]);
        }
        return at >= to - 0.1;
    }
}
