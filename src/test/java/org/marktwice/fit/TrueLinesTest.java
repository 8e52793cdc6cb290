package org.marktwice.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.EDGE_2;
import static org.marktwice.timber.Surface.END_1;
import static org.marktwice.timber.Surface.END_2;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.Fixtures;
import org.marktwice.bench.Bench;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Overall;
import org.marktwice.timber.Board;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Surface;

/** Where lines land. The board is 300 × 120 × 18 unless it says otherwise; figures are worked out beside them. */
class TrueLinesTest {
    private static final double EXACT = 1e-9;
    /** Slopes are small, and their squares left out. */
    private static final double SMALL = 1e-3;

    private static AtBench with(Board... boards) {
        Drawing drawing = Fixtures.drawing(new Overall(300, 120, 18), List.of(part()));
        return AtBench.of(Fixtures.scenario("test", drawing, List.of(boards)));
    }

    private static org.marktwice.drawing.Part part() {
        return Fixtures.timber("part", "Part")
                .size(300, 120, 18)
                .marks(List.of(org.marktwice.drawing.Direction.TOP), List.of(org.marktwice.drawing.Direction.FRONT))
                .part();
    }

    private static Board shaped(Shape shape) {
        return Fixtures.board("A").shape(shape).board();
    }

    private static Shape spring(double mm) {
        return new Shape(0, mm, 0, 0, 0, Map.of());
    }

    private static Shape taper(double mm) {
        return new Shape(0, 0, 0, mm, 0, Map.of());
    }

    private static Shape thickening(double mm) {
        return new Shape(0, 0, 0, 0, mm, Map.of());
    }

    @ParameterizedTest
    @EnumSource(names = {"END_1", "END_2"})
    void onATrueBoardEveryLineIsWhereItWasMeant(Surface end) {
        TrueLine line =
                with(shaped(Shape.TRUE)).line("A", FACE_1, EDGE_1, end, 80).line("A", 1);

        double x = end == END_1 ? 80 : 220;
        assertThat(line).isEqualTo(new TrueLine(1, FACE_1, 0, x, x, x, EDGE_1));
    }

    @Test
    void squaredFromATaperedBackEdgeItIsOutOfLineAcrossTheBoard() {
        // the back edge comes out 0.6 mm over 300, so over the width of 120 the line is out by 0.24
        TrueLine line =
                with(shaped(taper(0.6))).line("A", FACE_1, EDGE_2, END_1, 80).line("A", 1);

        assertThat(line.high()).isEqualTo(80, within(EXACT));
        assertThat(line.low()).isEqualTo(80.24, within(SMALL));
        assertThat(line.meant()).isEqualTo(80);
    }

    @Test
    void squaredFromTheFaceEdgeTheTaperDoesNotMatter() {
        TrueLine line =
                with(shaped(taper(0.6))).line("A", FACE_1, EDGE_1, END_1, 80).line("A", 1);

        assertThat(line.lean()).isEqualTo(0, within(EXACT));
    }

    /** A hollow edge falls away from its ends at 4·spring/L at the very end, and lies level half-way. */
    @ParameterizedTest(name = "at {0} from end 1: {1} out of line")
    @CsvSource({"150, 0", "75, 0.4", "225, -0.4"})
    void aHollowEdgeTipsTheStock(double at, double lean) {
        // slope at a quarter of the length: 4·0.5/300·(1 − 2·0.25) = 0.00333, over 120: 0.4
        TrueLine line =
                with(shaped(spring(0.5))).line("A", FACE_1, EDGE_1, END_1, at).line("A", 1);

        assertThat(line.lean()).isEqualTo(-lean, within(SMALL));
    }

    @Test
    void squaredRoundFromTheReferencesItCloses() {
        AtBench bench = with(shaped(new Shape(0.4, 0.5, 0.3, 0.6, 0.4, Map.of(EDGE_2, 0.5))))
                .line("A", FACE_1, EDGE_1, END_1, 80)
                .line("A", EDGE_1, FACE_1, 1, 0)
                .line("A", FACE_2, EDGE_1, 2, 0);
        // face-1 and face-2 are both squared from the one edge: they are out alike on a board that tapers
        assertThat(bench.line("A", 3).low()).isEqualTo(bench.line("A", 2).low(), within(EXACT));
        assertThat(bench.line("A", 2).high()).isEqualTo(bench.line("A", 1).low(), within(EXACT));
    }

    /** Derived: 2·s·(W + T); 95 × 20 with a square out by 0.5 in 100 gives 1.15 mm. */
    @Test
    void theSquareWalkedRoundDoesNotClose() {
        Board board = Fixtures.board("A").size(300, 95, 20).board();
        Bench walked = with(board)
                .line("A", FACE_1, EDGE_1, END_1, 80)
                .line("A", EDGE_2, FACE_1, 1, 0)
                .line("A", FACE_2, EDGE_2, 2, 0)
                .line("A", EDGE_1, FACE_2, 3, 0)
                .bench();
        TrueLines lines = TrueLines.of(walked, walked.board("A"), Hand.EXACT, new Tools(0.5 / 100));

        double gap =
                lines.at(1).orElseThrow().at(EDGE_1) - lines.at(4).orElseThrow().at(FACE_1);
        assertThat(gap).isEqualTo(1.15, within(1e-9));
    }

    @Test
    void theSameSquareClosesFromFaceSideAndFaceEdge() {
        Board board = Fixtures.board("A").size(300, 95, 20).board();
        Bench squared = with(board)
                .line("A", FACE_1, EDGE_1, END_1, 80)
                .line("A", EDGE_1, FACE_1, 1, 0)
                .line("A", EDGE_2, FACE_1, 1, 0)
                .line("A", FACE_2, EDGE_1, 2, 0)
                .bench();
        TrueLines lines = TrueLines.of(squared, squared.board("A"), Hand.EXACT, new Tools(0.5 / 100));

        assertThat(lines.at(4).orElseThrow().at(EDGE_2))
                .isEqualTo(lines.at(3).orElseThrow().at(FACE_2), within(1e-9));
    }

    @Test
    void aGaugeLineKeepsItsDistanceFromItsFence() {
        // over its length the board grows 0.6 thicker, so from the back the line falls by as much towards face-1's
        // depth
        AtBench bench =
                with(shaped(thickening(0.6))).gauge("A", EDGE_1, FACE_1, 6).gauge("A", EDGE_1, FACE_2, 12);

        assertThat(bench.line("A", 1)).isEqualTo(new TrueLine(1, EDGE_1, 2, 12, 12, 12, FACE_1));
        assertThat(bench.line("A", 2).low()).isEqualTo(12.3, within(EXACT));
        assertThat(bench.line("A", 2).high()).isEqualTo(11.7, within(EXACT));
    }

    @Test
    void gaugedFromATaperedBackEdgeItRunsAskew() {
        TrueLine line = with(shaped(taper(0.8))).gauge("A", FACE_1, EDGE_2, 40).line("A", 1);

        assertThat(line.axis()).isEqualTo(1);
        assertThat(line.low()).isEqualTo(79.6, within(EXACT));
        assertThat(line.high()).isEqualTo(80.4, within(EXACT));
    }

    @Test
    void aLineGaugedOnAnEndRunsAcrossIt() {
        TrueLine line = with(shaped(Shape.TRUE)).gauge("A", END_2, FACE_1, 6).line("A", 1);

        assertThat(line).isEqualTo(new TrueLine(1, END_2, 2, 12, 12, 12, FACE_1));
        assertThat(line.runs()).isEqualTo(1);
    }

    @Test
    void distancesRunOnFromAnEarlierLineTheWayItCameFromItsEnd() {
        AtBench bench = with(shaped(Shape.TRUE))
                .line("A", FACE_1, EDGE_1, END_2, 30)
                .line("A", FACE_1, EDGE_1, 1, 40)
                .line("A", FACE_1, EDGE_1, 2, 50);

        assertThat(bench.line("A", 2).middle()).isEqualTo(230);
        assertThat(bench.line("A", 3).middle()).isEqualTo(180);
    }

    @Test
    void aMateGivesItsActualThickness() {
        AtBench bench = with(
                        shaped(Shape.TRUE),
                        Fixtures.board("D").size(300, 120, 17.4).board())
                .line("A", FACE_1, EDGE_1, END_1, 80)
                .mate("A", FACE_1, EDGE_1, 1, "D");

        assertThat(bench.line("A", 2).middle()).isEqualTo(97.4, within(EXACT));
    }

    @Test
    void anEndOutOfSquareShowsInWhatIsMeasuredFromIt() {
        // 1 degree off over half of 18 mm: 0.157
        Board board = shaped(new Shape(0, 0, 0, 0, 0, Map.of(END_1, 1.0)));
        AtBench bench = with(board).line("A", FACE_1, EDGE_1, END_1, 80).line("A", FACE_2, EDGE_1, END_1, 80);

        assertThat(bench.line("A", 1).middle() - bench.line("A", 2).middle())
                .isEqualTo(18 * Math.tan(Math.toRadians(1)), within(1e-9));
    }

    @Test
    void aCarefulHandErrsALittleAndAlwaysAlike() {
        AtBench struck =
                with(shaped(Shape.TRUE)).line("A", FACE_1, EDGE_1, END_1, 80).line("A", FACE_1, EDGE_1, END_1, 98);
        Bench bench = struck.bench();
        TrueLines one = TrueLines.of(bench, bench.board("A"), Hand.careful(7), Tools.TRUE);
        TrueLines again = TrueLines.of(bench, bench.board("A"), Hand.careful(7), Tools.TRUE);
        TrueLines other = TrueLines.of(bench, bench.board("A"), Hand.careful(8), Tools.TRUE);

        assertThat(one.all()).isEqualTo(again.all()).isNotEqualTo(other.all());
        assertThat(one.all()).allSatisfy(l -> {
            assertThat(l.middle()).isNotEqualTo(l.meant()).isEqualTo(l.meant(), within(0.75));
            assertThat(l.meant()).isIn(80.0, 98.0);
        });
    }

    /** Chained distances add their reading errors: over n of them the spread grows like √n. */
    @ParameterizedTest
    @CsvSource({"1, 0.2", "4, 0.4", "9, 0.6"})
    void readingErrorsAddUpAlongAChain(int links, double spread) {
        int hands = 2000;
        AtBench chain = with(shaped(Shape.TRUE)).line("A", FACE_1, EDGE_1, END_1, 20);
        for (int i = 1; i < links; i++) chain.line("A", FACE_1, EDGE_1, i, 20);
        Bench bench = chain.bench();
        double squares = 0;
        for (int seed = 0; seed < hands; seed++) {
            TrueLine last = TrueLines.of(bench, bench.board("A"), new Hand(0.2, 0, seed), Tools.TRUE)
                    .at(links)
                    .orElseThrow();
            squares += Math.pow(last.middle() - 20 * links, 2);
        }
        assertThat(Math.sqrt(squares / hands)).isEqualTo(spread, within(0.05 * spread));
    }

    @Test
    void linesThatWereRubbedOutAreGoneButTheirHeirsStay() {
        AtBench bench = with(shaped(Shape.TRUE));
        bench.does(new org.marktwice.bench.Action.Line(
                1,
                "A",
                FACE_1,
                EDGE_1,
                new org.marktwice.bench.Action.Datum.End(END_1),
                50.0,
                null,
                org.marktwice.bench.Marker.PENCIL));
        bench.line("A", FACE_1, EDGE_1, 1, 20);
        bench.does(new org.marktwice.bench.Action.RubOut(3, 1));

        assertThat(bench.lines("A").at(1)).isEmpty();
        assertThat(bench.line("A", 2).middle()).isEqualTo(70);
    }
}
