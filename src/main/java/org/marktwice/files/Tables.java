package org.marktwice.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/**
 * Tables as spreadsheets write them (CSV, UTF-8): with commas, or with semicolons or tabs and then with decimal commas, told
 * by the first line. Empty lines are passed over.
 */
public final class Tables {
    private static final String BEGINS_A_FORMULA = "=+-@\t";

    private Tables() {}

    public static List<CSVRecord> read(Path file) throws FileRefused {
        return read(file.toString(), Bytes.read(file));
    }

    /** @param name what messages call the file */
    public static List<CSVRecord> read(String name, byte[] bytes) throws FileRefused {
        if (bytes.length == 0) throw new FileRefused(name, "the file is empty");
        String text = Bytes.text(name, bytes);
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter(text))
                // they are passed over below: a record's number is its line's
                .setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(true)
                .get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            return parser.getRecords().stream().filter(Tables::isSomething).toList();
        } catch (IOException | UncheckedIOException e) {
            throw new FileRefused(name, "it can't be read as a table (CSV)");
        }
    }

    private static boolean isSomething(CSVRecord line) {
        return line.stream().anyMatch(cell -> !cell.isBlank());
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
    static List<CSVRecord> readEven(String name, byte[] bytes) throws FileRefused {
        List<CSVRecord> lines = read(name, bytes);
        int columns = lines.isEmpty() ? 0 : lines.get(0).size();
        for (CSVRecord line : lines) {
            if (line.size() <= columns) continue;
            throw new FileRefused(
                    name,
                    (int) line.getRecordNumber(),
                    0,
                    "",
                    "more cells than in the first line: " + line.size() + " instead of " + columns
                            + " (a comma within a cell needs quotes round the cell)");
        }
        return lines;
    }

    /** The cell without blanks around it; empty where the line ends before it. */
    public static String cell(CSVRecord line, int column) {
        return column < 0 || column >= line.size() ? "" : line.get(column).strip();
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
