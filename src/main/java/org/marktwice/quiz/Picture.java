package org.marktwice.quiz;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Turn;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.FormShown;
import org.marktwice.rulebook.Verdict;
import org.marktwice.timber.Surface;
import org.marktwice.timber.TrueForm;

/** What is to be seen with a question or its reason, as data. */
public sealed interface Picture {

    /**
     * A board in isometric projection, its directions those of the bench or of the job.
     *
     * @param settled what its shape is drawn by; null draws it as its box
     * @param named whether the surfaces that are seen, and both ends, have their names beside them
     */
    record Lying(BoardPicture board, Turn turn, @Nullable Settled settled, boolean named) implements Picture {
        public Lying(BoardPicture board, Turn turn) {
            this(board, turn, null, true);
        }

        /** With one surface up and another in front; both are long ones, and adjoin. */
        public static Lying showing(BoardPicture board, Surface up, Surface front) {
            return new Lying(
                    board,
                    Turn.facing(up, Direction.TOP, front, Direction.FRONT).orElseThrow());
        }

        Lying unnamed() {
            return new Lying(board, turn, settled, false);
        }

        /** In its true shape once it has come to this moisture, so many times over. */
        Lying settled(double moisture, double times) {
            return new Lying(board, turn, new Settled(moisture, times), named);
        }

        @Nullable
        FormShown form() {
            return settled == null
                    ? null
                    : new FormShown(TrueForm.at(board.board(), settled.moisture()), settled.times());
        }

        /** A board's true shape at a moisture, percent. @param times how many times over it is drawn */
        record Settled(double moisture, double times) {}
    }

    /** A board's four long surfaces under each other, and its ends beside them. @param caption under it; null for none */
    record Unrolled(BoardPicture board, @Nullable Caption caption) implements Picture {
        public Unrolled(BoardPicture board) {
            this(board, null);
        }

        /** What a picture shows, with its sign. */
        record Caption(Verdict verdict, String text) {}
    }

    /**
     * One surface seen square on.
     *
     * @param from where along the surface's first coordinate the picture begins, millimetres
     * @param to where it ends
     * @param low where along its second coordinate it begins; to {@code high}
     * @param halfTurned whether it is turned upside down on the page
     */
    record SquareOn(
            BoardPicture board, Surface surface, double from, double to, double low, double high, boolean halfTurned)
            implements Picture {
        public static SquareOn whole(BoardPicture board, Surface surface) {
            return new SquareOn(
                    board,
                    surface,
                    0,
                    board.board().uExtent(surface),
                    0,
                    board.board().vExtent(surface),
                    false);
        }

        /** A part of its length, and of its breadth so much as lies this far to both sides of the middle. */
        static SquareOn part(BoardPicture board, Surface surface, double from, double to, double aside) {
            double middle = board.board().vExtent(surface) / 2;
            double reach = Math.min(aside, middle);
            return new SquareOn(board, surface, from, to, middle - reach, middle + reach, false);
        }

        SquareOn halfTurned(boolean is) {
            return new SquareOn(board, surface, from, to, low, high, is);
        }
    }

    /** The finished job. @param picked the part picked out by its id; null for none */
    record Job(Drawing drawing, @Nullable String picked) implements Picture {}

    /** Several, beside or under one another, whichever shows them larger. @param isStacked always one under another */
    record Beside(List<Picture> pictures, boolean isStacked) implements Picture {
        public Beside {
            pictures = List.copyOf(pictures);
        }

        /** Where the answers' own pictures show all there is to see. */
        static final Beside NOTHING = new Beside(List.of(), false);

        public boolean isEmpty() {
            return pictures.isEmpty();
        }

        static Beside of(Picture... pictures) {
            return new Beside(List.of(pictures), false);
        }

        /** One under another, where it matters that they meet so. */
        static Beside stacked(Picture... pictures) {
            return new Beside(List.of(pictures), true);
        }
    }
}
