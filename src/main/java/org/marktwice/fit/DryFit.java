package org.marktwice.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Climate;

/**
 * The job as it would come out: each board cut exactly to the lines on it, and the parts put together without glue. Parts
 * are shifted to where their joints want them and never tilted: what is out of square shows as a gap, as a step, or as
 * diagonals that differ. In the job's frame, millimetres.
 */
public final class DryFit {
    private final Drawing drawing;
    private final Map<String, Made> made;
    private final Map<String, Vector3d> moved = new LinkedHashMap<>();
    private final List<JointFit> joints;
    private final Making making;
    private final FitWorkings workings;
    private final boolean whole;

    /**
     * How the lines were struck, and what the wood has done since.
     *
     * @param moistures the moisture of each board in percent once the job has settled; null where it is as it was
     */
    private record Making(
            Bench bench, Hand hand, Tools tools, @Nullable ToDoubleFunction<Board> moistures) {}

    /**
     * A part in the dry fit.
     *
     * @param board what it is made of
     * @param moved from where it is drawn
     * @param wider by how much the room has made the board wider
     * @param thicker by how much it has made it thicker
     */
    public record PartFit(Part part, Board board, Vector3dc moved, double wider, double thicker) {}

    /** An overall size. @param made as it comes out; empty while not all of it is set out */
    public record SizeFit(JobAxis axis, double drawn, OptionalDouble made) {
        /** How much too large it is; below 0 too small. */
        public OptionalDouble off() {
            return made.isPresent() ? OptionalDouble.of(made.getAsDouble() - drawn) : OptionalDouble.empty();
        }
    }

    /** Surfaces of two joined parts that are drawn in one plane. @param step by how much the second stands out */
    public record Step(Joint joint, String one, String other, Direction looks, double step) {}

    /** A joint as its two parts were set out for it. A share is null while there is no board. */
    private record Joined(
            Joint joint,
            JointFit.State state,
            JointFit.@Nullable Share in,
            JointFit.@Nullable Share takes,
            List<Bearing> seats) {}

    /** A seat with where the two parts bear in it before they are moved, along its axis. */
    private record Bearing(Seat seat, Span in, Span takes) {
        /** How far the two are apart where they come nearest. */
        double tight() {
            return isPeg() ? apart() : above().low() - below().high();
        }

        /** The same where they are farthest apart. */
        double wide() {
            return isPeg() ? apart() : above().high() - below().low();
        }

        boolean isPeg() {
            return seat.kind() == Seat.Kind.PEGGED;
        }

        private double apart() {
            return above().middle() - below().middle();
        }

        private Span below() {
            return seat.inBelow() ? in : takes;
        }

        private Span above() {
            return seat.inBelow() ? takes : in;
        }
    }

    private DryFit(Making making, Map<String, Made> made, FitWorkings workings) {
        this.making = making;
        this.workings = workings;
        this.drawing = making.bench().scenario().drawing();
        this.made = made;
        List<Joined> joined = drawing.joints().stream().map(this::joined).toList();
        for (String part : made.keySet()) moved.put(part, new Vector3d());
        for (int axis = 0; axis < 3; axis++) settle(axis, joined);
        this.joints = joined.stream().map(this::fit).toList();
        this.whole = made.size() == drawing.parts().size()
                && joints.stream().allMatch(j -> j.state() == JointFit.State.TOGETHER)
                && made.values().stream().allMatch(DryFit::isCutToLength);
    }

    /** As an exact hand with true tools struck the lines. */
    public static DryFit of(Bench bench) {
        return of(bench, Hand.EXACT, Tools.TRUE);
    }

    public static DryFit of(Bench bench, Hand hand, Tools tools) {
        FitWorkings workings = new FitWorkings(bench.scenario().drawing());
        Making making = new Making(bench, hand, tools, null);
        return new DryFit(making, made(making, workings), workings);
    }

    /**
     * As an exact hand with true tools struck the lines, without working out anew what is known.
     *
     * @param setOut how a board was set out that lies so
     */
    public static DryFit of(Bench bench, FitWorkings workings, BiFunction<Placing, BoardState, SetOut> setOut) {
        Making making = new Making(bench, Hand.EXACT, Tools.TRUE, null);
        return new DryFit(
                making, made(bench, (lies, state) -> new Made(setOut.apply(lies, state), Made.Grown.NOT)), workings);
    }

    /** The same job after it has stood in a room until its wood had settled. */
    public DryFit in(Climate room) {
        double moisture = room.settledMoisture();
        Making later = new Making(making.bench(), making.hand(), making.tools(), board -> moisture);
        return new DryFit(later, made(later, workings), workings);
    }

    private static Map<String, Made> made(Making making, FitWorkings workings) {
        Bench bench = making.bench();
        ToDoubleFunction<Board> moistures = making.moistures();
        return made(bench, (lies, state) -> {
            TrueLines lines = TrueLines.of(bench, state, making.hand(), making.tools());
            Made.Grown grown = moistures == null
                    ? Made.Grown.NOT
                    : Movement.grown(state.board(), moistures.applyAsDouble(state.board()));
            return new Made(SetOut.of(lies, state, lines, workings), grown);
        });
    }

    private static Map<String, Made> made(Bench bench, BiFunction<Placing, BoardState, Made> making) {
        Map<String, Made> all = new LinkedHashMap<>();
        for (Part part : bench.scenario().drawing().parts()) {
            for (BoardState state : bench.namedAs(part)) {
                Optional<Placing> placing = bench.placing(state);
                if (placing.isEmpty() || all.containsKey(part.id())) continue;
                all.put(part.id(), making.apply(placing.get(), state));
            }
        }
        return all;
    }

    private Joined joined(Joint joint) {
        Made in = made.get(joint.in());
        Made takes = made.get(joint.takes());
        JointFit.Share one = in == null ? null : share(in, joint);
        JointFit.Share other = takes == null ? null : share(takes, joint);
        if (in == null || takes == null || one == null || other == null) {
            return new Joined(joint, JointFit.State.NO_BOARD, one, other, List.of());
        }
        List<Seat> seats = workings.seats(joint);
        List<Bearing> bearings = one.missing() + other.missing() > 0 ? List.of() : bearings(seats, in, takes);
        if (bearings.size() < seats.size() || one.missing() + other.missing() > 0)
            return new Joined(joint, JointFit.State.NOT_SET_OUT, one, other, List.of());
        return one.misplaced() + other.misplaced() > 0
                ? new Joined(joint, JointFit.State.WRONG_SIDE, one, other, List.of())
                : new Joined(joint, JointFit.State.TOGETHER, one, other, bearings);
    }

    /** Up to the first seat in which a part has still no line to bear by. */
    private static List<Bearing> bearings(List<Seat> seats, Made in, Made takes) {
        List<Bearing> bearings = new ArrayList<>();
        for (Seat seat : seats) {
            Optional<Span> one = in.at(seat, seat.inBelow());
            Optional<Span> other = takes.at(seat, !seat.inBelow());
            if (one.isEmpty() || other.isEmpty()) return bearings;
            bearings.add(new Bearing(seat, one.get(), other.get()));
        }
        return bearings;
    }

    private static JointFit.Share share(Made made, Joint joint) {
        List<SetOut.Marked> sides = made.out().marked(joint.id());
        double off = sides.stream()
                .filter(m -> m.side().isSquared() && m.line() != null)
                .mapToDouble(SetOut.Marked::off)
                .average()
                .orElse(0);
        int missing = 0;
        int misplaced = 0;
        for (SetOut.Marked m : sides) {
            if (m.line() == null) missing++;
            if (!m.onItsSurface()) misplaced++;
        }
        boolean elsewhere = made.out().isShadedElsewhere(joint.id());
        return new JointFit.Share(made.board().id(), off, missing, elsewhere ? Math.max(1, misplaced) : misplaced);
    }

    private void settle(int axis, List<Joined> joined) {
        List<String> parts = List.copyOf(made.keySet());
        double[] drawn = parts.stream().mapToDouble(p -> drawn(need(p), axis)).toArray();
        Settling settling = new Settling(drawn);
        for (Joined one : joined) {
            int in = parts.indexOf(one.joint().in());
            int takes = parts.indexOf(one.joint().takes());
            for (Bearing bearing : one.seats()) {
                Seat seat = bearing.seat();
                if (seat.axis() != axis) continue;
                settling.seat(
                        seat.inBelow() ? in : takes, seat.inBelow() ? takes : in, bearing.tight(), bearing.isPeg());
            }
        }
        double[] to = settling.moved();
        for (int i = 0; i < to.length; i++) moved(parts.get(i)).setComponent(axis, to[i]);
    }

    /** By how much the part is to be moved along an axis so that its reference surface lies as drawn. */
    private static double drawn(Made made, int axis) {
        Part part = made.part();
        Direction looks = reference(part, axis);
        Optional<Span> found = made.surface(looks);
        if (found.isEmpty()) return 0;
        double at = looks.sign() > 0 ? part.box().max(axis) : part.box().min(axis);
        return at - found.get().middle();
    }

    /** Where the surface looks that the part is laid by: its face side, its face edge, its low end. */
    private static Direction reference(Part part, int axis) {
        for (List<Direction> marks : List.of(part.faceSide(), part.faceEdge())) {
            for (Direction d : marks) {
                if (d.axis() == axis) return d;
            }
        }
        return Direction.on(axis, -1);
    }

    private JointFit fit(Joined one) {
        return new JointFit(
                one.joint(),
                one.state(),
                one.seats().stream().map(s -> fit(one.joint(), s)).toList(),
                one.in(),
                one.takes());
    }

    private JointFit.SeatFit fit(Joint joint, Bearing bearing) {
        Seat seat = bearing.seat();
        double come = moved(joint.takes()).get(seat.axis()) - moved(joint.in()).get(seat.axis());
        double opened = seat.inBelow() ? come : -come;
        if (bearing.isPeg()) {
            double aside = Math.abs(bearing.tight() + opened);
            return new JointFit.SeatFit(seat, -aside, aside, true);
        }
        boolean hidden = need(joint.in()).isBlind(seat, seat.inBelow());
        return new JointFit.SeatFit(seat, bearing.tight() + opened, bearing.wide() + opened, hidden);
    }

    private Made need(String part) {
        return Optional.ofNullable(made.get(part)).orElseThrow();
    }

    private Vector3d moved(String part) {
        return Optional.ofNullable(moved.get(part)).orElseThrow();
    }

    public Drawing drawing() {
        return drawing;
    }

    /** Every joint of the drawing, in its order. */
    public List<JointFit> joints() {
        return joints;
    }

    public JointFit joint(String id) {
        return joints.stream()
                .filter(j -> j.joint().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The parts that have a board which lies in the job, in the drawing's order. */
    public List<PartFit> parts() {
        return made.values().stream()
                .map(m -> new PartFit(
                        m.part(),
                        m.board(),
                        moved(m.part().id()),
                        m.board().size().width() * (m.grown().width() - 1),
                        m.board().size().thickness() * (m.grown().thickness() - 1)))
                .toList();
    }

    /** How a part's board was set out; empty while none lies in the job. */
    public Optional<SetOut> setOut(String part) {
        return Optional.ofNullable(made.get(part)).map(Made::out);
    }

    /** A part as a solid, where its joints want it; empty while none of its boards lies in the job. */
    public Optional<CutPart> solid(String part) {
        return Optional.ofNullable(made.get(part)).map(m -> m.solid(moved(part)));
    }

    /** Where the two parts' wood comes to lie at a seat, along its axis. @param in of the part that the joint is cut into */
    public record Faces(double in, double takes) {}

    /** Of a joint that can be put together. */
    public Faces faces(Seat seat) {
        Joint joint = seat.joint();
        Span in = need(joint.in()).at(seat, seat.inBelow()).orElseThrow();
        Span takes = need(joint.takes()).at(seat, !seat.inBelow()).orElseThrow();
        return new Faces(
                in.middle() + moved(joint.in()).get(seat.axis()),
                takes.middle() + moved(joint.takes()).get(seat.axis()));
    }

    /** Whether every part has its board, cut to length, and every joint can be put together. */
    public boolean isWhole() {
        return whole;
    }

    private static boolean isCutToLength(Made made) {
        for (SetOut.Marked m : made.out().marked()) {
            if (m.side().isEnd() && m.line() == null) return false;
        }
        return true;
    }

    /** The three overall sizes. */
    public List<SizeFit> sizes() {
        return Stream.of(JobAxis.values())
                .map(a -> new SizeFit(a, drawing.overall().along(a), size(a.ordinal())))
                .toList();
    }

    private OptionalDouble size(int axis) {
        if (!isWhole()) return OptionalDouble.empty();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Made m : made.values()) {
            low = Math.min(low, side(m, Direction.on(axis, -1)).orElseThrow());
            high = Math.max(high, side(m, Direction.on(axis, +1)).orElseThrow());
        }
        return OptionalDouble.of(high - low);
    }

    /** Where a part's side comes to lie along its axis. */
    private Optional<Double> side(Made m, Direction looks) {
        return m.surface(looks).map(s -> s.middle() + moved(m.part().id()).get(looks.axis()));
    }

    /** Where a part comes to lie, its cuts apart; as drawn on a side where it has not been cut to length. Empty while it has no board. */
    public Optional<Box> box(String part) {
        return Optional.ofNullable(made.get(part)).map(m -> {
            Box box = m.part().box();
            for (int axis = 0; axis < 3; axis++) {
                double low = side(m, Direction.on(axis, -1)).orElse(box.min(axis));
                double high = side(m, Direction.on(axis, +1)).orElse(box.max(axis));
                box = box.with(axis, low, high);
            }
            return box;
        });
    }

    /** The rectangles that pairs of parallel parts stand round, with their diagonals; none until the job is whole. */
    public List<Rectangle> rectangles() {
        return isWhole() ? Rectangle.all(this) : List.of();
    }

    /** How flush surfaces of joined parts come that are drawn in one plane; of joints that can be put together. */
    public List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        for (JointFit fit : joints) {
            if (fit.state() != JointFit.State.TOGETHER) continue;
            Made in = need(fit.joint().in());
            Made takes = need(fit.joint().takes());
            for (Direction looks : Direction.values())
                step(fit.joint(), in, takes, looks).ifPresent(steps::add);
        }
        return steps;
    }

    private Optional<Step> step(Joint joint, Made in, Made takes, Direction looks) {
        int axis = looks.axis();
        double one =
                looks.sign() > 0 ? in.part().box().max(axis) : in.part().box().min(axis);
        double other = looks.sign() > 0
                ? takes.part().box().max(axis)
                : takes.part().box().min(axis);
        if (Math.abs(one - other) > Drawing.TOLERANCE) return Optional.empty();
        return side(in, looks)
                .flatMap(a -> side(takes, looks)
                        .map(b -> new Step(joint, joint.in(), joint.takes(), looks, (b - a) * looks.sign())));
    }
}
