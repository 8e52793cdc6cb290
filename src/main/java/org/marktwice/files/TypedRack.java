package org.marktwice.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.marktwice.timber.Board;
import org.marktwice.timber.MeasuredBoard;
import org.marktwice.timber.MeasuredBoard.Measured;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Showing;
import org.marktwice.timber.Species;
import org.marktwice.timber.Surface;

/**
 * A rack as it is being typed: lines of cells under the columns of a rack's table, whole or not. A line whose board isn't
 * said belongs to the board above. What is whole of it is what {@link RackFile} reads from the same table.
 */
public record TypedRack(List<Line> lines) {
    public static final TypedRack BLANK = new TypedRack(List.of());

    /** No table has more lines. */
    public static final int MOST_LINES = 20_000;

    private static final int LONGEST = 200;

    public TypedRack {
        lines = List.copyOf(lines);
    }

    /** A line of the table; a column that isn't there is empty. */
    public record Line(Map<RackColumn, String> cells) {
        public static final Line EMPTY = new Line(Map.of());

        public Line {
            EnumMap<RackColumn, String> kept = new EnumMap<>(RackColumn.class);
            cells.forEach((column, text) -> {
                if (!text.isEmpty()) kept.put(column, text);
            });
            cells = Collections.unmodifiableMap(kept);
        }

        /** Empty where nothing is typed. */
        public String at(RackColumn column) {
            return cells.getOrDefault(column, "");
        }

        public Line with(RackColumn column, String text) {
            Map<RackColumn, String> next = new EnumMap<>(RackColumn.class);
            next.putAll(cells);
            next.put(column, text);
            return new Line(next);
        }
    }

    /**
     * What keeps a board from being whole.
     *
     * @param line from 0
     * @param missing whether nothing is typed there yet
     */
    public record Trouble(int line, RackColumn column, String says, boolean missing) {}

    /**
     * A board of the rack, as far as it was typed.
     *
     * @param lines that are about it, from 0
     * @param measured empty while it isn't whole, and then there is a trouble
     */
    public record OnRack(String id, List<Integer> lines, Optional<MeasuredBoard> measured, Optional<Trouble> trouble) {
        public OnRack {
            lines = List.copyOf(lines);
        }

        public int first() {
            return lines.get(0);
        }
    }

    /** From a table, whole or not, or from JSON, which is whole. */
    public static TypedRack read(Path file) throws FileRefused {
        String name = file.toString();
        byte[] bytes = Bytes.read(file);
        if (!name.toLowerCase(Locale.ROOT).endsWith(".csv")) return of(RackFile.read(name, bytes));
        return table(name, bytes);
    }

    static TypedRack table(String name, byte[] bytes) throws FileRefused {
        List<Tables.Line> records = Tables.readEven(name, bytes);
        if (records.isEmpty()) throw new FileRefused(name, "there is no board in it");
        if (records.size() > MOST_LINES) throw new FileRefused(name, "more than " + MOST_LINES + " lines");
        Map<RackColumn, Integer> head = RackTable.head(name, records.get(0));
        List<Line> lines = new ArrayList<>();
        String board = "";
        for (Tables.Line record : records.subList(1, records.size())) {
            Map<RackColumn, String> cells = new EnumMap<>(RackColumn.class);
            for (Map.Entry<RackColumn, Integer> at : head.entrySet()) {
                String cell = Tables.text(record.cell(at.getValue()));
                if (cell.length() > LONGEST) {
                    String reason = "expected at most " + LONGEST + " letters";
                    throw new FileRefused(name, record.number(), 0, at.getKey().id(), reason);
                }
                cells.put(at.getKey(), printable(cell));
            }
            String its = cells.getOrDefault(RackColumn.BOARD, "");
            if (its.equals(board)) cells.put(RackColumn.BOARD, "");
            else if (!its.isEmpty()) board = its;
            lines.add(new Line(cells));
        }
        return new TypedRack(lines);
    }

    private static String printable(String text) {
        return text.replaceAll("\\p{Cntrl}", " ").strip();
    }

    /** The lines of boards that are whole. */
    public static TypedRack of(RackFile file) {
        List<Line> lines = new ArrayList<>();
        for (MeasuredBoard board : file.boards()) {
            List<Line> shows = new ArrayList<>();
            for (Measured knot : board.knots()) for (Showing s : knot.shows()) shows.add(line(knot.id(), s));
            Map<RackColumn, String> first = new EnumMap<>(facts(board.bare()));
            if (!shows.isEmpty()) first.putAll(shows.remove(0).cells());
            lines.add(new Line(first));
            lines.addAll(shows);
        }
        return new TypedRack(lines);
    }

    private static Map<RackColumn, String> facts(Board.Facts bare) {
        Map<RackColumn, String> cells = new EnumMap<>(RackColumn.class);
        cells.put(RackColumn.BOARD, bare.id());
        Species species = bare.species();
        if (species != null) cells.put(RackColumn.SPECIES, species.id());
        cells.put(RackColumn.LENGTH, JsonText.number(bare.size().length()));
        cells.put(RackColumn.WIDTH, JsonText.number(bare.size().width()));
        cells.put(RackColumn.THICKNESS, JsonText.number(bare.size().thickness()));
        cells.put(RackColumn.MOISTURE, JsonText.number(bare.moisture()));
        if (bare.planedAt() != bare.moisture()) cells.put(RackColumn.PLANED_AT, JsonText.number(bare.planedAt()));
        cells.put(
                RackColumn.SAWN,
                Stream.of(Surface.values())
                        .filter(s -> !bare.dressed().contains(s))
                        .map(Surface::id)
                        .collect(Collectors.joining(" ")));
        Pith pith = bare.pith();
        if (pith != null) {
            cells.put(RackColumn.PITH_Y, JsonText.number(pith.y()));
            cells.put(RackColumn.PITH_Z, JsonText.number(pith.z()));
        }
        return cells;
    }

    private static Line line(String knot, Showing s) {
        return new Line(Map.of(
                RackColumn.KNOT, knot,
                RackColumn.ON, s.surface().id(),
                RackColumn.U, JsonText.number(s.u()),
                RackColumn.V, JsonText.number(s.v()),
                RackColumn.ALONG, JsonText.number(s.length()),
                RackColumn.ACROSS, JsonText.number(s.width()),
                RackColumn.DEAD, s.dead() ? "yes" : ""));
    }

    /** The same with other lines from {@code at} on, as many as are given; lines between are empty. */
    public TypedRack with(int at, Line line) {
        List<Line> next = new ArrayList<>(lines);
        while (next.size() <= at) next.add(Line.EMPTY);
        next.set(at, line);
        return new TypedRack(next);
    }

    /** With a line put in before {@code at}. */
    public TypedRack plus(int at, Line line) {
        List<Line> next = new ArrayList<>(lines);
        next.add(Math.min(at, next.size()), line);
        return new TypedRack(next);
    }

    /** Without a line. What it said of its board goes on to the next line of the same board, which becomes its first. */
    public TypedRack without(int at) {
        List<Line> next = new ArrayList<>(lines);
        Line gone = next.remove(at);
        boolean headless = !gone.at(RackColumn.BOARD).isEmpty()
                && at < next.size()
                && next.get(at).at(RackColumn.BOARD).isEmpty()
                && !next.get(at).cells().isEmpty();
        if (headless) {
            Map<RackColumn, String> cells = new EnumMap<>(RackColumn.class);
            gone.cells().forEach((column, text) -> {
                if (column.isOfTheBoard()) cells.put(column, text);
            });
            cells.putAll(next.get(at).cells());
            next.set(at, new Line(cells));
        }
        return new TypedRack(next);
    }

    /** Which board a line belongs to; empty while none is said. */
    public String boardOf(int line) {
        for (int i = Math.min(line, lines.size() - 1); i >= 0; i--) {
            String said = lines.get(i).at(RackColumn.BOARD);
            if (!said.isEmpty()) return said;
        }
        return "";
    }

    /** By board, in the order in which they come; lines that are empty belong to none. */
    public Map<String, List<Integer>> byBoard() {
        Map<String, List<Integer>> found = new LinkedHashMap<>();
        String board = "";
        for (int i = 0; i < lines.size(); i++) {
            String said = lines.get(i).at(RackColumn.BOARD);
            if (!said.isEmpty()) board = said;
            if (!lines.get(i).cells().isEmpty())
                found.computeIfAbsent(board, b -> new ArrayList<>()).add(i);
        }
        return found;
    }

    /** A board as far as it was typed. @param at its lines, as {@link #byBoard} has them */
    public OnRack board(String id, List<Integer> at) {
        try {
            byte[] table = csv(at);
            return new OnRack(
                    id, at, Optional.of(RackTable.read("", table).boards().get(0)), Optional.empty());
        } catch (FileRefused e) {
            return new OnRack(id, at, Optional.empty(), Optional.of(trouble(e, at)));
        }
    }

    private Trouble trouble(FileRefused refused, List<Integer> at) {
        RackColumn column = RackColumn.of(refused.path()).orElse(RackColumn.BOARD);
        // the table's first line is its head
        int line = at.get(Math.max(0, Math.min(at.size() - 1, refused.line() - 2)));
        boolean ofThePith = column == RackColumn.PITH_Y
                && lines.get(at.get(0)).at(RackColumn.RING).isEmpty();
        if (ofThePith && lines.get(line).at(column).isEmpty()) line = at.get(0);
        boolean missing = lines.get(line).at(column).isEmpty();
        return new Trouble(line, column, missing ? missing(column) : refused.reason(), missing);
    }

    private static String missing(RackColumn column) {
        return switch (column) {
            case BOARD -> "which board it is isn't said yet";
            case PITH_Y, PITH_Z -> "its pith, or three points of a ring, is to come: its knots grow from there";
            case KNOT -> "the knot's name is to come";
            case ON -> "the surface on which the knot shows is to come";
            case U, V -> "the middle of what shows is to come (" + column.id() + ")";
            case ALONG, ACROSS -> "how large it shows is to come (" + column.id() + ")";
            default -> "its " + column.id() + " is to come";
        };
    }

    /** The table of it, with its board said in every line; what isn't whole stays as it was typed. */
    public byte[] csv() {
        List<Integer> all = new ArrayList<>();
        byBoard().values().forEach(all::addAll);
        return csv(all);
    }

    private byte[] csv(List<Integer> which) {
        List<List<?>> table = new ArrayList<>();
        table.add(Arrays.stream(RackColumn.values()).map(RackColumn::id).toList());
        for (int i : which) {
            table.add(Arrays.stream(RackColumn.values())
                    .map(column -> cell(lines.get(i), column, i))
                    .toList());
        }
        return Tables.csv(table);
    }

    private Object cell(Line line, RackColumn column, int at) {
        String text = column == RackColumn.BOARD ? boardOf(at) : line.at(column);
        // a pith before the edge begins with a minus, and is a number
        return Double.isNaN(Tables.number(text)) ? Tables.plain(text) : text;
    }
}
