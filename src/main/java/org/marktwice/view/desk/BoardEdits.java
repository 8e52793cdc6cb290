package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.joml.Vector3dc;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.DraftPart;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.Species;
import org.marktwice.timber.SpeciesTable;
import org.marktwice.timber.Stuff;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** Changing a board that is drawn by hand; each gives another board. */
final class BoardEdits {
    /** A branch that runs nearly along the stem comes out nowhere near where one points, degrees. */
    private static final double LEAST_LEAN = 10;

    private BoardEdits() {}

    /** A planed board without knots that is long enough for the first timber part there is. */
    static Board fresh(Draft draft) {
        Size size = draft.parts().stream()
                .filter(p -> p.stuff() != PartStuff.SHEET)
                .map(DraftPart::part)
                .flatMap(Optional::stream)
                .map(Part::size)
                .map(s -> new Size(s.length() + 10, s.width(), s.thickness()))
                .findFirst()
                .orElse(new Size(310, 120, 18));
        return Board.of(new Board.Facts(
                letter(draft.boards()),
                Stuff.TIMBER,
                SpeciesTable.all().get(0),
                size,
                12.5,
                11,
                Set.copyOf(Surface.LONG),
                new Pith(Math.rint(size.width() / 2), -40),
                2.4,
                List.of(),
                Shape.TRUE,
                0));
    }

    /** The first letter that no board has. */
    static String letter(List<Board> boards) {
        for (int i = 0; ; i++) {
            String last = String.valueOf((char) ('A' + i % 26));
            String letter = i < 26 ? last : (char) ('A' + i / 26 - 1) + last;
            if (boards.stream().noneMatch(b -> b.id().equals(letter))) return letter;
        }
    }

    static Board named(Board board, String letter) {
        Board.Facts f = board.facts();
        return facts(
                f,
                letter,
                f.species(),
                f.size(),
                f.planedAt(),
                f.moisture(),
                f.dressed(),
                f.pith(),
                f.ringWidth(),
                f.knots(),
                f.shape());
    }

    static Board of(Board board, Species species) {
        Board.Facts f = board.facts();
        return facts(
                f,
                f.id(),
                species,
                f.size(),
                f.planedAt(),
                f.moisture(),
                f.dressed(),
                f.pith(),
                f.ringWidth(),
                f.knots(),
                f.shape());
    }

    static Board sized(Board board, Size size) {
        Board.Facts f = board.facts();
        return facts(
                f,
                f.id(),
                f.species(),
                size,
                f.planedAt(),
                f.moisture(),
                f.dressed(),
                f.pith(),
                f.ringWidth(),
                f.knots(),
                f.shape());
    }

    /** @param planedAt percent; and what it is now */
    static Board dried(Board board, double planedAt, double moisture) {
        Board.Facts f = board.facts();
        return facts(
                f,
                f.id(),
                f.species(),
                f.size(),
                planedAt,
                moisture,
                f.dressed(),
                f.pith(),
                f.ringWidth(),
                f.knots(),
                f.shape());
    }

    static Board dressed(Board board, Set<Surface> dressed) {
        Board.Facts f = board.facts();
        return facts(
                f,
                f.id(),
                f.species(),
                f.size(),
                f.planedAt(),
                f.moisture(),
                dressed,
                f.pith(),
                f.ringWidth(),
                f.knots(),
                f.shape());
    }

    /** The knots grow out of the pith, and go with it. */
    static Board pith(Board board, Pith pith) {
        Board.Facts f = board.facts();
        return facts(
                f,
                f.id(),
                f.species(),
                f.size(),
                f.planedAt(),
                f.moisture(),
                f.dressed(),
                pith,
                f.ringWidth(),
                f.knots(),
                f.shape());
    }

    static Board ringed(Board board, double ringWidth) {
        Board.Facts f = board.facts();
        return facts(
                f,
                f.id(),
                f.species(),
                f.size(),
                f.planedAt(),
                f.moisture(),
                f.dressed(),
                f.pith(),
                ringWidth,
                f.knots(),
                f.shape());
    }

    static Board knotted(Board board, List<Knot> knots) {
        Board.Facts f = board.facts();
        return facts(
                f,
                f.id(),
                f.species(),
                f.size(),
                f.planedAt(),
                f.moisture(),
                f.dressed(),
                f.pith(),
                f.ringWidth(),
                knots,
                f.shape());
    }

    static Board shaped(Board board, Shape shape) {
        Board.Facts f = board.facts();
        return facts(
                f,
                f.id(),
                f.species(),
                f.size(),
                f.planedAt(),
                f.moisture(),
                f.dressed(),
                f.pith(),
                f.ringWidth(),
                f.knots(),
                shape);
    }

    private static Board facts(
            Board.Facts f,
            String id,
            @org.jspecify.annotations.Nullable Species species,
            Size size,
            double planedAt,
            double moisture,
            Set<Surface> dressed,
            @org.jspecify.annotations.Nullable Pith pith,
            double ringWidth,
            List<Knot> knots,
            Shape shape) {
        return Board.of(new Board.Facts(
                id, f.stuff(), species, size, planedAt, moisture, dressed, pith, ringWidth, knots, shape, f.seed()));
    }

    /**
     * A knot whose branch comes out through a place, its lean, size and the rest as they are. Empty where that place is on
     * the pith itself, or on an end.
     */
    static Optional<Knot> through(Board board, Knot knot, SurfacePoint place) {
        if (board.pith().isEmpty() || place.surface().isEnd()) return Optional.empty();
        Pith pith = board.pith().get();
        Vector3dc at = place.in(board.size());
        double y = at.y() - pith.y();
        double z = at.z() - pith.z();
        double out = Math.hypot(y, z);
        if (out < 1) return Optional.empty();
        double lean = Math.max(LEAST_LEAN, Math.min(180 - LEAST_LEAN, knot.lean()));
        double azimuth = Math.toDegrees(Math.atan2(z, y));
        double x = at.x() - out / Math.tan(Math.toRadians(lean));
        return Optional.of(new Knot(
                knot.id(),
                tenth(x),
                tenth(azimuth),
                lean,
                knot.halfAngle(),
                knot.maxRadius(),
                knot.deadFrom(),
                knot.endsAt()));
    }

    /** A live knot, 16 mm across at most, out through a place; empty where there can be none. */
    static Optional<Knot> freshThrough(Board board, SurfacePoint place) {
        String id = "k1";
        for (int i = 2; board.knot(id).isPresent(); i++) id = "k" + i;
        return through(
                board, new Knot(id, 0, 0, 75, 5.5, 8, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY), place);
    }

    /** The board with a knot in the place of the one of its id, or beside the others. */
    static Board with(Board board, Knot knot) {
        List<Knot> knots = new ArrayList<>();
        boolean there = false;
        for (Knot k : board.knots()) {
            boolean same = k.id().equals(knot.id());
            knots.add(same ? knot : k);
            there |= same;
        }
        if (!there) knots.add(knot);
        return knotted(board, knots);
    }

    static Board without(Board board, String knotId) {
        return knotted(
                board,
                board.knots().stream().filter(k -> !k.id().equals(knotId)).toList());
    }

    /** To a tenth, without a negative zero. */
    static double tenth(double value) {
        return Math.rint(value * 10) / 10 + 0.0;
    }
}
