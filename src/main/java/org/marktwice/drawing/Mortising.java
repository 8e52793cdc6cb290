package org.marktwice.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.timber.Box;

/**
 * A mortise and tenon as it lies in the job's frame, millimetres. The tenon enters along the length of its own part; its
 * width lies along the grain of the mortised part, its thickness across both.
 */
record Mortising(Joint.MortiseTenon joint, Part in, Part takes, Box overlap) {

    /** The axis along which the tenon enters. */
    int entering() {
        return takes.length().ordinal();
    }

    /** The axis of the tenon's width: the grain of the mortised part. */
    int along() {
        return in.length().ordinal();
    }

    /** The axis of the tenon's thickness. */
    int through() {
        return 3 - entering() - along();
    }

    Box tenon() {
        double middle = (takes.box().min(through()) + takes.box().max(through())) / 2;
        double half = joint.tenon().thickness() / 2;
        double low = low();
        return overlap.with(through(), middle - half, middle + half)
                .with(along(), low, low + joint.tenon().width());
    }

    /** The haunch, in the inset between the tenon and its part's edge; empty where none is wanted. */
    Optional<Box> haunch() {
        Joint.Haunch haunch = joint.haunch();
        if (haunch == null) return Optional.empty();
        Box tenon = tenon();
        Box beside = nearLow()
                ? tenon.with(along(), overlap.min(along()), tenon.min(along()))
                : tenon.with(along(), tenon.max(along()), overlap.max(along()));
        // it springs from the shoulder, which lies on the side that the tenon comes from
        boolean shoulderLow = takes.box().min(entering()) < overlap.min(entering()) - Drawing.TOLERANCE;
        double shoulder = shoulderLow ? overlap.min(entering()) : overlap.max(entering());
        double into = shoulderLow ? shoulder + haunch.length() : shoulder - haunch.length();
        return Optional.of(beside.with(entering(), Math.min(shoulder, into), Math.max(shoulder, into)));
    }

    /** What the mortised part loses: the tenon's box, and the haunch's. */
    List<Box> mortise() {
        List<Box> all = new ArrayList<>(List.of(tenon()));
        haunch().ifPresent(all::add);
        return all;
    }

    /** What comes off the tenoned part round the tenon and its haunch. */
    List<Box> shoulders() {
        List<Box> left = overlap.less(tenon(), Drawing.TOLERANCE);
        Optional<Box> haunch = haunch();
        if (haunch.isEmpty()) return left;
        return left.stream()
                .flatMap(b -> b.less(haunch.get(), Drawing.TOLERANCE).stream())
                .toList();
    }

    private double low() {
        double room = overlap.extent(along()) - joint.tenon().width();
        Double inset = joint.tenon().inset();
        if (inset == null) return overlap.min(along()) + room / 2;
        return nearLow()
                ? overlap.min(along()) + inset
                : overlap.max(along()) - inset - joint.tenon().width();
    }

    /** Whether the nearer end of the mortised part is the one with the lower coordinate. */
    private boolean nearLow() {
        double below = overlap.min(along()) - in.box().min(along());
        double above = in.box().max(along()) - overlap.max(along());
        return below <= above;
    }
}
