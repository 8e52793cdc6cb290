package org.marktwice.drawing;

import java.util.Optional;
import org.joml.Vector3d;
import org.marktwice.timber.Box;

/**
 * Where two boxes that don't overlap share a side.
 *
 * @param flat the common side, a box without thickness
 * @param axis the axis square to it
 */
record Contact(Box flat, int axis) {

    /** Empty where the boxes overlap, lie apart, or meet in no more than a line. */
    static Optional<Contact> of(Box a, Box b) {
        int met = -1;
        for (int axis = 0; axis < 3; axis++) {
            double common = Math.min(a.max(axis), b.max(axis)) - Math.max(a.min(axis), b.min(axis));
            if (common < -Drawing.TOLERANCE) return Optional.empty();
            if (common > Drawing.TOLERANCE) continue;
            if (met >= 0) return Optional.empty();
            met = axis;
        }
        if (met < 0) return Optional.empty();
        Vector3d low = new Vector3d(a.min()).max(b.min());
        Vector3d high = new Vector3d(a.max()).min(b.max());
        double middle = (low.get(met) + high.get(met)) / 2;
        return Optional.of(new Contact(new Box(low.setComponent(met, middle), high.setComponent(met, middle)), met));
    }
}
