package org.marktwice.drawing;

import java.util.List;
import java.util.Optional;

/** The job as drawn: parts, and the joints where these overlap. The cuts in each part follow; no position is written twice. */
public final class Drawing {
    private final Overall overall;
    private final List<Part> parts;
    private final List<Joint> joints;

    private Drawing(Overall overall, List<Part> parts, List<Joint> joints) {
        this.overall = overall;
        this.parts = List.copyOf(parts);
        this.joints = List.copyOf(joints);
    }

    /** @throws DrawingRefused where parts overlap without a joint, a joint has no overlap, or the overall size is not the box around the parts, and so on */
    public static Drawing of(Overall overall, List<Part> parts, List<Joint> joints) throws DrawingRefused {
        return new Drawing(overall, parts, joints);
    }

    public Overall overall() {
        return overall;
    }

    public List<Part> parts() {
        return parts;
    }

    public List<Joint> joints() {
        return joints;
    }

    public Optional<Part> part(String id) {
        return parts.stream().filter(p -> p.id().equals(id)).findFirst();
    }

    public Optional<Joint> joint(String id) {
        return joints.stream().filter(j -> j.id().equals(id)).findFirst();
    }

    /** What the joints take out of this part, in the job's frame; a joint that takes nothing has no cut. */
    public List<Cut> cuts(Part part) {
        throw new UnsupportedOperationException();
    }

    /** The opposite parts. */
    public List<Pair> pairs() {
        throw new UnsupportedOperationException();
    }
}
