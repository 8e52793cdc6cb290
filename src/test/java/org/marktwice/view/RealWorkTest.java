package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RecordFile;

/** The real boards allotted, and the finished jobs measured, at the teacher's desk. */
class RealWorkTest {
    @TempDir
    Path home;

    private AtTheWindow at;
    private AtTheDesk desk;

    @BeforeEach
    void open() throws IOException {
        Path own = Files.createDirectories(home.resolve("Desk"));
        Files.copy(Path.of("scenarios/porch-shelf.scenario.json"), own.resolve("porch-shelf.scenario.json"));
        at = new AtTheWindow(home);
        desk = new AtTheDesk(at);
        at.ctrl(KeyEvent.VK_T);
        at.until("on the desk", () -> table("exercises-set").getSelectedRow() == 0);
    }

    @AfterEach
    void close() {
        at.close();
    }

    private JTable table(String name) {
        return Objects.requireNonNull(at.window.table(name).target());
    }

    private List<String> column(String table, String head) {
        return AtTheWindow.onScreen(() -> {
            JTable of = table(table);
            int column = of.getColumnModel().getColumnIndex(head);
            return IntStream.range(0, of.getRowCount())
                    .mapToObj(r -> String.valueOf(of.getValueAt(r, column)))
                    .toList();
        });
    }

    @Test
    void figuresAreTypedStraightDownAColumn() throws FileRefused {
        at.click("to-record");
        at.until("at the record", () -> at.title().equals("Porch shelf: finished jobs"));
        desk.set("record-learners", "3");
        Path file = home.resolve("shelf.record.csv");
        desk.set("record-file", file.toString());
        at.click("open-record");
        at.until("begun", () -> at.text("line").equals("Begun for 3 learners"));
        JTable record = table("record");
        at.window.table("record").focus();
        at.robot.waitForIdle();
        for (String typed : new String[] {"520", "521,2", "517"}) {
            at.robot.enterText(typed);
            at.key(KeyEvent.VK_ENTER);
        }
        assertThat(column("record", "Overall across, 520")).containsExactly("520", "521.2", "517");
        assertThat(AtTheWindow.onScreen(() -> record.getSelectedRow())).isZero();
        assertThat(AtTheWindow.onScreen(() -> record.getSelectedColumn())).isEqualTo(2);
        assertThat(column("record", "Job of 100")).containsExactly("100", "0", "0");
        at.window.comboBox("tolerances").selectItem("first attempt");
        at.robot.waitForIdle();
        assertThat(column("record", "Job of 100")).containsExactly("100", "50", "0");
        at.ctrl(KeyEvent.VK_S);
        at.until("saved", () -> at.text("line").startsWith("Saved"));
        assertThat(RecordFile.read(file).rows())
                .hasSize(3)
                .last()
                .satisfies(r -> assertThat(r.measured()).containsEntry("across", 517.0));
        at.ctrl(KeyEvent.VK_Z);
        at.ctrl(KeyEvent.VK_Z);
        assertThat(column("record", "Overall across, 520")).containsExactly("520", "521.2", "");
    }

    @Test
    void everyPartOfEveryJobHasItsLine() {
        at.click("to-allot");
        at.until("at alloting", () -> at.title().equals("Porch shelf: allot boards"));
        at.click("allot");
        assertThat(at.text("line")).isEqualTo("Say which file tells what is on the rack");
        desk.set(
                "rack",
                Path.of("src/test/resources/files/class.rack.csv")
                        .toAbsolutePath()
                        .toString());
        desk.type("jobs", "2");
        at.click("allot");
        at.until("allotted", () -> at.text("outcome").contains("parts supplied"));
        assertThat(column("allotted", "Job")).containsExactly("Job 1", "Job 1", "Job 1", "Job 2", "Job 2", "Job 2");
        assertThat(column("allotted", "Clear")).allMatch(c -> c.startsWith("✓") || c.startsWith("×"));
        assertThat(at.text("outcome")).contains("of 6 parts supplied");
    }
}
