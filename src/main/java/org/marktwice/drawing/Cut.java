package org.marktwice.drawing;

import java.util.List;
import org.marktwice.timber.Box;

/**
 * What one joint takes out of one part (or, laid on a board, out of that board).
 *
 * @param joint the joint's id
 * @param boxes one or more boxes, in the frame of whoever gives them: the job's from a {@link Drawing}, the board's from
 *     a {@link Placing}
 */
public record Cut(String joint, List<Box> boxes) {
    public Cut {
        boxes = List.copyOf(boxes);
    }
}
