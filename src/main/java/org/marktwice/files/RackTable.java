package org.marktwice.files;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Board;
import org.marktwice.timber.MeasuredBoard;
import org.marktwice.timber.MeasuredBoard.Measured;
import org.marktwice.timber.Pith;
import org.marktwice.timber.RingFit;
import org.marktwice.timber.Showing;
import org.marktwice.timber.Size;
import org.marktwice.timber.Species;
import org.marktwice.timber.SpeciesTable;
import org.marktwice.timber.Surface;

/**
 * A rack as a table (CSV with a head): a line for each place where a knot shows, a board without knots in one line. What
 * is the same as in the line above of the same board may be left empty.
 */
final class RackTable {
    private static final List<String> HEAD =
            Stream.of(RackColumn.values()).map(RackColumn::id).toList();
    private static final List<String> NEEDED = List.of("board", "species", "length", "width", "thickness");

    private final String name;
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private final Map<String, Begun> boards = new LinkedHashMap<>();

    private RackTable(String name) {
        this.name = name;
    }

    /** A board of which more lines may come. */
    private record Begun(Board.Facts bare, Tables.Line first, Map<String, List<Showing>> knots) {}

    static RackFile read(String name, byte[] bytes) throws FileRefused {
        RackTable table = new RackTable(name);
        for (Tables.Line line : Tables.readEven(name, bytes)) {
            if (!table.columns.isEmpty()) table.line(line);
            else head(name, line).forEach((column, at) -> table.columns.put(column.id(), at));
        }
        if (table.boards.isEmpty()) throw new FileRefused(name, "there is no board in it");
        if (table.boards.size() > RackFile.MOST) throw new FileRefused(name, "more than " + RackFile.MOST + " boards");
        return new RackFile(table.boards.values().stream().map(RackTable::done).toList());
    }

    private static MeasuredBoard done(Begun begun) {
        List<Measured> knots = new ArrayList<>();
        begun.knots().forEach((id, shows) -> knots.add(new Measured(id, shows)));
        return new MeasuredBoard(begun.bare(), knots);
    }

    private FileRefused refuse(Tables.Line line, String column, String reason) {
        return refuse(name, line, column, reason);
    }

    private static FileRefused refuse(String name, Tables.Line line, String column, String reason) {
        return new FileRefused(name, line.number(), 0, column, reason);
    }

    /** Where each column stands. */
    static Map<RackColumn, Integer> head(String name, Tables.Line line) throws FileRefused {
        Map<RackColumn, Integer> columns = new EnumMap<>(RackColumn.class);
        for (int i = 0; i < line.size(); i++) {
            String title = line.cell(i).toLowerCase(Locale.ROOT);
            if (title.isEmpty()) continue;
            Optional<RackColumn> column = RackColumn.of(title);
            if (column.isEmpty()) {
                String hint = Words.nearest(title, HEAD)
                        .map(n -> "did you mean " + Words.quoted(n) + "?")
                        .orElse("known here are " + Words.allOf(HEAD));
                throw refuse(name, line, "", "unknown column " + Words.quoted(title) + ": " + hint);
            }
            if (columns.put(column.get(), i) != null) {
                throw refuse(name, line, "", "two columns are called " + Words.quoted(title));
            }
        }
        for (String needed : NEEDED) {
            if (!columns.containsKey(RackColumn.of(needed).orElseThrow()))
                throw refuse(name, line, "", "the column " + Words.quoted(needed) + " is missing");
        }
        return columns;
    }

    private String cell(Tables.Line line, String column) {
        return line.cell(columns.getOrDefault(column, -1));
    }

    private double number(Tables.Line line, String column, Range range) throws FileRefused {
        String text = cell(line, column);
        double value = Tables.number(text);
        if (range.contains(value)) return value;
        throw refuse(line, column, "expected " + range.spoken() + ", found " + Words.quoted(text));
    }

    private void line(Tables.Line line) throws FileRefused {
        String id = cell(line, "board");
        if (!Id.BOARD.matches(id)) {
            throw refuse(line, "board", "expected an id of 1 to 20 letters and digits, found " + Words.quoted(id));
        }
        Begun begun = boards.get(id);
        if (begun == null) {
            begun = new Begun(bare(line, id), line, new LinkedHashMap<>());
            boards.put(id, begun);
        } else {
            again(line, begun);
        }
        if (!cell(line, "on").isEmpty()) knot(line, begun);
        else if (!cell(line, "knot").isEmpty())
            throw refuse(line, "on", "expected the surface on which the knot shows");
    }

    private Board.Facts bare(Tables.Line line, String id) throws FileRefused {
        Size size = new Size(
                number(line, "length", Range.SIZE),
                number(line, "width", Range.SIZE),
                number(line, "thickness", Range.SIZE));
        double moisture =
                cell(line, "moisture").isEmpty() ? RackFile.MOISTURE : number(line, "moisture", Range.PERCENT);
        double planedAt = cell(line, "planed-at").isEmpty() ? moisture : number(line, "planed-at", Range.PERCENT);
        return RackFile.facts(id, species(line), size, planedAt, moisture, dressed(line), pith(line));
    }

    /** What a later line of a board says about it must agree with its first. */
    private void again(Tables.Line line, Begun begun) throws FileRefused {
        for (RackColumn column : RackColumn.values()) {
            String said = cell(line, column.id());
            if (column == RackColumn.BOARD || !column.isOfTheBoard() || said.isEmpty()) continue;
            String before = cell(begun.first(), column.id());
            boolean same = said.equals(before) || Tables.number(said) == Tables.number(before);
            if (!same) {
                boolean size =
                        column == RackColumn.LENGTH || column == RackColumn.WIDTH || column == RackColumn.THICKNESS;
                String reason = "another " + (size ? "size" : column.id()) + " than in the first line of board "
                        + begun.bare().id();
                throw refuse(line, column.id(), reason);
            }
        }
    }

    private Species species(Tables.Line line) throws FileRefused {
        String word = cell(line, "species");
        Optional<Species> found =
                SpeciesTable.all().stream().filter(s -> s.id().equals(word)).findFirst();
        if (found.isPresent()) return found.get();
        List<String> known = SpeciesTable.all().stream().map(Species::id).toList();
        throw refuse(line, "species", "expected " + Words.oneOf(known) + ", found " + Words.quoted(word));
    }

    /** All but those that are said to be as sawn. */
    private Set<Surface> dressed(Tables.Line line) throws FileRefused {
        Set<Surface> dressed = EnumSet.allOf(Surface.class);
        for (String word : cell(line, "sawn").split("\\s+")) {
            if (!word.isEmpty()) dressed.remove(surface(line, "sawn", word));
        }
        return dressed;
    }

    private Surface surface(Tables.Line line, String column, String word) throws FileRefused {
        return Stream.of(Surface.values())
                .filter(s -> s.id().equals(word))
                .findFirst()
                .orElseThrow(() -> refuse(
                        line,
                        column,
                        "expected "
                                + Words.oneOf(Stream.of(Surface.values())
                                        .map(Surface::id)
                                        .toList())
                                + ", found " + Words.quoted(word)));
    }

    private @Nullable Pith pith(Tables.Line line) throws FileRefused {
        String ring = cell(line, "ring");
        if (ring.isEmpty()) {
            if (cell(line, "pith-y").isEmpty() && cell(line, "pith-z").isEmpty()) return null;
            return new Pith(number(line, "pith-y", Range.POSITION), number(line, "pith-z", Range.POSITION));
        }
        String expected = "expected three points or more of one ring that bends, such as \"0 4; 50 9; 100 5\"";
        List<RingFit.Point> points = new ArrayList<>();
        for (String point : ring.split(";")) {
            String[] two = point.strip().split("\\s+");
            double y = Tables.number(two[0]);
            double z = two.length == 2 ? Tables.number(two[1]) : Double.NaN;
            if (Double.isNaN(y + z)) throw refuse(line, "ring", expected + ", found " + Words.quoted(point.strip()));
            points.add(new RingFit.Point(y, z));
        }
        return RingFit.pith(points).orElseThrow(() -> refuse(line, "ring", expected));
    }

    private void knot(Tables.Line line, Begun begun) throws FileRefused {
        if (begun.bare().pith() == null) {
            throw refuse(
                    line, "pith-y", "a board with knots needs its pith, or three points of a ring, in its first line");
        }
        String id = cell(line, "knot");
        if (!Id.KNOT.matches(id)) throw refuse(line, "knot", "expected the knot's name, found " + Words.quoted(id));
        Surface surface = surface(line, "on", cell(line, "on"));
        Showing showing = new Showing(
                surface,
                number(line, "u", Range.POSITION),
                number(line, "v", Range.POSITION),
                number(line, "along", Range.SIZE),
                number(line, "across", Range.SIZE),
                dead(line));
        Optional<String> off = RackFile.off(showing, begun.bare().size());
        if (off.isPresent()) throw refuse(line, "u", off.get());
        List<Showing> shows = begun.knots().computeIfAbsent(id, k -> new ArrayList<>());
        Set<Surface> on = new HashSet<>(shows.stream().map(Showing::surface).toList());
        if (on.contains(surface)) throw refuse(line, "on", "knot " + id + " shows on " + surface.id() + " twice");
        shows.add(showing);
    }

    private boolean dead(Tables.Line line) throws FileRefused {
        String word = cell(line, "dead").toLowerCase(Locale.ROOT);
        if (word.isEmpty() || word.equals("no")) return false;
        if (word.equals("yes")) return true;
        throw refuse(line, "dead", "expected yes or no, found " + Words.quoted(word));
    }
}
