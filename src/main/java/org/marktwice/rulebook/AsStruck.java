package org.marktwice.rulebook;

import java.util.List;
import java.util.Optional;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.fit.JointFit;
import org.marktwice.fit.SetOut;
import org.marktwice.fit.TrueLine;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Box;

/** Where a joint comes out of the lines that were struck for it, once all of them are on the board. */
final class AsStruck {
    private static final double SAME = 1e-6;

    private AsStruck() {}

    private static Optional<SetOut> setOut(Situation situation, Part part) {
        if (!situation.asks(Stage.SETTING_OUT)) return Optional.empty();
        return situation.dryFit().setOut(part.id());
    }

    /** Whether every joint of a part that has to be marked has its lines. */
    static boolean isSetOut(Situation situation, Part part) {
        List<Cut> cuts = situation.scenario().drawing().cuts(part);
        return !cuts.isEmpty() && cuts.stream().allMatch(c -> isSetOut(situation, part, c.joint()));
    }

    static boolean isSetOut(Situation situation, Part part, String joint) {
        return setOut(situation, part)
                .filter(out -> !out.marked(joint).isEmpty() && out.isSetOut(joint))
                .isPresent();
    }

    /** Whether a line of the joint, or its shading, is on a surface on which the drawing has no cut. */
    static boolean isMisplaced(Situation situation, Part part, String joint) {
        return setOut(situation, part)
                .filter(out -> out.isShadedElsewhere(joint)
                        || out.marked(joint).stream().anyMatch(m -> !m.onItsSurface()))
                .isPresent();
    }

    /** How a joint comes out that is set out on both its parts. */
    static Optional<JointFit> fit(Situation situation, Joint joint) {
        if (!situation.asks(Stage.SETTING_OUT)) return Optional.empty();
        JointFit fit = situation.dryFit().joint(joint.id());
        boolean told = fit.state() == JointFit.State.TOGETHER || fit.state() == JointFit.State.WRONG_SIDE;
        return told ? Optional.of(fit) : Optional.empty();
    }

    /** The cut moved to its lines; on the other side of the part where these are. Empty while it is not all set out. */
    static Optional<Cut> of(Situation situation, Placing placing, Cut cut) {
        Part part = placing.part();
        if (!isSetOut(situation, part, cut.joint())) return Optional.empty();
        Cut drawn = situation.scenario().drawing().cuts(part).stream()
                .filter(c -> c.joint().equals(cut.joint()))
                .findFirst()
                .orElseThrow();
        List<SetOut.Marked> sides = setOut(situation, part).orElseThrow().marked(cut.joint());
        List<Box> struck = drawn.boxes().stream()
                .map(placing::toBoard)
                .map(box -> moved(box, sides))
                .map(placing::toJob)
                .toList();
        if (!isMisplaced(situation, part, cut.joint())) return Optional.of(new Cut(cut.joint(), struck));
        Optional<Direction> opens = HandedBoard.opens(struck, part);
        return Optional.of(new Cut(
                cut.joint(),
                struck.stream()
                        .map(b -> opens.map(d -> mirrored(b, part, d.axis())).orElse(b))
                        .toList()));
    }

    private static Box moved(Box box, List<SetOut.Marked> sides) {
        Box now = box;
        for (SetOut.Marked marked : sides) {
            int axis = marked.side().axis();
            double to =
                    marked.struck().map(TrueLine::middle).orElse(marked.side().at());
            boolean low = Math.abs(box.min(axis) - marked.side().at()) < SAME;
            boolean high = Math.abs(box.max(axis) - marked.side().at()) < SAME;
            if (low && to < now.max(axis)) now = now.with(axis, to, now.max(axis));
            else if (high && to > now.min(axis)) now = now.with(axis, now.min(axis), to);
        }
        return now;
    }

    private static Box mirrored(Box box, Part part, int axis) {
        double sum = part.box().min(axis) + part.box().max(axis);
        return box.with(axis, sum - box.max(axis), sum - box.min(axis));
    }
}
