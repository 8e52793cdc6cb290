package org.marktwice.classroom;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.marktwice.files.FileRefused;

/** What a class's learners are called, whatever the teacher goes by; initials or numbers will do. */
public record ClassList(List<String> learners) {
    /** No class is larger. */
    public static final int MOST = 500;
    /** In bytes. */
    private static final long LARGEST = 1 << 20;
    /** As in an attempt's header. */
    private static final int LONGEST = 60;
    /** A column of this title is the learners'; without it, the first column is. */
    private static final String TITLE = "learner";

    public ClassList {
        learners = List.copyOf(learners);
    }

    /** P01, P02 … */
    public static ClassList numbered(int count) {
        if (count < 1 || count > MOST) throw new IllegalArgumentException("from 1 to " + MOST + " learners");
        int digits = Math.max(2, String.valueOf(count).length());
        return new ClassList(IntStream.rangeClosed(1, count)
                .mapToObj(i -> String.format(Locale.ROOT, "P%0" + digits + "d", i))
                .toList());
    }

    /** A CSV file with a learner a line; only that column is kept. */
    public static ClassList read(Path file) throws FileRefused {
        List<CSVRecord> lines = lines(file);
        if (lines.isEmpty()) throw new FileRefused(file.toString(), "expected a learner a line, found an empty file");
        int column = 0;
        int first = 0;
        for (int i = 0; i < lines.get(0).size(); i++) {
            if (!cell(lines.get(0), i).equalsIgnoreCase(TITLE)) continue;
            column = i;
            first = 1;
        }
        List<String> learners = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (CSVRecord line : lines.subList(first, lines.size())) {
            String learner = cell(line, column);
            if (learner.isEmpty()) continue;
            check(file, line, learner, seen);
            learners.add(learner);
        }
        if (learners.isEmpty()) throw new FileRefused(file.toString(), "there is no learner in it");
        if (learners.size() > MOST) throw new FileRefused(file.toString(), "more than " + MOST + " learners");
        return new ClassList(learners);
    }

    /** The lines of a small table. */
    static List<CSVRecord> lines(Path file) throws FileRefused {
        if (!Files.exists(file)) throw new FileRefused(file.toString(), "there is no such file");
        if (!Files.isRegularFile(file)) throw new FileRefused(file.toString(), "expected a file");
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setIgnoreEmptyLines(true)
                .setIgnoreSurroundingSpaces(true)
                .get();
        try (CSVParser parser = CSVParser.parse(text(file), format)) {
            return parser.getRecords();
        } catch (IOException | UncheckedIOException e) {
            throw new FileRefused(file.toString(), "it can't be read as a table (CSV)");
        }
    }

    private static String text(Path file) throws FileRefused {
        try {
            if (Files.size(file) > LARGEST) throw new FileRefused(file.toString(), "too large for a list of a class");
            return Files.readString(file);
        } catch (CharacterCodingException e) {
            throw new FileRefused(file.toString(), "expected UTF-8 text");
        } catch (IOException e) {
            throw new FileRefused(file.toString(), "it can't be read");
        }
    }

    static String cell(CSVRecord line, int column) {
        if (column >= line.size()) return "";
        // the byte order mark that some spreadsheets begin with
        return line.get(column).replace("\ufeff", "").strip();
    }

    private static void check(Path file, CSVRecord line, String learner, Set<String> seen) throws FileRefused {
        int number = (int) line.getRecordNumber();
        if (learner.length() > LONGEST || learner.chars().anyMatch(Character::isISOControl)) {
            throw new FileRefused(
                    file.toString(),
                    number,
                    0,
                    "",
                    "expected a learner's name or number of 1 to " + LONGEST + " letters");
        }
        if (!seen.add(learner.toLowerCase(Locale.ROOT))) {
            throw new FileRefused(file.toString(), number, 0, "", "the learner \"" + learner + "\" is there twice");
        }
    }
}
