package org.marktwice.view.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.print.Paper;
import org.marktwice.print.SheetKind;

/** The desk saves sheets for the printer, and says where, or in one line why not. */
class PrintingTest {
    @TempDir
    Path folder;

    private final LinkedBlockingQueue<String> said = new LinkedBlockingQueue<>();

    private void save(Path to) throws FileRefused {
        var scenario = ScenarioFile.read(Path.of("scenarios/peg-rail.scenario.json"));
        Printing.save(to, () -> scenario, EnumSet.of(SheetKind.DRAWING), Paper.A4, said::add);
    }

    private String says() throws InterruptedException {
        String first = said.poll(60, TimeUnit.SECONDS);
        assertThat(first).isEqualTo("Drawing the sheets …");
        return String.valueOf(said.poll(60, TimeUnit.SECONDS));
    }

    @Test
    void aWorkingDrawingIsSavedAsPdf() throws IOException, FileRefused, InterruptedException {
        Path to = folder.resolve("drawing.pdf");
        save(to);
        assertThat(says()).isEqualTo("Saved: " + to);
        assertThat(new String(Files.readAllBytes(to), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }

    @Test
    void aNameThatTellsNoFormatIsRefusedInOneLine() throws FileRefused, InterruptedException {
        save(folder.resolve("drawing.doc"));
        assertThat(says()).contains("drawing.doc").doesNotContain("\n");
    }
}
