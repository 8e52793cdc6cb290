package org.marktwice.feedback;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3d;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Placing;
import org.marktwice.picture.AssembledJob;
import org.marktwice.picture.AssembledPainter.Pick;
import org.marktwice.picture.AssembledPainter.Way;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Struck;
import org.marktwice.rulebook.Finding;
import org.marktwice.rulebook.Outcome;
import org.marktwice.rulebook.Outcome.JointOut;
import org.marktwice.rulebook.Outcome.KnotAt;
import org.marktwice.rulebook.Outcome.PartOut;
import org.marktwice.rulebook.OutcomeWords;
import org.marktwice.rulebook.OutcomeWords.Line;
import org.marktwice.rulebook.Situation;
import org.marktwice.rulebook.Verdict;
import org.marktwice.timber.Box;

/** The job as it would come out: its boards as they are put together, what follows in words, and where each of that shows. */
public final class OutcomeModel {
    private final Situation situation;
    private final Outcome.Shown shown;
    private final Outcome outcome;
    private final List<Line> lines;

    private OutcomeModel(Situation situation, Outcome.Shown shown) {
        this.situation = situation;
        this.shown = shown;
        this.outcome = Outcome.of(situation);
        this.lines = OutcomeWords.lines(situation, outcome, shown);
    }

    public static OutcomeModel of(Situation situation, Outcome.Shown shown) {
        return new OutcomeModel(situation, shown);
    }

    public Outcome outcome() {
        return outcome;
    }

    public boolean isTold() {
        return shown == Outcome.Shown.TOLD;
    }

    public List<Line> lines() {
        return lines;
    }

    public String sum() {
        return OutcomeWords.sum(outcome, shown);
    }

    /** The first line that tells of something amiss; else the first of all. */
    public int first() {
        for (Verdict worst : List.of(Verdict.WRONG, Verdict.CLOSE)) {
            for (int i = 0; i < lines.size(); i++) if (lines.get(i).verdict() == worst) return i;
        }
        return 0;
    }

    /** The parts with their boards; where it is told, knots that foul a joint are picked out on these. */
    public List<AssembledJob.Piece> pieces() {
        return outcome.parts().stream().map(this::piece).toList();
    }

    private AssembledJob.Piece piece(PartOut out) {
        BoardState state = out.state();
        Placing placing = out.placing();
        if (state == null || placing == null) return new AssembledJob.Piece(out.part(), out.cuts(), null, null);
        List<Cut> gone = new ArrayList<>(out.cuts());
        for (JointOut joint : outcome.joints()) {
            // two can't be in one place: what would go in ends where the other's wood begins
            if (joint.joint().takes().equals(out.part().id()))
                gone.add(new Cut(joint.joint().id(), joint.clash()));
        }
        String written = state.named().isPresent() ? out.part().name() : null;
        BoardPicture picture = BoardPicture.of(state, written).struck(Struck.on(situation.bench(), state));
        List<String> fouling = fouling(state.board().id());
        if (!fouling.isEmpty())
            picture = picture.evidence(new Finding.Evidence(List.of(), List.of(), fouling), Ink.WRONG);
        return new AssembledJob.Piece(out.part(), gone, placing, picture);
    }

    private List<String> fouling(String board) {
        if (!isTold()) return List.of();
        return outcome.joints().stream()
                .filter(j -> j.verdict() == Verdict.WRONG)
                .flatMap(j -> knots(j).stream())
                .filter(k -> k.board().equals(board))
                .map(k -> k.near().knot().id())
                .distinct()
                .toList();
    }

    /** The knot of a joint that would go together, where it is too near. */
    private static Optional<KnotAt> knots(JointOut joint) {
        KnotAt knot = joint.knot();
        if (knot == null || !joint.astray().isEmpty() || knot.near().share() >= 1) return Optional.empty();
        return Optional.of(knot);
    }

    /** What a line is about, to be picked out as through the wood. */
    public List<Pick> picks(Line line) {
        String id = line.joint();
        if (id == null) return part(line).map(OutcomeModel::outlined).orElse(List.of());
        JointOut joint = joint(id);
        Ink ink = ink(line.verdict());
        List<Box> cuts = new ArrayList<>();
        for (String part : List.of(joint.joint().in(), joint.joint().takes())) {
            outcome.part(part).cuts().stream().filter(c -> c.joint().equals(id)).forEach(c -> cuts.addAll(c.boxes()));
        }
        List<Pick> picks = new ArrayList<>();
        if (!cuts.isEmpty())
            picks.add(new Pick(cuts, joint.astray().isEmpty() ? Way.HATCHED : Way.DASHED, null, null, Ink.ACTION));
        if (isTold() && !joint.astray().isEmpty() && !joint.clash().isEmpty()) {
            picks.add(new Pick(joint.clash(), Way.HATCHED, null, null, Ink.WRONG));
        }
        if (isTold()) {
            knots(joint)
                    .ifPresent(k -> picks.add(new Pick(
                            List.of(),
                            Way.DASHED,
                            outcome.part(k.part().id()).placing(),
                            k.near().knot().id(),
                            ink)));
        }
        return picks;
    }

    private static List<Pick> outlined(PartOut part) {
        return List.of(new Pick(List.of(part.part().box()), Way.OUTLINED, null, null, Ink.ACTION));
    }

    private static Ink ink(@Nullable Verdict verdict) {
        return verdict == Verdict.WRONG || verdict == Verdict.CLOSE ? Ink.of(verdict) : Ink.ACTION;
    }

    private Optional<PartOut> part(Line line) {
        return Optional.ofNullable(line.part()).map(outcome::part);
    }

    private JointOut joint(String id) {
        return outcome.joints().stream()
                .filter(j -> j.joint().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Where in the job a joint's two parts meet. */
    public Box place(String id) {
        Box in = outcome.part(joint(id).joint().in()).part().box();
        Box takes = outcome.part(joint(id).joint().takes()).part().box();
        return Box.between(in.min().max(takes.min(), new Vector3d()), in.max().min(takes.max(), new Vector3d()));
    }

    /** The corner of the job from which a line's matter shows; the one stood at where that is as good. */
    public int corner(Line line, int now) {
        String id = line.joint();
        if (id == null) return now;
        JointOut joint = joint(id);
        for (Outcome.Astray astray : joint.astray()) {
            Direction opens = astray.opens();
            if (opens != null) return AssembledJob.showing(opens, now);
        }
        return knots(joint).map(k -> shows(k, now)).orElse(now);
    }

    private int shows(KnotAt knot, int now) {
        Placing placing = outcome.part(knot.part().id()).placing();
        if (placing == null) return now;
        List<Direction> looks = placing.board().traces().stream()
                .filter(t -> t.knot().equals(knot.near().knot().id()))
                .map(t -> placing.turn().of(t.surface()))
                .filter(d -> d != Direction.BOTTOM)
                .toList();
        boolean seen = looks.stream().anyMatch(d -> AssembledJob.showing(d, now) == now);
        return seen || looks.isEmpty() ? now : AssembledJob.showing(looks.get(0), now);
    }
}
