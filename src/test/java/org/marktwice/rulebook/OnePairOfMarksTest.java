package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.marktwice.Fixtures.board;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.EDGE_2;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Surface;

class OnePairOfMarksTest {
    private final Rule rule = new OnePairOfMarks();

    /** Marks are told as S (face side) or E (face edge) with a surface. */
    @ParameterizedTest(name = "{0} → {1}")
    @CsvSource({
        "S face-1 E edge-1, SOUND, says.sound",
        "E edge-2 S face-2, SOUND, says.sound",
        "S face-1, OPEN, says.no-edge",
        "E edge-1, OPEN, says.no-side",
        "'', OPEN, says.none",
        "S face-1 E edge-1 S face-2, WRONG, says.too-many",
        "S face-1 E edge-1 E edge-2, WRONG, says.too-many",
        "S face-1 S face-2, WRONG, says.too-many",
        "S edge-1 E edge-2, WRONG, says.side-on-edge",
        "S face-1 E face-2, WRONG, says.edge-on-face",
    })
    void aBoardNamedForTimberCarriesOneOfEach(String marks, Verdict verdict, String says) {
        Situations given = Situations.porchShelf(board("A").board(), board("B").board());
        given.names("A", "upright-left");
        mark(given, marks);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
        assertThat(found.credit()).isEqualTo(verdict == Verdict.SOUND ? 1 : 0);
        assertThat(found.subject()).isEqualTo(Subject.boardAs("A", "upright-left"));
        assertThat(given.told(found)).doesNotContain("{").contains("oard A");
    }

    private static void mark(Situations given, String marks) {
        String[] words = marks.split(" ");
        for (int i = 0; i + 1 < words.length; i += 2) {
            Surface on = Surface.of(words[i + 1]).orElseThrow();
            Surface towards = on.isFace() ? EDGE_1 : FACE_1;
            given.does(
                    words[i].equals("S")
                            ? new Action.FaceSide(1, "A", on, towards)
                            : new Action.FaceEdge(1, "A", on, towards));
        }
    }

    @Test
    void aMarkThatWasRubbedOutNoLongerCounts() {
        Situations given = Situations.porchShelf(board("A").board())
                .names("A", "shelf")
                .marks("A", FACE_1, EDGE_1)
                .side("A", FACE_2, EDGE_1);

        Finding before = given.about("A", rule);
        Finding after = given.rubsOut(4).about("A", rule);

        assertThat(before.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(before.step()).isEqualTo(4);
        assertThat(before.evidence().surfaces()).containsExactly(FACE_1, EDGE_1, FACE_2);
        assertThat(given.told(before))
                .isEqualTo("Board A carries 2 face-side marks and 1 face-edge mark; one of each is wanted."
                        + " → Rub out the mark on face 2, and keep one face side and one face edge.");
        assertThat(after.verdict()).isEqualTo(Verdict.SOUND);
        assertThat(after.step()).isEqualTo(3);
    }

    @Test
    void squareStockTakesEitherMarkOnAnyLongSurface() {
        Situations given = Situations.porchShelf(board("A").size(300, 30, 30).board())
                .names("A", "shelf")
                .marks("A", EDGE_2, FACE_1);

        assertThat(given.about("A", rule).verdict()).isEqualTo(Verdict.SOUND);
    }

    @Test
    void aSpareBoardIsNotFaultedForHavingNoMarksAndMissingPartsStayOpen() {
        Situations given = Situations.porchShelf(board("A").board(), board("B").board())
                .names("A", "upright-left")
                .marks("A", FACE_1, EDGE_1);

        List<Finding> findings = given.judgedBy(rule);

        assertThat(findings)
                .extracting(Finding::subject, Finding::verdict)
                .containsExactly(
                        tuple(Subject.boardAs("A", "upright-left"), Verdict.SOUND),
                        tuple(Subject.part("upright-right"), Verdict.OPEN),
                        tuple(Subject.part("shelf"), Verdict.OPEN));
    }

    @Test
    void sheetStuffTakesNoMarkEvenBeforeItIsNamed() {
        Situations given = Situations.porchShelf(board("S").sheet().board()).side("S", FACE_1, EDGE_1);

        Finding found = given.about("S", rule);

        assertThat(found.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(found.says().key()).isEqualTo("says.on-sheet");
        assertThat(found.measured()).isEqualTo(new Finding.Measured(1, "count", 0));
    }

    @Test
    void whatWillBeRoundedTakesNoMarkAndIsNotPraisedForHavingNone() {
        Part dowel = Fixtures.shaped("knob", "Knob")
                .size(60, 30, 30)
                .runs(JobAxis.ACROSS, JobAxis.DEEP)
                .part();
        Situations given = Situations.of(
                        Fixtures.drawing(new Overall(60, 30, 30), List.of(dowel)),
                        board("A").size(60, 30, 30).board())
                .names("A", "knob");

        assertThat(given.judgedBy(rule)).isEmpty();
        Finding marked = given.marks("A", FACE_1, EDGE_1).about("A", rule);

        assertThat(marked.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(given.told(marked))
                .isEqualTo("Board A will be shaped into the Knob, and a face mark would be cut away."
                        + " → Rub out the marks on board A and write the part's name on it.");
    }

    @Test
    void whereNoNamesAreAskedForEveryBoardIsToBeMarked() {
        Situations given = Situations.porchShelf(
                        board("A").board(), board("B").board(), board("C").board())
                .asking(Stage.FACES)
                .marks("B", FACE_1, EDGE_1);

        assertThat(given.judgedBy(rule))
                .extracting(f -> f.subject().board(), Finding::verdict)
                .containsExactly(tuple("A", Verdict.OPEN), tuple("B", Verdict.SOUND), tuple("C", Verdict.OPEN));
    }
}
