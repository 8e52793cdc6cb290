package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.Fixtures.board;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.timber.Surface;

class MarksShareArrisTest {
    private final Rule rule = new MarksShareArris();

    private static Situations given() {
        return Situations.porchShelf(board("A").board(), board("B").board()).names("A", "upright-left");
    }

    @ParameterizedTest(name = "side {0} towards {1}, edge {2} towards {3} → {5}")
    @CsvSource({
        "FACE_1, EDGE_1, EDGE_1, FACE_1, SOUND, says.sound",
        "FACE_2, EDGE_2, EDGE_2, FACE_2, SOUND, says.sound",
        "FACE_1, EDGE_2, EDGE_1, FACE_1, WRONG, says.tail",
        "FACE_1, EDGE_1, EDGE_1, FACE_2, WRONG, says.point",
        "FACE_1, EDGE_2, EDGE_1, FACE_2, WRONG, says.both",
        "FACE_1, END_1, EDGE_1, FACE_1, WRONG, says.tail",
        "FACE_1, EDGE_1, FACE_2, EDGE_1, WRONG, says.opposite",
        "FACE_1, EDGE_1, FACE_1, EDGE_1, WRONG, says.same",
    })
    void bothMarksPointAtTheArrisTheyShare(
            Surface side, Surface tail, Surface edge, Surface point, Verdict verdict, String says) {
        Situations given = given().side("A", side, tail).edge("A", edge, point);

        Finding found = given.about("A", rule);

        assertThat(found.verdict()).isEqualTo(verdict);
        assertThat(found.says().key()).isEqualTo(says);
        assertThat(found.step()).isEqualTo(3);
        assertThat(found.evidence().surfaces()).contains(side, edge);
        assertThat(found.evidence().points()).extracting(p -> p.surface()).containsExactly(side, edge);
    }

    @Test
    void itSaysWhichArrisWasMeant() {
        Situations given = given().side("A", FACE_1, EDGE_1).edge("A", EDGE_1, FACE_2);

        assertThat(given.told(given.about("A", rule)))
                .isEqualTo("On board A the V on edge 1 points towards face 2, but the face side is face 1."
                        + " → Rub it out, and let both marks point at the arris of face 1 and edge 1.");
    }

    @Test
    void marksApartAreBroughtTogetherOnAPlanedEdge() {
        Situations given = Situations.porchShelf(
                        board("A").dressed(FACE_1, FACE_2, EDGE_1).board())
                .names("A", "shelf")
                .side("A", FACE_1, EDGE_1)
                .edge("A", FACE_2, EDGE_1);

        assertThat(given.told(given.about("A", rule)))
                .endsWith("With the face side on face 1, the face edge goes on edge 1.");
    }

    @Test
    void oneMarkAloneLeavesItOpen() {
        assertThat(given().side("A", FACE_1, EDGE_1).about("A", rule).verdict()).isEqualTo(Verdict.OPEN);
    }
}
