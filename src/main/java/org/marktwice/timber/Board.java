package org.marktwice.timber;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A board: the box {@code 0..length × 0..width × 0..thickness} of its right-handed frame, with what the tree and the
 * machine put into it. Immutable; the knots' bodies and their traces are computed once, when first asked for.
 */
public final class Board {
    /** Width and thickness that differ by no more than this count as square stock, in millimetres. */
    public static final double SIZE_TOLERANCE = 0.5;

    /** Half a millimetre written in decimals is still half a millimetre. */
    private static final double SLACK = 1e-6;

    private final Facts facts;
    private volatile @Nullable List<KnotBody> bodies;
    private volatile @Nullable List<Trace> traces;
    private volatile @Nullable List<Double> departures;
    private volatile @Nullable Seasoned now;
    private volatile @Nullable TrueForm form;

    /** Whether a width or thickness passes for another, millimetres. */
    public static boolean sameSize(double one, double other) {
        return Math.abs(one - other) <= SIZE_TOLERANCE + SLACK;
    }

    private Board(Facts facts) {
        this.facts = facts;
    }

    public static Board of(Facts facts) {
        return new Board(facts);
    }

    /**
     * What a board is given as; every other figure of it is computed from these.
     *
     * @param id the letter on the rack
     * @param stuff timber, or sheet stuff, which has no pith, knots or moisture
     * @param species null for sheet stuff
     * @param planedAt moisture in percent at which it was planed true
     * @param moisture moisture now, in percent
     * @param dressed the surfaces that are planed; the others are as sawn
     * @param pith null for sheet stuff
     * @param ringWidth mean width of the annual rings, in millimetres
     * @param seed of the figure's slight waviness; it never changes a verdict
     */
    public record Facts(
            String id,
            Stuff stuff,
            @Nullable Species species,
            Size size,
            double planedAt,
            double moisture,
            Set<Surface> dressed,
            @Nullable Pith pith,
            double ringWidth,
            List<Knot> knots,
            Shape shape,
            long seed) {
        public Facts {
            dressed = Set.copyOf(dressed);
            knots = List.copyOf(knots);
        }
    }

    public Facts facts() {
        return facts;
    }

    public String id() {
        return facts.id();
    }

    public Size size() {
        return facts.size();
    }

    /** Empty for sheet stuff. */
    public Optional<Species> species() {
        return Optional.ofNullable(facts.species());
    }

    /** Empty for sheet stuff. */
    public Optional<Pith> pith() {
        return Optional.ofNullable(facts.pith());
    }

    public List<Knot> knots() {
        return facts.knots();
    }

    public Optional<Knot> knot(String knotId) {
        return knots().stream().filter(k -> k.id().equals(knotId)).findFirst();
    }

    public Shape shape() {
        return facts.shape();
    }

    public boolean isSheet() {
        return facts.stuff() == Stuff.SHEET;
    }

    public boolean isSquare() {
        return size().isSquare(SIZE_TOLERANCE);
    }

    public boolean isDressed(Surface surface) {
        return facts.dressed().contains(surface);
    }

    /** Whether the surface can be a face side: a broad face, or any long surface of square stock. */
    public boolean isBroad(Surface surface) {
        return surface.isFace() || (surface.isEdge() && isSquare());
    }

    /** Whether the surface can be a face edge: an edge, or any long surface of square stock. */
    public boolean isNarrow(Surface surface) {
        return surface.isEdge() || (surface.isFace() && isSquare());
    }

    /** The extent of a surface's first coordinate, in millimetres. */
    public double uExtent(Surface surface) {
        return size().along(surface.uAxis());
    }

    /** The extent of a surface's second coordinate, in millimetres. */
    public double vExtent(Surface surface) {
        return size().along(surface.vAxis());
    }

    /** The parts of the knots that lie inside the board, in the order of {@link #knots()}. */
    public List<KnotBody> bodies() {
        List<KnotBody> known = bodies;
        if (known == null) {
            known = knots().stream().map(k -> KnotBody.of(k, facts)).toList();
            bodies = known;
        }
        return known;
    }

    /** Where knots break through the surfaces, by knot and then by surface. */
    public List<Trace> traces() {
        List<Trace> known = traces;
        if (known == null) {
            known = bodies().stream().flatMap(b -> b.traces().stream()).toList();
            traces = known;
        }
        return known;
    }

    public List<Trace> traces(Surface surface) {
        return traces().stream().filter(t -> t.surface() == surface).toList();
    }

    /** At the moisture that it has now. */
    Seasoned now() {
        Seasoned known = now;
        if (known == null) {
            known = Seasoned.of(this, facts.moisture());
            now = known;
        }
        return known;
    }

    /** The shape that it has now. */
    TrueForm form() {
        TrueForm known = form;
        if (known == null) {
            known = new TrueForm(this, now());
            form = known;
        }
        return known;
    }

    /** Each surface's departure from a plane, in the surfaces' order. */
    List<Double> departures() {
        List<Double> known = departures;
        if (known == null) {
            known = Stream.of(Surface.values())
                    .map(s -> Trueness.departureAfresh(this, s))
                    .toList();
            departures = known;
        }
        return known;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return this == other || other instanceof Board b && facts.equals(b.facts);
    }

    @Override
    public int hashCode() {
        return Objects.hash(id(), size());
    }

    @Override
    public String toString() {
        return "board " + id();
    }
}
