package org.marktwice.scenario;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Board;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.Stuff;
import org.marktwice.timber.Surface;

/**
 * What the planing machine and the drying room made of a board, by ranges; the wood itself comes from the log.
 *
 * <p>All ranges are defaults of this program's own, chosen so that every board can be marked. Length: 6 to 14
 * whole millimetres to spare. Planed at one moisture between 12 and 14 %, dried since by 1 to 2.5 %, each board to
 * ±0.3 %. Six in ten have all long surfaces planed, the others edge-2 as sawn; parts that will be shaped have face-1 and
 * edge-1 planed; ends are as sawn. Bow to 0.6 and spring to 0.5 mm a metre, twist to 0.6 mm, edges to 0.2° off square
 * where planed and 1° where sawn, ends to 0.8°.
 */
final class Blanks {
    static final int LEAST_TO_SPARE = 6;
    static final int MOST_TO_SPARE = 14;

    private static final double ALL_PLANED = 0.6;

    private final Stock stock;
    private final Chance chance;
    private final double planedAt;
    private final double moisture;

    Blanks(Stock stock, Chance chance) {
        this.stock = stock;
        this.chance = chance;
        planedAt = chance.tenths(12, 14);
        moisture = planedAt - chance.between(1, 2.5);
    }

    /** All that is known of a board before it is sawn out of the log. */
    Board.Facts facts(Part part, String letter) {
        Size of = part.size();
        double length = of.length() + chance.whole(LEAST_TO_SPARE, MOST_TO_SPARE);
        double now = Chance.tenth(moisture + chance.between(-0.3, 0.3));
        Set<Surface> dressed = dressed(part);
        return new Board.Facts(
                letter,
                Stuff.TIMBER,
                stock.species(),
                new Size(length, of.width(), of.thickness()),
                planedAt,
                now,
                dressed,
                null,
                0,
                List.of(),
                shape(length, dressed),
                0);
    }

    private Set<Surface> dressed(Part part) {
        if (!part.takesMarks()) return EnumSet.of(Surface.FACE_1, Surface.EDGE_1);
        Set<Surface> dressed = EnumSet.copyOf(Surface.LONG);
        if (!chance.with(ALL_PLANED)) dressed.remove(Surface.EDGE_2);
        return dressed;
    }

    private Shape shape(double length, Set<Surface> dressed) {
        Map<Surface, Double> outOfSquare = new EnumMap<>(Surface.class);
        for (Surface edge : List.of(Surface.EDGE_1, Surface.EDGE_2)) {
            off(outOfSquare, edge, dressed.contains(edge) ? 0.2 : 1);
        }
        for (Surface end : List.of(Surface.END_1, Surface.END_2)) off(outOfSquare, end, 0.8);
        double metres = length / 1000;
        double taper = dressed.contains(Surface.EDGE_2) ? 0.2 : 0.6;
        return new Shape(
                within(0.6 * metres), within(0.5 * metres), within(0.6), within(taper), within(0.2), outOfSquare);
    }

    private double within(double most) {
        return chance.tenths(-most, most);
    }

    private void off(Map<Surface, Double> outOfSquare, Surface surface, double most) {
        double degrees = within(most);
        if (degrees != 0) outOfSquare.put(surface, degrees);
    }

    /** How near the board comes to its pith, millimetres. */
    static double nearest(Board board) {
        Pith pith = board.pith().orElseThrow();
        double y = Math.max(0, Math.max(-pith.y(), pith.y() - board.size().width()));
        double z = Math.max(0, Math.max(-pith.z(), pith.z() - board.size().thickness()));
        return StrictMath.sqrt(y * y + z * z);
    }
}
