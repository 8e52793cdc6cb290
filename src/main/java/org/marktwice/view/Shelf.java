package org.marktwice.view;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystemAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Scenario;

/** The exercises that come with the program, easiest first; read from its own folder or from inside its archive. */
public final class Shelf {
    private static final String FOLDER = "/scenarios";
    private static final String ENDING = ".scenario.json";

    private Shelf() {}

    /** @throws IllegalStateException where the program was put together wrongly: no exercises in it, or one it refuses */
    public static List<Scenario> scenarios() {
        URL url = Shelf.class.getResource(FOLDER);
        if (url == null) throw new IllegalStateException("there are no exercises in the program");
        try {
            URI uri = url.toURI();
            if (!"jar".equals(uri.getScheme())) return in(Path.of(uri));
            try (FileSystem archive = FileSystems.newFileSystem(uri, Map.of())) {
                return in(archive.getPath(FOLDER));
            } catch (FileSystemAlreadyExistsException e) {
                return in(FileSystems.getFileSystem(uri).getPath(FOLDER));
            }
        } catch (IOException | URISyntaxException | FileRefused e) {
            throw new IllegalStateException("the exercises in the program can't be read: " + e.getMessage(), e);
        }
    }

    private static List<Scenario> in(Path folder) throws IOException, FileRefused {
        List<Path> files;
        try (Stream<Path> entries = Files.list(folder)) {
            files = entries.filter(f -> f.getFileName().toString().endsWith(ENDING))
                    .filter(f -> !f.getFileName().toString().endsWith("-broken" + ENDING))
                    .toList();
        }
        List<Scenario> found = new ArrayList<>();
        for (Path file : files) found.add(ScenarioFile.read(file.getFileName().toString(), Files.readAllBytes(file)));
        found.sort(Comparator.comparingInt(Scenario::level).thenComparing(Scenario::title));
        return List.copyOf(found);
    }
}
