package org.marktwice.classroom;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
        if (!Files.exists(folder)) throw new FileRefused(folder.toString(), "there is no such folder");
        if (!Files.isDirectory(folder)) throw new FileRefused(folder.toString(), "expected a folder, found a file");
        List<Path> all = new ArrayList<>();
        try {
            // a link to the folder would be seen as a file
            Path real = folder.toRealPath();
            Files.walkFileTree(real, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    all.add(folder.resolve(real.relativize(file)));
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
        FileRefused first = null;
        for (Path file : files) {
            try {
                Files.deleteIfExists(file);
            } catch (IOException e) {
                first = first == null ? new FileRefused(file.toString(), "it can't be deleted") : first;
            }
        }
        for (Path table : tables) {
            try {
                Save.whole(table, search.without(table));
            } catch (FileRefused e) {
                first = first == null ? e : first;
            }
        }
        if (first != null) throw first;
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
            return LearnerName.key(String.valueOf(file.getFileName()));
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
            for (int at = name.indexOf(learner); at >= 0 && !learner.isEmpty(); at = name.indexOf(learner, at + 1)) {
                int end = at + learner.length();
                boolean begins = at == 0 || !Character.isLetterOrDigit(name.charAt(at - 1));
                boolean ends = end == name.length() || !Character.isLetterOrDigit(name.charAt(end));
                if (begins && ends) return true;
            }
            return false;
        }

        private void table(Path file) {
            try {
                List<Tables.Line> lines = Tables.read(file);
                int column = column(lines);
                if (column < 0 || lines.stream().skip(1).noneMatch(l -> isOf(l, column))) return;
                tables.add(file);
                Path folder = file.getParent();
                if (folder == null || !name(file).equals(ClassSet.INDEX)) return;
                for (ClassSet.Entry entry : ClassSet.entries(folder)) {
                    if (is(entry.learner())) entry.in(folder).ifPresent(files::add);
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

        private boolean isOf(Tables.Line line, int column) {
            return is(Tables.text(line.cell(column)));
        }

        private static int column(List<Tables.Line> lines) {
            if (lines.isEmpty()) return -1;
            for (int i = 0; i < lines.get(0).size(); i++) {
                if (lines.get(0).cell(i).equalsIgnoreCase(TITLE)) return i;
            }
            return -1;
        }

        byte[] without(Path table) throws FileRefused {
            if (name(table).endsWith(JSON)) {
                RecordFile record = RecordFile.read(table);
                for (RecordFile.Row row : record.rows()) if (is(row.learner())) record = record.without(row.learner());
                return record.bytes();
            }
            List<Tables.Line> lines = Tables.read(table);
            int column = column(lines);
            int head = lines.get(0).number();
            return Tables.without(table, line -> line.number() != head && isOf(line, column));
        }
    }
}
