package org.marktwice.drawing;

import java.util.List;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.marktwice.timber.Box;
import org.marktwice.timber.Size;

/**
 * A part of the job: a box in the job's frame (millimetres).
 *
 * @param at the least corner
 * @param length the axis along which its length runs
 * @param width the axis along which its width runs; its thickness takes the third
 * @param faceSide the directions in which its face side may look; empty where the part takes no marks
 * @param faceEdge the same for its face edge
 */
public record Part(
        String id,
        String name,
        PartStuff stuff,
        Size size,
        Vector3dc at,
        JobAxis length,
        JobAxis width,
        List<Direction> faceSide,
        List<Direction> faceEdge) {
    public Part {
        at = new Vector3d(at);
        faceSide = List.copyOf(faceSide);
        faceEdge = List.copyOf(faceEdge);
    }

    public JobAxis thickness() {
        return JobAxis.values()[3 - length.ordinal() - width.ordinal()];
    }

    /** The job axis along which a board axis lies: 0 = length, 1 = width, 2 = thickness. */
    public JobAxis axis(int boardAxis) {
        return switch (boardAxis) {
            case 0 -> length;
            case 1 -> width;
            default -> thickness();
        };
    }

    public boolean takesMarks() {
        return stuff == PartStuff.TIMBER;
    }

    /** The space the part fills in the assembled job, before any joint is cut. */
    public Box box() {
        Vector3d far = new Vector3d(at);
        for (int axis = 0; axis < 3; axis++) {
            int job = axis(axis).ordinal();
            far.setComponent(job, far.get(job) + size.along(axis));
        }
        return new Box(at, far);
    }
}
