package org.marktwice.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.bench.Marker;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * How a careful hand sets a board out, as the drawing has it: from one squared end, the rule laid down once; squared round
 * from face side and face edge; what receives a mate struck from that mate; gauged from face side and face edge; the waste
 * shaded; measured once more at the end.
 */
public final class WorkedSettingOut {
    /** An action that only wants its time, in seconds. */
    public interface Timed {
        Action at(double t);
    }

    private final Placing placing;
    private final Board board;
    private final Map<String, String> boards;
    private final Surface side;
    private final Surface edge;
    private final Surface datumEnd;
    private final int before;
    private final List<Timed> steps = new ArrayList<>();
    private Datum datum;
    private double datumAt;

    private WorkedSettingOut(Placing placing, Map<String, String> boards, int before) {
        this.placing = placing;
        this.board = placing.board();
        this.boards = boards;
        this.before = before;
        Part part = placing.part();
        this.side = reference(placing, part.faceSide()).orElse(Surface.FACE_1);
        this.edge = reference(placing, part.faceEdge()).orElse(Surface.EDGE_1);
        // the end that is low or left in the job: opposite parts are then set out from the same one
        this.datumEnd = placing.turn().looking(Direction.on(part.length().ordinal(), -1));
        this.datum = new Datum.End(datumEnd);
        this.datumAt = datumEnd == Surface.END_1 ? 0 : board.size().length();
    }

    /**
     * The steps for one board.
     *
     * @param boards the board of each part, by the part's id: mates are struck from them
     * @param before how many actions there have been: lines refer to earlier ones by their steps
     */
    public static List<Timed> steps(Placing placing, Map<String, String> boards, int before) {
        WorkedSettingOut work = new WorkedSettingOut(placing, boards, before);
        work.setOut();
        return work.steps;
    }

    /** The surface that carries a mark on a board that lies so: planed, and looking where the drawing lets it look. */
    public static Optional<Surface> reference(Placing placing, List<Direction> wanted) {
        return wanted.stream()
                .map(placing.turn()::looking)
                .filter(placing.board()::isDressed)
                .findFirst();
    }

    private void setOut() {
        List<CutSide> sides = CutSides.of(placing);
        cutToLength(sides);
        List<String> joints = sides.stream()
                .flatMap(s -> Stream.ofNullable(s.joint()))
                .distinct()
                .toList();
        for (String joint : joints) {
            joint(
                    placing.drawing().joint(joint).orElseThrow(),
                    sides.stream().filter(s -> joint.equals(s.joint())).toList());
        }
        if (!steps.isEmpty()) check(sides);
    }

    private void cutToLength(List<CutSide> sides) {
        List<CutSide> ends =
                sides.stream().filter(CutSide::isEnd).sorted(fromDatum()).toList();
        for (CutSide end : ends) {
            int line = round(end, Math.abs(end.at() - datumAt), null, datum);
            boolean datumIsHere = end.waste() == datumEnd.sign();
            if (!datumIsHere) continue;
            datum = new Datum.Step(line);
            datumAt = end.at();
        }
    }

    private Comparator<CutSide> fromDatum() {
        return Comparator.comparingDouble(s -> Math.abs(s.at() - datumAt));
    }

    private void joint(Joint joint, List<CutSide> sides) {
        List<CutSide> squared =
                sides.stream().filter(CutSide::isSquared).sorted(fromDatum()).toList();
        List<Integer> shoulders = new ArrayList<>();
        for (CutSide s : squared) {
            Optional<String> mate = shoulders.size() == 1 ? mate(joint, squared) : Optional.empty();
            shoulders.add(
                    mate.isPresent()
                            ? round(s, 0, mate.get(), new Datum.Step(shoulders.get(0)))
                            : round(s, Math.abs(s.at() - datumAt), null, datum));
        }
        List<Integer> gauged = new ArrayList<>();
        for (CutSide s : sides) {
            if (!s.isSquared()) gauged.addAll(gauge(s));
        }
        if (joint instanceof Joint.Dowelled) return;
        List<Integer> bounds =
                Stream.concat(shoulders.stream(), gauged.stream()).toList();
        if (bounds.size() < 2) return;
        int last = shoulders.size() == 1 ? gauged.get(0) : bounds.get(1);
        steps.add(t -> new Action.Waste(t, board.id(), joint.id(), bounds.get(0), last));
    }

    /** The mate that lies between two sides of a cut as it is; empty where it is itself cut there. */
    private Optional<String> mate(Joint joint, List<CutSide> squared) {
        String other = joint.in().equals(placing.part().id()) ? joint.takes() : joint.in();
        Part mate = placing.drawing().part(other).orElseThrow();
        double width = Math.abs(squared.get(1).at() - squared.get(0).at());
        double drawn = mate.box().extent(placing.part().length().ordinal());
        // held against the board it gives its whole width only
        return squared.size() == 2 && Math.abs(width - drawn) < 1e-6
                ? Optional.ofNullable(boards.get(other))
                : Optional.empty();
    }

    /** Struck on one surface, and squared round onto the others that it shows on. The step of the first line. */
    private int round(CutSide at, double distance, @Nullable String mate, Datum from) {
        List<Surface> surfaces = Stream.of(side, side.opposite(), edge, edge.opposite())
                .filter(at.shows()::contains)
                .toList();
        Surface first = surfaces.get(0);
        int main = line(first, from, mate == null ? (Double) distance : null, mate);
        for (Surface s : surfaces.subList(1, surfaces.size())) line(s, new Datum.Step(main), 0.0, null);
        return main;
    }

    private int line(Surface on, Datum from, @Nullable Double at, @Nullable String mate) {
        Surface stock = on.axis() == side.axis() ? edge : side;
        steps.add(t -> new Action.Line(t, board.id(), on, stock, from, at, mate, Marker.KNIFE));
        return before + steps.size();
    }

    private List<Integer> gauge(CutSide at) {
        Surface fence = at.axis() == side.axis() ? side : edge;
        Box part = placing.partInBoard();
        double set = Math.abs((fence.sign() > 0 ? part.max(at.axis()) : part.min(at.axis())) - at.at());
        List<Integer> struck = new ArrayList<>();
        for (Surface on : sorted(at.shows())) {
            steps.add(t -> new Action.Gauge(t, board.id(), on, fence, set));
            struck.add(before + steps.size());
        }
        return struck;
    }

    private static List<Surface> sorted(Set<Surface> surfaces) {
        return surfaces.stream().sorted().toList();
    }

    /** The first distance measured once more. */
    private void check(List<CutSide> sides) {
        double v = board.vExtent(side) / 2;
        double to = sides.stream()
                .filter(CutSide::isSquared)
                .mapToDouble(CutSide::at)
                .findFirst()
                .orElse(board.size().length() - datumAt);
        double from = Math.abs(to - datumAt) < 1e-6 ? board.size().length() / 2 : datumAt;
        steps.add(
                t -> new Action.Measure(t, board.id(), new SurfacePoint(side, from, v), new SurfacePoint(side, to, v)));
    }
}
