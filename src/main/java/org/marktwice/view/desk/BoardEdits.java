package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.joml.Vector3dc;
import org.jspecify.annotations.Nullable;
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
        return changed(board, f -> f.id = letter);
    }

    static Board of(Board board, Species species) {
        return changed(board, f -> f.species = species);
    }

    static Board sized(Board board, Size size) {
        return changed(board, f -> f.size = size);
    }

    /** @param planedAt percent; and what it is now */
    static Board dried(Board board, double planedAt, double moisture) {
        return changed(board, f -> {
            f.planedAt = planedAt;
            f.moisture = moisture;
        });
    }

    static Board dressed(Board board, Set<Surface> dressed) {
        return changed(board, f -> f.dressed = dressed);
    }

    /** The knots grow out of the pith, and go with it. */
    static Board pith(Board board, Pith pith) {
        return changed(board, f -> f.pith = pith);
    }

    static Board ringed(Board board, double ringWidth) {
        return changed(board, f -> f.ringWidth = ringWidth);
    }

    static Board knotted(Board board, List<Knot> knots) {
        return changed(board, f -> f.knots = knots);
    }

    static Board shaped(Board board, Shape shape) {
        return changed(board, f -> f.shape = shape);
    }

    private static Board changed(Board board, Consumer<Changing> change) {
        Changing facts = new Changing(board.facts());
        change.accept(facts);
        return facts.board();
    }

    /** A board's facts while one of them is being changed. */
    private static final class Changing {
        private final Board.Facts before;
        private String id;
        private @Nullable Species species;
        private Size size;
        private double planedAt;
        private double moisture;
        private Set<Surface> dressed;
        private @Nullable Pith pith;
        private double ringWidth;
        private List<Knot> knots;
        private Shape shape;

        Changing(Board.Facts f) {
            before = f;
            id = f.id();
            species = f.species();
            size = f.size();
            planedAt = f.planedAt();
            moisture = f.moisture();
            dressed = f.dressed();
            pith = f.pith();
            ringWidth = f.ringWidth();
            knots = f.knots();
            shape = f.shape();
        }

        Board board() {
            return Board.of(new Board.Facts(
                    id,
                    before.stuff(),
                    species,
                    size,
                    planedAt,
                    moisture,
                    dressed,
                    pith,
                    ringWidth,
                    knots,
                    shape,
                    before.seed()));
        }
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
