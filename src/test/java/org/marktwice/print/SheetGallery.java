package org.marktwice.print;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Scenario;

/**
 * Every sheet of every shipped exercise, to be looked at: {@code SheetGallery FOLDER [PART-OF-AN-ID [KIND…]]} writes one PDF for each
 * exercise, kind and paper.
 */
public final class SheetGallery {
    private SheetGallery() {}

    public static void main(String[] args) throws IOException, FileRefused {
        System.setProperty("java.awt.headless", "true");
        Path folder = Files.createDirectories(Path.of(args[0]));
        String part = args.length > 1 ? args[1] : "";
        List<String> kinds = List.of(args).subList(Math.min(2, args.length), args.length);
        List<Path> files;
        try (Stream<Path> all = Files.list(Path.of("scenarios"))) {
            files = all.filter(f -> f.toString().endsWith(".scenario.json"))
                    .filter(f -> String.valueOf(f.getFileName()).matches(".*(" + part + ").*"))
                    .sorted()
                    .toList();
        }
        for (Path file : files) {
            Scenario scenario = ScenarioFile.read(file);
            for (SheetKind kind : SheetKind.values()) {
                if (!kinds.isEmpty() && !kinds.contains(kind.id())) continue;
                for (Paper paper : Paper.values()) {
                    Path to = folder.resolve(scenario.id() + "-" + kind.id() + "-" + paper.id() + ".pdf");
                    Files.write(to, Pdf.of(Sheets.of(scenario, Set.of(kind), paper), scenario.title()));
                }
            }
        }
    }
}
