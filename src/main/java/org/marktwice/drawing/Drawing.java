package org.marktwice.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Box;

/** The job as drawn: parts, and the joints where these overlap. The cuts in each part follow; no position is written twice. */
public final class Drawing {
    /** Lengths on a drawing that differ by no more than this are the same, in millimetres. */
    public static final double TOLERANCE = 0.01;

    private final Overall overall;
    private final List<Part> parts;
    private final List<Joint> joints;
    private final Map<String, List<Cut>> cuts = new HashMap<>();
    private final List<Pair> pairs;

    private Drawing(Overall overall, List<Part> parts, List<Joint> joints) {
        this.overall = overall;
        this.parts = List.copyOf(parts);
        this.joints = List.copyOf(joints);
        for (Part part : this.parts) cuts.put(part.id(), Cuts.of(this, part));
        this.pairs = Pairs.of(this);
    }

    /** @throws DrawingRefused where parts overlap without a joint, a joint has no overlap, or the overall size is not the box around the parts, and so on */
    public static Drawing of(Overall overall, List<Part> parts, List<Joint> joints) throws DrawingRefused {
        PartChecks.check(parts);
        JointChecks.check(parts, joints);
        OverallCheck.check(overall, parts);
        return new Drawing(overall, parts, joints);
    }

    /** Of parts and joints that are known to be sound by themselves, whatever they are together. */
    static Drawing unchecked(List<Part> parts, List<Joint> joints) {
        return new Drawing(OverallCheck.overall(parts), parts, joints);
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
        for (Part p : parts) {
            if (p.id().equals(id)) return Optional.of(p);
        }
        return Optional.empty();
    }

    public Optional<Joint> joint(String id) {
        for (Joint j : joints) {
            if (j.id().equals(id)) return Optional.of(j);
        }
        return Optional.empty();
    }

    /** The joints that this part has a share in, in the drawing's order. */
    public List<Joint> joints(Part part) {
        return joints.stream()
                .filter(j -> j.in().equals(part.id()) || j.takes().equals(part.id()))
                .toList();
    }

    /** Where the joint's two parts overlap, in the job's frame; empty for a butt, whose parts only touch. */
    public Optional<Box> overlap(Joint joint) {
        Box in = part(joint.in()).orElseThrow().box();
        return in.overlap(part(joint.takes()).orElseThrow().box(), TOLERANCE);
    }

    /** The space that all parts together take up, in the job's frame. */
    public Box box() {
        return OverallCheck.around(parts);
    }

    /** What the joints take out of this part, in the job's frame; a joint that takes nothing has no cut. */
    public List<Cut> cuts(Part part) {
        return Objects.requireNonNull(cuts.get(part.id()), part.id());
    }

    /** The opposite parts. */
    public List<Pair> pairs() {
        return pairs;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        // keys of tables hold drawings, nearly always the very same one
        return this == other
                || other instanceof Drawing d
                        && overall.equals(d.overall)
                        && parts.equals(d.parts)
                        && joints.equals(d.joints);
    }

    @Override
    public int hashCode() {
        return Objects.hash(overall, parts.size(), joints.size());
    }

    @Override
    public String toString() {
        return "drawing of " + parts.size() + " parts and " + joints.size() + " joints";
    }
}
