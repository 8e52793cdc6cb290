package org.marktwice.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.Fixtures.SHELF;
import static org.marktwice.Fixtures.UPRIGHT_LEFT;
import static org.marktwice.drawing.Frames.joined;
import static org.marktwice.drawing.Frames.rail;
import static org.marktwice.drawing.Frames.stile;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.timber.Box;

/** What each kind of joint takes out of its two parts. Stile 40 × 24 × 200 high; the rail's size and place are said in each. */
class JointKindsTest {
    private static List<Box> cuts(Drawing drawing, String part) {
        return drawing.cuts(drawing.part(part).orElseThrow()).stream()
                .flatMap(c -> c.boxes().stream())
                .toList();
    }

    @Test
    void aStoppedHousingNotchesTheShelfWhereItStops() {
        Drawing drawing = joined(
                UPRIGHT_LEFT, SHELF, new Joint.StoppedHousing("j", "upright-left", "shelf", Direction.FRONT, 10));

        assertThat(cuts(drawing, "upright-left")).containsExactly(Box.of(12, 10, 80, 18, 120, 98));
        assertThat(cuts(drawing, "shelf")).containsExactly(Box.of(12, 0, 80, 18, 10, 98));
    }

    @Test
    void aHousingMayStopAtTheBackToo() {
        Drawing drawing =
                joined(UPRIGHT_LEFT, SHELF, new Joint.StoppedHousing("j", "upright-left", "shelf", Direction.BACK, 8));

        assertThat(cuts(drawing, "upright-left")).containsExactly(Box.of(12, 0, 80, 18, 112, 98));
        assertThat(cuts(drawing, "shelf")).containsExactly(Box.of(12, 112, 80, 18, 120, 98));
    }

    @Test
    void aBridleIsSharedInThirdsOfTheThickness() {
        Drawing drawing = joined(stile(), rail(24, 0, 0, 0), new Joint.Bridle("j", "stile", "rail"));

        assertThat(cuts(drawing, "stile")).containsExactly(Box.of(0, 8, 0, 40, 16, 40));
        assertThat(cuts(drawing, "rail")).containsExactly(Box.of(0, 0, 0, 40, 8, 40), Box.of(0, 16, 0, 40, 24, 40));
    }

    @Test
    void aBridleMayStandAlongTheRail() {
        Drawing drawing = joined(stile(), rail(24, -120, 0, 0), new Joint.Bridle("j", "stile", "rail"));

        assertThat(cuts(drawing, "stile")).containsExactly(Box.of(0, 8, 0, 40, 16, 40));
    }

    @Test
    void aThroughTenonStandsInTheMiddleOfItsPart() {
        Drawing drawing = joined(stile(), rail(20, 0, 2, 80), Frames.tenon(8, 40, null));

        assertThat(cuts(drawing, "stile")).containsExactly(Box.of(0, 8, 80, 40, 16, 120));
        assertThat(cuts(drawing, "rail"))
                .containsExactlyInAnyOrder(Box.of(0, 2, 80, 40, 8, 120), Box.of(0, 16, 80, 40, 22, 120));
    }

    @Test
    void aStubTenonLosesWoodAllRound() {
        Drawing drawing = joined(stile(), rail(20, 15, 2, 80), Frames.tenon(8, 30, null));

        assertThat(cuts(drawing, "stile")).containsExactly(Box.of(15, 8, 85, 40, 16, 115));
        assertThat(cuts(drawing, "rail").stream().mapToDouble(Box::volume).sum())
                .isEqualTo(25 * (20 * 40 - 8 * 30));
    }

    /** The inset is counted from the rail's edge on the side of the stile's nearer end. */
    @ParameterizedTest(name = "rail at {0}: mortise from {1} to {2}")
    @CsvSource({"0, 12, 40", "20, 32, 60", "160, 160, 188", "150, 150, 178"})
    void aTenonIsSetInFromTheNearerEnd(double railAt, double from, double to) {
        Drawing drawing = joined(stile(), rail(24, 15, 0, railAt), Frames.tenon(8, 28, 12.0));

        assertThat(cuts(drawing, "stile")).containsExactly(Box.of(15, 8, from, 40, 16, to));
    }

    @Test
    void aHaunchFillsTheInsetAtTheShoulder() {
        Drawing drawing = joined(stile(), rail(24, 10, 0, 160), Frames.haunched(8, 28, 12, 8));

        assertThat(cuts(drawing, "stile"))
                .containsExactly(Box.of(10, 8, 160, 40, 16, 188), Box.of(32, 8, 188, 40, 16, 200));
    }

    @Test
    void aHaunchSpringsFromTheShoulderOnEitherHand() {
        Drawing drawing = joined(stile(), rail(24, -270, 0, 0), Frames.haunched(8, 28, 12, 8));

        assertThat(cuts(drawing, "stile")).containsExactly(Box.of(0, 8, 12, 30, 16, 40), Box.of(0, 8, 0, 8, 16, 12));
    }

    @Test
    void eachPartLosesHalfOfEveryDowel() {
        Drawing drawing = joined(stile(), rail(24, 40, 0, 0), Frames.dowelled(2, 8, 40));

        assertThat(cuts(drawing, "stile")).containsExactly(Box.of(20, 8, 6, 40, 16, 14), Box.of(20, 8, 26, 40, 16, 34));
        assertThat(cuts(drawing, "rail")).containsExactly(Box.of(40, 8, 6, 60, 16, 14), Box.of(40, 8, 26, 60, 16, 34));
    }

    @ParameterizedTest
    @CsvSource({"JOINT, housing", "BUTT, butt joint", "TENON, mortise and tenon", "STOPPED, stopped housing"})
    void isCalledAsTheTradeDoes(String which, String noun) {
        Joint joint = switch (which) {
            case "JOINT" -> new Joint.ThroughHousing("j", "a", "b");
            case "BUTT" -> new Joint.Butt("j", "a", "b");
            case "TENON" -> Frames.tenon(8, 28, null);
            default -> new Joint.StoppedHousing("j", "a", "b", Direction.FRONT, 10);
        };
        assertThat(joint.noun()).isEqualTo(noun);
    }
}
