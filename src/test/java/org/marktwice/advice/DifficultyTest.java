package org.marktwice.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;

/** How hard a set of boards is for a drawing. */
class DifficultyTest {
    private static final Scenario SHELF = Fixtures.porchShelf();

    private static Board upright(String id, Knot... knots) {
        return Fixtures.board(id).size(308, 120, 18).knots(knots).board();
    }

    private static Board shelf(String id) {
        return Fixtures.board(id).size(480, 120, 18).board();
    }

    private static Difficulty of(Board... boards) {
        return Difficulty.of(Fixtures.withBoards(SHELF, List.of(boards)));
    }

    @Test
    void clearBoardsLeaveNothingToChooseWrongly() {
        Difficulty easy = of(upright("A"), upright("B"), shelf("C"), shelf("D"));

        assertThat(easy.wrongChoices()).isZero();
        assertThat(easy.closeness()).isZero();
        assertThat(easy.crowd()).isEqualTo(0.5, within(1e-12));
        assertThat(easy.value()).isEqualTo(0.1, within(1e-12));
    }

    /**
     * Counted by hand: an upright is 300 long and its housing lies 80 to 98 mm above its foot. A board of 308 mm, planed all
     * round, can be laid in by four turns; with a knot through both faces 89 mm from one end, the two that put this end at
     * the foot have the knot in the housing, and the other two have it far off. The long board serves as an upright too,
     * cut down, in four turns that are all right: 4 wrong ones of 12. The shelf is cut nowhere.
     */
    @Test
    void aKnotThatTwoTurnsInFourClearMakesTwoChoicesWrong() {
        Knot through = Fixtures.knot("k1", 89, 90, 90);
        Difficulty half = of(upright("A", through), upright("B", through), shelf("C"));

        assertThat(half.wrongChoices()).isEqualTo((4.0 / 12 + 4.0 / 12 + 0) / 3, within(1e-12));
    }

    @Test
    void aNarrowChoiceIsCloserThanAWideOne() {
        Difficulty wide = of(upright("A", Fixtures.knot("k1", 89, 90, 90)), upright("B"), shelf("C"));
        Difficulty narrow = of(upright("A", Fixtures.knot("k1", 120, 90, 90)), upright("B"), shelf("C"));

        assertThat(wide.closeness()).isPositive().isLessThan(narrow.closeness());
    }

    @Test
    void moreBoardsToLookThroughAreHarder() {
        List<Board> boards = new ArrayList<>(List.of(upright("A"), upright("B"), shelf("C")));
        double before = 0;
        for (int i = 0; i < 6; i++) {
            boards.add(upright("X" + i));
            double now = Difficulty.of(Fixtures.withBoards(SHELF, boards)).value();
            assertThat(now).isGreaterThan(before);
            before = now;
        }
    }

    @Test
    void aCuppedBoardIsAWrongChoiceAndOneOfAnotherSizeIsNone() {
        Board cupped = Fixtures.board("X")
                .size(308, 120, 18)
                .pith(60, -12)
                .moisture(30, 6)
                .board();
        assertThat(Options.unfit(SHELF, cupped, Fixtures.UPRIGHT_LEFT)).isPresent();
        Board narrow = Fixtures.board("Y").size(308, 90, 18).board();
        Board[] sound = {upright("A"), upright("B"), shelf("C")};

        assertThat(of(sound[0], sound[1], sound[2], cupped).wrongChoices()).isPositive();
        assertThat(of(sound[0], sound[1], sound[2], narrow).wrongChoices()).isZero();
    }

    @Test
    void eachFigureStaysBetweenNoneAndAll() {
        for (long seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            List<Board> boards = new ArrayList<>(List.of(shelf("S")));
            for (int i = 0; i < 4; i++) boards.add(RandomBoards.knotty(random, "B" + i, 308, 4));
            Difficulty d = Difficulty.of(Fixtures.withBoards(SHELF, boards));
            assertThat(List.of(d.wrongChoices(), d.closeness(), d.crowd(), d.value()))
                    .allSatisfy(v -> assertThat(v).isBetween(0.0, 1.0));
        }
    }
}
