package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.Fixtures.timber;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;

/** What is bored or cut inside the wood is drawn, and drawn as hidden, from wherever one looks. */
class LineworkTest {
    private static Drawing dowelled() {
        return Fixtures.drawing(
                new Overall(340, 24, 200),
                List.of(
                        timber("stile", "Stile")
                                .size(200, 40, 24)
                                .runs(JobAxis.HIGH, JobAxis.ACROSS)
                                .marks(List.of(Direction.FRONT), List.of(Direction.RIGHT))
                                .part(),
                        timber("rail", "Rail")
                                .size(300, 40, 24)
                                .at(40, 0, 80)
                                .runs(JobAxis.ACROSS, JobAxis.HIGH)
                                .marks(List.of(Direction.FRONT), List.of(Direction.TOP))
                                .part()),
                new Joint.Dowelled("j", "stile", "rail", new Joint.Dowels(2, 8, 36)));
    }

    @Test
    void holesInsideTheWoodAreHiddenFromEverySide() {
        for (JobView view : List.of(JobView.FRONT, JobView.PLAN, JobView.FROM_LEFT, JobView.FROM_RIGHT)) {
            Linework lines = Linework.of(PartSolid.of(dowelled()), view);

            assertThat(lines.hidden()).as(view.title()).isNotEmpty();
            // outlines and the shoulder only: none is as short as a hole's sides
            assertThat(lines.seen())
                    .as(view.title())
                    .allMatch(p -> p.line().getP1().distance(p.line().getP2()) > 20);
        }
    }

    @Test
    void aBarsOutlineIsSeenAndNothingOfItHidden() {
        Drawing bar = Fixtures.drawing(
                new Overall(300, 40, 24),
                List.of(timber("bar", "Bar")
                        .size(300, 40, 24)
                        .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
                        .part()));
        Linework front = Linework.of(PartSolid.of(bar), JobView.FRONT);

        // the back's edges fall on the front's, and are drawn twice
        assertThat(front.hidden()).isEmpty();
        assertThat(front.seen().stream()
                        .mapToDouble(p -> p.line().getP1().distance(p.line().getP2()))
                        .sum())
                .isGreaterThanOrEqualTo(2 * (300 + 24));
    }
}
