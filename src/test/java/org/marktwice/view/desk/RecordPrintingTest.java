package org.marktwice.view.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RecordFile;
import org.marktwice.files.ScenarioFile;
import org.marktwice.print.Paper;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Look;

/** The record of finished jobs is saved for the printer: blank for the bench, and filled in once something was measured. */
class RecordPrintingTest {
    @TempDir
    Path folder;

    @BeforeAll
    static void dress() {
        GuiActionRunner.execute(() -> Look.install(false, 1));
    }

    private final LinkedBlockingQueue<String> said = new LinkedBlockingQueue<>();

    private static Scenario shelf() throws FileRefused {
        return ScenarioFile.read(Path.of("scenarios/porch-shelf.scenario.json"));
    }

    private static RecordModel model() throws FileRefused {
        return new RecordModel(shelf(), RecordFile.blank("porch-shelf", List.of("P01", "P02")));
    }

    private RecordPrinting printing(RecordModel model) {
        return Objects.requireNonNull(
                GuiActionRunner.execute(() -> new RecordPrinting(new JPanel(), shelf(), model, said::add)));
    }

    private List<String> offered(RecordModel model) {
        RecordPrinting printing = printing(model);
        return Objects.requireNonNull(
                GuiActionRunner.execute(() -> Stream.of(printing.menu().getComponents())
                        .filter(JMenuItem.class::isInstance)
                        .map((Component c) -> ((JMenuItem) c).getText())
                        .toList()));
    }

    @Test
    void beforeAnythingIsMeasuredThereAreBlanksOnly() throws FileRefused {
        RecordModel model = model();
        assertThat(offered(model))
                .containsExactly("Blank table for the bench", "Blank sheet for each learner", "On letter paper");

        model.type(0, model.measures().get(0), "520.3");
        assertThat(offered(model)).startsWith("Table of the class", "Sheet for each learner");
    }

    @ParameterizedTest
    @EnumSource
    void everyKindIsSaved(RecordPrinting.Kind kind) throws Exception {
        RecordModel model = model();
        model.type(0, model.measures().get(0), "520.3");
        Path to = folder.resolve("record.pdf");
        printing(model).save(to, kind, Paper.LETTER);

        assertThat(said.poll(60, TimeUnit.SECONDS)).isEqualTo("Drawing the sheets …");
        assertThat(said.poll(60, TimeUnit.SECONDS)).isEqualTo("Saved: " + to);
        assertThat(new String(Files.readAllBytes(to), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }

    @Test
    void aPlaceThatCantBeWrittenToIsToldInOneLine() throws Exception {
        printing(model()).save(folder.resolve("nowhere/record.pdf"), RecordPrinting.Kind.BLANK_TABLE, Paper.A4);
        said.poll(60, TimeUnit.SECONDS);
        assertThat(said.poll(60, TimeUnit.SECONDS)).contains("record.pdf").doesNotContain("\n");
    }
}
