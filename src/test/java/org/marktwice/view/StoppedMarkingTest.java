package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.marktwice.view.desk.HeldMarking;

/** Marking a folder is stopped by the mouse: what was marked so far stands, and it is said that it isn't all. */
class StoppedMarkingTest {
    private static final Path SHELF = Path.of("scenarios/porch-shelf.scenario.json");
    private static final int FILES = 8;

    @TempDir
    Path home;

    private AtTheWindow at;

    @BeforeEach
    void open() throws IOException {
        Path back = Files.createDirectories(home.resolve("back"));
        String flawed = Files.readString(Path.of("scenarios/attempts/porch-shelf-flawed.attempt.jsonl"));
        for (int i = 1; i <= FILES; i++) {
            Files.writeString(
                    back.resolve("P0" + i + ".attempt.jsonl"),
                    flawed.replaceFirst("\"learner\":\"[^\"]*\"", "\"learner\":\"P0" + i + "\""));
        }
        at = new AtTheWindow(home);
        AtTheWindow.onScreen(() -> {
            at.frame.show(HeldMarking.screen(at.frame.walk(), home.resolve("Desk"), SHELF.toAbsolutePath(), 3));
            return true;
        });
        new AtTheDesk(at).set("mark-attempts", back.toString());
    }

    @AfterEach
    void close() {
        at.close();
    }

    private int rows(String table) {
        return at.window.table(table).rowCount();
    }

    @Test
    void whatWasMarkedSoFarStandsAndTheRestIsMarkedWhenAskedAgain() throws IOException {
        assertThat(at.showing("stop-marking")).isFalse();
        at.click("mark-folder");
        at.until("under way", () -> at.text("standing").equals("Marked 3 of 8"));
        assertThat(at.isEnabled("mark-folder")).isFalse();

        at.click("stop-marking");
        at.until("stopped", () -> at.text("standing").startsWith("Stopped: "));
        assertThat(at.text("standing")).isEqualTo("Stopped: 3 of 8 files marked; 5 not looked at");
        assertThat(rows("learners")).isEqualTo(3);
        assertThat(at.showing("stop-marking")).isFalse();
        assertThat(at.showing("progress")).isFalse();
        savedTableSaysSo();

        at.click("mark-folder");
        at.until("all", () -> at.text("standing").equals("8 of 8 files marked"));
        assertThat(rows("learners")).isEqualTo(FILES);
    }

    /** A table of some of the class is not to be taken for one of the whole. */
    private void savedTableSaysSo() throws IOException {
        Path table = home.resolve("results.csv");
        at.click("export-results");
        JFileChooserFixture chooser = JFileChooserFinder.findFileChooser().using(at.robot);
        chooser.fileNameTextBox().setText(table.toString());
        chooser.approveButton().click();
        at.until("saved", () -> at.text("line").startsWith("Saved: "));
        assertThat(at.text("line")).isEqualTo("Saved: " + table + ". It was stopped: 5 of 8 files are not in it");
        try (CSVParser read = CSVParser.parse(Files.readString(table), CSVFormat.RFC4180.withFirstRecordAsHeader())) {
            assertThat(read.getRecords()).hasSize(3);
        }
    }
}
