package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.Fixtures;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.scenario.Scenario;

/** The job put together, seen from each of its four corners. */
class AssembledJobTest {
    private static final Rectangle2D AREA = new Rectangle2D.Double(0, 0, 400, 400);

    private static List<AssembledJob.Piece> pieces(boolean boards) {
        Scenario scenario = Fixtures.porchShelf();
        Drawing drawing = scenario.drawing();
        List<AssembledJob.Piece> pieces = new ArrayList<>();
        for (Part part : drawing.parts()) {
            Optional<Placing> lies = ModelAnswer.of(scenario).placings().stream()
                    .map(Option::placing)
                    .filter(p -> p.part().equals(part))
                    .findFirst();
            assertThat(lies).isPresent();
            BoardPicture picture = BoardPicture.of(BoardState.fresh(lies.get().board()), null);
            pieces.add(new AssembledJob.Piece(
                    part, drawing.cuts(part), boards ? lies.get() : null, boards ? picture : null));
        }
        return pieces;
    }

    @ParameterizedTest
    @CsvSource({"0, LEFT, FRONT", "1, FRONT, RIGHT", "2, RIGHT, BACK", "3, BACK, LEFT", "4, LEFT, FRONT"})
    void eachCornerShowsTwoSidesAndTheTop(int corner, Direction left, Direction right) {
        AssembledJob job = AssembledJob.of(pieces(true), corner);
        assertThat(List.of(job.seen(0), job.seen(1), job.seen(2))).containsExactly(left, right, Direction.TOP);
        String from = AssembledJob.from(corner);
        assertThat(from).isEqualTo("from the " + left.id() + " and the " + right.id());
    }

    @ParameterizedTest
    @CsvSource({
        "RIGHT, 0, 1",
        "RIGHT, 1, 1",
        "RIGHT, 2, 2",
        "LEFT, 1, 0",
        "LEFT, 3, 3",
        "BACK, 0, 2",
        "FRONT, 1, 1",
        "FRONT, 2, 0",
        "TOP, 3, 3",
        "BOTTOM, 2, 2"
    })
    void oneWalksNoFartherThanIsNeededToSeeADirection(Direction direction, int from, int to) {
        assertThat(AssembledJob.showing(direction, from)).isEqualTo(to);
        if (direction.axis() < 2) {
            AssembledJob job = AssembledJob.of(pieces(true), to);
            assertThat(List.of(job.seen(0), job.seen(1))).contains(direction);
        }
    }

    /** Left and right change sides from one side of the job to the other; what is up stays up, and all lies in the area. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void placesAreWhereTheEyeHasThem(int corner) {
        AssembledJob job = AssembledJob.of(pieces(true), corner);
        Point2D low = job.at(new Vector3d(0, 60, 0), AREA);
        Point2D high = job.at(new Vector3d(0, 60, 300), AREA);
        Point2D right = job.at(new Vector3d(500, 60, 0), AREA);
        assertThat(high.getY()).isLessThan(low.getY());
        assertThat(high.getX()).isCloseTo(low.getX(), within(1e-9));
        assertThat(right.getX() > low.getX()).isEqualTo(corner == 0 || corner == 1);
        for (Part part : Fixtures.porchShelf().drawing().parts()) {
            assertThat(AREA.createUnion(job.outline(part.box(), AREA).getBounds2D())
                            .getWidth())
                    .isCloseTo(400, within(1e-6));
        }
    }

    @Test
    void whatStandsInFrontIsWhatOnePointsAt() {
        AssembledJob front = AssembledJob.of(pieces(true), 0);
        AssembledJob round = AssembledJob.of(pieces(true), 1);
        Vector3d outsideLeft = new Vector3d(0, 60, 200);
        Vector3d outsideRight = new Vector3d(500, 60, 200);
        assertThat(front.partAt(front.at(outsideLeft, AREA), AREA)).contains("upright-left");
        assertThat(round.partAt(round.at(outsideRight, AREA), AREA)).contains("upright-right");
        assertThat(front.partAt(new Point2D.Double(1, 1), AREA)).isEmpty();
    }

    /** Boards are drawn in the colours of wood; a part without one is an outline, through which the paper shows. */
    @Test
    void onlyBoardsAreDrawnAsWood() {
        long wood = brown(painted(pieces(true), 0));
        assertThat(wood).isGreaterThan(20_000);
        assertThat(brown(painted(pieces(false), 0))).isLessThan(50);
        List<AssembledJob.Piece> one = new ArrayList<>(pieces(false));
        one.set(0, pieces(true).get(0));
        assertThat(brown(painted(one, 0))).isBetween(wood / 20, wood * 2 / 3);
    }

    private static BufferedImage painted(List<AssembledJob.Piece> pieces, int corner) {
        BufferedImage image = new BufferedImage(400, 400, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Palette.LIGHT.of(Ink.PANEL));
        g.fillRect(0, 0, 400, 400);
        try (FigureCache cache = new FigureCache()) {
            SurfacePainter surfaces =
                    new SurfacePainter(Figures.exact(cache), new Font(Font.SANS_SERIF, Font.PLAIN, 13));
            new AssembledPainter(surfaces).paint(g, AssembledJob.of(pieces, corner), pieces, AREA, Palette.LIGHT);
        }
        g.dispose();
        return image;
    }

    /** Pixels that are clearly redder than blue. */
    private static long brown(BufferedImage image) {
        long count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                if (((rgb >> 16) & 255) - (rgb & 255) > 40) count++;
            }
        }
        return count;
    }
}
