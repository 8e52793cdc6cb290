package org.marktwice.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Board;
import org.marktwice.timber.MeasuredBoard;
import org.marktwice.timber.MeasuredBoard.Measured;
import org.marktwice.timber.Pith;
import org.marktwice.timber.RingFit;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Showing;
import org.marktwice.timber.Size;
import org.marktwice.timber.Species;
import org.marktwice.timber.Stuff;
import org.marktwice.timber.Surface;

/**
 * The real boards on a rack, as somebody measured them: sizes, the pith or a ring of the end grain, and where each knot
 * shows. As JSON ({@code *.rack.json}) or as a table ({@code *.csv}, see {@link RackTable}).
 */
public record RackFile(List<MeasuredBoard> boards) {
    /** No rack holds more. */
    static final int MOST = 2000;
    /** Where nothing is said, percent: timber that has stood in a dry room. */
    static final double MOISTURE = 12;

    private static final List<String> KNOWN = List.of("format", "species", "moisture", "boards");
    private static final List<String> OF_BOARD =
            List.of("id", "species", "size", "planedAt", "moisture", "dressed", "pith", "ring", "knots");

    public RackFile {
        boards = List.copyOf(boards);
    }

    public static RackFile read(Path file) throws FileRefused {
        return read(file.toString(), Bytes.read(file));
    }

    /** @param name what messages call the file; a name ending in {@code .csv} is a table's */
    public static RackFile read(String name, byte[] bytes) throws FileRefused {
        if (name.toLowerCase(Locale.ROOT).endsWith(".csv")) return RackTable.read(name, bytes);
        Json root = JsonTree.parse(name, Bytes.text(name, bytes), 1);
        Format.RACK.check(root);
        Fields in = Fields.of(root, "a rack (an object)", KNOWN);
        Set<String> ids = new HashSet<>();
        List<MeasuredBoard> boards = new ArrayList<>();
        for (Json item : Values.items(in.need("boards"), "a list of boards", 1)) {
            MeasuredBoard board = board(item, in);
            Values.once(ids, board.bare().id(), item, "boards");
            boards.add(board);
        }
        if (boards.size() > MOST) throw in.place().refuse("more than " + MOST + " boards");
        return new RackFile(boards);
    }

    private static MeasuredBoard board(Json json, Fields rack) throws FileRefused {
        Fields in = Fields.of(json, "a board (an object)", OF_BOARD);
        Size size = BoardReader.size(in.need("size"));
        Optional<Json> species = in.has("species") ? in.get("species") : rack.get("species");
        if (species.isEmpty()) {
            throw in.place().refuse("the field \"species\" is missing, both here and for the whole rack");
        }
        double moisture = in.number("moisture", Range.PERCENT, rack.number("moisture", Range.PERCENT, MOISTURE));
        List<Measured> knots = in.has("knots") ? knots(in.need("knots"), size) : List.of();
        Pith pith = pith(in);
        if (pith == null && !knots.isEmpty()) {
            throw in.place().refuse("a board with knots needs its \"pith\", or three points of a \"ring\" on its end");
        }
        Board.Facts bare = facts(
                Id.BOARD.read(in.need("id")),
                BoardReader.species(species.get()),
                size,
                in.number("planedAt", Range.PERCENT, moisture),
                moisture,
                BoardReader.dressed(in),
                pith);
        return new MeasuredBoard(bare, knots);
    }

    static Board.Facts facts(
            String id,
            Species species,
            Size size,
            double planedAt,
            double moisture,
            Set<Surface> dressed,
            @Nullable Pith pith) {
        return new Board.Facts(
                id,
                Stuff.TIMBER,
                species,
                size,
                planedAt,
                moisture,
                dressed,
                pith,
                BoardReader.RING_WIDTH,
                List.of(),
                Shape.TRUE,
                BoardReader.seed("/" + id));
    }

    private static @Nullable Pith pith(Fields in) throws FileRefused {
        if (in.has("pith")) {
            in.refuse("ring", "the pith is given");
            return BoardReader.pith(in.need("pith"));
        }
        if (!in.has("ring")) return null;
        Json ring = in.need("ring");
        List<RingFit.Point> points = Values.list(ring, "three points of a ring or more", 0, RackFile::point);
        Optional<Pith> found = RingFit.pith(points);
        if (found.isPresent()) return found.get();
        throw ring.place()
                .refuse("expected three points or more [y, z] of one ring that bends enough to tell its middle");
    }

    private static RingFit.Point point(Json json) throws FileRefused {
        double[] two = two(json, "two numbers [y, z]", Range.POSITION);
        return new RingFit.Point(two[0], two[1]);
    }

    private static double[] two(Json json, String what, Range range) throws FileRefused {
        List<Json> items = Values.items(json, what, 0);
        if (items.size() != 2) throw json.expected(what);
        return new double[] {Values.number(items.get(0), range), Values.number(items.get(1), range)};
    }

    private static List<Measured> knots(Json json, Size size) throws FileRefused {
        Set<String> ids = new HashSet<>();
        List<Measured> knots = new ArrayList<>();
        for (Json item : Values.items(json, "a list of knots", 0)) {
            Fields in = Fields.of(item, "a knot (an object)", List.of("id", "shows"));
            Optional<Json> id = in.get("id");
            String name = id.isPresent() ? Id.KNOT.read(id.get()) : "k" + (knots.size() + 1);
            Values.once(ids, name, item, "knots");
            List<Showing> shows = new ArrayList<>();
            for (Json one : Values.items(in.need("shows"), "a list of where it shows", 1)) {
                Showing showing = showing(one, size);
                if (shows.stream().anyMatch(s -> s.surface() == showing.surface())) {
                    throw one.place().refuse("it shows on " + showing.surface().id() + " twice");
                }
                shows.add(showing);
            }
            knots.add(new Measured(name, shows));
        }
        return knots;
    }

    private static Showing showing(Json json, Size size) throws FileRefused {
        Fields in = Fields.of(json, "where a knot shows (an object)", List.of("on", "at", "size", "dead"));
        Surface surface = BoardReader.surface(in.need("on"));
        double[] at = two(in.need("at"), "two numbers, the middle of what shows", Range.POSITION);
        double[] extent = two(in.need("size"), "two sizes, along and across", Range.SIZE);
        Optional<Json> dead = in.get("dead");
        Showing showing =
                new Showing(surface, at[0], at[1], extent[0], extent[1], dead.isPresent() && Values.truth(dead.get()));
        Optional<String> off = off(showing, size);
        if (off.isPresent()) throw in.need("at").place().refuse(off.get());
        return showing;
    }

    /** Why it can't show there; empty where it can. */
    static Optional<String> off(Showing s, Size size) {
        double u = size.along(s.surface().uAxis());
        double v = size.along(s.surface().vAxis());
        if (s.u() >= 0 && s.u() <= u && s.v() >= 0 && s.v() <= v) return Optional.empty();
        return Optional.of(String.format(
                Locale.ROOT,
                "the middle lies off %s, which is %s by %s mm",
                s.surface().id(),
                JsonText.number(u),
                JsonText.number(v)));
    }

    /** As JSON; what was a ring is written as the pith that it gave. */
    public byte[] bytes() {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("format", Format.RACK.written());
        out.put("boards", boards.stream().map(RackFile::written).toList());
        return JsonText.pretty(out).getBytes(StandardCharsets.UTF_8);
    }

    private static Map<String, Object> written(MeasuredBoard board) {
        Map<String, Object> out = BoardWriter.board(Board.of(board.bare()));
        out.remove("ringWidth");
        if (board.knots().isEmpty()) return out;
        List<Map<String, Object>> knots = new ArrayList<>();
        for (Measured knot : board.knots()) {
            knots.add(ScenarioWriter.pair(
                    "id",
                    knot.id(),
                    "shows",
                    knot.shows().stream().map(RackFile::written).toList()));
        }
        out.put("knots", knots);
        return out;
    }

    private static Map<String, Object> written(Showing s) {
        Map<String, Object> out = ScenarioWriter.pair("on", s.surface().id(), "at", List.of(s.u(), s.v()));
        out.put("size", List.of(s.length(), s.width()));
        if (s.dead()) out.put("dead", true);
        return out;
    }
}
