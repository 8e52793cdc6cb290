package org.marktwice.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static org.marktwice.Fixtures.SHELF;
import static org.marktwice.Fixtures.UPRIGHT_LEFT;
import static org.marktwice.Fixtures.UPRIGHT_RIGHT;
import static org.marktwice.Fixtures.shaped;
import static org.marktwice.Fixtures.sheet;
import static org.marktwice.Fixtures.timber;
import static org.marktwice.drawing.Direction.BACK;
import static org.marktwice.drawing.Direction.BOTTOM;
import static org.marktwice.drawing.Direction.FRONT;
import static org.marktwice.drawing.Direction.LEFT;
import static org.marktwice.drawing.Direction.RIGHT;
import static org.marktwice.drawing.Direction.TOP;
import static org.marktwice.drawing.JobAxis.ACROSS;
import static org.marktwice.drawing.JobAxis.DEEP;
import static org.marktwice.drawing.JobAxis.HIGH;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.Fixtures.PartMaker;
import org.marktwice.timber.Box;

/** Which drawings are refused, where and in which words. */
class DrawingRefusedTest {
    private static final Overall SIZE = new Overall(500, 120, 300);
    private static final Joint LEFT_HOUSING = new Joint.ThroughHousing("left-housing", "upright-left", "shelf");
    private static final Joint RIGHT_HOUSING = new Joint.ThroughHousing("right-housing", "upright-right", "shelf");
    private static final List<Part> PARTS = List.of(UPRIGHT_LEFT, UPRIGHT_RIGHT, SHELF);

    /** A part 200 × 60 × 20 that lies across, its width deep, at the origin. */
    private static PartMaker bar() {
        return timber("bar", "Bar").size(200, 60, 20).marks(List.of(TOP), List.of(FRONT));
    }

    private static PartMaker post() {
        return timber("post", "Post").size(200, 40, 40).runs(HIGH, DEEP);
    }

    private static Arguments part(String where, String why, PartMaker maker) {
        return arguments(where, why, new Overall(200, 60, 20), List.of(maker.part()), List.of());
    }

    static Stream<Arguments> parts() {
        return Stream.of(
                arguments("parts", "A drawing needs at least one part", SIZE, List.of(), List.of()),
                arguments(
                        "parts[1].id",
                        "Two parts have the id \"bar\"",
                        SIZE,
                        List.of(bar().part(), bar().at(0, 100, 0).part()),
                        List.of()),
                part(
                        "parts[0].runs",
                        "Length and width of Bar both run deep: they need an axis each",
                        bar().runs(DEEP, DEEP)),
                part("parts[0].at", "Bar needs three finite numbers here", bar().at(0, Double.POSITIVE_INFINITY, 0)),
                part(
                        "parts[0].size",
                        "Bar is 20 mm wide and 60 mm thick: the width is the greater of the two",
                        bar().size(200, 20, 60)),
                part(
                        "parts[0].faceSide",
                        "Bar is timber: say where its face side looks, bottom or top",
                        bar().marks(List.of(), List.of(FRONT))),
                part(
                        "parts[0].faceEdge",
                        "Bar is timber: say where its face edge looks, front or back",
                        bar().marks(List.of(TOP), List.of())),
                part(
                        "parts[0].faceSide",
                        "The face side of Bar looks bottom or top, not front",
                        bar().marks(List.of(TOP, FRONT), List.of(FRONT))),
                part(
                        "parts[0].faceEdge",
                        "The face edge of Bar looks front or back, not left",
                        bar().marks(List.of(TOP), List.of(LEFT))),
                part(
                        "parts[0].faceEdge",
                        "The face edge of Bar is given front twice",
                        bar().marks(List.of(TOP), List.of(FRONT, FRONT))),
                part(
                        "parts[0].faceSide",
                        "The face side of Post looks left or right or front or back, not top",
                        post().marks(List.of(TOP), List.of(FRONT))),
                part(
                        "parts[0].faceEdge",
                        "Face side front and face edge back of Post do not lie square to each other",
                        post().marks(List.of(FRONT), List.of(LEFT, BACK))),
                part(
                        "parts[0].faceSide",
                        "Panel is sheet stuff and takes no face marks",
                        sheet("panel", "Panel").marks(List.of(TOP), List.of())),
                part(
                        "parts[0].faceEdge",
                        "Peg is to be shaped and takes no face marks",
                        shaped("peg", "Peg").marks(List.of(), List.of(FRONT))));
    }

    private static Arguments joint(String where, String why, Joint... joints) {
        return arguments(where, why, SIZE, PARTS, List.of(joints));
    }

    static Stream<Arguments> joints() {
        return Stream.of(
                joint(
                        "joints[1].id",
                        "Two joints have the id \"left-housing\"",
                        LEFT_HOUSING,
                        new Joint.ThroughHousing("left-housing", "upright-right", "shelf")),
                joint("joints[0].in", "There is no part \"door\"", new Joint.Butt("b", "door", "shelf")),
                joint("joints[0].takes", "There is no part \"door\"", new Joint.Butt("b", "shelf", "door")),
                joint("joints[0].takes", "Shelf cannot be joined to itself", new Joint.Butt("b", "shelf", "shelf")),
                joint(
                        "joints[1]",
                        "Shelf and Left upright are joined by \"left-housing\" already",
                        LEFT_HOUSING,
                        new Joint.Butt("again", "shelf", "upright-left")),
                joint(
                        "joints[0]",
                        "Left upright and Right upright do not overlap: there is nothing to join",
                        new Joint.Rebate("r", "upright-left", "upright-right")),
                joint(
                        "joints[0]",
                        "Left upright and Shelf overlap by 6 × 120 × 18 mm: the parts of a butt joint only touch",
                        new Joint.Butt("b", "upright-left", "shelf")),
                joint(
                        "joints[0]",
                        "Left upright and Right upright do not touch",
                        new Joint.Butt("b", "upright-left", "upright-right")),
                joint("parts[2]", "Right upright and Shelf overlap by 6 × 120 × 18 mm without a joint", LEFT_HOUSING),
                joint(
                        "joints[0]",
                        "A rebate lies at an end or along an edge of Left upright, in a corner of its section;"
                                + " this overlap of 6 × 120 × 18 mm does not",
                        new Joint.Rebate("r", "upright-left", "shelf")),
                joint(
                        "joints[0].from",
                        "The length of Left upright runs high: a halving is shared across it",
                        new Joint.Halving("h", "upright-left", "shelf", TOP)),
                joint(
                        "joints[0].from",
                        "The length of Shelf runs across: a halving is shared across it",
                        new Joint.Halving("h", "upright-left", "shelf", LEFT)));
    }

    /** One upright, 18 thick and 120 wide, with one other part that overlaps it in some unusual way. */
    private static Arguments housing(String why, PartMaker other, double across, double deep, double high) {
        return arguments(
                "joints[0]",
                why,
                new Overall(across, deep, high),
                List.of(UPRIGHT_LEFT, other.part()),
                List.of(new Joint.ThroughHousing("h", "upright-left", "bar")));
    }

    static Stream<Arguments> housings() {
        PartMaker bar = timber("bar", "Bar").marks(List.of(TOP), List.of(FRONT));
        return Stream.of(
                housing(
                        "A through housing runs from edge to edge of Left upright, which is 120 mm;"
                                + " this overlap runs over 100 mm",
                        bar.size(200, 100, 18).at(12, 0, 80),
                        212,
                        120,
                        300),
                housing(
                        "A housing has wood of Left upright on both sides;"
                                + " this overlap reaches its end, which makes it a rebate",
                        bar.size(200, 120, 18).at(12, 0, 282),
                        212,
                        120,
                        300),
                housing(
                        "A housing lies in a face of Left upright and is less deep than its thickness of 18 mm;"
                                + " this overlap is 18 × 120 × 18 mm",
                        bar.size(200, 120, 18).at(0, 0, 80),
                        200,
                        120,
                        300));
    }

    static Stream<Arguments> halvings() {
        Part stile = timber("stile", "Stile")
                .size(200, 40, 20)
                .runs(HIGH, ACROSS)
                .marks(List.of(FRONT), List.of(RIGHT))
                .part();
        Part rail = timber("rail", "Rail")
                .size(300, 40, 15)
                .at(0, 2, 0)
                .runs(ACROSS, HIGH)
                .marks(List.of(FRONT), List.of(TOP))
                .part();
        return Stream.of(
                arguments(
                        "joints[0].from",
                        "The half that Stile loses lies 2 mm below its front surface: it must come out there",
                        new Overall(300, 20, 200),
                        List.of(stile, rail),
                        List.of(new Joint.Halving("h", "stile", "rail", FRONT))),
                arguments(
                        "joints[0].from",
                        "The half that Stile loses lies 3 mm below its back surface: it must come out there",
                        new Overall(300, 20, 200),
                        List.of(stile, rail),
                        List.of(new Joint.Halving("h", "stile", "rail", BACK))));
    }

    private static Arguments overall(String where, String why, Overall size) {
        return arguments(where, why, size, PARTS, List.of(LEFT_HOUSING, RIGHT_HOUSING));
    }

    static Stream<Arguments> sizes() {
        return Stream.of(
                overall(
                        "overall.across",
                        "The parts together measure 500 mm across, but the overall size says 510 mm",
                        new Overall(510, 120, 300)),
                overall(
                        "overall.deep",
                        "The parts together measure 120 mm deep, but the overall size says 119.5 mm",
                        new Overall(500, 119.5, 300)),
                overall(
                        "overall.high",
                        "The parts together measure 300 mm high, but the overall size says NaN mm",
                        new Overall(500, 120, Double.NaN)));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource({"parts", "joints", "housings", "halvings", "sizes"})
    void isRefused(String where, String why, Overall overall, List<Part> parts, List<Joint> joints) {
        DrawingRefused e = catchThrowableOfType(DrawingRefused.class, () -> Drawing.of(overall, parts, joints));

        assertThat(e).hasMessage(why);
        assertThat(e.where()).isEqualTo(where);
    }

    @Test
    void partsThatOnlyTouchNeedNoJoint() throws DrawingRefused {
        Part beside = bar().part();
        Part next = timber("next", "Next")
                .size(200, 60, 20)
                .at(200, 0, 0)
                .marks(List.of(TOP), List.of(FRONT))
                .part();

        assertThat(Drawing.of(new Overall(400, 60, 20), List.of(beside, next), List.of())
                        .parts())
                .hasSize(2);
    }

    @Test
    void partsThatMeetInALineDoNotTouchForAButt() {
        Part diagonal = timber("next", "Next")
                .size(200, 60, 20)
                .at(200, 60, 0)
                .marks(List.of(TOP), List.of(FRONT))
                .part();

        assertThat(catchThrowableOfType(
                        DrawingRefused.class,
                        () -> Drawing.of(
                                new Overall(400, 120, 20),
                                List.of(bar().part(), diagonal),
                                List.of(new Joint.Butt("b", "bar", "next")))))
                .hasMessage("Bar and Next do not touch");
    }

    @Test
    void squareStockMayLookWithEitherPairOfSurfaces() throws DrawingRefused {
        for (List<Direction> side : List.of(List.of(FRONT), List.of(LEFT, RIGHT))) {
            List<Direction> edge = side.contains(FRONT) ? List.of(LEFT, RIGHT) : List.of(FRONT, BACK);
            Part post = post().marks(side, edge).part();
            assertThat(Drawing.of(new Overall(40, 40, 200), List.of(post), List.of())
                            .parts())
                    .containsExactly(post);
        }
    }

    @Test
    void aRebateMayRunAlongAnEdge() throws DrawingRefused {
        Part back = sheet("back", "Back")
                .size(488, 300, 6)
                .at(6, 114, 0)
                .runs(ACROSS, HIGH)
                .part();
        Drawing drawing = Drawing.of(
                SIZE,
                List.of(UPRIGHT_LEFT, UPRIGHT_RIGHT, back),
                List.of(
                        new Joint.Rebate("left", "upright-left", "back"),
                        new Joint.Rebate("right", "upright-right", "back")));

        assertThat(drawing.pairs()).containsExactly(new Pair(UPRIGHT_LEFT, UPRIGHT_RIGHT, ACROSS));
    }

    @Test
    void aHousingInSheetStuffMayRunEitherWay() throws DrawingRefused {
        Part side = sheet("side", "Side").size(300, 120, 18).runs(DEEP, HIGH).part();
        Part shelf = sheet("shelf", "Shelf")
                .size(300, 200, 12)
                .at(12, 0, 40)
                .runs(DEEP, ACROSS)
                .part();

        assertThat(Drawing.of(
                                new Overall(212, 300, 120),
                                List.of(side, shelf),
                                List.of(new Joint.ThroughHousing("h", "side", "shelf")))
                        .cuts(side))
                .hasSize(1);
    }

    @Test
    void aHalvingOnEdgeIsSharedOverTheWidth() throws DrawingRefused {
        Part along = timber("along", "Along")
                .size(300, 60, 12)
                .at(0, 94, 0)
                .runs(ACROSS, HIGH)
                .marks(List.of(FRONT), List.of(TOP))
                .part();
        Part through = timber("through", "Through")
                .size(200, 60, 12)
                .at(144, 0, 0)
                .runs(DEEP, HIGH)
                .marks(List.of(LEFT), List.of(BOTTOM))
                .part();
        Drawing drawing = Drawing.of(
                new Overall(300, 200, 60),
                List.of(along, through),
                List.of(new Joint.Halving("cross", "along", "through", TOP)));

        assertThat(drawing.cuts(along).get(0).boxes()).containsExactly(Box.of(144, 94, 30, 156, 106, 60));
        assertThat(drawing.cuts(through).get(0).boxes()).containsExactly(Box.of(144, 94, 0, 156, 106, 30));
    }
}
