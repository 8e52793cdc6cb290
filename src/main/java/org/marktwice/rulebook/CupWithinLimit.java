package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.rulebook.Finding.Phrase;
import org.marktwice.scenario.Practice.CupRatio;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Surface;

/**
 * A board that is used is flat enough: cup over its whole width up to one ratio is sound, up to the other close, and
 * beyond it the board should be set aside; and at each joint, over the joint's own width, no more than the gap that the
 * workshop allows, since an unbent mate would show that much. A joint alone makes it close, never wrong: no turn of the
 * board makes it flatter, and it can be eased there. (That limit, and the credit as the limit's share of the cup, are
 * design choices.)
 *
 * <p>A boxed heart has no figure: close, for it will check. Sheet stuff stays flat: nothing to judge.
 */
final class CupWithinLimit implements Rule {
    private static final double BOXED_HEART_CREDIT = 0.5;

    /** Thinner than this, millimetres, two parts only touch. */
    private static final double TOUCH = 1e-6;

    /** Less than this can't be read off a straight-edge, millimetres. */
    private static final double READING = 0.05;

    @Override
    public String id() {
        return "cup-within-limit";
    }

    @Override
    public Stage stage() {
        return Stage.TURNS;
    }

    @Override
    public double worth() {
        return 1;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        List<Finding> findings = new ArrayList<>();
        for (Place place : Place.all(situation)) {
            place.lying().stream()
                    .filter(l -> !l.placing().board().isSheet())
                    .map(l -> situation.asItLies(this, l, () -> List.of(finding(situation, l))))
                    .forEach(findings::addAll);
            if (place.mightBe().stream().anyMatch(b -> !b.board().isSheet())) {
                findings.add(place.open(this, "says.open"));
            }
        }
        return findings;
    }

    private Finding finding(Situation situation, Place.Lying lying) {
        Board board = lying.placing().board();
        Found found = Found.by(this, lying.subject()).at(lying.step());
        Optional<Cup> whole = hollow(board, 0, board.size().width());
        if (whole.isEmpty()) return found.close(BOXED_HEART_CREDIT, "says.boxed-heart", "board", lying.board());
        CupRatio ratio = situation.practice().cupRatio();
        double width = board.size().width();
        double clear = ratio.clearLimit(width);
        double cup = whole.get().mm();
        double oneIn = width / Math.max(cup, TOUCH);
        Object[] values = {
            "board", lying.board(),
            "cup", cup,
            "oneIn", oneIn,
            "clear", ratio.clear(),
            "poor", ratio.poor(),
            "face", whole.get().face()
        };
        found.showing(whole.get().face()).measured(cup, "mm", clear);
        Optional<Phrase> flatter = flatter(situation, lying.placing(), cup);
        flatter.ifPresent(better -> found.instead(() -> better));
        if (cup > ratio.poorLimit(width)) {
            if (flatter.isEmpty()) found.instead("better.set-aside", "board", lying.board());
            return found.wrong("says.wrong", values);
        }
        if (cup > clear) return found.close(clear / cup, "says.close", values);
        return atJoints(situation, lying, found)
                .orElseGet(() -> found.sound(cup < READING ? "says.sound-flat" : "says.sound", values));
    }

    /** Another board that would do here and is flatter. */
    private static Optional<Phrase> flatter(Situation situation, Placing lies, double cup) {
        return Remedy.otherBoard(situation, lies)
                .filter(o -> hollow(
                                o.placing().board(),
                                0,
                                o.placing().board().size().width())
                        .filter(c -> c.mm() < cup)
                        .isPresent())
                .map(o -> Remedy.replace(lies, o));
    }

    /** Empty where no joint finds the board too hollow over its own width. */
    private static Optional<Finding> atJoints(Situation situation, Place.Lying lying, Found found) {
        double gap = situation.practice().gap();
        return worstJoint(situation.scenario().drawing(), lying.placing())
                .filter(at -> at.cup().mm() > gap)
                .map(at -> {
                    Object[] values = {
                        "board", lying.board(),
                        "joint", at.joint(),
                        "cup", at.cup().mm(),
                        "width", at.width(),
                        "gap", gap
                    };
                    return found.showing(at.cup().face())
                            .measured(at.cup().mm(), "mm", gap)
                            .instead("better.ease", values)
                            .close(gap / at.cup().mm(), "says.close-joint", values);
                });
    }

    /** The deeper hollow of the two faces. */
    private record Cup(Surface face, double mm) {}

    private record AtJoint(String joint, double width, Cup cup) {}

    /** Empty with a boxed heart. */
    private static Optional<Cup> hollow(Board board, double from, double to) {
        Seasoned now = Seasoned.now(board);
        Cup deepest = null;
        for (Surface face : List.of(Surface.FACE_1, Surface.FACE_2)) {
            OptionalDouble cup = now.cup(face, from, to);
            if (cup.isEmpty()) return Optional.empty();
            if (deepest == null || cup.getAsDouble() > deepest.mm()) deepest = new Cup(face, cup.getAsDouble());
        }
        return Optional.ofNullable(deepest);
    }

    /** The joint over whose own width the board is most hollow. */
    private static Optional<AtJoint> worstJoint(Drawing drawing, Placing lies) {
        AtJoint worst = null;
        for (Joint joint : drawing.joints()) {
            Optional<AtJoint> at = place(drawing, joint, lies.part()).flatMap(box -> at(joint, lies, box));
            if (at.isPresent()
                    && (worst == null || at.get().cup().mm() > worst.cup().mm())) worst = at.get();
        }
        return Optional.ofNullable(worst);
    }

    private static Optional<AtJoint> at(Joint joint, Placing lies, Box job) {
        Box inBoard = lies.toBoard(job);
        double from = Math.max(0, inBoard.min(1));
        double to = Math.min(lies.board().size().width(), inBoard.max(1));
        if (to - from <= TOUCH) return Optional.empty();
        return hollow(lies.board(), from, to).map(cup -> new AtJoint(joint.id(), to - from, cup));
    }

    /** Where the part meets its mate, in the job's frame; empty where it is no part of the joint, or they only touch. */
    private static Optional<Box> place(Drawing drawing, Joint joint, Part part) {
        boolean in = joint.in().equals(part.id());
        if (!in && !joint.takes().equals(part.id())) return Optional.empty();
        return drawing.part(in ? joint.takes() : joint.in())
                .flatMap(mate -> part.box().overlap(mate.box(), TOUCH));
    }
}
