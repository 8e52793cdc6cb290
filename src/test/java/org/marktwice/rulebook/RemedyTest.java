package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.rulebook.Upright.Lie.FACE_1_END_2_DOWN;
import static org.marktwice.rulebook.Upright.board;
import static org.marktwice.rulebook.Upright.job;
import static org.marktwice.rulebook.Upright.knot;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Surface;

class RemedyTest {
    private final Rule rule = new KnotClearOfJoint();

    @Test
    void theWordsAreThoseOfTheRemediesGiven() throws IOException {
        String code = Files.readString(Path.of("src/main/java/org/marktwice/rulebook/Remedy.java"));
        Set<String> given = Pattern.compile("\"(remedy\\.[a-z-]+)\"")
                .matcher(code)
                .results()
                .map((MatchResult r) -> r.group(1))
                .collect(Collectors.toSet());

        assertThat(Texts.remedies().keySet()).containsExactlyInAnyOrderElementsOf(given);
    }

    /**
     * Boards planed all round, or so that one turn is left. The knot at 210 bars end-2 down; a longer board clears it
     * end-1 down as well, and is trimmed.
     */
    @ParameterizedTest
    @CsvSource({
        "300, FACE_1, BACK, Turn board A end for end: face 1 to the right",
        "300, FACE_2, FRONT, Turn board A end for end and face over: face 1 to the left",
        "312, FACE_1, BACK, Turn board A end for end: face 1 to the right",
        "312, FACE_2, FRONT, Turn board A end for end and face over: face 1 to the left",
    })
    void theMoveIsNamed(double length, Surface inside, Direction edge1, String told) {
        Surface front = edge1 == Direction.FRONT ? Surface.EDGE_1 : Surface.EDGE_2;
        Situations given = job(Fixtures.board("A")
                        .size(length, 120, 18)
                        .dressed(inside, front)
                        .knots(knot("k1", 212, 9))
                        .board())
                .names("A", "upright-left");
        Upright.turn(given, "A", FACE_1_END_2_DOWN, null);

        String said = given.told(given.about("A", rule));

        assertThat(said).contains(told);
        assertThat(said.contains(" off end ")).isEqualTo(length > 300);
    }

    /**
     * A knot that ends 6 above face-2 is in the housing only where that lies in face-2. Face over 6 mm are between them.
     * Another one bars the other end.
     */
    @Test
    void faceOverIsNamedWhereTheKnotDoesNotGoThrough() {
        Knot half = new Knot("k1", 210, 90, 90, 80, 1, 200, 86);
        Situations given = job(board("A", half, knot("k2", 90, 1)))
                .practice(p -> new Practice(
                        p.faceSide(),
                        p.heartSide(),
                        new Practice.KnotMargin(4, 1),
                        p.cupRatio(),
                        p.size(),
                        p.gap(),
                        p.worth(),
                        p.guidance(),
                        p.aids()))
                .names("A", "upright-left");
        Upright.turn(given, "A", Upright.Lie.FACE_2_END_2_DOWN, null);

        assertThat(given.told(given.about("A", rule)))
                .contains("Turn board A face over with the ends as they are: face 1 to the right, edge 1 to the front.")
                .endsWith("That keeps 6 mm clear.");
    }

    /** Knots at 90 and 210 bar the upright; the tie touches it and has no cut. */
    @Test
    void aBoardMayBeOfUseElsewhere() {
        Part one = Fixtures.UPRIGHT_LEFT;
        Part two = Fixtures.timber("tie", "Tie")
                .size(300, 120, 18)
                .at(18, 0, 282)
                .runs(JobAxis.ACROSS, JobAxis.DEEP)
                .marks(List.of(Direction.BOTTOM), List.of(Direction.FRONT))
                .part();
        Part shelf = Fixtures.SHELF;
        Drawing drawing = Fixtures.drawing(
                new Overall(488, 120, 300),
                List.of(one, two, shelf),
                new Joint.ThroughHousing("left-housing", "upright-left", "shelf"),
                new Joint.Butt("top", "upright-left", "tie"));
        Situations given = Situations.of(drawing, board("A", knot("k1", 90, 5), knot("k2", 210, 5)))
                .names("A", "upright-left");
        Upright.turn(given, "A", FACE_1_END_2_DOWN, null);

        assertThat(given.told(given.about("A", rule)))
                .endsWith("→ No turn of board A will do here. Use it for the Tie, where its knots meet no joint.");
    }
}
