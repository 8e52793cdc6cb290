package org.marktwice.fit;

import java.util.List;
import org.joml.Vector3dc;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;

/**
 * A part as it comes out when its board is cut to the lines on it, as a solid in the job's frame, where its joints want it:
 * a block less others. Millimetres.
 *
 * @param state its board, with what is marked on it
 * @param gone what its joints take out of it
 */
public record CutPart(Placing placing, BoardState state, Block whole, List<Block> gone) {
    public CutPart {
        gone = List.copyOf(gone);
    }

    public Part part() {
        return placing.part();
    }

    /**
     * Six sides: along each axis the low one, then the high one. Where a block that goes comes out of the part, its side is
     * the part's own.
     *
     * @param joint whose cut it is; null for the part as a whole
     */
    public record Block(@Nullable String joint, List<Side> sides) {
        public Block {
            sides = List.copyOf(sides);
        }

        public Side side(int axis, boolean high) {
            return sides.get(2 * axis + (high ? 1 : 0));
        }
    }

    /**
     * A side that may be out of place and out of line.
     *
     * @param drawn where the drawing has it along the axis
     * @param made where it comes out, in its middle
     * @param lean how much farther along the axis it lies at a place of the drawn job
     */
    public record Side(int axis, double drawn, double made, Lean lean) {
        static Side straight(int axis, double drawn, double made) {
            return new Side(axis, drawn, made, place -> 0);
        }

        /** Where it is drawn when what it is out by is drawn so many times over. */
        public double shown(double times) {
            return drawn + times * (made - drawn);
        }
    }

    /** Out of line, by place. */
    @FunctionalInterface
    public interface Lean {
        double at(Vector3dc place);
    }
}
