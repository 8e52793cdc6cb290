package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.fit.JointFit;
import org.marktwice.scenario.Practice.Aid;
import org.marktwice.scenario.Practice.Guidance;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;

/**
 * The job as it would come out with the choices made so far: each board where it was turned to, its joints where they come
 * when they are set out from its marks, or where its lines have them. What follows is computed from that: wood that would
 * have to go into wood, and knots that lie at a joint. In the job's frame, millimetres.
 *
 * @param parts every part of the drawing, in its order
 * @param joints every joint of the drawing, in its order
 */
public record Outcome(List<PartOut> parts, List<JointOut> joints) {
    /** Overlaps thinner than this are touching, millimetres. */
    private static final double TOUCH = 0.05;

    /** How much of it a learner is shown. */
    public enum Shown {
        NOTHING,
        /** The picture, and which way each board looks; what is amiss one has to see. */
        SEEN,
        /** Besides, joint by joint, what follows. */
        TOLD
    }

    /** What a part's joints were set out from. */
    public enum Basis {
        /** Nothing yet: they are where the drawing has them. */
        DRAWING,
        MARKS,
        LINES,
        /** There are marks, but nothing can be set out from them. */
        NO_USE
    }

    /**
     * A part as it would come out.
     *
     * @param state its board; null while none is named as it
     * @param placing that board in the job; null while it lies in none
     * @param cuts what its joints take out of it, as they come out
     * @param near every knot of the board as it lies against every one of these cuts
     */
    public record PartOut(
            Part part,
            @Nullable BoardState state,
            @Nullable Placing placing,
            List<Cut> cuts,
            Basis basis,
            List<Nearness> near) {
        public PartOut {
            cuts = List.copyOf(cuts);
            near = List.copyOf(near);
        }

        public boolean lies() {
            return placing != null;
        }

        /** What is left of it when its joints are cut: boxes that touch and don't overlap. */
        public List<Box> wood() {
            List<Box> left = List.of(part.box());
            for (Cut cut : cuts) {
                for (Box gone : cut.boxes()) {
                    left = left.stream()
                            .flatMap(b -> b.less(gone, TOUCH).stream())
                            .toList();
                }
            }
            return left;
        }

        List<Box> cut(String joint) {
            return cuts.stream()
                    .filter(c -> c.joint().equals(joint))
                    .flatMap(c -> c.boxes().stream())
                    .toList();
        }

        /** The knot that presses most on a joint; empty where the board has none. */
        Optional<Nearness> pressing(String joint) {
            return near.stream().filter(n -> n.cut().joint().equals(joint)).min(Nearness.MOST_PRESSING);
        }
    }

    /**
     * A share in a joint that comes out elsewhere than drawn.
     *
     * @param opens where it opens; null where it opens to no one side
     * @param wanted where the drawing has it open
     */
    public record Astray(
            Part part, @Nullable Direction opens, @Nullable Direction wanted) {}

    /**
     * A joint as it would come out.
     *
     * @param goesTogether whether its two parts can be put together, whatever knots there are
     * @param clash the wood of one part in the wood of the other
     * @param astray the shares that come out elsewhere than drawn
     * @param knot the knot that presses most on it, with its board; null where none is near
     * @param fit how it comes out of its lines; null where it is not all set out
     */
    public record JointOut(
            Joint joint,
            Verdict verdict,
            boolean goesTogether,
            List<Box> clash,
            List<Astray> astray,
            @Nullable KnotAt knot,
            @Nullable JointFit fit) {
        public JointOut {
            clash = List.copyOf(clash);
            astray = List.copyOf(astray);
        }

        /** How deep wood would have to go into wood, millimetres; 0 where it doesn't. */
        public double depth() {
            return clash.stream()
                    .mapToDouble(b -> Math.min(b.extent(0), Math.min(b.extent(1), b.extent(2))))
                    .max()
                    .orElse(0);
        }
    }

    /** A knot at a joint, on the board of this part. */
    public record KnotAt(Part part, String board, Nearness near) {
        public Verdict verdict() {
            return Keeps.of(near.clearance(), near.margin()).verdict();
        }
    }

    public Outcome {
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
    }

    /** What the bench shows of it before hand-in: told as early as the guidance tells, seen where turns are shown in the job. */
    public static Shown shown(Bench bench) {
        Guidance guidance = bench.guidance();
        if (guidance == Guidance.EXAMINATION) return Shown.NOTHING;
        if (bench.handedIn() || guidance != Guidance.AT_HAND_IN) return Shown.TOLD;
        return bench.scenario().grants(Aid.TURN_PREVIEW) ? Shown.SEEN : Shown.NOTHING;
    }

    public static Outcome of(Situation situation) {
        List<PartOut> parts = situation.scenario().drawing().parts().stream()
                .map(p -> part(situation, p))
                .toList();
        List<JointOut> joints = situation.scenario().drawing().joints().stream()
                .map(j -> joint(situation, j, find(parts, j.in()), find(parts, j.takes())))
                .toList();
        return new Outcome(parts, joints);
    }

    public PartOut part(String id) {
        return find(parts, id);
    }

    private static PartOut find(List<PartOut> parts, String id) {
        return parts.stream().filter(p -> p.part().id().equals(id)).findFirst().orElseThrow();
    }

    private static PartOut part(Situation situation, Part part) {
        Optional<Workpiece> piece = Workpiece.all(situation).stream()
                .filter(w -> part.equals(w.part()) && w.placing().isPresent())
                .findFirst()
                .or(() -> Workpiece.all(situation).stream()
                        .filter(w -> part.equals(w.part()))
                        .findFirst());
        List<Cut> drawn = situation.scenario().drawing().cuts(part);
        BoardState state = piece.map(Workpiece::state).orElse(null);
        Placing placing = piece.flatMap(w -> w.placing().or(() -> byMarks(situation, w)))
                .filter(p -> p.surplus() >= 0)
                .orElse(null);
        if (piece.isEmpty() || placing == null) return new PartOut(part, state, null, drawn, Basis.DRAWING, List.of());
        Workpiece w = piece.get();
        boolean marks =
                part.takesMarks() && (w.faceSide().isPresent() || w.faceEdge().isPresent());
        Optional<AsMarked> marked = !marks
                ? Optional.empty()
                : w.faceSide().flatMap(s -> w.faceEdge().flatMap(e -> AsMarked.of(placing, s, e)));
        List<Cut> carried = marked.map(m -> drawn.stream().map(m::of).toList()).orElse(drawn);
        List<Cut> cuts = carried.stream()
                .map(c -> AsStruck.of(situation, placing, c).orElse(c))
                .toList();
        Basis basis = !cuts.equals(carried) || AsStruck.isSetOut(situation, part)
                ? Basis.LINES
                : !marks ? Basis.DRAWING : marked.isPresent() ? Basis.MARKS : Basis.NO_USE;
        return new PartOut(part, state, placing, cuts, basis, near(situation, placing, cuts));
    }

    /** Where turns are not asked for, a board lies as its marks want it. */
    private static Optional<Placing> byMarks(Situation situation, Workpiece piece) {
        Part part = piece.part();
        if (situation.asks(Stage.TURNS) || part == null || !part.takesMarks()) return Optional.empty();
        return piece.faceSide()
                .flatMap(s -> piece.faceEdge().flatMap(e -> lying(situation, piece.board(), part, s, e)));
    }

    private static Optional<Placing> lying(Situation situation, Board board, Part part, Mark faceSide, Mark faceEdge) {
        return part.faceSide().stream()
                .flatMap(side -> part.faceEdge().stream()
                        .flatMap(edge -> Turn.facing(faceSide.on(), side, faceEdge.on(), edge).stream()))
                .filter(t -> t.isIn(part, board.isSquare()))
                .map(t -> new Placing(situation.scenario().drawing(), part, board, t, Trim.ALL_OFF_END_2))
                .findFirst();
    }

    private static List<Nearness> near(Situation situation, Placing placing, List<Cut> cuts) {
        List<Cut> onBoard = cuts.stream()
                .map(c -> new Cut(
                        c.joint(), c.boxes().stream().map(placing::toBoard).toList()))
                .toList();
        return Nearness.all(placing.board(), onBoard, situation.practice().knotMargin());
    }

    private static JointOut joint(Situation situation, Joint joint, PartOut in, PartOut takes) {
        if (!in.lies() || !takes.lies()) {
            Optional<KnotAt> knot = pressing(joint, in, takes);
            return new JointOut(joint, Verdict.OPEN, false, List.of(), List.of(), knot.orElse(null), null);
        }
        List<Astray> astray = new ArrayList<>();
        for (PartOut out : List.of(in, takes)) astray(situation, joint, out).ifPresent(astray::add);
        List<Box> clash = new ArrayList<>();
        for (Box a : in.wood()) {
            for (Box b : takes.wood()) a.overlap(b, TOUCH).ifPresent(clash::add);
        }
        JointFit fit = AsStruck.fit(situation, joint).orElse(null);
        KnotAt knot = pressing(joint, in, takes).orElse(null);
        boolean wrong = !astray.isEmpty() || fit != null && fit.state() == JointFit.State.WRONG_SIDE;
        Verdict closes =
                fit == null ? Verdict.SOUND : closes(fit, situation.practice().gap());
        Verdict keeps = knot == null ? Verdict.SOUND : knot.verdict();
        Verdict verdict = wrong ? Verdict.WRONG : worse(closes, keeps);
        return new JointOut(joint, verdict, !wrong && closes != Verdict.WRONG, clash, astray, knot, fit);
    }

    /** Gaps, and wood that would have to give way, are good to half the limit and fair to the limit. */
    private static Verdict closes(JointFit fit, double limit) {
        double worst = Math.max(fit.clash(), fit.gap().map(JointFit.Gap::mm).orElse(0.0));
        return worst <= limit / 2 ? Verdict.SOUND : worst <= limit ? Verdict.CLOSE : Verdict.WRONG;
    }

    private static Verdict worse(Verdict one, Verdict other) {
        for (Verdict v : List.of(Verdict.WRONG, Verdict.CLOSE)) if (one == v || other == v) return v;
        return Verdict.SOUND;
    }

    /** The knot of either board that presses most on a joint. */
    private static Optional<KnotAt> pressing(Joint joint, PartOut in, PartOut takes) {
        Optional<KnotAt> one = knot(joint, in);
        Optional<KnotAt> other = knot(joint, takes);
        if (one.isEmpty() || other.isEmpty()) return one.or(() -> other);
        boolean first =
                Nearness.MOST_PRESSING.compare(one.get().near(), other.get().near()) <= 0;
        return first ? one : other;
    }

    private static Optional<KnotAt> knot(Joint joint, PartOut out) {
        Placing placing = out.placing();
        if (placing == null) return Optional.empty();
        return out.pressing(joint.id())
                .map(n -> new KnotAt(out.part(), placing.board().id(), n));
    }

    private static Optional<Astray> astray(Situation situation, Joint joint, PartOut out) {
        if (out.basis() == Basis.LINES && AsStruck.isSetOut(situation, out.part(), joint.id())) {
            if (!AsStruck.isMisplaced(situation, out.part(), joint.id())) return Optional.empty();
        }
        List<Box> drawn = situation.scenario().drawing().cuts(out.part()).stream()
                .filter(c -> c.joint().equals(joint.id()))
                .flatMap(c -> c.boxes().stream())
                .toList();
        if (same(drawn, out.cut(joint.id()))) return Optional.empty();
        return Optional.of(new Astray(
                out.part(),
                HandedBoard.opens(out.cut(joint.id()), out.part()).orElse(null),
                HandedBoard.opens(drawn, out.part()).orElse(null)));
    }

    private static boolean same(List<Box> one, List<Box> other) {
        return one.size() == other.size()
                && one.stream()
                        .allMatch(a -> other.stream()
                                .anyMatch(b -> a.min().distance(b.min()) < TOUCH
                                        && a.max().distance(b.max()) < TOUCH));
    }
}
