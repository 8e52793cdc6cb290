package org.marktwice.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static org.marktwice.Fixtures.UPRIGHT_LEFT;
import static org.marktwice.Fixtures.board;
import static org.marktwice.Fixtures.timber;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.END_1;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.Fixtures;
import org.marktwice.Fixtures.BoardMaker;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Surface;

/**
 * The upright's housing lies from 80 to 98 mm above its lower end. The knots of these tests stand square to the board and
 * are 16 mm cylinders all through it, so that clearances along the grain can be reckoned by hand.
 */
class OptionsTest {
    private static final Scenario SHELF = Fixtures.porchShelf();
    private static final Turn END_2_DOWN = turn(Direction.RIGHT, Direction.FRONT);
    private static final Turn END_1_DOWN = turn(Direction.RIGHT, Direction.BACK);

    private static Turn turn(Direction face1, Direction edge1) {
        return Turn.facing(FACE_1, face1, EDGE_1, edge1).orElseThrow();
    }

    /** With the pith 80 mm below face-2, the cone has become a cylinder of 8 mm radius before it enters the board. */
    private static Knot straight(String id, double x) {
        return new Knot(id, x, 90, 90, 20, 8, 1000, Double.POSITIVE_INFINITY);
    }

    private static Option judged(Board board, Turn turn, double offEnd1) {
        return Options.judge(SHELF, new Placing(SHELF.drawing(), UPRIGHT_LEFT, board, turn, new Trim(END_1, offEnd1)));
    }

    static Stream<Arguments> fits() {
        Part panel = Fixtures.sheet("panel", "Panel").size(300, 120, 18).part();
        Part peg = Fixtures.shaped("peg", "Peg").size(300, 120, 18).part();
        return Stream.of(
                arguments(board("Q"), UPRIGHT_LEFT, ""),
                arguments(board("Q").size(300, 120.5, 17.5), UPRIGHT_LEFT, ""),
                arguments(
                        board("Q").size(300, 120.6, 18), UPRIGHT_LEFT, "Board Q is 120.6 mm wide, Left upright 120 mm"),
                arguments(
                        board("Q").size(300, 119.4, 18), UPRIGHT_LEFT, "Board Q is 119.4 mm wide, Left upright 120 mm"),
                arguments(board("Q").size(300, 120, 20), UPRIGHT_LEFT, "Board Q is 20 mm thick, Left upright 18 mm"),
                arguments(board("Q").size(299, 120, 18), UPRIGHT_LEFT, "Board Q is 299 mm long, Left upright 300 mm"),
                arguments(board("Q"), panel, "Board Q is timber, Panel is made of sheet stuff"),
                arguments(board("Q").sheet(), panel, ""),
                arguments(board("Q").sheet(), UPRIGHT_LEFT, "Board Q is sheet stuff, Left upright is made of timber"),
                arguments(board("Q").sheet(), peg, "Board Q is sheet stuff, Peg is made of timber"),
                arguments(board("Q"), peg, ""),
                // boxed heart: no cup can be computed, so the board is kept
                arguments(board("Q").moisture(30, 8).pith(60, 9), UPRIGHT_LEFT, ""));
    }

    @ParameterizedTest(name = "{index}: {2}")
    @MethodSource("fits")
    void saysWhyABoardCannotServe(BoardMaker board, Part part, String why) {
        assertThat(Options.unfit(SHELF, board.board(), part).orElse("")).isEqualTo(why);
    }

    @Test
    void aBoardCuppedBeyondPoorIsRefusedWithItsFigures() {
        Board cupped = board("Q").moisture(28, 8).pith(60, -10).board();

        assertThat(Options.unfit(SHELF, cupped, UPRIGHT_LEFT).orElseThrow())
                .matches("Board Q is cupped by \\d(\\.\\d+)? mm over 120 mm, more than 1 in 75 \\(1.6 mm\\)");
        Practice p = Practice.DEFAULT;
        Practice lenient = new Practice(
                p.faceSide(),
                p.heartSide(),
                p.knotMargin(),
                new Practice.CupRatio(20, 10),
                p.size(),
                p.gap(),
                Map.of(),
                p.guidance(),
                Set.of());
        assertThat(Options.unfit(Fixtures.withPractice(SHELF, lenient), cupped, UPRIGHT_LEFT))
                .isEmpty();
    }

    /** A straight-edge rocks on the rounded face: the gap under it, across the hollow one, is the cup. */
    @Test
    void cupIsTheGapUnderAStraightEdgeOnTheHollowFace() {
        Board cupped = board("Q").moisture(14, 8).pith(60, -30).board();
        double hollow = Seasoned.now(cupped).cup(FACE_1).orElseThrow();
        double rounded = -Seasoned.now(cupped).cup(FACE_2).orElseThrow();
        double between = 120 / ((hollow + rounded) / 2);
        double less = 120 / (hollow - 0.01);

        assertThat(rounded).isGreaterThan(hollow + 0.02);
        assertThat(Options.unfit(withPoor(between), cupped, UPRIGHT_LEFT)).isEmpty();
        assertThat(Options.unfit(withPoor(less), cupped, UPRIGHT_LEFT)).isPresent();
    }

    private static Scenario withPoor(double ratio) {
        return Fixtures.withPractice(SHELF, Practice.DEFAULT.with(new Practice.CupRatio(2 * ratio, ratio)));
    }

    /** 16.1 − 15.6 is a little more than a half to the machine. */
    @Test
    void halfAMillimetreInDecimalsIsHalfAMillimetre() {
        Part thin = timber("q", "Q").size(300, 120, 15.6).part();

        assertThat(16.1 - 15.6).isNotEqualTo(0.5);
        assertThat(Options.hasSize(board("Q").size(300, 120, 16.1).board(), thin))
                .isTrue();
        assertThat(Options.unfit(SHELF, board("Q").size(300, 120, 16.1).board(), thin))
                .isEmpty();
        assertThat(Options.hasSize(board("Q").size(300, 120, 16.3).board(), thin))
                .isFalse();
    }

    @ParameterizedTest(name = "dressed {0}: {1} turns")
    @CsvSource({
        "FACE_1 FACE_2 EDGE_1 EDGE_2, 4",
        "FACE_1 FACE_2 EDGE_1, 2",
        "FACE_1 EDGE_1 EDGE_2, 2",
        "FACE_1 EDGE_1, 1",
        "FACE_1 FACE_2, 0",
        "EDGE_1 EDGE_2, 0"
    })
    void marksStandOnDressedSurfaces(String dressed, int turns) {
        Surface[] surfaces = Stream.of(dressed.split(" ")).map(Surface::valueOf).toArray(Surface[]::new);
        Board board = board("Q").dressed(surfaces).board();

        assertThat(Options.turns(board, UPRIGHT_LEFT)).hasSize(turns).allSatisfy(t -> {
            assertThat(board.isDressed(t.looking(Direction.RIGHT))).isTrue();
            assertThat(board.isDressed(t.looking(Direction.FRONT))).isTrue();
        });
    }

    @Test
    void aPartWithoutMarksMayLieAnyWay() {
        Part peg = Fixtures.shaped("peg", "Peg").size(300, 120, 18).part();

        assertThat(Options.turns(board("Q").dressed().board(), peg)).hasSize(4);
    }

    @Test
    void squareStockHasEightTurnsAndMarksOnAnyOfItsSurfaces() {
        Part leg = timber("leg", "Leg")
                .size(300, 40, 40)
                .runs(JobAxis.HIGH, JobAxis.DEEP)
                .marks(List.of(Direction.FRONT), List.of(Direction.LEFT, Direction.RIGHT))
                .part();
        BoardMaker stick = board("Q").size(300, 40, 40);

        assertThat(Options.turns(stick.board(), leg)).hasSize(8);
        assertThat(Options.turns(stick.dressed(FACE_1, EDGE_1).board(), leg)).hasSize(4);
        // a flat board in a flat part has four, whatever is dressed
        assertThat(Options.turns(board("F").board(), UPRIGHT_LEFT)).hasSize(4);
    }

    @ParameterizedTest(name = "knot at {0}, housing at {1}: {2} mm")
    @CsvSource({
        // end-2 is at the bottom, so the housing lies from 202 to 220
        "150, 202, 44, 25, true",
        "180, 202, 14, 14, false",
        "176, 202, 18, 18, true",
        "210, 202, 0, 0, false",
        "240, 202, 12, 12, false",
    })
    void judgesTheDistanceAndTheMargin(double x, double housing, double uncapped, double capped, boolean clear) {
        Option option = judged(board("Q").knots(straight("k", x)).board(), END_2_DOWN, 0);

        assertThat(option.placing().cuts().get(0).boxes().get(0).min(0)).isEqualTo(housing, within(1e-9));
        assertThat(option.clear()).isEqualTo(clear);
        assertThat(option.clearance()).isEqualTo(capped, within(0.05));
        Option.Nearest nearest = option.nearest().orElseThrow();
        assertThat(nearest.knot()).isEqualTo("k");
        assertThat(nearest.joint()).isEqualTo("left-housing");
        assertThat(nearest.clearance()).isEqualTo(uncapped, within(0.05));
        assertThat(nearest.margin()).isEqualTo(16);
    }

    @Test
    void aKnotThatKeepsItsOwnMarginDoesNotExcuseAnother() {
        Knot small = new Knot("small", 188, 90, 90, 20, 2, 1000, Double.POSITIVE_INFINITY);
        // the small one is nearer, 12 mm with a margin of 10; the large one keeps 13 mm where it should keep 16
        Option option = judged(board("Q").knots(small, straight("large", 241)).board(), END_2_DOWN, 0);

        assertThat(option.nearest().orElseThrow().knot()).isEqualTo("small");
        assertThat(option.clearance()).isEqualTo(12, within(0.05));
        assertThat(option.clear()).isFalse();
    }

    @Test
    void withoutKnotOrCutAllIsClear() {
        Option noKnot = judged(board("Q").board(), END_2_DOWN, 0);
        Board knotty = board("S").size(476, 120, 18).knots(straight("k", 20)).board();
        Option noCut = Options.best(SHELF, knotty, Fixtures.SHELF).orElseThrow();
        Option missed = judged(board("Q").knots(straight("k", 400)).board(), END_2_DOWN, 0);

        for (Option option : List.of(noKnot, noCut, missed)) {
            assertThat(option.clear()).isTrue();
            assertThat(option.clearance()).isEqualTo(Option.CAP);
            assertThat(option.nearest()).isEmpty();
        }
    }

    @ParameterizedTest(name = "board of {0}, knot at {1}: {2} mm off end-1, {3} mm clear")
    @CsvSource({
        "312, 190, 12, 16", // every millimetre off end-1 moves the housing one away from the knot
        "302.5, 190, 2.5, 6.5", // the last step is what is left
        "312, 232, 0, 4", // and towards it, on the other side
        "312, 150, 0, 25", // far enough anyway: as little as can be comes off end-1
        "312, 185, 12, 21",
        "312, 170, 1, 25", // 24 mm clear with nothing off, the cap with one
        "300, 190, 0, 4",
    })
    void slidesTheBoardAlongWithinWhatItHasToSpare(double length, double x, double off, double clear) {
        Board board = board("Q").size(length, 120, 18).knots(straight("k", x)).board();
        Option best = Options.best(SHELF, board, UPRIGHT_LEFT, END_2_DOWN);

        assertThat(best.placing().off(END_1)).isEqualTo(off, within(1e-9));
        assertThat(best.clearance()).isEqualTo(clear, within(0.05));
        assertThat(best).isEqualTo(Options.judge(SHELF, best.placing()));
    }

    @Test
    void aBoardThatIsTooShortStillSaysHowItWouldLie() {
        Board board = board("Q").size(290, 120, 18).knots(straight("k", 150)).board();

        assertThat(Options.best(SHELF, board, UPRIGHT_LEFT, END_2_DOWN)
                        .placing()
                        .trim())
                .isEqualTo(new Trim(END_1, 0));
        assertThat(Options.best(SHELF, board, UPRIGHT_LEFT)).isEmpty();
    }

    @Test
    void endForEndHelpsWhereSlidingDoesNot() {
        Board board = board("Q").knots(straight("k", 211)).board();

        assertThat(Options.best(SHELF, board, UPRIGHT_LEFT, END_2_DOWN).clearance())
                .isZero();
        Option best = Options.best(SHELF, board, UPRIGHT_LEFT).orElseThrow();
        assertThat(best.clear()).isTrue();
        assertThat(best.placing().turn().of(Surface.END_1)).isEqualTo(Direction.BOTTOM);
        assertThat(Options.best(SHELF, board, UPRIGHT_LEFT, END_1_DOWN).clearance())
                .isEqualTo(best.clearance());
    }

    @Test
    void noTurnIsAllowedWhereNothingIsDressed() {
        assertThat(Options.best(SHELF, board("Q").dressed(FACE_1, FACE_2).board(), UPRIGHT_LEFT))
                .isEmpty();
    }

    @Test
    void theBestIsTheBestOfAllTurnsAndTrims() {
        for (int seed = 0; seed < 60; seed++) {
            Board board = RandomBoards.knotty(new Random(seed), "Q", 300 + (seed % 5) * 1.3, 3);
            List<Option> all = new ArrayList<>();
            for (Turn turn : Options.turns(board, UPRIGHT_LEFT)) {
                double surplus = board.size().length() - 300;
                for (int off = 0; off <= surplus; off++) all.add(judged(board, turn, off));
                all.add(judged(board, turn, surplus));
            }
            Option best = Options.best(SHELF, board, UPRIGHT_LEFT).orElseThrow();

            assertThat(all).noneMatch(o -> o.betterThan(best)).contains(best);
        }
    }
}
