package org.marktwice.quiz;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Turn;
import org.marktwice.picture.BoardPicture;
import org.marktwice.timber.Surface;

/** What is to be seen with a question or its reason, as data. */
public sealed interface Picture {

    /** A board in isometric projection, its directions those of the bench or of the job. */
    record Lying(BoardPicture board, Turn turn) implements Picture {
        /** With one surface up and another in front; both are long ones, and adjoin. */
        public static Lying showing(BoardPicture board, Surface up, Surface front) {
            return new Lying(
                    board,
                    Turn.facing(up, Direction.TOP, front, Direction.FRONT).orElseThrow());
        }
    }

    /** A board's four long surfaces under each other, and its ends beside them. */
    record Unrolled(BoardPicture board) implements Picture {}

    /**
     * One surface seen square on.
     *
     * @param from where along the surface's first coordinate the picture begins, millimetres
     * @param to where it ends
     */
    record SquareOn(BoardPicture board, Surface surface, double from, double to) implements Picture {
        public static SquareOn whole(BoardPicture board, Surface surface) {
            return new SquareOn(board, surface, 0, board.board().uExtent(surface));
        }
    }

    /** The finished job. @param picked the part picked out by its id; null for none */
    record Job(Drawing drawing, @Nullable String picked) implements Picture {}

    /** Several, side by side; the first is the largest. */
    record Beside(List<Picture> pictures) implements Picture {
        public Beside {
            pictures = List.copyOf(pictures);
        }

        /** Where the answers' own pictures show all there is to see. */
        static final Beside NOTHING = new Beside(List.of());

        public boolean isEmpty() {
            return pictures.isEmpty();
        }

        static Beside of(Picture... pictures) {
            return new Beside(List.of(pictures));
        }
    }
}
