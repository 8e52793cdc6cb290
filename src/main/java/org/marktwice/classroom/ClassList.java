package org.marktwice.classroom;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import org.marktwice.bench.LearnerName;
import org.marktwice.files.FileRefused;
import org.marktwice.files.Tables;

/** What a class's learners are called, whatever the teacher goes by; initials or numbers will do. */
public record ClassList(List<String> learners) {
    /** No class is larger. */
    public static final int MOST = 500;
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
        List<Tables.Line> lines = Tables.read(file);
        if (lines.isEmpty()) throw new FileRefused(file.toString(), "there is no learner in it");
        int column = 0;
        int first = 0;
        for (int i = 0; i < lines.get(0).size(); i++) {
            if (!lines.get(0).cell(i).equalsIgnoreCase(TITLE)) continue;
            column = i;
            first = 1;
        }
        List<String> learners = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Tables.Line line : lines.subList(first, lines.size())) {
            String learner = Tables.text(line.cell(column));
            if (learner.isEmpty()) continue;
            check(file, line, learner, seen);
            learners.add(learner);
        }
        if (learners.isEmpty()) throw new FileRefused(file.toString(), "there is no learner in it");
        if (learners.size() > MOST) throw new FileRefused(file.toString(), "more than " + MOST + " learners");
        return new ClassList(learners);
    }

    private static void check(Path file, Tables.Line line, String learner, Set<String> seen) throws FileRefused {
        int number = line.number();
        if (learner.length() > LONGEST || learner.chars().anyMatch(Character::isISOControl)) {
            throw new FileRefused(
                    file.toString(),
                    number,
                    0,
                    "",
                    "expected a learner's name or number of 1 to " + LONGEST + " letters");
        }
        if (!seen.add(LearnerName.key(learner))) {
            throw new FileRefused(file.toString(), number, 0, "", "the learner \"" + learner + "\" is there twice");
        }
    }
}
