package org.marktwice.classroom;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.Attempted.Score;
import org.marktwice.classroom.Results.Item;
import org.marktwice.classroom.Results.Row;
import org.marktwice.classroom.Results.SlipCount;
import org.marktwice.files.FileRefused;
import org.marktwice.files.Save;
import org.marktwice.files.Tables;

/**
 * Results as tables for other programs. Numbers are numbers, to a billionth; what was not put to a learner is left empty.
 */
public final class ResultsExport {
    private ResultsExport() {}

    /** A table with a head; a cell is a text, a number, or null for an empty one. */
    private record Sheet(String name, List<List<@Nullable Object>> lines) {}

    /** What of one is told in percent. */
    private record Share(double value) {}

    /** Sums of thirds and tenths leave a tail that tells nobody anything. */
    private static double tidy(double value) {
        return Math.rint(value * 1e9) / 1e9;
    }

    /** The kind is told by the name. @throws FileRefused where the kind is unknown or the file can't be written */
    public static void write(Results results, Path file) throws FileRefused {
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (name.endsWith(".csv")) {
            Save.whole(file, csv(results));
        } else if (name.endsWith(".xlsx")) {
            Save.whole(file, xlsx(results));
        } else {
            throw new FileRefused(file.toString(), "expected a file *.csv or *.xlsx to write to");
        }
    }

    /** Learners × rules with the totals. */
    public static byte[] csv(Results results) {
        List<List<Object>> table = new ArrayList<>();
        for (List<@Nullable Object> line : learners(results).lines()) {
            List<Object> cells = new ArrayList<>();
            for (Object cell : line) cells.add(Tables.plain(plain(cell)));
            table.add(cells);
        }
        return Tables.csv(table);
    }

    /** One sheet each for learners, rules, slips, attempts and files left out. */
    public static byte[] xlsx(Results results) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "Marktwice", "1.0")) {
            for (Sheet sheet :
                    List.of(learners(results), rules(results), slips(results), attempts(results), leftOut(results))) {
                write(sheet, book.newWorksheet(sheet.name()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a workbook in memory can be written", e);
        }
        return out.toByteArray();
    }

    private static @Nullable Object plain(@Nullable Object cell) {
        if (cell instanceof Share share) return tidy(share.value());
        return cell instanceof Double number ? (Double) tidy(number) : cell;
    }

    private static void write(Sheet from, Worksheet to) {
        for (int row = 0; row < from.lines().size(); row++) {
            List<@Nullable Object> line = from.lines().get(row);
            for (int column = 0; column < line.size(); column++) {
                Object cell = plain(line.get(column));
                if (line.get(column) instanceof Share) {
                    to.style(row, column).format("0 %").set();
                } else if (cell instanceof Double) {
                    to.style(row, column).format("0.##").set();
                }
                if (cell instanceof Number number) to.value(row, column, number);
                else if (cell != null) to.value(row, column, cell.toString());
            }
        }
        if (!from.lines().get(0).isEmpty()) {
            to.range(0, 0, 0, from.lines().get(0).size() - 1).style().bold().set();
        }
        to.freezePane(1, 1);
    }

    private static Sheet learners(Results results) {
        List<List<@Nullable Object>> lines = new ArrayList<>();
        List<@Nullable Object> head = new ArrayList<>(List.of("learner", "attempts", "marks", "out of", "share"));
        for (Item rule : results.rules()) head.add(rule.id());
        lines.add(head);
        for (Row row : results.rows()) {
            Score total = row.total();
            List<@Nullable Object> line =
                    line(row.learner(), row.tries(), total.marks(), total.outOf(), share(total.share()));
            for (Item rule : results.rules()) {
                Score score = row.scores().get(rule.id());
                line.add(score == null ? null : score.marks());
            }
            lines.add(line);
        }
        return new Sheet("Learners", lines);
    }

    private static Sheet rules(Results results) {
        List<List<@Nullable Object>> lines = new ArrayList<>();
        lines.add(line("rule", "title", "learners", "reached", "tells apart"));
        for (Item item : results.rules()) lines.add(item(item));
        if (results.exercises().size() > 1) {
            lines.add(line("exercise"));
            for (Item item : results.exercises()) lines.add(item(item));
        }
        double alpha = results.reliability().alpha().orElse(Double.NaN);
        lines.add(line("Cronbach's alpha", null, results.reliability().learners(), number(alpha)));
        return new Sheet("Rules", lines);
    }

    private static List<@Nullable Object> item(Item item) {
        return line(
                item.id(),
                item.title(),
                item.learners(),
                share(item.facility()),
                number(item.discrimination().orElse(Double.NaN)));
    }

    private static Sheet slips(Results results) {
        List<List<@Nullable Object>> lines = new ArrayList<>();
        lines.add(line("rule", "title", "verdict", "learners", "of", "marks lost", "who", "example"));
        for (SlipCount slip : results.slips()) {
            lines.add(line(
                    slip.rule(),
                    slip.title(),
                    slip.verdict().id(),
                    slip.learners().size(),
                    slip.of(),
                    slip.lost(),
                    String.join(", ", slip.learners()),
                    slip.example()));
        }
        return new Sheet("Slips", lines);
    }

    private static Sheet attempts(Results results) {
        List<List<@Nullable Object>> lines = new ArrayList<>();
        lines.add(line("learner", "scenario", "started", "state", "marks", "out of", "file"));
        for (Attempted a : results.attempts()) {
            Score total = a.total();
            lines.add(line(
                    a.learner(), a.scenario(), a.started(), a.state().id(), total.marks(), total.outOf(), a.file()));
        }
        return new Sheet("Attempts", lines);
    }

    private static Sheet leftOut(Results results) {
        List<List<@Nullable Object>> lines = new ArrayList<>();
        lines.add(line("file", "state", "reason"));
        results.leftOut().forEach(f -> lines.add(line(f.file(), f.state().id(), f.reason())));
        return new Sheet("Not marked", lines);
    }

    private static @Nullable Share share(double value) {
        return Double.isNaN(value) ? null : new Share(value);
    }

    private static @Nullable Double number(double value) {
        return Double.isNaN(value) ? null : value;
    }

    private static List<@Nullable Object> line(@Nullable Object... cells) {
        List<@Nullable Object> line = new ArrayList<>();
        for (Object cell : cells) line.add(cell);
        return line;
    }
}
