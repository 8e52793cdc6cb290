package org.marktwice.files;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.KnotBody;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.Species;
import org.marktwice.timber.SpeciesTable;
import org.marktwice.timber.Stuff;
import org.marktwice.timber.Surface;

/** A board object of a scenario or of a board file. */
final class BoardReader {
    static final List<String> KNOWN = List.of(
            "id", "stuff", "species", "size", "planedAt", "moisture", "dressed", "pith", "ringWidth", "knots", "shape");
    /** Mean ring width where a board doesn't say, millimetres: it shows in the figure only. */
    static final double RING_WIDTH = 2.5;

    private static final List<String> OF_TIMBER =
            List.of("species", "planedAt", "moisture", "pith", "ringWidth", "knots");
    private static final List<String> KNOT =
            List.of("id", "x", "azimuth", "lean", "halfAngle", "maxRadius", "deadFrom", "endsAt");
    private static final List<String> SHAPE = List.of("bow", "spring", "twist", "taper", "thickening", "outOfSquare");
    private static final Range RING = new Range(0, 100, true, false);
    private static final Range HALF_ANGLE = new Range(0, 90, true, true);
    private static final Range DEPARTURE = Range.of(-1000, 1000);
    private static final Range OFF_SQUARE = Range.of(-45, 45);

    private BoardReader() {}

    /** @param scenario the id of the scenario whose board it is; empty for a board on its own */
    static Board read(Fields in, String scenario) throws FileRefused {
        String id = Id.BOARD.read(in.need("id"));
        Optional<Json> word = in.get("stuff");
        Stuff stuff = word.isPresent() ? Values.word(word.get(), Stuff.values(), Stuff::id) : Stuff.TIMBER;
        long seed = seed(scenario + "/" + id);
        if (stuff == Stuff.TIMBER) return timber(in, id, seed);
        for (String name : OF_TIMBER) in.refuse(name, "a board of sheet stuff has none");
        return Board.of(new Board.Facts(
                id, stuff, null, size(in.need("size")), 0, 0, dressed(in), null, 0, List.of(), shape(in), seed));
    }

    private static Board timber(Fields in, String id, long seed) throws FileRefused {
        Board.Facts bare = new Board.Facts(
                id,
                Stuff.TIMBER,
                species(in.need("species")),
                size(in.need("size")),
                in.number("planedAt", Range.PERCENT),
                in.number("moisture", Range.PERCENT),
                dressed(in),
                pith(in.need("pith")),
                in.number("ringWidth", RING, RING_WIDTH),
                List.of(),
                shape(in),
                seed);
        List<Knot> knots = knots(in.get("knots").orElse(null), bare);
        return Board.of(with(bare, knots));
    }

    /** The same board with the seed of its figure that its name gives it. */
    static Board seeded(Board board, String scenario) {
        Board.Facts facts = board.facts();
        return Board.of(with(facts, facts.knots(), seed(scenario + "/" + facts.id())));
    }

    private static Board.Facts with(Board.Facts bare, List<Knot> knots) {
        return with(bare, knots, bare.seed());
    }

    private static Board.Facts with(Board.Facts bare, List<Knot> knots, long seed) {
        return new Board.Facts(
                bare.id(),
                bare.stuff(),
                bare.species(),
                bare.size(),
                bare.planedAt(),
                bare.moisture(),
                bare.dressed(),
                bare.pith(),
                bare.ringWidth(),
                knots,
                bare.shape(),
                seed);
    }

    static Size size(Json json) throws FileRefused {
        Fields in =
                Fields.of(json, "an object with length, width and thickness", List.of("length", "width", "thickness"));
        return new Size(
                in.number("length", Range.SIZE), in.number("width", Range.SIZE), in.number("thickness", Range.SIZE));
    }

    static Species species(Json json) throws FileRefused {
        return Values.word(json, SpeciesTable.all().toArray(Species[]::new), Species::id);
    }

    static Pith pith(Json json) throws FileRefused {
        Fields in = Fields.of(json, "an object with y and z", List.of("y", "z"));
        return new Pith(in.number("y", Range.POSITION), in.number("z", Range.POSITION));
    }

    static Set<Surface> dressed(Fields in) throws FileRefused {
        Optional<Json> json = in.get("dressed");
        if (json.isEmpty()) return Set.of(Surface.values());
        return Set.copyOf(Values.distinct(json.get(), "a list of surfaces", 0, BoardReader::surface));
    }

    static Surface surface(Json json) throws FileRefused {
        return Values.word(json, Surface.values(), Surface::id);
    }

    private static List<Knot> knots(@Nullable Json json, Board.Facts bare) throws FileRefused {
        if (json == null) return List.of();
        Set<String> ids = new HashSet<>();
        List<Knot> knots = new ArrayList<>();
        for (Json item : Values.items(json, "a list of knots", 0)) {
            Knot knot = knot(item);
            Values.once(ids, knot.id(), item, "knots of board " + bare.id());
            if (!KnotBody.isInside(knot, bare)) {
                throw item.place().refuse("knot " + knot.id() + " lies wholly outside board " + bare.id());
            }
            knots.add(knot);
        }
        return knots;
    }

    private static Knot knot(Json json) throws FileRefused {
        Fields in = Fields.of(json, "a knot (an object)", KNOT);
        return new Knot(
                Id.KNOT.read(in.need("id")),
                in.number("x", Range.POSITION),
                in.number("azimuth", Range.of(-360, 360)),
                in.number("lean", Range.of(0, 180)),
                in.number("halfAngle", HALF_ANGLE),
                in.number("maxRadius", Range.SIZE),
                in.number("deadFrom", Range.DISTANCE, Double.POSITIVE_INFINITY),
                in.number("endsAt", Range.SIZE, Double.POSITIVE_INFINITY));
    }

    private static Shape shape(Fields board) throws FileRefused {
        Optional<Json> json = board.get("shape");
        if (json.isEmpty()) return Shape.TRUE;
        Fields in = Fields.of(json.get(), "a shape (an object)", SHAPE);
        Optional<Json> square = in.get("outOfSquare");
        return new Shape(
                in.number("bow", DEPARTURE, 0),
                in.number("spring", DEPARTURE, 0),
                in.number("twist", DEPARTURE, 0),
                in.number("taper", DEPARTURE, 0),
                in.number("thickening", DEPARTURE, 0),
                square.isPresent() ? outOfSquare(square.get()) : Map.of());
    }

    private static Map<Surface, Double> outOfSquare(Json json) throws FileRefused {
        Surface[] all = Stream.of(Surface.values()).filter(s -> !s.isFace()).toArray(Surface[]::new);
        Map<Surface, Double> degrees = new LinkedHashMap<>();
        for (var member :
                Fields.object(json, "an object of degrees by surface").members().entrySet()) {
            Surface surface = Values.word(member.getValue().name(), member.getKey(), all, Surface::id);
            degrees.put(surface, Values.number(member.getValue().value(), OFF_SQUARE));
        }
        return degrees;
    }

    /** The seed of a board's figure, from its name alone (64-bit FNV-1a), so that it looks the same on every machine. */
    static long seed(String name) {
        long hash = 0xcbf29ce484222325L;
        for (int i = 0; i < name.length(); i++) {
            hash ^= name.charAt(i);
            hash *= 0x100000001b3L;
        }
        return hash;
    }
}
