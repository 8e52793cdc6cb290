package org.marktwice.timber;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Saws logs of one species through and through into boards of one thickness, one after another until they are used up,
 * and planes them. What lies farthest from the pith comes flat-sawn, what lies beside it quarter-sawn; no board holds the
 * pith. Boards never share wood, and neighbours in a log share the branches between them: their facing sides were a kerf
 * and two planings apart, and can be book-matched.
 *
 * <p>The allowances are defaults of this program's own. The same seed gives the same boards on every machine.
 */
public final class Sawmill {
    /** The largest board that there are logs for. */
    public static final Size LARGEST = new Size(4000, 400, 120);

    /** What the saw turns into dust, millimetres. */
    static final double KERF = 3;
    /** What the plane takes off each side, millimetres. */
    static final double PLANING = 2;
    /** Wood nearer to the pith than this, in millimetres, is not used. */
    static final double HEART = 20;
    /** Nor is what lies nearer to the bark. */
    static final double SAPWOOD_EDGE = 10;

    private static final double LOG_LENGTH = 4200;
    private static final double THINNEST = 130;
    private static final double THICKEST = 190;
    /** Planks on each side of the heart that a log has room for at least. */
    private static final int LAYERS = 3;
    /** How far along the log from the last cut a board may begin, millimetres. */
    private static final double[] SLIDES = {0, 20, 40, 60, 80, 100, 120, 140, 160, 180, 200};
    /** A board that costs no more than this is taken without looking farther. */
    private static final double GOOD_ENOUGH = 0.05;
    /** Logs looked through for one board, before a pruned one is fetched. */
    private static final int LOGS = 6;

    private final Species species;
    private final double thickness;
    private final double widest;
    private final double knotty;
    private final double logLength;
    private final Chance chance;
    private @Nullable Log log;
    private List<Lane> lanes = List.of();

    /**
     * @param widest width of the widest board that will be asked for, millimetres
     * @param knotty how near to the crown the logs are cut, 0 to 1
     */
    public Sawmill(Species species, double thickness, double widest, double knotty, Chance chance) {
        this(species, thickness, widest, knotty, LOG_LENGTH, chance);
    }

    private Sawmill(Species species, double thickness, double widest, double knotty, double logLength, Chance chance) {
        this.species = species;
        this.thickness = thickness;
        this.widest = widest;
        this.knotty = knotty;
        this.logLength = logLength;
        this.chance = chance;
    }

    /** For a few boards of one size alone: from logs hardly longer than these, which are grown so much the quicker. */
    public static Sawmill forFew(Species species, Size size, double knotty, Chance chance) {
        double length = size.length() + SLIDES[SLIDES.length - 1];
        return new Sawmill(species, size.thickness(), size.width(), knotty, length, chance);
    }

    /** Where in the section boards lie one behind another, and how far along the log they have been cut. */
    private static final class Lane {
        final double z;
        final double fromY;
        final double toY;
        double used;

        Lane(double z, double fromY, double toY) {
            this.z = z;
            this.fromY = fromY;
            this.toY = toY;
        }
    }

    /** A box of the log's frame that a board can come from. */
    private record Candidate(Lane lane, Box box) {}

    private record Cut(Candidate from, SawnBoard board) {}

    /**
     * The next board: of those that the log has left, the one that costs least, or the first that costs hardly anything.
     *
     * @param like what is known of the board already: all but pith, rings and knots, which are left open
     * @param cost of a board, 0 or above; infinite where it won't do, so that another log is fetched
     */
    public SawnBoard saw(Board.Facts like, SawnBoard.Lie lie, ToDoubleFunction<Board> cost) {
        return saw(like, lie, pith -> true, cost);
    }

    /** The same, of those boards alone that lie so about their pith; this is asked before any knot is looked at. */
    public SawnBoard saw(Board.Facts like, SawnBoard.Lie lie, Predicate<Pith> about, ToDoubleFunction<Board> cost) {
        for (int logs = 0; ; logs++) {
            boolean last = logs > LOGS;
            if (logs > 0 || log == null) fetch(last);
            List<Candidate> candidates = candidates(like.size());
            candidates.removeIf(c -> !about.test(SawnBoard.pith(c.box(), lie)));
            Cut best = cheapest(candidates, like, lie, cost);
            if (best == null && last) best = outermost(candidates, like, lie);
            if (best == null) continue;
            best.from().lane().used = best.from().box().max(0) + KERF;
            return best.board();
        }
    }

    private @Nullable Cut cheapest(
            List<Candidate> candidates, Board.Facts like, SawnBoard.Lie lie, ToDoubleFunction<Board> cost) {
        Cut best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Candidate candidate : candidates) {
            SawnBoard sawn = cut(like, candidate.box(), lie);
            double of = cost.applyAsDouble(sawn.board());
            if (of >= least) continue;
            best = new Cut(candidate, sawn);
            least = of;
            if (least <= GOOD_ENOUGH) break;
        }
        return best;
    }

    /** All that can still be wrong with a board of a pruned log is its cup, and this one has the least. */
    private Cut outermost(List<Candidate> candidates, Board.Facts like, SawnBoard.Lie lie) {
        Candidate best = candidates.stream()
                .max(Comparator.comparingDouble(
                        c -> StrictMath.abs(c.box().min(2) + c.box().max(2))))
                .orElseThrow(() -> new IllegalArgumentException("no log is large enough for " + like.size()));
        return new Cut(best, cut(like, best.box(), lie));
    }

    private void fetch(boolean pruned) {
        double layers = HEART + LAYERS * (thickness + 2 * PLANING + KERF);
        double needed = StrictMath.ceil(StrictMath.sqrt(layers * layers + widest * widest / 4) + SAPWOOD_EDGE);
        double radius = Math.max(chance.whole((int) THINNEST, (int) THICKEST), needed);
        log = Log.grow(species, radius, logLength, knotty, pruned, chance.split());
        lanes = lanes(radius);
    }

    /** From the heart outwards. */
    private List<Lane> lanes(double radius) {
        List<Lane> all = new ArrayList<>();
        double usable = radius - SAPWOOD_EDGE;
        double beside = half(usable, thickness / 2);
        if (thickness / 2 + PLANING <= HEART) {
            all.add(new Lane(-thickness / 2, HEART, beside));
            all.add(new Lane(-thickness / 2, -beside, -HEART));
        }
        for (double z = HEART + PLANING; z + thickness < usable; z += thickness + 2 * PLANING + KERF) {
            double half = half(usable, z + thickness);
            all.add(new Lane(Chance.tenth(z), -half, half));
            all.add(new Lane(Chance.tenth(-z - thickness), -half, half));
        }
        return all;
    }

    /** Half the width of a section at the distance z from the pith, in millimetres. */
    private static double half(double radius, double z) {
        return StrictMath.sqrt(radius * radius - z * z);
    }

    private List<Candidate> candidates(Size size) {
        int first = chance.whole(0, lanes.size() - 1);
        List<Lane> order = new ArrayList<>();
        for (int i = 0; i < lanes.size(); i++) order.add(lanes.get((first + i) % lanes.size()));
        // Where least has been cut off comes first, so that the boards of a job lie near one another in the log.
        order.sort(Comparator.comparingDouble(lane -> lane.used));
        List<Candidate> all = new ArrayList<>();
        for (Lane lane : order) {
            if (lane.toY - lane.fromY < size.width()) continue;
            for (double slide : SLIDES) {
                double x = Chance.tenth(lane.used + slide);
                double y = chance.tenths(lane.fromY, lane.toY - size.width());
                if (x + size.length() > logLength) continue;
                double z = lane.z;
                all.add(new Candidate(
                        lane, Box.of(x, y, z, x + size.length(), y + size.width(), z + size.thickness())));
            }
        }
        return all;
    }

    private SawnBoard cut(Board.Facts like, Box box, SawnBoard.Lie lie) {
        Log from = Objects.requireNonNull(log);
        Pith pith = SawnBoard.pith(box, lie);
        List<Knot> knots = new ArrayList<>();
        for (Knot branch : from.branches()) {
            Knot knot = SawnBoard.knot(branch, "k" + (knots.size() + 1), box, lie);
            if (KnotReach.of(knot, pith, like.size()).isInside()) knots.add(knot);
        }
        Board board = Board.of(new Board.Facts(
                like.id(),
                Stuff.TIMBER,
                species,
                like.size(),
                like.planedAt(),
                like.moisture(),
                like.dressed(),
                pith,
                from.ringWidth(),
                knots,
                like.shape(),
                like.seed()));
        return new SawnBoard(board, from, box, lie);
    }
}
