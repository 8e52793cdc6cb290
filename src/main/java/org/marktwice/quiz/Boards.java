package org.marktwice.quiz;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.timber.Board;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Sawmill;
import org.marktwice.timber.SawnBoard;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.Species;
import org.marktwice.timber.SpeciesTable;
import org.marktwice.timber.Stuff;
import org.marktwice.timber.Surface;

/**
 * Boards for questions, sawn from logs that are grown anew each time. Machined a little worse than a planing machine
 * would, so that the wrong surface matters.
 */
final class Boards {
    /** Pencil doesn't show on it. */
    private static final String DARK = "black-walnut";

    private final Chance chance;
    private final Species species;
    private final Sawmill mill;
    private final Size size;
    private int letter;

    private Boards(Chance chance, Size size, double knotty, double lively) {
        this.chance = chance;
        this.size = size;
        List<Species> known = SpeciesTable.all().stream()
                .filter(s -> s.tangential() - s.radial() >= lively && !s.id().equals(DARK))
                .toList();
        species = known.get(chance.whole(0, known.size() - 1));
        mill = Sawmill.forFew(species, size, knotty, chance.split());
    }

    /** @param knotty 0 to 1 */
    static Boards of(Chance chance, Size size, double knotty) {
        return new Boards(chance, size, knotty, 0);
    }

    /**
     * A board, of a species that moves enough to be asked about, that dries or takes up moisture so; logs are looked through
     * until there is one.
     *
     * @param planedAt at which it was planed true, and still is
     */
    static Board seasoned(Chance chance, Size size, double planedAt, Predicate<Board> so) {
        for (int tries = 0; tries < 1000; tries++) {
            Board board = planed(new Boards(chance, size, 0.2, 3).next(b -> 0), planedAt);
            if (so.test(board)) return board;
        }
        throw new IllegalStateException("a thousand boards, and none moves so");
    }

    /** A size fit for a short job, in whole millimetres. */
    static Size anySize(Chance chance) {
        return new Size(
                10 * chance.whole(24, 42),
                5 * chance.whole(14, 26),
                List.of(15, 18, 20, 21).get(chance.whole(0, 3)));
    }

    /** One with a knot in it where the log has one near. */
    Board next() {
        return next(b -> b.knots().isEmpty() ? 1 : 0);
    }

    /** The one of the log that costs least. */
    Board next(ToDoubleFunction<Board> cost) {
        return next(pith -> true, cost);
    }

    /** The first that lies so about its pith. */
    Board about(Predicate<Pith> about) {
        return next(about, b -> 0);
    }

    /** The same board, planed at this moisture, which it still has. */
    private static Board planed(Board board, double moisture) {
        Board.Facts f = board.facts();
        return Board.of(new Board.Facts(
                f.id(),
                f.stuff(),
                f.species(),
                f.size(),
                moisture,
                moisture,
                f.dressed(),
                f.pith(),
                f.ringWidth(),
                f.knots(),
                f.shape(),
                f.seed()));
    }

    /** Of those that lie so about their pith the one that costs least. */
    Board next(Predicate<Pith> about, ToDoubleFunction<Board> cost) {
        String id = String.valueOf((char) ('A' + (letter++ + chance.whole(0, 5)) % 26));
        double planedAt = chance.tenths(12, 14);
        Board.Facts blank = new Board.Facts(
                id,
                Stuff.TIMBER,
                species,
                size,
                planedAt,
                Chance.tenth(planedAt - chance.between(1, 2.5)),
                Set.copyOf(EnumSet.copyOf(Surface.LONG)),
                null,
                0,
                List.of(),
                shape(),
                chance.whole(0, 9999));
        return mill.saw(blank, SawnBoard.Lie.values()[chance.whole(0, 3)], about, cost)
                .board();
    }

    private Shape shape() {
        Map<Surface, Double> outOfSquare = new EnumMap<>(Surface.class);
        outOfSquare.put(Surface.EDGE_2, chance.tenths(0.2, 1));
        outOfSquare.put(Surface.END_1, chance.tenths(0.2, 0.8));
        double taper = chance.tenths(0.3, 0.9);
        return new Shape(0, 0, 0, chance.with(0.5) ? taper : -taper, chance.tenths(0.2, 0.4), outOfSquare);
    }

    static BoardState marked(Board board, Mark... marks) {
        return new BoardState(board, List.of(marks), null, null, null, List.of(), List.of(), List.of());
    }

    /** A face-side and a face-edge mark that point at the arris which they share, on any two surfaces that can bear them. */
    static Pair anyPair(Chance chance) {
        return pair(
                chance.with(0.5) ? Surface.FACE_1 : Surface.FACE_2, chance.with(0.5) ? Surface.EDGE_1 : Surface.EDGE_2);
    }

    static Pair pair(Surface side, Surface edge) {
        return new Pair(new Mark(Mark.Kind.FACE_SIDE, side, edge, 1), new Mark(Mark.Kind.FACE_EDGE, edge, side, 2));
    }

    record Pair(Mark side, Mark edge) {
        BoardState on(Board board) {
            return marked(board, side, edge);
        }
    }
}
