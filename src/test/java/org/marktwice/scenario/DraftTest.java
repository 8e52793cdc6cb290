package org.marktwice.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.PartStuff;
import org.marktwice.scenario.Draft.Gap;
import org.marktwice.scenario.DraftPart.Figure;
import org.marktwice.timber.SpeciesTable;

/** A shelf between two uprights, drawn from nothing; what is missing is said at every step. */
class DraftTest {
    private static DraftPart upright(String id, double left, Direction inside) {
        return sized(DraftPart.blank(id).named(id), 300, 120, 18)
                .with(Figure.FROM_LEFT, left)
                .running(JobAxis.HIGH, JobAxis.DEEP)
                .marked(List.of(inside), List.of(Direction.FRONT));
    }

    private static DraftPart sized(DraftPart part, double length, double width, double thickness) {
        return part.with(Figure.LENGTH, length).with(Figure.WIDTH, width).with(Figure.THICKNESS, thickness);
    }

    private static final DraftPart SHELF = sized(DraftPart.blank("shelf").named("shelf"), 476, 120, 18)
            .with(Figure.FROM_LEFT, 12.0)
            .with(Figure.FROM_BOTTOM, 80.0)
            .marked(List.of(Direction.TOP), List.of(Direction.FRONT));

    private static Draft drawn() {
        return Draft.BLANK
                .titled("Étagère, 2")
                .ofParts(List.of(upright("left", 0, Direction.RIGHT), upright("right", 482, Direction.LEFT), SHELF));
    }

    private static Draft whole() {
        return drawn().plusJoint(new Joint.ThroughHousing("a", "left", "shelf"))
                .plusJoint(new Joint.ThroughHousing("b", "right", "shelf"))
                .grownFrom(new Stock(7, SpeciesTable.all().get(0), 1, 0.5));
    }

    private static List<String> says(Draft draft) {
        return draft.gaps().stream().map(Gap::says).toList();
    }

    @Test
    void nothingLacksATitlePartsAndBoards() {
        assertThat(Draft.BLANK.gaps()).extracting(Gap::where).containsExactly("title", "parts", "boards");
        assertThat(Draft.BLANK.drawn()).isEmpty();
        assertThat(Draft.BLANK.bare()).isEmpty();
    }

    @Test
    void aPartSaysWhichOfItsFiguresAreMissing() {
        Draft draft = Draft.BLANK.plusPart(DraftPart.blank("rail").named("Rail").with(Figure.LENGTH, 400.0));
        assertThat(draft.gaps())
                .contains(
                        new Gap("parts[0].width", "Rail: its width is missing"),
                        new Gap("parts[0].thickness", "Rail: its thickness is missing"))
                .noneMatch(g -> g.where().equals("parts[0].length"));
    }

    @Test
    void everyFaultIsSaidAtOnceAtItsOwnPlaceAndTheRestIsDrawn() {
        Draft draft = drawn().plusPart(DraftPart.blank("late"));
        draft = draft.withPart(1, draft.parts().get(1).marked(List.of(), List.of()));
        draft = draft.ofParts(List.of(
                draft.parts().get(3),
                draft.parts().get(0),
                draft.parts().get(1),
                draft.parts().get(2)));
        assertThat(draft.gaps())
                .extracting(Gap::where)
                .contains("parts[0].name", "parts[0].length", "parts[2].faceSide", "parts[3]");
        assertThat(draft.gaps().stream().filter(g -> g.says().contains("without a joint")))
                .hasSize(2);
        assertThat(draft.drawn().orElseThrow().parts()).hasSize(3);
        assertThat(draft.drawing()).isEmpty();
    }

    @Test
    void aJointThatCannotBeCutIsSaidAndTheOthersAreCut() {
        Draft draft = drawn().plusJoint(new Joint.ThroughHousing("a", "left", "shelf"))
                .plusJoint(new Joint.Butt("b", "right", "shelf"));
        assertThat(draft.gaps())
                .filteredOn(g -> g.where().startsWith("joints"))
                .extracting(Gap::where)
                .containsExactly("joints[1]");
        assertThat(draft.drawn().orElseThrow().joints()).extracting(Joint::id).containsExactly("a");
    }

    @Test
    void withoutGapsItIsAScenario() {
        assertThat(says(whole())).isEmpty();
        Scenario scenario = whole().bare().orElseThrow();
        assertThat(scenario.id()).isEqualTo("etagere-2");
        assertThat(scenario.drawing().overall().across()).isEqualTo(500);
        assertThat(Draft.of(scenario).drawing()).isEqualTo(whole().drawing());
    }

    @Test
    void aPartTakesItsJointsWithIt() {
        assertThat(whole().withoutPart(2).joints()).isEmpty();
        assertThat(whole().withoutPart(0).joints()).extracting(Joint::id).containsExactly("b");
    }

    @Test
    void aTurnedPartLosesTheMarksThatCouldNotLookSoAnyMore() {
        DraftPart turned = SHELF.running(JobAxis.ACROSS, JobAxis.HIGH);
        assertThat(turned.faceSide()).isEmpty();
        assertThat(turned.faceEdge()).isEmpty();
        assertThat(turned.sides()).containsExactly(Direction.FRONT, Direction.BACK);
        assertThat(SHELF.of(PartStuff.SHEET).faceSide()).isEmpty();
    }

    @Test
    void squareStockMayBeMarkedOnAnyLongSurface() {
        DraftPart leg = sized(DraftPart.blank("leg"), 400, 30, 30).running(JobAxis.HIGH, JobAxis.DEEP);
        assertThat(leg.sides())
                .containsExactlyInAnyOrder(Direction.LEFT, Direction.RIGHT, Direction.FRONT, Direction.BACK);
    }

    @Test
    void boardsAreGrownOrGivenAndNeverBoth() {
        Draft given = whole().onBoards(whole().bare().orElseThrow().boards());
        assertThat(given.stock()).isEqualTo(Optional.empty());
        assertThat(says(given)).containsExactly("It has no boards yet");
        assertThat(given.grownFrom(new Stock(1, SpeciesTable.all().get(0), 0, 0))
                        .boards())
                .isEmpty();
    }

    @Test
    void timberThatNoLogGivesIsSaid() {
        DraftPart pole = sized(DraftPart.blank("pole").named("Pole"), 9000, 120, 18)
                .with(Figure.FROM_BOTTOM, 400.0)
                .marked(List.of(Direction.TOP), List.of(Direction.FRONT));
        assertThat(says(whole().plusPart(pole)))
                .singleElement()
                .asString()
                .startsWith("No log gives a board for part \"pole\"");
    }
}
