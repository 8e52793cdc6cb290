package org.marktwice.classroom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.marktwice.classroom.Variants.Variant;
import org.marktwice.files.FileRefused;
import org.marktwice.files.Printable;
import org.marktwice.files.Save;
import org.marktwice.files.Tables;

/**
 * A variant of an exercise for each learner of a class, as one folder to hand out: a scenario a learner, and an index for
 * the teacher.
 *
 * @param target the difficulty that all come near to
 * @param band how far from it they may lie
 */
public record ClassSet(String exercise, double target, double band, int seed, List<Given> given) {
    /** The index's file. */
    public static final String INDEX = "index.csv";

    public ClassSet {
        given = List.copyOf(given);
    }

    /** @param file the variant's name in the folder */
    public record Given(String file, Variant variant) {}

    /** @param progress told after each learner */
    public static ClassSet make(Variants variants, String exercise, ClassList list, BulkMarking.Progress progress) {
        List<Given> given = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (String learner : list.learners()) {
            given.add(new Given(fileName(exercise, learner, names), variants.of(learner)));
            progress.at(given.size(), list.learners().size());
        }
        return new ClassSet(exercise, variants.target(), variants.band(), variants.seed(), given);
    }

    /** Letters and digits of what the learner is called; what no disk minds. */
    private static String fileName(String exercise, String learner, Set<String> taken) {
        String plain = learner.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", "");
        String name = exercise + "-" + (plain.isEmpty() ? "learner" : plain);
        String free = name;
        for (int i = 2; !taken.add(free.toLowerCase(Locale.ROOT)); i++) free = name + "-" + i;
        return free + ".scenario.json";
    }

    /** Whether every learner's boards are as hard as they should be. */
    public boolean allInBand() {
        return given.stream().allMatch(g -> g.variant().inBand());
    }

    /**
     * Writes the set. What is there already must be the same set: the learners may be at work on it.
     *
     * @throws FileRefused where another set is in the folder, or it can't be written; then nothing was written over
     */
    public void write(Path folder) throws FileRefused {
        Map<Path, byte[]> files = new LinkedHashMap<>();
        for (Given one : given)
            files.put(folder.resolve(one.file()), one.variant().bytes());
        for (Map.Entry<Path, byte[]> file : files.entrySet()) {
            if (!isFree(file.getKey(), file.getValue())) {
                throw new FileRefused(
                        file.getKey().toString(),
                        "there is another set in this folder; it is left as it is: choose another folder");
            }
        }
        checkIndex(folder);
        Save.folder(folder);
        files.put(folder.resolve(INDEX), index());
        for (Map.Entry<Path, byte[]> file : files.entrySet()) Save.whole(file.getKey(), file.getValue());
    }

    /** The index of another set, or of more learners, is what their attempts are known by. */
    private void checkIndex(Path folder) throws FileRefused {
        Set<String> own = new HashSet<>();
        for (Given one : given) own.add(one.variant().scenario().digest());
        for (Entry entry : entries(folder)) {
            if (own.contains(entry.digest())) continue;
            throw new FileRefused(
                    folder.resolve(INDEX).toString(),
                    "the set in this folder has a learner whom this one hasn't, " + Printable.of(entry.learner())
                            + "; it is left as it is: choose another folder");
        }
    }

    private static boolean isFree(Path file, byte[] bytes) throws FileRefused {
        if (!Files.exists(file)) return true;
        try {
            return Arrays.equals(Files.readAllBytes(file), bytes);
        } catch (IOException e) {
            throw new FileRefused(file.toString(), "it is there, but can't be read");
        }
    }

    /**
     * What an index says of a variant.
     *
     * @param digest that of the variant's file
     */
    public record Entry(String learner, String file, String digest) {
        /** The variant, where it lies in this folder; empty where it is gone, or the name leads elsewhere. */
        Optional<Path> in(Path folder) {
            try {
                Path variant = folder.resolve(file);
                boolean elsewhere = !file.equals(String.valueOf(variant.getFileName()));
                return elsewhere || !Files.isRegularFile(variant) ? Optional.empty() : Optional.of(variant);
            } catch (InvalidPathException e) {
                return Optional.empty();
            }
        }
    }

    /** The index of a folder's class set, in its order; empty where the folder has none. */
    public static List<Entry> entries(Path folder) throws FileRefused {
        Path file = folder.resolve(INDEX);
        if (!Files.exists(file)) return List.of();
        List<Tables.Line> lines = Tables.read(file);
        int[] columns = new int[3];
        for (int i = 0; i < 3; i++) {
            columns[i] = lines.isEmpty()
                    ? -1
                    : lines.get(0)
                            .cells()
                            .indexOf(List.of("learner", "file", "digest").get(i));
            if (columns[i] < 0)
                throw new FileRefused(file.toString(), "expected the index of a class set, as \"make\" writes it");
        }
        List<Entry> entries = new ArrayList<>();
        for (Tables.Line line : lines.subList(1, lines.size())) {
            entries.add(new Entry(Tables.text(line.cell(columns[0])), line.cell(columns[1]), line.cell(columns[2])));
        }
        return entries;
    }

    /** Who got which file, how hard it is, and what attempts at it are known by. */
    public byte[] index() {
        List<List<?>> table = new ArrayList<>();
        table.add(List.of(
                "learner",
                "file",
                "difficulty",
                "target",
                "band",
                "in band",
                "wrong choices",
                "closeness",
                "boards",
                "seed",
                "digest"));
        for (Given one : given) {
            Variant v = one.variant();
            table.add(List.of(
                    Tables.plain(v.learner()),
                    one.file(),
                    v.difficulty().value(),
                    target,
                    band,
                    v.inBand() ? "yes" : "no",
                    v.difficulty().wrongChoices(),
                    v.difficulty().closeness(),
                    v.scenario().boards().size(),
                    seed,
                    v.scenario().digest()));
        }
        return Tables.csv(table);
    }
}
