package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.Fixtures.board;
import static org.marktwice.Fixtures.knot;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.advice.Explanation;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

class ExplanationWordsTest {
    private static final Board SHELF = board("D").size(476, 120, 18).board();

    private static ExplanationWords words(Board... boards) {
        Scenario scenario = Fixtures.withBoards(Fixtures.porchShelf(), List.of(boards));
        return new ExplanationWords(Explanation.of(scenario));
    }

    @Test
    void boardsWithoutKnotsNeedNoMoreThanASentence() {
        assertThat(words(board("A").board(), board("B").board(), SHELF).why())
                .containsExactly(
                        "Every part can be supplied, with all knots clear of the joints.",
                        "No knot comes within 25 mm of a joint.",
                        "The next best set supplies 1 part fewer: board A left on the rack.");
    }

    @Test
    void theTightestPlaceIsNamedAndWhatTheNextBestLoses() {
        // the housing lies 80 to 98 mm up; a knot 16 mm across at 112 mm of 300 keeps about 6 mm one way, far more the
        // other
        Board a = board("A").knots(knot("k1", 114, 90, 90)).board();
        Board b = board("B")
                .knots(knot("k1", 70, 90, 90), knot("k2", 240, 90, 90))
                .board();

        List<String> why = words(a, b, board("C").board(), SHELF).why();

        assertThat(why.get(0)).isEqualTo("Every part can be supplied, with all knots clear of the joints.");
        assertThat(why).last().asString().startsWith("The next best set ");
    }

    @Test
    void aShortageNamesPartsAndBoards() {
        Board knotty = board("B")
                .knots(knot("k1", 90, 90, 90), knot("k2", 210, 90, 90))
                .board();

        assertThat(words(board("A").board(), knotty, SHELF).why())
                .contains("Every part can be supplied, but only 2 of 3 with all knots clear of the joints.")
                .contains(
                        "Left upright, Right upright and Shelf come clear in boards A and D and in no other: 2 boards for 3"
                                + " parts.");
        assertThat(words(board("A").board(), board("B").board()).why())
                .startsWith("2 of 3 parts can be supplied, 2 of them clear.")
                .contains("No board on the rack can be made into the Shelf.");
        assertThat(words(SHELF).why())
                .contains(
                        "Left upright and Right upright can be made of board D and of no other: 1 board for 2 parts.");
        assertThat(words(board("A").sheet().board()).why())
                .containsExactly(
                        "0 of 3 parts can be supplied, 0 of them clear.",
                        "No board on the rack can be made into the Left upright.");
    }

    @Test
    void aTableTellsEveryTurnAndWhyItWillNotDo() {
        Board a = board("A")
                .size(306, 120, 18)
                .dressed(Surface.FACE_1, Surface.FACE_2, Surface.EDGE_1)
                .knots(knot("k1", 90, 90, 90))
                .board();

        List<ExplanationWords.Row> rows = words(a, SHELF).table(a);

        assertThat(rows).hasSize(9);
        assertThat(rows.get(8).result()).isEqualTo("Board A is 306 mm long, Shelf 476 mm.");
        assertThat(rows)
                .filteredOn(ExplanationWords.Row::chosen)
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.clear()).isTrue();
                    assertThat(row.turn()).startsWith("face 1 to the ");
                    assertThat(row.result()).endsWith(" mm, clear · chosen");
                });
        assertThat(rows)
                .filteredOn(r -> r.result().contains("isn't planed"))
                .hasSize(4)
                .noneMatch(ExplanationWords.Row::clear);
        assertThat(rows)
                .anyMatch(r -> r.result()
                        .matches("\\d+(\\.\\d)? mm, too near: knot 1 to the housing for the Shelf, 16 mm wanted"));
    }
}
