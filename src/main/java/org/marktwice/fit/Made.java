package org.marktwice.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState.Done;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;

/**
 * A part as it comes out when its board is cut to the lines on it: where its surfaces and the sides of its cuts really
 * lie, along the job's axes, before the part is moved to where its joints want it. What is bent (bow, spring, twist, cup)
 * is taken to be pulled flat by the joints; tapers, and surfaces out of square, stay.
 */
final class Made {
    private static final double FLAT = 1e-6;

    private final SetOut out;
    private final Placing placing;
    private final Machined machined;
    private final Grown grown;
    private final List<Action.Cut> cuts = new ArrayList<>();

    /** How many times as wide and as thick a board has become. */
    record Grown(double width, double thickness) {
        static final Grown NOT = new Grown(1, 1);
    }

    Made(SetOut out, Grown grown) {
        this.out = out;
        this.placing = out.placing();
        this.machined = new Machined(placing.board());
        this.grown = grown;
        for (Done<? extends Action.OnBoard> done : out.state().struck()) {
            if (done.action() instanceof Action.Cut cut) cuts.add(cut);
        }
    }

    SetOut out() {
        return out;
    }

    Part part() {
        return placing.part();
    }

    Board board() {
        return placing.board();
    }

    Grown grown() {
        return grown;
    }

    /** Where the part's surface that looks this way lies; empty where the board has still to be cut to length there. */
    Optional<Span> surface(Direction direction) {
        Box box = part().box();
        double at = direction.sign() > 0 ? box.max(direction.axis()) : box.min(direction.axis());
        return surface(direction, placing.toBoard(box.with(direction.axis(), at, at)));
    }

    /** The same over a part of it, a flat box in the board's frame. */
    private Optional<Span> surface(Direction direction, Box flat) {
        Surface surface = placing.turn().looking(direction);
        if (surface.isEnd() && placing.off(surface) > FLAT) {
            for (SetOut.Marked m : out.marked()) {
                if (m.side().isEnd() && m.side().waste() == surface.sign()) return side(m, flat);
            }
            return Optional.empty();
        }
        Span span = null;
        for (double x : new double[] {flat.min(0), flat.max(0)}) {
            for (double z : new double[] {flat.min(2), flat.max(2)}) {
                double at = job(surface.axis(), at(surface, x, z));
                span = span == null ? Span.of(at, at) : span.and(at);
            }
        }
        return Optional.ofNullable(span);
    }

    /** The board coordinate of a surface at a place along and through the board. */
    private double at(Surface surface, double x, double z) {
        if (surface.isFace()) return machined.coordinate(surface, Surface.EDGE_1, x);
        double share = z / board().size().thickness();
        double above = machined.coordinate(surface, Surface.FACE_1, x);
        double below = machined.coordinate(surface, Surface.FACE_2, x);
        return below + (above - below) * share;
    }

    /** The side of the joint's cut that lies in this seat; empty where the seat is the part's own surface. */
    Optional<SetOut.Marked> marked(Seat seat, boolean below) {
        Wanted.Bearing bearing = out.wanted().bearing(seat, below);
        for (SetOut.Marked m : out.marked(seat.joint().id())) {
            if (bearing.isAt(m.side())) return Optional.of(m);
        }
        return Optional.empty();
    }

    /**
     * Where this part bears in a seat.
     *
     * @param below whether the part's wood lies on the lower side of it
     * @return empty where there is no line for it yet
     */
    Optional<Span> at(Seat seat, boolean below) {
        Wanted.Bearing bearing = out.wanted().bearing(seat, below);
        if (bearing.own().isPresent()) return surface(bearing.own().get(), bearing.flat());
        Optional<SetOut.Marked> marked = marked(seat, below);
        if (marked.isPresent()) return side(marked.get(), bearing.flat());
        // shows nowhere: cut to a depth that is set on the tool
        double at = job(bearing.axis(), bearing.at());
        return Optional.of(Span.of(at, at));
    }

    /** Whether the part bears in a cut whose side shows nowhere. */
    boolean isBlind(Seat seat, boolean below) {
        return out.wanted().bearing(seat, below).own().isEmpty()
                && marked(seat, below).isEmpty();
    }

    /** Where the lines of a side run over a flat box, both in the board's frame. */
    private Optional<Span> side(SetOut.Marked marked, Box flat) {
        List<TrueLine> round = marked.round();
        Span span = null;
        double lost = -marked.side().waste() * lost(round);
        for (TrueLine line : round) {
            for (double along : new double[] {flat.min(line.runs()), flat.max(line.runs())}) {
                double at = job(line.axis(), line.at(along, board()) + lost);
                span = span == null ? Span.of(at, at) : span.and(at);
            }
        }
        return Optional.ofNullable(span);
    }

    /** How much of the wood that was to stay went with a cut that didn't keep to the waste side of these lines. */
    private double lost(List<TrueLine> lines) {
        double lost = 0;
        for (Action.Cut cut : cuts) {
            for (TrueLine line : lines) {
                if (line.step() == cut.step()) lost = Math.max(lost, cut.with().lost(cut.side()));
            }
        }
        return lost;
    }

    /**
     * The part as a solid, in the job's frame.
     *
     * @param moved where its joints want it
     */
    CutPart solid(Vector3dc moved) {
        CutPart.Block whole = new CutPart.Block(null, outside(moved));
        List<CutPart.Block> gone = new ArrayList<>();
        for (Cut cut : placing.drawing().cuts(part())) {
            for (Box box : cut.boxes()) gone.add(new CutPart.Block(cut.joint(), sides(cut.joint(), box, whole, moved)));
        }
        return new CutPart(placing, out.state(), whole, gone);
    }

    private List<CutPart.Side> outside(Vector3dc moved) {
        List<CutPart.Side> sides = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            int axis = i / 2;
            Direction looks = Direction.on(axis, i % 2 == 0 ? -1 : +1);
            double drawn = i % 2 == 0 ? part().box().min(axis) : part().box().max(axis);
            double by = moved.get(axis);
            Surface surface = placing.turn().looking(looks);
            Optional<SetOut.Marked> end = out.marked().stream()
                    .filter(m -> m.side().isEnd() && m.side().waste() == surface.sign() && surface.isEnd())
                    .findFirst();
            Optional<Span> span = surface(looks);
            if (span.isEmpty()) {
                sides.add(CutPart.Side.straight(axis, drawn, drawn + by));
            } else if (end.isPresent()) {
                sides.add(leaning(end.get(), axis, drawn, span.get().middle(), by));
            } else {
                double middle = span.get().middle();
                sides.add(new CutPart.Side(axis, drawn, middle + by, point -> {
                    Vector3d p = placing.toBoard(point);
                    return job(surface.axis(), at(surface, p.x, p.z)) - middle;
                }));
            }
        }
        return sides;
    }

    private List<CutPart.Side> sides(String joint, Box box, CutPart.Block whole, Vector3dc moved) {
        List<CutPart.Side> sides = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            int axis = i / 2;
            boolean low = i % 2 == 0;
            double drawn = low ? box.min(axis) : box.max(axis);
            double outside = low ? part().box().min(axis) : part().box().max(axis);
            boolean open = Math.abs(drawn - outside) < FLAT;
            sides.add(open ? whole.sides().get(i) : side(joint, box, axis, drawn, moved.get(axis)));
        }
        return sides;
    }

    private CutPart.Side side(String joint, Box box, int axis, double drawn, double by) {
        int own = Wanted.boardAxis(placing, axis);
        double at = placing.toBoard(new Vector3d(box.centre()).setComponent(axis, drawn))
                .get(own);
        double centre = placing.toBoard(box.centre()).get(own);
        int waste = centre > at ? +1 : -1;
        for (SetOut.Marked m : out.marked(joint)) {
            if (m.side().axis() != own || m.line() == null) continue;
            if (m.side().waste() == 0 && Math.abs(m.side().at() - centre) < FLAT) {
                double off = side(m, placing.toBoard(box)).orElseThrow().middle()
                        - box.centre().get(axis);
                return CutPart.Side.straight(axis, drawn, drawn + off + by);
            }
            if (m.side().waste() == waste && Math.abs(m.side().at() - at) < FLAT) {
                return leaning(
                        m,
                        axis,
                        drawn,
                        side(m, placing.toBoard(box)).orElseThrow().middle(),
                        by);
            }
        }
        return CutPart.Side.straight(axis, drawn, job(own, at) + by);
    }

    /** Where a side is cut along its lines: at each place along the nearest of them. */
    private CutPart.Side leaning(SetOut.Marked m, int axis, double drawn, double middle, double by) {
        double lost = -m.side().waste() * lost(m.round());
        return new CutPart.Side(axis, drawn, middle + by, point -> {
            Vector3d p = placing.toBoard(point);
            double least = m.round().stream().mapToDouble(l -> away(l, p)).min().orElse(0);
            double at = m.round().stream()
                    .filter(l -> away(l, p) <= least + FLAT)
                    .mapToDouble(l -> l.at(p.get(l.runs()), board()))
                    .average()
                    .orElseThrow();
            return job(m.side().axis(), at + lost) - middle;
        });
    }

    /** How deep a place of the board lies below the surface that carries a line. */
    private double away(TrueLine line, Vector3dc p) {
        Surface on = line.on();
        return Math.abs(p.get(on.axis()) - (on.sign() > 0 ? board().size().along(on.axis()) : 0));
    }

    /** A board coordinate along the job axis that its board axis lies on, the board grown about its middle. */
    private double job(int axis, double at) {
        double middle = board().size().along(axis) / 2;
        double times = axis == 0 ? 1 : axis == 1 ? grown.width() : grown.thickness();
        return placing.toJob(axis, middle + (at - middle) * times);
    }
}
