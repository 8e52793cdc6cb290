package org.marktwice.rulebook;

import java.util.List;
import java.util.Optional;
import org.joml.Vector3d;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Pair;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Turn;
import org.marktwice.timber.Box;

/** One board of a pair of opposite parts, marked and turned. */
record HandedBoard(Workpiece piece, Part part, Turn turn, Mark faceSide, Mark faceEdge) {

    /** Empty until a board is named as the part, carries both marks on adjoining surfaces, and is turned. */
    static Optional<HandedBoard> of(Situation situation, Part part) {
        for (Workpiece w : Workpiece.toBeMarked(situation)) {
            if (w.part() == null || !w.part().id().equals(part.id())) continue;
            Optional<HandedBoard> handed = of(w, part);
            if (handed.isPresent()) return handed;
        }
        return Optional.empty();
    }

    private static Optional<HandedBoard> of(Workpiece w, Part part) {
        if (w.placing().isEmpty() || w.faceSide().isEmpty() || w.faceEdge().isEmpty()) return Optional.empty();
        Mark side = w.faceSide().get();
        Mark edge = w.faceEdge().get();
        if (!side.on().adjoins(edge.on())) return Optional.empty();
        return Optional.of(new HandedBoard(w, part, w.placing().get().turn(), side, edge));
    }

    /** The direction as a mirror across the pair shows it. */
    static Direction mirror(Direction d, Pair pair) {
        return d.axis() == pair.across().ordinal() ? d.opposite() : d;
    }

    String board() {
        return piece.board().id();
    }

    Direction sideLooks() {
        return turn.of(faceSide.on());
    }

    Direction edgeLooks() {
        return turn.of(faceEdge.on());
    }

    boolean asDrawn() {
        return part.faceSide().contains(sideLooks()) && part.faceEdge().contains(edgeLooks());
    }

    /** +1 or −1: two pieces made alike from their marks have the same, seen along the same axis. */
    long hand() {
        Vector3d along = new Vector3d().setComponent(part.length().ordinal(), 1);
        return Math.round(
                new Vector3d(sideLooks().unit()).cross(edgeLooks().unit()).dot(along));
    }

    /** The direction at the low end of its length: the bottom of what stands, the left of what lies across. */
    Direction low() {
        return Direction.on(part.length().ordinal(), -1);
    }

    int decidedAt() {
        int turned = piece.state().turned().map(t -> t.step()).orElse(0);
        return Math.max(turned, Math.max(faceSide.step(), faceEdge.step()));
    }

    /** @param opens where the joint would open if the board were set out from its marks like its mate */
    record Slip(String joint, Direction opens, Direction wanted) {}

    /** The first joint that would come on the wrong side if this board were set out from its marks as its mate is from its own. */
    Optional<Slip> slip(Pair pair, HandedBoard mate) {
        return piece.situation().scenario().drawing().cuts(part).stream()
                .flatMap(cut -> opens(cut.boxes(), part)
                        .flatMap(wanted -> carried(mirror(wanted, pair), mate)
                                .filter(opens -> opens != wanted)
                                .map(opens -> new Slip(cut.joint(), opens, wanted)))
                        .stream())
                .findFirst();
    }

    /** The direction across the part's thickness or width to which a cut opens at one side only. */
    static Optional<Direction> opens(List<Box> cut, Part part) {
        Box whole = part.box();
        for (int boardAxis = 2; boardAxis >= 1; boardAxis--) {
            int axis = part.axis(boardAxis).ordinal();
            boolean low = cut.stream().anyMatch(b -> b.min(axis) - whole.min(axis) < 1e-6);
            boolean high = cut.stream().anyMatch(b -> whole.max(axis) - b.max(axis) < 1e-6);
            if (low != high) return Optional.of(Direction.on(axis, low ? -1 : 1));
        }
        return Optional.empty();
    }

    /** Where the surface of this board looks that stands to its marks as the mate's surface looking that way does to its own. */
    private Optional<Direction> carried(Direction onMate, HandedBoard mate) {
        if (onMate == mate.sideLooks()) return Optional.of(sideLooks());
        if (onMate == mate.sideLooks().opposite())
            return Optional.of(sideLooks().opposite());
        if (onMate == mate.edgeLooks()) return Optional.of(edgeLooks());
        if (onMate == mate.edgeLooks().opposite())
            return Optional.of(edgeLooks().opposite());
        return Optional.empty();
    }
}
