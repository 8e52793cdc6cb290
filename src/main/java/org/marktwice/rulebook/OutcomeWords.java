package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Turn;
import org.marktwice.fit.JointFit;
import org.marktwice.rulebook.Outcome.Astray;
import org.marktwice.rulebook.Outcome.Basis;
import org.marktwice.rulebook.Outcome.JointOut;
import org.marktwice.rulebook.Outcome.KnotAt;
import org.marktwice.rulebook.Outcome.PartOut;
import org.marktwice.scenario.Practice.HeartSide;
import org.marktwice.timber.Seasoned;

/** What follows from the choices made so far, in a line for each joint and each part. */
public final class OutcomeWords {
    private static final double SEEN = 0.05;

    /**
     * A line.
     *
     * @param part the part that it is about; null where it is about a joint
     * @param joint the joint that it is about; null where it is about a part
     * @param verdict null where the learner is left to see it
     */
    public record Line(
            @Nullable String part,
            @Nullable String joint,
            @Nullable Verdict verdict,
            String title,
            String says) {}

    private final Situation situation;
    private final Outcome outcome;

    private OutcomeWords(Situation situation, Outcome outcome) {
        this.situation = situation;
        this.outcome = outcome;
    }

    /** Joint by joint and part by part; where it is only to be seen, the parts and how they stand. */
    public static List<Line> lines(Situation situation, Outcome outcome, Outcome.Shown shown) {
        if (shown == Outcome.Shown.NOTHING) return List.of();
        OutcomeWords words = new OutcomeWords(situation, outcome);
        boolean told = shown == Outcome.Shown.TOLD;
        List<Line> lines = new ArrayList<>();
        if (told) outcome.joints().forEach(j -> lines.add(words.joint(j)));
        outcome.parts().forEach(p -> lines.add(words.part(p, told)));
        return List.copyOf(lines);
    }

    /** {@code 2 of 3 parts have their board, 1 of 2 joints goes together.} */
    public static String sum(Outcome outcome, Outcome.Shown shown) {
        long stand = outcome.parts().stream().filter(PartOut::lies).count();
        int parts = outcome.parts().size();
        String boards =
                stand + " of " + parts + (parts == 1 ? " part stands" : stand == 1 ? " parts stands" : " parts stand");
        int joints = outcome.joints().size();
        if (shown != Outcome.Shown.TOLD || joints == 0) return boards + ".";
        long go = outcome.joints().stream().filter(JointOut::goesTogether).count();
        long near = outcome.joints().stream().filter(OutcomeWords::isNearAKnot).count();
        return boards + ", " + go + " of " + joints + (joints == 1 ? " joint" : " joints")
                + (go == 1 ? " goes together" : " go together")
                + (near == 0 ? "." : ", " + near + " too near a knot.");
    }

    private static boolean isNearAKnot(JointOut out) {
        KnotAt knot = out.knot();
        return out.goesTogether() && knot != null && knot.verdict() != Verdict.SOUND;
    }

    // Joints

    private Line joint(JointOut out) {
        Joint joint = out.joint();
        String title = capital(joint.noun()) + ": " + name(joint.in()) + " and " + name(joint.takes());
        return new Line(null, joint.id(), out.verdict(), title, says(out));
    }

    private String says(JointOut out) {
        if (out.verdict() == Verdict.OPEN) return waits(out.joint());
        if (!out.astray().isEmpty()) {
            return out.astray().stream().map(this::astray).collect(Collectors.joining(" ")) + meets(out);
        }
        KnotAt knot = out.knot();
        if (knot == null) return together(out) + ". No knot is near.";
        String which = words().of(knot.near().knot().id(), "knot") + " of board " + knot.board();
        String margin = mm(knot.near().margin());
        String off = mm(knot.near().clearance());
        if (knot.verdict() == Verdict.SOUND) {
            return together(out) + ". The nearest knot, " + which + ", is " + off + " off; " + margin + " is wanted.";
        }
        String but = together(out) + ", but " + which;
        if (knot.near().clearance() < Shows.NOTHING)
            return but + " lies in it: hard, crossed grain for saw and chisel.";
        String within = but + " comes within " + off + " of it; " + margin + " is wanted";
        return knot.verdict() == Verdict.CLOSE
                ? within + "."
                : within + ", for the grain that bends round a knot breaks out at the cut.";
    }

    private static String together(JointOut out) {
        JointFit fit = out.fit();
        if (fit == null) return "Goes together";
        double gap = fit.gap().map(JointFit.Gap::mm).orElse(0.0);
        if (Math.max(gap, fit.clash()) <= SEEN) return "Cut to its lines it closes";
        return "Cut to its lines it "
                + (gap >= fit.clash() ? "gapes " + mm(gap) : "is " + mm(fit.clash()) + " too tight");
    }

    private String waits(Joint joint) {
        String missing = Stream.of(joint.in(), joint.takes())
                .filter(p -> !outcome.part(p).lies())
                .map(p -> "the " + name(p))
                .collect(Collectors.joining(" and "));
        return "Waits for " + missing + ".";
    }

    private String astray(Astray astray) {
        PartOut out = outcome.part(astray.part().id());
        String from = out.basis() == Basis.LINES ? "By its lines" : "Set out from its marks";
        Direction opens = astray.opens();
        Direction wanted = astray.wanted();
        if (opens == null || wanted == null || opens == wanted) {
            return from + ", the " + astray.part().name() + " is cut elsewhere than drawn.";
        }
        return from + ", the " + astray.part().name() + " is cut " + side(opens) + "; the drawing has the cut "
                + side(wanted) + ".";
    }

    private String meets(JointOut out) {
        if (out.depth() < SEEN) return " The two don't meet as drawn.";
        String first = out.astray().get(0).part().id();
        String other = first.equals(out.joint().in())
                ? out.joint().takes()
                : out.joint().in();
        return " The " + name(other) + " meets solid wood there, " + mm(out.depth()) + " deep.";
    }

    private static String side(Direction direction) {
        return switch (direction) {
            case LEFT -> "on the left";
            case RIGHT -> "on the right";
            case FRONT -> "at the front";
            case BACK -> "at the back";
            case TOP -> "on top";
            case BOTTOM -> "underneath";
        };
    }

    // Parts

    private Line part(PartOut out, boolean told) {
        Part part = out.part();
        return new Line(part.id(), null, told ? verdict(out) : null, part.name(), says(out, told));
    }

    private static Verdict verdict(PartOut out) {
        Placing placing = out.placing();
        BoardState state = out.state();
        if (placing == null || state == null) return Verdict.OPEN;
        if (!out.part().takesMarks()) return state.marks().isEmpty() ? Verdict.SOUND : Verdict.WRONG;
        Optional<Mark> side = state.marks(Mark.Kind.FACE_SIDE).findFirst();
        Optional<Mark> edge = state.marks(Mark.Kind.FACE_EDGE).findFirst();
        if (side.isEmpty() || edge.isEmpty()) return Verdict.OPEN;
        boolean drawn = out.part()
                        .faceSide()
                        .contains(placing.turn().of(side.get().on()))
                && out.part().faceEdge().contains(placing.turn().of(edge.get().on()));
        return drawn ? Verdict.SOUND : Verdict.WRONG;
    }

    private String says(PartOut out, boolean told) {
        Placing placing = out.placing();
        BoardState state = out.state();
        if (state == null) return "No board yet.";
        String board = "Board " + state.board().id();
        if (placing == null) return board + " carries its name, and " + notLying(out.part(), state);
        String twice = situation.bench().namedAs(out.part()).size() > 1 ? " Another board carries the same name." : "";
        return board + marks(out, state, placing, told) + (told ? dries(placing) : "") + twice;
    }

    private static String notLying(Part part, BoardState state) {
        double lacks = part.size().length() - state.board().size().length();
        if (lacks > 0) return "is " + mm(lacks) + " too short.";
        return state.turned().isEmpty() ? "isn't turned yet." : "can't lie so.";
    }

    private static String marks(PartOut out, BoardState state, Placing placing, boolean told) {
        Turn turn = placing.turn();
        Optional<Direction> side = looks(state, Mark.Kind.FACE_SIDE, turn);
        Optional<Direction> edge = looks(state, Mark.Kind.FACE_EDGE, turn);
        if (!out.part().takesMarks())
            return side.isEmpty() && edge.isEmpty() ? "." : ": marked, though it takes no marks.";
        if (side.isEmpty() && edge.isEmpty()) return ", not marked: its joints are shown as drawn.";
        List<String> said = new ArrayList<>();
        said.add(side.map(d -> "face side " + Words.towards(d)).orElse("no face side"));
        said.add(edge.map(d -> "face edge " + Words.towards(d)).orElse("no face edge"));
        return ": " + String.join(", ", said) + (told ? asDrawn(out, side, edge) : ".");
    }

    private static String asDrawn(PartOut out, Optional<Direction> side, Optional<Direction> edge) {
        Part part = out.part();
        if (side.isEmpty() || edge.isEmpty()) return ".";
        List<String> other = new ArrayList<>();
        if (!part.faceSide().contains(side.get())) other.add("face side " + towards(part.faceSide()));
        if (!part.faceEdge().contains(edge.get())) other.add("face edge " + towards(part.faceEdge()));
        if (other.isEmpty()) return ", as drawn.";
        String no = out.basis() == Basis.NO_USE ? " Nothing can be set out from these marks." : "";
        return ". Drawn: " + String.join(", ", other) + "." + no;
    }

    private static String towards(List<Direction> allowed) {
        return allowed.stream().map(Words::towards).collect(Collectors.joining(" or "));
    }

    private static Optional<Direction> looks(BoardState state, Mark.Kind kind, Turn turn) {
        return state.marks(kind).findFirst().map(m -> turn.of(m.on()));
    }

    /** Where the heart side matters, which side hollows. */
    private String dries(Placing placing) {
        if (situation.practice().heartSide() == HeartSide.ANY) return "";
        return Seasoned.barkSide(placing.board())
                .map(s -> " Drying, it hollows " + side(placing.turn().of(s)) + ".")
                .orElse("");
    }

    private Words words() {
        return new Words(situation.scenario().drawing(), null);
    }

    private String name(String part) {
        return outcome.part(part).part().name();
    }

    private static String mm(double value) {
        return Words.figure(value) + " mm";
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }
}
