package org.marktwice.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Direction;
import org.marktwice.picture.BoardPicture;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Surface;

class TrueOrFalseTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.TRUE_OR_FALSE;
    }

    @Override
    boolean isRight(Question question, Offer offer) {
        return offer.text().equals("True") == holds(question, question.asks());
    }

    private static boolean holds(Question question, String statement) {
        if (statement.contains("hollows")) {
            Surface face = statement.contains("face 1") ? Surface.FACE_1 : Surface.FACE_2;
            double cup = cup(board(question.picture()), after(statement, "Dried to"), face);
            assertThat(Math.abs(cup)).isGreaterThan(0.1);
            return cup > 0;
        }
        if (statement.contains("same end") && statement.contains("Whether")) {
            List<Picture> two = ((Picture.Beside) question.picture()).pictures();
            return bottom(board(two.get(0))) == bottom(board(two.get(1)));
        }
        if (statement.contains("cups more")) {
            List<Picture> two = ((Picture.Beside) question.picture()).pictures();
            double dry = after(statement, "Dried to");
            double one = Math.abs(cup(board(two.get(0)), dry, Surface.FACE_1));
            double other = Math.abs(cup(board(two.get(1)), dry, Surface.FACE_1));
            assertThat(Math.abs(one - other)).isGreaterThan(0.1);
            return one > other;
        }
        if (statement.contains("come flush")) return comeFlush(question.given());
        BoardPicture picture = board(question.picture());
        assertThat(Engine.isClear(picture, false, false)).isFalse();
        return Engine.isClear(picture, false, true);
    }

    private static double cup(BoardPicture picture, double dry, Surface face) {
        return Seasoned.of(picture.board(), dry).cup(face).orElseThrow();
    }

    private static Surface bottom(BoardPicture picture) {
        return looking(
                Direction.BOTTOM,
                mark(picture, Mark.Kind.FACE_SIDE).on(),
                Direction.LEFT,
                mark(picture, Mark.Kind.FACE_EDGE).on(),
                Direction.FRONT);
    }

    /** One piece keeps what is nearer to the face than its line, the other what is farther; the lines meet in the joint. */
    private static boolean comeFlush(String given) {
        double thick = after(given, "each");
        double set = after(given, "set to");
        double other = given.contains("from its back") ? thick - set : set;
        return Math.abs(set - other) < 0.05;
    }
}
