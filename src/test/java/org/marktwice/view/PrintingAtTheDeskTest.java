package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A teacher prints an exercise's sheets from the desk, by the mouse. */
class PrintingAtTheDeskTest extends BeforeAWindow {
    @Override
    void prepare() throws IOException {
        Path own = Files.createDirectories(home.resolve("Desk"));
        Files.copy(Path.of("scenarios/peg-rail.scenario.json"), own.resolve("peg-rail.scenario.json"));
    }

    @BeforeEach
    void goToTheDesk() {
        at.ctrl(KeyEvent.VK_T);
        at.until("on the desk", () -> at.window.table("exercises-set").target().getSelectedRow() == 0);
    }

    private void printTo(Path file) {
        at.click("print-sheets");
        at.pick("print-working-drawing");
        JFileChooserFixture chooser = JFileChooserFinder.findFileChooser().using(at.robot);
        chooser.fileNameTextBox().setText(file.toString());
        chooser.approve();
    }

    private static String text(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void theDrawingSaysWhoDrewItAndWhenOnceThatIsFilledIn() throws IOException {
        at.click("print-sheets");
        at.pick("print-title-block-…");
        JOptionPaneFixture asked = JOptionPaneFinder.findOptionPane().using(at.robot);
        at.until(
                "ready to be typed into",
                () -> asked.textBox("issue-owner").target().isFocusOwner());
        at.type("Riverside workshop");
        asked.textBox("issue-by").setText("A. Joiner");
        asked.textBox("issue-date").setText("2026-11-28");
        asked.okButton().click();

        Path file = home.resolve("drawing.pdf");
        printTo(file);
        at.until("saved", () -> at.text("line").equals("Saved: " + file));
        assertThat(text(file)).contains("Riverside workshop", "A. Joiner", "2026-11-28", "peg-rail");
    }

    @Test
    void aFileThatCantBeWrittenIsToldInOneLineAndNothingIsLost() {
        printTo(home.resolve("nowhere").resolve("drawing.pdf"));
        at.until("told", () -> at.text("line").contains("drawing.pdf"));
        assertThat(at.text("line")).doesNotContain("Saved").doesNotContain("\n");
        assertThat(at.title()).isEqualTo("Teacher's desk");
    }
}
