package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.Fixtures.board;

import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.timber.Board;

class BoardFitsPartTest {
    private final Rule rule = new BoardFitsPart();

    /** The left upright is 300 × 120 × 18. */
    @ParameterizedTest(name = "{0} × {1} × {2} → {3}")
    @CsvSource({
        "300, 120, 18, SOUND, says.sound, 0, 0.5",
        "340, 120.5, 17.5, SOUND, says.sound, 0.5, 0.5",
        "299.9, 120, 18, WRONG, says.short, 0.1, 0",
        "280, 100, 10, WRONG, says.short, 20, 0",
        "300, 120.6, 18, WRONG, says.wide, 0.6, 0.5",
        "300, 118, 18.6, WRONG, says.narrow, 2, 0.5",
        "300, 120.3, 18.9, WRONG, says.thick, 0.9, 0.5",
        "300, 120, 17, WRONG, says.thin, 1, 0.5",
    })
    void theWorstDifferenceDecides(
            double length, double width, double thickness, Verdict verdict, String says, double by, double limit) {
        Board named = board("A").size(length, width, thickness).board();

        Finding found = Situations.porchShelf(named).names("A", "upright-left").about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
        Finding.Measured measured = Objects.requireNonNull(found.measured());
        assertThat(measured.value()).isEqualTo(by, Offset.offset(1e-9));
        assertThat(measured.limit()).isEqualTo(limit);
    }

    @Test
    void aBoardThatIsStillFreeIsOfferedBeforeOneThatIsTaken() {
        Situations given = Situations.porchShelf(
                        board("A").size(250, 120, 18).board(),
                        board("B").board(),
                        board("C").size(304, 120, 18).board())
                .names("A", "upright-left")
                .names("B", "upright-right");

        assertThat(given.told(given.about("A", rule)))
                .isEqualTo("Board A is 250 mm long, 50 mm too short for the Left upright of 300 mm."
                        + " → Board C, 304 × 120 × 18 mm, has the sizes of the Left upright.");
    }

    @Test
    void otherwiseThePartsThatTheBoardWouldFitAreTold() {
        Situations given = Situations.porchShelf(board("A").board()).names("A", "shelf");

        assertThat(given.told(given.about("A", rule)))
                .endsWith("→ Board A has the sizes of the Left upright or Right upright.");
    }

    @Test
    void whereNothingFitsOneAsksForAnotherBoard() {
        Situations given =
                Situations.porchShelf(board("A").size(200, 50, 9).board()).names("A", "shelf");

        assertThat(given.told(given.about("A", rule)))
                .endsWith("→ No board on the rack has the sizes of the Shelf: ask for one.");
    }

    @Test
    void sheetStuffIsNoTimber() {
        Situations given = Situations.porchShelf(board("A").sheet().board()).names("A", "upright-left");

        assertThat(given.about("A", rule).says().key()).isEqualTo("says.sheet");
    }

    @Test
    void aPartWithoutABoardIsOpen() {
        assertThat(Situations.porchShelf(board("A").board()).judgedBy(rule))
                .hasSize(3)
                .extracting(Finding::verdict)
                .containsOnly(Verdict.OPEN);
    }
}
