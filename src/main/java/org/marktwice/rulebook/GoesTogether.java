package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.marktwice.fit.JointFit;
import org.marktwice.fit.JointFit.Share;
import org.marktwice.scenario.Stage;

/**
 * Every joint's two parts meet where the drawing says, on the right side and hand. One finding a joint.
 */
final class GoesTogether implements Rule {
    private static final double CLOSE = 0.5;

    @Override
    public String id() {
        return "goes-together";
    }

    @Override
    public Stage stage() {
        return Stage.FIT;
    }

    @Override
    public double worth() {
        return 3;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        return situation.dryFit().joints().stream()
                .filter(fit -> !FitFindings.waits(situation, fit))
                .map(fit -> finding(situation, fit))
                .toList();
    }

    private Finding finding(Situation situation, JointFit fit) {
        String joint = fit.joint().id();
        Found found = FitFindings.of(this, situation, fit).at(FitFindings.decidedBy(situation, fit));
        return switch (fit.state()) {
            case NO_BOARD -> found.open("says.open-board", "joint", joint);
            case NOT_SET_OUT -> found.open("says.open", "joint", joint);
            case WRONG_SIDE ->
                found.instead("better.side", "boards", misplaced(fit))
                        .wrong("says.wrong-side", "joint", joint, "boards", misplaced(fit));
            case TOGETHER -> together(situation, fit, found);
        };
    }

    private Finding together(Situation situation, JointFit fit, Found found) {
        double size = situation.practice().size();
        double gap = situation.practice().gap();
        double off = Math.abs(fit.off().orElse(0));
        double clash = fit.clash();
        Share out = FitFindings.fartherOut(fit);
        Object[] values = {"joint", fit.joint().id(), "off", off, "clash", clash, "board", out.board(), "limit", size};
        if (off > size) {
            return found.measured(off, "mm", size)
                    .instead("better.place", values)
                    .wrong("says.wrong-place", values);
        }
        if (clash > gap / 2 && fit.ownClash() <= gap / 2)
            return forced(situation, fit, found, clash > gap ? gap : gap / 2);
        if (clash > gap) {
            return found.measured(clash, "mm", gap)
                    .instead("better.ease", values)
                    .wrong("says.wrong-tight", values);
        }
        if (clash > gap / 2) {
            return found.measured(clash, "mm", gap / 2)
                    .instead("better.ease", values)
                    .close(CLOSE, "says.close", values);
        }
        return found.measured(off, "mm", size).sound("says.sound", values);
    }

    /** The joint has room; its parts clash because other joints hold them where they don't belong. */
    private static Finding forced(Situation situation, JointFit fit, Found found, double limit) {
        Object[] values = {"joint", fit.joint().id(), "clash", fit.clash()};
        found.measured(fit.clash(), "mm", limit);
        farthestOff(situation, fit)
                .ifPresentOrElse(
                        other -> found.instead(
                                "better.elsewhere",
                                "other",
                                other.joint().id(),
                                "board",
                                FitFindings.fartherOut(other).board()),
                        () -> found.instead("better.others"));
        return limit == situation.practice().gap()
                ? found.wrong("says.wrong-forced", values)
                : found.close(CLOSE, "says.close-forced", values);
    }

    /** The other joint that is set out farthest from its place; empty where none is out by more than a size may be. */
    private static Optional<JointFit> farthestOff(Situation situation, JointFit fit) {
        return situation.dryFit().joints().stream()
                .filter(j -> j != fit
                        && Math.abs(j.off().orElse(0)) > situation.practice().size())
                .max(Comparator.comparingDouble(j -> Math.abs(j.off().orElse(0))));
    }

    private static List<String> misplaced(JointFit fit) {
        List<String> boards = new ArrayList<>();
        Stream.of(fit.in(), fit.takes())
                .filter(s -> s != null && s.misplaced() > 0)
                .forEach(s -> boards.add(s.board()));
        return boards;
    }
}
