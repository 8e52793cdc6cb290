package org.marktwice.picture;

import org.marktwice.drawing.JobAxis;
import org.marktwice.timber.Box;

/**
 * A size of a joint, as it is written beside it.
 *
 * @param axis along which it is measured; {@code from} and {@code to} in the job's frame, millimetres
 * @param looking the axis along which one looks in the view that shows it
 * @param of what is so large: its sides are where the size is taken from
 */
record JointSize(JobAxis axis, double from, double to, JobAxis looking, Box of, String text) {
    double length() {
        return to - from;
    }
}
