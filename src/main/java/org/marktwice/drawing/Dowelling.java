package org.marktwice.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3d;
import org.marktwice.timber.Box;

/**
 * Dowels between two parts that touch, in the job's frame (millimetres). A hole is given as the box around its cylinder, a
 * little more wood than the bit takes: what keeps clear of the box keeps clear of the hole.
 *
 * @param contact the flat box in which the parts touch
 * @param across the axis along which the dowels lie, square to the contact
 */
record Dowelling(Joint.Dowelled joint, Part in, Part takes, Box contact, int across) {

    /** Empty where the parts overlap or don't touch. */
    static Optional<Dowelling> of(Joint.Dowelled joint, Part in, Part takes) {
        return Contact.of(in.box(), takes.box()).map(c -> new Dowelling(joint, in, takes, c.flat(), c.axis()));
    }

    /** The axis along which the row of dowels runs. */
    int row() {
        int b = (across + 1) % 3;
        int c = (across + 2) % 3;
        return contact.extent(b) >= contact.extent(c) ? b : c;
    }

    /** The axis of the contact's shorter side. */
    int narrow() {
        return 3 - across - row();
    }

    /** How far a dowel goes into either part. */
    double depth() {
        return joint.dowels().length() / 2;
    }

    /** The holes in one of the two parts. */
    List<Box> holes(Part part) {
        boolean above = part.box().centre().get(across) > contact.centre().get(across);
        double face = contact.centre().get(across);
        double end = above ? face + depth() : face - depth();
        double radius = joint.dowels().diameter() / 2;
        List<Box> holes = new ArrayList<>();
        for (int i = 0; i < joint.dowels().count(); i++) {
            Vector3d middle =
                    new Vector3d(contact.centre()).setComponent(row(), contact.min(row()) + (i + 0.5) * spacing());
            Box hole = new Box(middle, middle);
            hole = hole.with(row(), middle.get(row()) - radius, middle.get(row()) + radius);
            hole = hole.with(narrow(), middle.get(narrow()) - radius, middle.get(narrow()) + radius);
            holes.add(hole.with(across, Math.min(face, end), Math.max(face, end)));
        }
        return holes;
    }

    double spacing() {
        return contact.extent(row()) / joint.dowels().count();
    }
}
