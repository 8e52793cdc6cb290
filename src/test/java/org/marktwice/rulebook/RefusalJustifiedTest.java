package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.marktwice.rulebook.Upright.Lie.FACE_1_END_2_DOWN;
import static org.marktwice.rulebook.Upright.job;
import static org.marktwice.rulebook.Upright.knot;
import static org.marktwice.rulebook.Upright.lay;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.Fixtures;
import org.marktwice.bench.Reason;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;

/** The left upright (300 long) and its shelf (476 long); knots at 90 and 210 bar the upright whichever end is down. */
class RefusalJustifiedTest {
    private static final Knot[] BOTH_ENDS = {knot("k1", 90, 5), knot("k2", 210, 5)};

    private final Rule rule = new RefusalJustified();

    private static Board clear(String id) {
        return Upright.board(id);
    }

    private static Board hopeless(String id) {
        return Upright.board(id, BOTH_ENDS);
    }

    /** Hollow by 2 mm on 120 by the map about a pith 2 mm under face-2, beyond 1 in 75. */
    private static Board cupped(String id) {
        return Fixtures.board(id).pith(60, -2).moisture(28, 6).board();
    }

    private static Board board(String id, String kind) {
        return switch (kind) {
            case "hopeless" -> hopeless(id);
            case "cupped" -> cupped(id);
            case "short" -> Upright.board(id, 250);
            case "thick" -> Fixtures.board(id).size(300, 120, 20).board();
            default -> clear(id);
        };
    }

    /** The only board is set aside; the upright has no other. */
    @ParameterizedTest
    @CsvSource({
        "hopeless, KNOT_IN_EVERY_TURN, SOUND, says.sound",
        "hopeless, CUPPED, CLOSE, says.close",
        "hopeless, NOT_NEEDED, CLOSE, says.close",
        "hopeless, WRONG_SIZE, CLOSE, says.close",
        "cupped, CUPPED, SOUND, says.sound",
        "cupped, KNOT_IN_EVERY_TURN, CLOSE, says.close",
        "short, WRONG_SIZE, SOUND, says.sound",
        "thick, WRONG_SIZE, SOUND, says.sound",
        "short, CUPPED, CLOSE, says.close",
        "clear, KNOT_IN_EVERY_TURN, WRONG, says.wrong-usable",
        "clear, NOT_NEEDED, WRONG, says.wrong-usable",
    })
    void aRefusalAndItsReason(String kind, Reason because, Verdict verdict, String says) {
        Situations given = job(board("A", kind)).setsAside("A", because);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.credit()).isEqualTo(verdict == Verdict.SOUND ? 1 : verdict == Verdict.CLOSE ? 0.5 : 0);
        assertThat(found.says().key()).isEqualTo(says);
        assertThat(found.step()).isEqualTo(1);
        assertThat(given.told(found)).contains("oard A").doesNotContain("{");
    }

    /** Slip 18, first half: with 250 mm between end and knot the board would have been clear end for end. */
    @Test
    void slip18AUsableBoardRefused() {
        Situations given = job(Upright.board("A", knot("k1", 210, 5))).setsAside("A", Reason.KNOT_IN_EVERY_TURN);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(given.told(found))
                .startsWith("Board A is set aside, but would serve as the Left upright with 107 mm clear."
                        + " → Use board A for the Left upright:");
    }

    /** Slip 18, second half: used although no turn of it is clear in any part. */
    @Test
    void slip18AHopelessBoardUsed() {
        Situations given = lay(job(hopeless("A")), "A", FACE_1_END_2_DOWN);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(found.subject()).isEqualTo(Subject.boardAs("A", "upright-left"));
        assertThat(found.step()).isEqualTo(2);
        assertThat(found.evidence().knots()).containsExactly("k1", "k2");
        assertThat(given.told(found)).contains("a knot in every turn").endsWith("and ask for another.");
    }

    @Test
    void aSpareIsRightlySetAsideAsNotNeededOncePartsAreSupplied() {
        Situations given = job(clear("A"), clear("B")).setsAside("B", Reason.NOT_NEEDED);

        Finding before = given.about("B", rule);
        Finding after = lay(given, "A", FACE_1_END_2_DOWN).about("B", rule);

        assertThat(before.verdict()).isEqualTo(Verdict.OPEN);
        assertThat(after.verdict()).isEqualTo(Verdict.SOUND);
    }

    /** Not needed is true of any spare; a knot in every turn must be true of the board. */
    @ParameterizedTest
    @CsvSource({
        "hopeless, NOT_NEEDED, SOUND",
        "hopeless, KNOT_IN_EVERY_TURN, SOUND",
        "clear, KNOT_IN_EVERY_TURN, CLOSE",
        "clear, CUPPED, CLOSE",
        "short, WRONG_SIZE, SOUND",
    })
    void theReasonGivenForASpareMustHold(String kind, Reason because, Verdict verdict) {
        Situations given = lay(job(clear("A"), board("B", kind)), "A", FACE_1_END_2_DOWN);

        assertThat(given.setsAside("B", because).about("B", rule).verdict()).isEqualTo(verdict);
    }

    /** Whoever reads elsewhere on the sheet that this very board would be clear must not read here that it would not. */
    @Test
    void aSpareThatWouldBeClearIsNotCalledHopeless() {
        Situations given =
                lay(job(clear("A"), clear("B")), "A", FACE_1_END_2_DOWN).setsAside("B", Reason.KNOT_IN_EVERY_TURN);

        assertThat(given.told(given.about("B", rule)))
                .isEqualTo(
                        "Board B may be left aside, since every part that it could be has a board; but not for a knot"
                                + " in every turn: as the Left upright it would keep 25 mm clear."
                                + " → Give the other reason: not needed.");
    }

    /** Two usable boards for one part: refusing both leaves it without. */
    @Test
    void theLastUsableBoardIsNotRefused() {
        Situations given =
                job(clear("A"), clear("B")).setsAside("A", Reason.NOT_NEEDED).setsAside("B", Reason.NOT_NEEDED);

        assertThat(given.judgedBy(rule))
                .extracting(f -> f.subject().board(), Finding::verdict)
                .containsExactly(tuple("A", Verdict.WRONG), tuple("B", Verdict.WRONG));
    }

    /** A board that carries the part's name but can't become it leaves the part unsupplied. */
    @ParameterizedTest
    @CsvSource({"clear, SOUND", "short, WRONG", "thick, WRONG", "cupped, WRONG"})
    void onlyABoardThatFitsThePartSuppliesIt(String named, Verdict verdict) {
        Situations given =
                job(board("A", named), clear("B")).names("A", "upright-left").setsAside("B", Reason.NOT_NEEDED);

        assertThat(given.about("B", rule).verdict()).isEqualTo(verdict);
    }

    @Test
    void aSpareLeftOnTheRackAndAUsableBoardUsedAreNoFault() {
        Situations given = lay(job(clear("A"), hopeless("B")), "A", FACE_1_END_2_DOWN);

        assertThat(given.judgedBy(rule)).isEmpty();
    }
}
