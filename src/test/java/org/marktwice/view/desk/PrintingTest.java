package org.marktwice.view.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.print.Issue;
import org.marktwice.print.Paper;
import org.marktwice.print.SheetKind;
import org.marktwice.view.Look;

/** The desk saves sheets for the printer, and says where, or in one line why not. */
class PrintingTest {
    @TempDir
    Path folder;

    @BeforeAll
    static void dress() {
        GuiActionRunner.execute(() -> Look.install(false, 1));
    }

    private final LinkedBlockingQueue<String> said = new LinkedBlockingQueue<>();

    private void save(Path to) throws FileRefused {
        var scenario = ScenarioFile.read(Path.of("scenarios/peg-rail.scenario.json"));
        Printing.save(to, () -> scenario, EnumSet.of(SheetKind.DRAWING), Paper.A4, Issue.BLANK, said::add);
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

    @Test
    void aPlaceThatCantBeWrittenToIsToldInOneLine() throws FileRefused, InterruptedException {
        save(folder.resolve("nowhere/drawing.pdf"));
        assertThat(says()).contains("drawing.pdf").doesNotContain("\n");
    }

    @Test
    void theMenuHasEveryKindOnBothPapersAndTheTitleBlock() {
        JPopupMenu menu = Objects.requireNonNull(GuiActionRunner.execute(() -> Printing.sheets(
                new JPanel(),
                () -> ScenarioFile.read(Path.of("scenarios/peg-rail.scenario.json")),
                "peg-rail",
                new IssuedBy(),
                said::add)));
        assertThat(words(menu))
                .containsExactly(
                        "All sheets",
                        "Working drawing",
                        "Parts list",
                        "Worksheet",
                        "Answer sheet",
                        "Rule book",
                        "Cautions",
                        "Record sheet",
                        "On letter paper",
                        "Title block …");
    }

    private static List<String> words(JPopupMenu menu) {
        return Objects.requireNonNull(GuiActionRunner.execute(() -> Stream.of(menu.getComponents())
                .filter(JMenuItem.class::isInstance)
                .map(c -> ((JMenuItem) c).getText())
                .toList()));
    }
}
