package org.marktwice.view.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.marktwice.timber.Board;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Surface;

/** What becomes of a board once it has settled in another room, in words. */
final class RoomWords {
    static final String ONLY = "Where it comes to rest; not how many days that takes.";

    private RoomWords() {}

    static String of(Board board, ShapeShown.Room room) {
        if (board.isSheet()) return "Sheet stuff: it keeps its size and stays flat.";
        Seasoned now = Seasoned.now(board);
        Seasoned then = Seasoned.of(board, room.moisture());
        String moisture = figure(now.moisture()) + " → " + figure(then.moisture()) + " % moisture";
        if (then.boxedHeart()) return moisture + "\nboxed heart: expect a check, no figures";
        List<String> lines = new ArrayList<>();
        lines.add(moisture);
        lines.add("width " + change(now.width(), then.width()));
        lines.add("thickness " + change(now.thickness(), then.thickness()));
        lines.add(cup(board, then));
        return String.join("\n", lines);
    }

    private static String change(OptionalDouble from, OptionalDouble to) {
        return figure(from.orElseThrow()) + " → " + figure(to.orElseThrow()) + " mm";
    }

    /** The face that is hollow then; the other is as rounded. */
    private static String cup(Board board, Seasoned then) {
        for (Surface face : List.of(Surface.FACE_1, Surface.FACE_2)) {
            double cup = then.cup(face).orElse(0);
            if (cup < 0.05) continue;
            long oneIn = Math.round(board.size().width() / cup);
            return face.spoken() + " hollow " + figure(cup) + " mm, 1 in " + oneIn;
        }
        return "flat across";
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
