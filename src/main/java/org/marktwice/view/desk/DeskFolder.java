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

    private final Path folder;

    DeskFolder(Path folder) {
        this.folder = folder;
    }

    Path folder() {
        return folder;
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
        if (!Files.isDirectory(folder)) return names;
        try (Stream<Path> files = Files.list(folder)) {
            files.map(f -> f.getFileName().toString()).forEach(f -> {
                for (String ending : List.of(FINISHED, DraftFile.ENDING)) {
                    if (f.endsWith(ending)) names.add(f.substring(0, f.length() - ending.length()));
                }
            });
        } catch (IOException e) {
            // a folder that can't be looked into has nothing to show; saving into it will say why
        }
        return names;
    }

    private Kept read(String name) {
        boolean finished = !Files.exists(draft(name));
        try {
            Draft draft = finished ? Draft.of(ScenarioFile.read(scenario(name))) : DraftFile.read(draft(name));
            return new Kept(name, draft, finished, "");
        } catch (FileRefused e) {
            return new Kept(name, Draft.BLANK.titled(name), finished, String.valueOf(e.getMessage()));
        }
    }

    /** A name under which nothing lies yet. */
    String free(String wanted) {
        String free = wanted;
        for (int i = 2; Files.exists(draft(free)) || Files.exists(scenario(free)); i++) free = wanted + "-" + i;
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
        make();
        Save.whole(scenario(name), ScenarioWriter.bytes(finished.get()));
        try {
            Files.deleteIfExists(draft(name));
        } catch (IOException e) {
            throw new FileRefused(
                    draft(name).toString(), "the finished exercise is saved, but this draft can't be removed");
        }
        return finished;
    }

    /** Keeps an exercise as it is, to go on with. */
    void keep(String name, Draft draft) throws FileRefused {
        make();
        Save.whole(draft(name), DraftFile.bytes(draft));
    }

    private void make() throws FileRefused {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new FileRefused(folder.toString(), "the folder for exercises can't be made");
        }
    }

    /** Takes an exercise away. */
    void remove(String name) throws FileRefused {
        for (Path file : List.of(draft(name), scenario(name))) {
            try {
                Files.deleteIfExists(file);
            } catch (IOException e) {
                throw new FileRefused(file.toString(), "it can't be removed");
            }
        }
    }

    Path scenario(String name) {
        return folder.resolve(name + FINISHED);
    }

    private Path draft(String name) {
        return folder.resolve(name + DraftFile.ENDING);
    }
}
