package org.marktwice.classroom;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.LearnerName;
import org.marktwice.files.FileRefused;
import org.marktwice.files.FoundFile;
import org.marktwice.files.QuizFile;
import org.marktwice.files.RecordFile;
import org.marktwice.files.Save;
import org.marktwice.files.Tables;

/**
 * What there is about a learner in a folder, and its deletion: attempts and quiz journals by their header, whatever they
 * are called; the learner's variant of a class set; the learner's lines in tables (CSV with a column "learner") and in
 * records of finished jobs. What may be about the learner but can't be told is listed, and left.
 *
 * @param files to be deleted
 * @param tables to lose the learner's lines
 * @param doubtful files that bear the learner's name but don't say inside that they are the learner's
 */
public record Forgetting(String learner, List<Path> files, List<Path> tables, List<Path> doubtful) {
    private static final String TITLE = "learner";
    private static final String JSON = ".json";
    private static final String QUIZ = ".jsonl";

    public Forgetting {
        files = List.copyOf(files);
        tables = List.copyOf(tables);
        doubtful = List.copyOf(doubtful);
    }

    /** Looks, and changes nothing. Folders in the folder are looked into. */
    public static Forgetting find(Path folder, String learner) throws FileRefused {
        if (!Files.isDirectory(folder)) throw new FileRefused(folder.toString(), "there is no such folder");
        List<Path> all = new ArrayList<>();
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    all.add(file);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            throw new FileRefused(folder.toString(), "the folder can't be read");
        }
        all.sort(null);
        return new Search(learner).over(all);
    }

    public boolean isEmpty() {
        return files.isEmpty() && tables.isEmpty();
    }

    /** Deletes what was found, the doubtful excepted. @throws FileRefused where something can't be; the rest is gone */
    public void delete() throws FileRefused {
        Search search = new Search(learner);
        for (Path table : tables) Save.whole(table, search.without(table));
        for (Path file : files) {
            try {
                Files.deleteIfExists(file);
            } catch (IOException e) {
                throw new FileRefused(file.toString(), "it can't be deleted");
            }
        }
    }

    private static final class Search {
        private final String learner;
        private final Set<Path> files = new HashSet<>();
        private final List<Path> tables = new ArrayList<>();
        private final List<Path> doubtful = new ArrayList<>();

        Search(String learner) {
            this.learner = LearnerName.key(learner);
        }

        private boolean is(String name) {
            return LearnerName.key(name).equals(learner);
        }

        Forgetting over(List<Path> all) {
            for (Path file : all) {
                String name = name(file);
                if (name.endsWith(".csv")) table(file);
                else if (isTheirAttempt(file) || isTheirQuiz(file)) files.add(file);
                else if (hasThemInARecord(file)) tables.add(file);
                else if (bearsTheName(name)) doubtful.add(file);
            }
            doubtful.removeAll(files);
            return new Forgetting(learner, files.stream().sorted().toList(), tables, doubtful);
        }

        private static String name(Path file) {
            return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        }

        private boolean isTheirAttempt(Path file) {
            try {
                FoundFile found = FoundFile.read(file, file.toString());
                return found.meansToBeAnAttempt()
                        && found.header().map(Attempt::learner).filter(this::is).isPresent();
            } catch (FileRefused e) {
                return false;
            }
        }

        /** Between other letters and digits a name is no name. */
        private boolean bearsTheName(String name) {
            int at = learner.isEmpty() ? -1 : name.indexOf(learner);
            if (at < 0) return false;
            int end = at + learner.length();
            return (at == 0 || !Character.isLetterOrDigit(name.charAt(at - 1)))
                    && (end == name.length() || !Character.isLetterOrDigit(name.charAt(end)));
        }

        private void table(Path file) {
            try {
                List<CSVRecord> lines = Tables.read(file);
                int column = column(lines);
                if (column < 0 || lines.stream().skip(1).noneMatch(l -> isOf(l, column))) return;
                tables.add(file);
                Path folder = file.getParent();
                if (folder == null || !name(file).equals(ClassSet.INDEX)) return;
                for (ClassSet.Entry entry : ClassSet.entries(folder)) {
                    Path variant = folder.resolve(entry.file()).normalize();
                    boolean beside = folder.equals(variant.getParent());
                    if (is(entry.learner()) && beside && Files.exists(variant)) files.add(variant);
                }
            } catch (FileRefused e) {
                // no table of this program
                if (bearsTheName(name(file))) doubtful.add(file);
            }
        }

        private boolean isTheirQuiz(Path file) {
            try {
                return name(file).endsWith(QUIZ) && is(QuizFile.read(file).learner());
            } catch (FileRefused e) {
                return false;
            }
        }

        private boolean hasThemInARecord(Path file) {
            try {
                return name(file).endsWith(JSON)
                        && RecordFile.read(file).rows().stream().anyMatch(r -> is(r.learner()));
            } catch (FileRefused e) {
                return false;
            }
        }

        private boolean isOf(CSVRecord line, int column) {
            return is(Tables.text(Tables.cell(line, column)));
        }

        private static int column(List<CSVRecord> lines) {
            if (lines.isEmpty()) return -1;
            for (int i = 0; i < lines.get(0).size(); i++) {
                if (Tables.cell(lines.get(0), i).equalsIgnoreCase(TITLE)) return i;
            }
            return -1;
        }

        byte[] without(Path table) throws FileRefused {
            if (name(table).endsWith(JSON)) {
                RecordFile record = RecordFile.read(table);
                for (RecordFile.Row row : record.rows()) if (is(row.learner())) record = record.without(row.learner());
                return record.bytes();
            }
            List<CSVRecord> lines = Tables.read(table);
            int column = column(lines);
            StringBuilder text = new StringBuilder();
            try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
                for (CSVRecord line : lines) {
                    if (line == lines.get(0) || !isOf(line, column)) printer.printRecord(line);
                }
            } catch (IOException e) {
                throw new UncheckedIOException("a text in memory can be written", e);
            }
            return text.toString().getBytes(StandardCharsets.UTF_8);
        }
    }
}
