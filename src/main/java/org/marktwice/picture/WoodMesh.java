package org.marktwice.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Joint;
import org.marktwice.fit.CutPart;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;

/**
 * A part as it was cut, as flat pieces of its outside and of what its cuts lay bare, in the job's frame: what it is out by
 * may be drawn larger than it is, and the part may be drawn apart from the others.
 */
final class WoodMesh {
    private static final double FLAT = 1e-6;
    /** A hole's mouth is drawn so far before the wood that it is seen, millimetres. */
    private static final double PROUD = 0.05;

    private static final int ROUND = 28;

    /**
     * A piece of a side.
     *
     * @param corners four, round about
     * @param axis the job axis that it looks along, {@code sign} which way
     * @param surface the surface of the board that looks that way
     * @param outer whether it lies on that surface; else it was laid bare
     * @param onBoard the corners in the board's frame, as far as they show which wood is seen
     * @param joint whose cut laid it bare; null on the outside
     */
    record Piece(
            Vector3d[] corners,
            int axis,
            int sign,
            Surface surface,
            boolean outer,
            Vector3d[] onBoard,
            @Nullable String joint) {}

    /** An edge of the solid. */
    record Edge(Vector3d from, Vector3d to) {}

    private final CutPart part;
    private final double times;
    private final Vector3dc apart;
    private final double[][] at = new double[3][];
    private final Box whole;
    private final List<Gone> gone = new ArrayList<>();
    private final List<Gone> bored = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Edge> edges = new ArrayList<>();

    private record Gone(CutPart.Block block, Box box) {}

    /** The mouth of a bored hole, a ring of places round about. @param axis the way it is bored, {@code sign} out of the wood */
    record Mouth(List<Vector3d> ring, Vector3d middle, int axis, int sign, String joint) {}

    private WoodMesh(CutPart part, double times, Vector3dc apart) {
        this.part = part;
        this.times = times;
        this.apart = apart;
        this.whole = box(part.whole()).orElse(part.part().box());
        for (CutPart.Block block : part.gone()) {
            box(block).ifPresent(b -> (isBored(block) ? bored : gone).add(new Gone(block, b)));
        }
        List<Box> all = new ArrayList<>(List.of(whole));
        gone.forEach(g -> g.box().overlap(whole, FLAT).ifPresent(all::add));
        for (int axis = 0; axis < 3; axis++) at[axis] = PartSolid.coordinates(all, axis);
        build();
    }

    /** @param times how many times over it is drawn what the part is out by; @param apart how far it is drawn from its place */
    static WoodMesh of(CutPart part, double times, Vector3dc apart) {
        return new WoodMesh(part, times, apart);
    }

    CutPart part() {
        return part;
    }

    List<Piece> pieces() {
        return pieces;
    }

    List<Edge> edges() {
        return edges;
    }

    private boolean isBored(CutPart.Block block) {
        String joint = block.joint();
        return joint != null && part.placing().drawing().joint(joint).orElseThrow() instanceof Joint.Dowelled;
    }

    /** Bored holes are round, and only their mouths are seen. */
    List<Mouth> mouths() {
        List<Mouth> mouths = new ArrayList<>();
        for (Gone hole : bored) {
            for (int axis = 0; axis < 3; axis++) {
                for (int sign : new int[] {-1, +1}) {
                    double out = sign > 0 ? whole.max(axis) : whole.min(axis);
                    double end = sign > 0 ? hole.box().max(axis) : hole.box().min(axis);
                    if (Math.abs(out - end) < FLAT) mouths.add(mouth(hole, axis, sign, out));
                }
            }
        }
        return mouths;
    }

    private Mouth mouth(Gone hole, int axis, int sign, double at) {
        int b = (axis + 1) % 3;
        int c = (axis + 2) % 3;
        Vector3d middle = new Vector3d(hole.box().centre()).setComponent(axis, at + sign * PROUD);
        List<Vector3d> ring = new ArrayList<>();
        for (int i = 0; i < ROUND; i++) {
            double turn = 2 * Math.PI * i / ROUND;
            Vector3d p = new Vector3d(middle);
            p.setComponent(b, p.get(b) + hole.box().extent(b) / 2 * Math.cos(turn));
            p.setComponent(c, p.get(c) + hole.box().extent(c) / 2 * Math.sin(turn));
            ring.add(placed(p));
        }
        return new Mouth(
                ring,
                placed(middle),
                axis,
                sign,
                Objects.requireNonNull(hole.block().joint()));
    }

    private Optional<Box> box(CutPart.Block block) {
        double[] low = new double[3];
        double[] high = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            low[axis] = block.side(axis, false).shown(times);
            high[axis] = block.side(axis, true).shown(times);
            if (high[axis] - low[axis] < FLAT) return Optional.empty();
        }
        return Optional.of(Box.of(low[0], low[1], low[2], high[0], high[1], high[2]));
    }

    private void build() {
        List<Box> full = new ArrayList<>();
        for (int i = 0; i < at[0].length - 1; i++) {
            for (int j = 0; j < at[1].length - 1; j++) {
                for (int k = 0; k < at[2].length - 1; k++) {
                    int[] cell = {i, j, k};
                    if (!isWood(cell)) continue;
                    full.add(cell(cell));
                    for (int axis = 0; axis < 3; axis++) {
                        face(cell, axis, -1);
                        face(cell, axis, +1);
                    }
                }
            }
        }
        for (PartSolid.Edge edge : PartSolid.edges(full)) {
            edges.add(new Edge(placed(edge.from()), placed(edge.to())));
        }
    }

    private Box cell(int[] c) {
        return Box.of(at[0][c[0]], at[1][c[1]], at[2][c[2]], at[0][c[0] + 1], at[1][c[1] + 1], at[2][c[2] + 1]);
    }

    private boolean isInside(int[] c) {
        for (int axis = 0; axis < 3; axis++) if (c[axis] < 0 || c[axis] > at[axis].length - 2) return false;
        return true;
    }

    private Optional<Gone> taking(int[] c) {
        Vector3dc middle = cell(c).centre();
        return gone.stream().filter(g -> g.box().contains(middle, 0)).findFirst();
    }

    private boolean isWood(int[] c) {
        return isInside(c) && taking(c).isEmpty();
    }

    private void face(int[] c, int axis, int sign) {
        int[] next = c.clone();
        next[axis] += sign;
        if (isWood(next)) return;
        Box cell = cell(c);
        Vector3d[] corners = corners(cell, axis, sign > 0 ? cell.max(axis) : cell.min(axis));
        Vector3d[] onBoard = new Vector3d[4];
        for (int i = 0; i < 4; i++) {
            onBoard[i] = part.placing().toBoard(corners[i]);
            corners[i] = placed(corners[i]);
        }
        boolean outer = !isInside(next);
        String joint = outer ? null : taking(next).map(g -> g.block().joint()).orElse(null);
        Surface surface = part.placing().turn().looking(org.marktwice.drawing.Direction.on(axis, sign));
        pieces.add(new Piece(corners, axis, sign, surface, outer, onBoard, joint));
    }

    /** The corners of a box's side, round about. */
    static Vector3d[] corners(Box box, int axis, double at) {
        int b = (axis + 1) % 3;
        int c = (axis + 2) % 3;
        double[][] round = {
            {box.min(b), box.min(c)}, {box.max(b), box.min(c)}, {box.max(b), box.max(c)}, {box.min(b), box.max(c)}
        };
        Vector3d[] corners = new Vector3d[4];
        for (int i = 0; i < 4; i++) {
            corners[i] = new Vector3d().setComponent(axis, at);
            corners[i].setComponent(b, round[i][0]).setComponent(c, round[i][1]);
        }
        return corners;
    }

    /** A corner of the straight solid where its sides lean to. */
    private Vector3d placed(Vector3dc corner) {
        Vector3d out = new Vector3d(corner).add(apart);
        for (int axis = 0; axis < 3; axis++) {
            out.setComponent(axis, out.get(axis) + times * lean(axis, corner));
        }
        return out;
    }

    private double lean(int axis, Vector3dc corner) {
        double here = corner.get(axis);
        for (boolean high : new boolean[] {false, true}) {
            CutPart.Side side = part.whole().side(axis, high);
            if (Math.abs(side.shown(times) - here) < FLAT) return side.lean().at(corner);
        }
        return gone.stream()
                .flatMap(g ->
                        Stream.of(false, true).map(high -> new Near(g, g.block().side(axis, high))))
                .filter(n -> Math.abs(n.side().shown(times) - here) < FLAT)
                .min(Comparator.comparingDouble(n -> n.away(corner)))
                .map(n -> n.side().lean().at(corner))
                .orElse(0.0);
    }

    private record Near(Gone of, CutPart.Side side) {
        double away(Vector3dc p) {
            Vector3d in = new Vector3d(p).max(of.box().min()).min(of.box().max());
            return in.distance(p);
        }
    }
}
