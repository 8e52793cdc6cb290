package org.marktwice.view.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.marktwice.files.DraftFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.Save;
import org.marktwice.files.ScenarioFile;
import org.marktwice.files.ScenarioWriter;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.Scenario;

/**
 * The folder in which a teacher's own exercises lie: a finished one as {@code NAME.scenario.json}, one in the making as
 * {@code NAME.draft.json}. While both are there the draft is what is worked on, and the scenario what was finished before.
 */
final class DeskFolder {
    private static final String FINISHED = ".scenario.json";

    private final Path first;
    /** Where exercises are kept from now on; the first folder, unless it can't be written to. */
    private volatile Path folder;

    DeskFolder(Path folder) {
        this.first = folder;
        this.folder = folder;
    }

    /** Where exercises are kept. */
    Path folder() {
        return folder;
    }

    /** Keeps exercises in another folder from now on; those in the first one are still found. */
    void keepIn(Path other) {
        folder = other;
    }

    /**
     * An exercise of the teacher's own.
     *
     * @param name the file's, without its ending
     * @param refused why it can't be read, in one line; empty where it can
     */
    record Kept(String name, Draft draft, boolean finished, String refused) {}

    /** By title; those that can't be read last. */
    List<Kept> all() {
        List<Kept> all = new ArrayList<>();
        for (String name : names()) all.add(read(name));
        all.sort(Comparator.comparing((Kept k) -> !k.refused().isEmpty())
                .thenComparing(k -> k.draft().title())
                .thenComparing(Kept::name));
        return List.copyOf(all);
    }

    private TreeSet<String> names() {
        TreeSet<String> names = new TreeSet<>();
        for (Path place : List.of(first, folder)) names(place, names);
        return names;
    }

    private static void names(Path place, TreeSet<String> names) {
        if (!Files.isDirectory(place)) return;
        try (Stream<Path> files = Files.list(place)) {
            files.map(f -> f.getFileName().toString()).forEach(f -> {
                for (String ending : List.of(FINISHED, DraftFile.ENDING)) {
                    if (f.endsWith(ending)) names.add(f.substring(0, f.length() - ending.length()));
                }
            });
        } catch (IOException e) {
            // a folder that can't be looked into has nothing to show; saving into it will say why
        }
    }

    /** Where an exercise lies: what was kept last goes before what lies in the first folder. */
    private Path place(String name) {
        return Files.exists(draft(folder, name)) || Files.exists(scenario(folder, name)) ? folder : first;
    }

    private Kept read(String name) {
        Path place = place(name);
        boolean finished = !Files.exists(draft(place, name));
        try {
            Draft draft =
                    finished ? Draft.of(ScenarioFile.read(scenario(place, name))) : DraftFile.read(draft(place, name));
            return new Kept(name, draft, finished, "");
        } catch (FileRefused e) {
            return new Kept(name, Draft.BLANK.titled(name), finished, String.valueOf(e.getMessage()));
        }
    }

    /** A name under which nothing lies yet. */
    String free(String wanted) {
        String free = wanted;
        for (int i = 2; names().contains(free); i++) free = wanted + "-" + i;
        return free;
    }

    /**
     * Keeps an exercise: finished, where nothing is missing, else as a draft.
     *
     * @return the scenario as it now lies in its file; empty where it is not finished
     */
    Optional<Scenario> save(String name, Draft draft) throws FileRefused {
        Optional<Scenario> finished = DraftFile.finished(draft);
        if (finished.isEmpty()) {
            keep(name, draft);
            return Optional.empty();
        }
        Path into = folder;
        Save.folder(into);
        Save.whole(scenario(into, name), ScenarioWriter.bytes(finished.get()));
        try {
            Files.deleteIfExists(draft(into, name));
        } catch (IOException e) {
            throw new FileRefused(
                    draft(into, name).toString(), "the finished exercise is saved, but this draft can't be removed");
        }
        return finished;
    }

    /** Keeps an exercise as it is, to go on with. */
    void keep(String name, Draft draft) throws FileRefused {
        Path into = folder;
        Save.folder(into);
        Save.whole(draft(into, name), DraftFile.bytes(draft));
    }

    /** Takes an exercise away. */
    void remove(String name) throws FileRefused {
        Path place = place(name);
        for (Path file : List.of(draft(place, name), scenario(place, name))) {
            try {
                Files.deleteIfExists(file);
            } catch (IOException e) {
                throw new FileRefused(file.toString(), "it can't be removed");
            }
        }
    }

    Path scenario(String name) {
        return scenario(place(name), name);
    }

    private static Path scenario(Path place, String name) {
        return place.resolve(name + FINISHED);
    }

    private static Path draft(Path place, String name) {
        return place.resolve(name + DraftFile.ENDING);
    }
}
