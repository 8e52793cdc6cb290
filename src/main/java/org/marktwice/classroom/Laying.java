package org.marktwice.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Board;
import org.marktwice.timber.Figures;
import org.marktwice.timber.Surface;

/**
 * How a board is to be marked and laid to come out as its part: what is said at the bench and stands on its label.
 *
 * @param faceSide empty where the part takes no marks
 * @param faceEdge empty where the part takes no marks
 * @param end1Looks where end 1 looks in the job
 */
public record Laying(Optional<Surface> faceSide, Optional<Surface> faceEdge, Direction end1Looks) {
    /** Less than this is not worth a cut, millimetres. */
    private static final double LEAST = 0.05;

    public static Laying of(Placing placing) {
        Part part = placing.part();
        Board board = placing.board();
        Optional<Surface> side = part.faceSide().stream()
                .map(placing.turn()::looking)
                .filter(s -> board.isBroad(s) && board.isDressed(s))
                .findFirst();
        Optional<Surface> edge = part.faceEdge().stream()
                .map(placing.turn()::looking)
                .filter(s -> board.isNarrow(s) && board.isDressed(s))
                .filter(s -> side.isEmpty() || s.adjoins(side.get()))
                .findFirst();
        return new Laying(side, edge, placing.turn().of(Surface.END_1));
    }

    /** In a sentence without a full stop. */
    public String spoken() {
        return marks() + ", " + lies();
    }

    /** Where the end looks: {@code end 1 up}. */
    public String lies() {
        return "end 1 " + towards(end1Looks);
    }

    /** What is to be cut off a board's ends, in a sentence without a full stop. */
    public static String trimmed(Placing placing) {
        List<String> off = new ArrayList<>();
        for (Surface end : List.of(Surface.END_1, Surface.END_2)) {
            double mm = placing.off(end);
            if (mm >= LEAST) off.add(Figures.mm(Math.rint(mm * 10) / 10) + " mm off " + end.spoken());
        }
        return off.isEmpty() ? "nothing to trim" : String.join(", ", off);
    }

    /** Where the marks go. */
    public String marks() {
        return faceSide.isPresent() && faceEdge.isPresent()
                ? "face side on " + faceSide.get().spoken() + ", face edge on "
                        + faceEdge.get().spoken()
                : "no face marks";
    }

    private static String towards(Direction direction) {
        return switch (direction) {
            case TOP -> "up";
            case BOTTOM -> "down";
            default -> "to the " + direction.id();
        };
    }
}
