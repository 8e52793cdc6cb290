package org.marktwice.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Iterator;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/**
 * Tables as spreadsheets write them (CSV, UTF-8): with commas, or with semicolons or tabs and then with decimal commas, told
 * by the first line. Empty lines are passed over.
 */
public final class Tables {
    private static final String BEGINS_A_FORMULA = "=+-@\t";
    /** A line of the file, not of the table. */
    private static final Pattern WITH_ITS_END = Pattern.compile("[^\r\n]*(?:\r\n|\r|\n|$)");

    private Tables() {}

    /**
     * A line of a table.
     *
     * @param number of the file's line on which it begins, from 1
     * @param last the file's line on which it ends: a cell in quotes may run over several
     */
    public record Line(int number, int last, List<String> cells) {
        public Line {
            cells = List.copyOf(cells);
        }

        /** The cell without blanks around it; empty where the line ends before it. */
        public String cell(int column) {
            return column < 0 || column >= cells.size() ? "" : cells.get(column).strip();
        }

        /** How many cells it has. */
        public int size() {
            return cells.size();
        }

        private boolean isSomething() {
            return cells.stream().anyMatch(cell -> !cell.isBlank());
        }
    }

    public static List<Line> read(Path file) throws FileRefused {
        return read(file.toString(), Bytes.read(file));
    }

    /** @param name what messages call the file */
    public static List<Line> read(String name, byte[] bytes) throws FileRefused {
        if (bytes.length == 0) throw new FileRefused(name, "the file is empty");
        String text = Bytes.text(name, bytes);
        // empty lines are passed over below, where they have been counted
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter(text))
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(true)
                .get();
        int number = 1;
        try (CSVParser parser = CSVParser.parse(text, format)) {
            List<Line> lines = new ArrayList<>();
            for (Iterator<CSVRecord> all = parser.iterator(); all.hasNext(); ) {
                int last = (int) parser.getCurrentLineNumber();
                Line line = new Line(number, last, all.next().toList());
                if (line.isSomething()) lines.add(line);
                number = last + 1;
            }
            return lines;
        } catch (IOException | UncheckedIOException e) {
            String reason =
                    "expected a table (CSV): a quote is opened here and not closed, or not doubled within a cell";
            throw new FileRefused(name, number, 0, "", reason);
        }
    }

    /** The file without some of its lines; to the byte as it was in the others. */
    public static byte[] without(Path file, Predicate<Line> gone) throws FileRefused {
        byte[] bytes = Bytes.read(file);
        BitSet cut = new BitSet();
        for (Line line : read(file.toString(), bytes)) if (gone.test(line)) cut.set(line.number(), line.last() + 1);
        StringBuilder kept = new StringBuilder(Bytes.bomLength(bytes) > 0 ? "\uFEFF" : "");
        Matcher lines = WITH_ITS_END.matcher(Bytes.text(file.toString(), bytes));
        for (int number = 1; lines.find(); number++) if (!cut.get(number)) kept.append(lines.group());
        return kept.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static char delimiter(String text) {
        String first = text.lines().findFirst().orElse("");
        if (first.indexOf(',') >= 0) return ',';
        return first.indexOf(';') >= 0 ? ';' : first.indexOf('\t') >= 0 ? '\t' : ',';
    }

    /**
     * The same where every line is as wide as the first or ends sooner. A wider one has been shifted, as by a decimal comma,
     * so that its figures would be taken for others.
     */
    static List<Line> readEven(String name, byte[] bytes) throws FileRefused {
        List<Line> lines = read(name, bytes);
        int columns = lines.isEmpty() ? 0 : lines.get(0).size();
        for (Line line : lines) {
            if (line.size() <= columns) continue;
            throw new FileRefused(
                    name,
                    line.number(),
                    0,
                    "",
                    "more cells than in the first line: " + line.size() + " instead of " + columns
                            + " (a comma within a cell needs quotes round the cell)");
        }
        return lines;
    }

    /**
     * A table to be written: commas, lines as RFC 4180 has them, UTF-8. Where it has letters beyond ASCII it begins with a
     * byte order mark, without which a spreadsheet takes it for one in the machine's old code page; other programs need not
     * meet the mark where it tells nothing.
     */
    public static byte[] csv(List<? extends List<?>> lines) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            for (List<?> line : lines) printer.printRecord(line);
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory can be written", e);
        }
        if (text.chars().anyMatch(c -> c > 127)) text.insert(0, '\uFEFF');
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** What goes into a cell: a text that a spreadsheet would take for a formula is made a text by an apostrophe. */
    public static Object plain(@Nullable Object cell) {
        if (cell == null) return "";
        return cell instanceof String s && looksLikeFormula(s) ? "'" + s : cell;
    }

    /** The text that was written so. */
    public static String text(String cell) {
        return cell.startsWith("'") && looksLikeFormula(cell.substring(1)) ? cell.substring(1) : cell;
    }

    private static boolean looksLikeFormula(String text) {
        return !text.isEmpty() && BEGINS_A_FORMULA.indexOf(text.charAt(0)) >= 0;
    }

    /** A number with a point or a comma; NaN where it is none. */
    static double number(String text) {
        try {
            boolean plain = !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1));
            return plain ? Double.parseDouble(text.replace(',', '.')) : Double.NaN;
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }
}
