package org.marktwice.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.timber.Surface;

class PicturePainterTest {
    private static final Rectangle2D AREA = new Rectangle2D.Double(0, 0, 700, 500);
    private static final Font FONT = new Font(Font.SANS_SERIF, Font.PLAIN, 13);

    /** Who wants little gets it, the others alike; what is over is shared. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"100 50|300|175 125", "100 500|300|100 200", "900 500|300|150 150", "50 400 400|450|50 200 200"})
    void roomIsShared(String wanted, double room, String shares) {
        assertThat(PicturePainter.shares(numbers(wanted), room)).isEqualTo(numbers(shares));
    }

    private static List<Double> numbers(String text) {
        return Arrays.stream(text.split(" ")).map(Double::valueOf).toList();
    }

    /** Whatever can be pointed at is found where it is shown, for every kind of question that is answered so. */
    @ParameterizedTest
    @EnumSource(
            value = Kind.class,
            names = {"MARK_TAIL", "STOCK_BEARS", "BARK_SIDE", "PART_OF_DRAWING"})
    void whatIsShownIsPointedAt(Kind kind) {
        for (int seed = 0; seed < 20; seed++) {
            Question question = Quiz.question(kind, 1 + seed % 3, seed);
            PicturePainter painter = PicturePainter.in(question.picture(), AREA, FONT);
            for (Offer offer : question.answers().offers()) {
                Offer.Place place = java.util.Objects.requireNonNull(offer.place());
                Shape shape = painter.shape(place).orElseThrow();
                Rectangle2D b = shape.getBounds2D();
                assertThat(AREA.contains(b.getCenterX(), b.getCenterY()))
                        .as("%s %s", kind, place)
                        .isTrue();
                assertThat(painter.at(new Point2D.Double(b.getCenterX(), b.getCenterY())))
                        .as("%s, seed %d, %s", kind, seed, place)
                        .contains(place);
            }
        }
    }

    /** The pair of the reason meets along its face edges, bottom ends to the left. */
    @ParameterizedTest
    @CsvSource({"1", "2", "3", "4", "5", "6", "7", "8"})
    void aHandedPairIsOpenedLikeABook(int seed) {
        Question question = Quiz.question(Kind.HANDED_PAIR, 3, seed);
        Picture.Beside beside = (Picture.Beside) question.reason().shows();
        List<Double> edges = new java.util.ArrayList<>();
        List<Double> housings = new java.util.ArrayList<>();
        for (Picture picture : beside.pictures()) {
            Picture.SquareOn square = (Picture.SquareOn) picture;
            PicturePainter painter = PicturePainter.in(square, AREA, FONT);
            Surface edge = MakerLaws.mark(square.board(), org.marktwice.bench.Mark.Kind.FACE_EDGE)
                    .on();
            edges.add(painter.shape(new Offer.Place.OnSurface(edge))
                    .orElseThrow()
                    .getBounds2D()
                    .getCenterY());
            var cut = square.board().cuts().get(0).cut().boxes().get(0);
            double length = square.board().board().size().length();
            housings.add(square.halfTurned() ? length - cut.max(0) : cut.min(0));
        }
        assertThat(beside.isStacked()).isTrue();
        assertThat(edges.get(0)).as("at the lower side of the upper one").isGreaterThan(AREA.getCenterY());
        assertThat(edges.get(1)).as("at the upper side of the lower one").isLessThan(AREA.getCenterY());
        assertThat(housings.get(0)).isCloseTo(housings.get(1), within(0.01));
    }

    @Test
    void figuresStayWithTheirUnitsAndNames() {
        assertThat(Question.unbroken("12.5 mm of face 1, 8 % and knot 2; 3 mmm"))
                .isEqualTo("12.5\u00a0mm of face\u00a01, 8\u00a0% and knot\u00a02; 3 mmm");
    }
}
