package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.Fixtures.timber;

import java.awt.geom.Line2D;
import java.util.List;
import java.util.stream.DoubleStream;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;

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

    /** The porch shelf: uprights 300 high, 120 deep, 18 thick; the shelf 18 thick at 80 up, 476 long from 12. */
    private final List<PartSolid> shelf = PartSolid.of(Samples.shelf());

    @Test
    void fromTheLeftTheShelfIsHiddenBehindTheUpright() {
        Linework lines = Linework.of(shelf, JobView.FROM_LEFT);
        assertThat(heights(lines.hidden())).containsExactly(80, 98);
        assertThat(lines.hidden()).allSatisfy(p -> assertThat(length(p.line())).isCloseTo(120, within(0.05)));
        assertThat(heights(lines.seen())).containsExactly(0, 300);
    }

    @Test
    void fromTheFrontThroughHousingsShowAndNothingIsHidden() {
        Linework lines = Linework.of(shelf, JobView.FRONT);
        assertThat(lines.hidden()).isEmpty();
        assertThat(heights(lines.seen())).containsExactly(0, 80, 98, 300);
    }

    /** A post 40 wide stands before a rail 200 long, whose edges are 5 and 15 up. */
    @Test
    void whatIsHiddenStopsWhereItIsUncovered() {
        PartSolid post = solid(Samples.part("post", "Post", 60, 40, 10, 80, 0, 0, JobAxis.HIGH, JobAxis.ACROSS));
        PartSolid rail = solid(Samples.part("rail", "Rail", 200, 10, 10, 0, 10, 5, JobAxis.ACROSS, JobAxis.HIGH));
        Linework lines = Linework.of(List.of(post, rail), JobView.FRONT);
        assertThat(heights(lines.hidden())).containsExactly(5, 15);
        assertThat(lines.hidden()).allSatisfy(p -> {
            assertThat(p.part()).isEqualTo("rail");
            assertThat(Math.min(p.line().x1, p.line().x2)).isCloseTo(80, within(0.02));
            assertThat(Math.max(p.line().x1, p.line().x2)).isCloseTo(120, within(0.02));
        });
        double seen = lines.seen().stream()
                .filter(p -> p.part().equals("rail") && Math.abs(p.line().y1 - p.line().y2) < 1e-9)
                .mapToDouble(p -> length(p.line()))
                .sum();
        assertThat(seen)
                .as("of 2 × 200, with which the back's two fall together, less what is hidden")
                .isCloseTo(2 * 160, within(0.2));
    }

    /** A wall 10 thick stands at the back of a floor 200 long and 10 high: the inner corner runs along y = 90, z = 10. */
    @Test
    void theLineOfAnInnerCornerIsSeenFromAbove() {
        PartSolid floor = solid(Samples.part("floor", "Floor", 200, 100, 10, 0, 0, 0, JobAxis.ACROSS, JobAxis.DEEP));
        PartSolid wall = solid(Samples.part("wall", "Wall", 200, 50, 10, 0, 90, 10, JobAxis.ACROSS, JobAxis.HIGH));
        Linework lines = Linework.of(List.of(floor, wall), JobView.ISOMETRIC);
        Line2D corner = new Line2D.Double(
                JobView.ISOMETRIC.project(new Vector3d(0, 90, 10)),
                JobView.ISOMETRIC.project(new Vector3d(200, 90, 10)));

        double seen = lines.seen().stream()
                .map(Linework.Piece::line)
                .filter(l -> corner.ptLineDist(l.getP1()) < 0.02 && corner.ptLineDist(l.getP2()) < 0.02)
                .mapToDouble(LineworkTest::length)
                .sum();
        assertThat(seen).isCloseTo(length(corner), within(0.2));
    }

    private static PartSolid solid(Part part) {
        return PartSolid.of(part, List.of());
    }

    @Test
    void everyLineOfAViewLiesInItsExtent() {
        for (JobView view : List.of(JobView.FRONT, JobView.PLAN, JobView.FROM_LEFT, JobView.FROM_RIGHT)) {
            var extent =
                    view.bounds(shelf.stream().flatMap(s -> s.boxes().stream()).toList());
            extent.setRect(
                    extent.getX() - 1e-6, extent.getY() - 1e-6, extent.getWidth() + 2e-6, extent.getHeight() + 2e-6);
            for (Linework.Piece p : Linework.of(shelf, view).seen()) {
                assertThat(extent.contains(p.line().getP1())
                                && extent.contains(p.line().getP2()))
                        .isTrue();
            }
        }
    }

    /** The heights of the lines that lie level, millimetres from the foot. */
    private static int[] heights(List<Linework.Piece> pieces) {
        return pieces.stream()
                .map(Linework.Piece::line)
                .filter(l -> Math.abs(l.y1 - l.y2) < 1e-9)
                .flatMapToDouble(l -> DoubleStream.of(-l.y1))
                .mapToInt(y -> (int) Math.round(y))
                .sorted()
                .distinct()
                .toArray();
    }

    private static double length(Line2D l) {
        return l.getP1().distance(l.getP2());
    }
}
