package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import javax.swing.JTable;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.data.TableCell;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RackFile;
import org.marktwice.files.RecordFile;
import org.marktwice.timber.Showing;
import org.marktwice.timber.Surface;
import org.marktwice.view.desk.DeskPixels;

/**
 * Real boards allotted and finished jobs recorded by the mouse: names and figures are typed into what was clicked, and no
 * other key is touched.
 */
class RealWorkByMouseTest extends BeforeAWindow {
    @Override
    void prepare() throws IOException {
        Path own = Files.createDirectories(home.resolve("Desk"));
        Files.copy(Path.of("scenarios/porch-shelf.scenario.json"), own.resolve("porch-shelf.scenario.json"));
    }

    @BeforeEach
    void open() {
        at.click("to-desk");
        at.until("on the desk", () -> at.window.table("exercises-set").rowCount() == 1);
        Strokes.pointing(
                at.robot,
                () -> at.window
                        .table("exercises-set")
                        .cell(TableCell.row(0).column(0))
                        .click());
    }

    private JTable table(String name) {
        return Objects.requireNonNull(at.window.table(name).target());
    }

    private void cell(String table, int row, int column) {
        Strokes.pointing(
                at.robot,
                () -> at.window
                        .table(table)
                        .cell(TableCell.row(row).column(column))
                        .click());
    }

    private void type(String table, int row, int column, String text) {
        cell(table, row, column);
        at.type(text);
    }

    private String stands(String table, int row, int column) {
        return AtTheWindow.onScreen(() -> String.valueOf(table(table).getValueAt(row, column)));
    }

    private int column(String head) {
        return AtTheWindow.onScreen(() -> table("rack-table").getColumnModel().getColumnIndex(head));
    }

    private void rack(int row, String head, String text) {
        type("rack-table", row, column(head), text);
    }

    private String rack(int row, String head) {
        return stands("rack-table", row, column(head));
    }

    /** Clicks a cell, the mark that it then has, and one of the lines below it. */
    private void choose(int row, String head, String item) {
        cell("rack-table", row, column(head));
        JTable table = table("rack-table");
        Point mark = AtTheWindow.onScreen(() -> {
            Rectangle cell = table.getCellRect(row, column(head), false);
            return new Point(cell.x + cell.width - 6, cell.y + cell.height / 2);
        });
        Strokes.pointing(at.robot, () -> at.robot.click(table, mark, MouseButton.LEFT_BUTTON, 1));
        at.pick(item);
    }

    private void saveAs(Path file) {
        JFileChooserFixture chooser = JFileChooserFinder.findFileChooser().using(at.robot);
        chooser.fileNameTextBox().setText(file.toString());
        chooser.approveButton().click();
        at.until("saved", () -> at.text("line").equals("Saved: " + file));
        assertThat(file).exists();
    }

    @Test
    void aRackIsPutInAndAllotted() throws FileRefused {
        at.click("to-allot");
        at.until("at alloting", () -> at.title().equals("Porch shelf: allot boards"));
        oneBoard();
        anotherTakenOutAgain();
        at.click("save-rack");
        at.until("saved", () -> at.text("line").startsWith("Saved"));
        assertThat(RackFile.read(home.resolve("Desk/rack.csv")).boards())
                .singleElement()
                .satisfies(b -> assertThat(b.knots().get(0).shows())
                        .containsExactly(
                                new Showing(Surface.FACE_1, 150, 70, 18, 15, true),
                                new Showing(Surface.FACE_2, 152, 67, 11, 10, false)));

        at.click("allot");
        at.until("allotted", () -> at.text("outcome").contains("parts supplied"));
        Strokes.pointing(
                at.robot, () -> at.window.toggleButton("tab-see-to-buy").click());
        assertThat(at.readable()).anySatisfy(said -> assertThat(said).contains("To buy"));
        at.click("labels");
        at.pick("print-labels-on-a4");
        saveAs(home.resolve("labels.pdf"));
        at.click("leave-allot");
        at.until("on the desk", () -> at.title().equals("Teacher's desk"));
    }

    private void oneBoard() {
        rack(0, "board", "R1");
        choose(0, "species", "choose-scots-pine");
        rack(0, "length", "330");
        rack(0, "width", "130");
        rack(0, "thickness", "18");
        choose(0, "sawn", "choose-edge-2");
        choose(0, "sawn", "choose-end-1");
        choose(0, "sawn", "choose-edge-1");
        choose(0, "sawn", "choose-end-1");
        assertThat(rack(0, "sawn")).isEqualTo("edge-1 edge-2");
        rack(0, "pith-y", "60");
        rack(0, "pith-z", "-40");
        at.click("rack-knot-new");
        assertThat(rack(0, "knot")).isEqualTo("k1");
        choose(0, "on", "choose-face-1");
        shows(0, "150", "70", "18", "15");
        choose(0, "dead", "choose-yes");
        at.click("rack-showing-new");
        choose(1, "on", "choose-face-2");
        shows(1, "152", "67", "11", "10");
        Component section = at.robot.finder().findByName("end-section", true);
        Point pith = AtTheWindow.onScreen(() -> DeskPixels.ofPith(section));
        desk.drag(section, pith, new Point(pith.x + 14, pith.y));
        assertThat(rack(0, "pith-y")).isNotEqualTo("60");
        at.click("undo-rack");
        assertThat(rack(0, "pith-y")).isEqualTo("60");
    }

    private void shows(int row, String... figures) {
        String[] heads = {"u", "v", "along", "across"};
        for (int i = 0; i < heads.length; i++) rack(row, heads[i], figures[i]);
    }

    private void anotherTakenOutAgain() {
        at.click("rack-board-new");
        at.type("300");
        at.click("undo-rack");
        assertThat(rack(2, "length"))
                .as("what was still being typed is undone first")
                .isEmpty();
        at.click("redo-rack");
        assertThat(rack(2, "length")).isEqualTo("300");
        empty("rack-table", 2, column("length"));
        assertThat(rack(2, "length")).isEmpty();
        at.click("rack-line-remove");
        assertThat(table("rack-table").getRowCount()).isEqualTo(3);
        assertThat(at.text("outcome")).endsWith("✓ 1 board, whole");
    }

    private void empty(String table, int row, int column) {
        Strokes.pointing(
                at.robot,
                () -> at.window
                        .table(table)
                        .cell(TableCell.row(row).column(column))
                        .rightClick());
        at.pick("empty-cell");
    }

    @Test
    void finishedJobsAreRecorded() throws FileRefused, IOException {
        Path back = Files.createDirectories(home.resolve("back"));
        Files.copy(
                Path.of("scenarios/attempts/porch-shelf-flawed.attempt.jsonl"), back.resolve("flawed.attempt.jsonl"));
        at.click("to-record");
        at.until("at the record", () -> at.title().equals("Porch shelf: finished jobs"));
        desk.fill("record-learners", "3");
        at.click("open-record");
        at.until("begun", () -> at.text("line").equals("Begun for 3 learners"));
        type("record", 0, 0, "520");
        type("record", 1, 0, "521,2");
        type("record", 2, 0, "517");
        whatCantBeTakenIsPutRightOrGivenUp();
        desk.choose("tolerances", "first attempt");
        assertThat(stands("record", 1, table("record").getColumnCount() - 2)).isEqualTo("50");
        at.click("record-attempts-choose");
        JFileChooserFixture chooser = JFileChooserFinder.findFileChooser().using(at.robot);
        chooser.selectFile(back.toFile());
        chooser.approveButton().click();
        at.click("beside");
        at.until("beside", () -> at.text("line").startsWith("Practice marks of 1 learner"));
        at.click("save-record");
        at.until("saved", () -> at.text("line").startsWith("Saved"));
        assertThat(RecordFile.read(home.resolve("Desk/porch-shelf.record.json")).rows())
                .extracting(r -> r.of("across").orElse(0))
                .containsExactly(520.0, 521.2, 0.0);
        at.click("print-record");
        at.pick("print-table-of-the-class");
        saveAs(home.resolve("record.pdf"));
        at.click("leave-record");
        at.until("on the desk", () -> at.title().equals("Teacher's desk"));
    }

    private void whatCantBeTakenIsPutRightOrGivenUp() {
        cell("record", 0, 1);
        at.type("1o2");
        cell("record", 1, 1);
        assertThat(at.text("line")).startsWith("\"1o2\" is no figure in millimetres");
        at.click("save-record");
        assertThat(at.text("line")).as("not left out of what is saved").startsWith("\"1o2\" is no figure");
        assertThat(AtTheWindow.onScreen(() -> table("record").isEditing())).isTrue();
        at.click("undo-record");
        assertThat(AtTheWindow.onScreen(() -> table("record").isEditing())).isFalse();
        assertThat(stands("record", 2, 0))
                .as("only what couldn't be taken is given up")
                .isEqualTo("517");
        assertThat(at.text("line")).isBlank();
        empty("record", 2, 0);
        assertThat(stands("record", 2, 0)).isEmpty();
        at.click("undo-record");
        assertThat(stands("record", 2, 0)).isEqualTo("517");
        at.click("redo-record");
        assertThat(stands("record", 2, 0)).isEmpty();
    }
}
