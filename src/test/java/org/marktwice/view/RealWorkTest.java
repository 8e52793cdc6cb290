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
import org.assertj.swing.data.TableCell;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RackFile;
import org.marktwice.files.RecordFile;
import org.marktwice.timber.Showing;
import org.marktwice.timber.Surface;

/** The real boards allotted, and the finished jobs measured, at the teacher's desk. */
class RealWorkTest extends BeforeAWindow {
    @Override
    void prepare() throws IOException {
        Path own = Files.createDirectories(home.resolve("Desk"));
        Files.copy(Path.of("scenarios/porch-shelf.scenario.json"), own.resolve("porch-shelf.scenario.json"));
    }

    @BeforeEach
    void open() {
        at.ctrl(KeyEvent.VK_T);
        at.until("on the desk", () -> table("exercises-set").getSelectedRow() == 0);
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
            at.type(typed);
            at.key(KeyEvent.VK_ENTER);
        }
        assertThat(column("record", "Overall across, 520\u00a0±\u00a01")).containsExactly("520", "521.2", "517");
        assertThat(AtTheWindow.onScreen(() -> record.getSelectedRow())).isZero();
        assertThat(AtTheWindow.onScreen(() -> record.getSelectedColumn())).isEqualTo(1);
        assertThat(column("record", "Job of 100")).containsExactly("100", "0", "0");
        desk.choose("tolerances", "first attempt");
        assertThat(column("record", "Job of 100")).containsExactly("100", "50", "0");
        at.ctrl(KeyEvent.VK_S);
        at.until("saved", () -> at.text("line").startsWith("Saved"));
        assertThat(RecordFile.read(file).rows())
                .hasSize(3)
                .last()
                .satisfies(r -> assertThat(r.measured()).containsEntry("across", 517.0));
        at.ctrl(KeyEvent.VK_Z);
        at.ctrl(KeyEvent.VK_Z);
        assertThat(column("record", "Overall across, 520\u00a0±\u00a01")).containsExactly("520", "521.2", "");
    }

    private void toTheRecord() {
        at.click("to-record");
        at.until("at the record", () -> at.title().equals("Porch shelf: finished jobs"));
        at.window.table("record").focus();
        at.robot.waitForIdle();
    }

    private void down(String... figures) {
        for (String typed : figures) {
            if (!typed.isEmpty()) at.type(typed);
            at.key(KeyEvent.VK_ENTER);
        }
    }

    private List<String> across() {
        return AtTheWindow.onScreen(() -> IntStream.range(0, table("record").getRowCount())
                .mapToObj(r -> String.valueOf(table("record").getValueAt(r, 0)))
                .toList());
    }

    @Test
    void aRecordIsGoneOnWithAndNeverWrittenOverByAnEmptyOne() throws FileRefused {
        toTheRecord();
        down("520", "521");
        at.key(KeyEvent.VK_ESCAPE);
        at.until("on the desk", () -> at.title().equals("Teacher's desk"));

        toTheRecord();
        at.until("there again", () -> across().get(1).equals("521"));
        down("", "", "519,5");
        desk.choose("tolerances", "first attempt");
        at.window.table("record").focus();
        at.key(KeyEvent.VK_ESCAPE);
        at.until("on the desk", () -> at.title().equals("Teacher's desk"));

        RecordFile kept = RecordFile.read(home.resolve("Desk/porch-shelf.record.json"));
        assertThat(kept.tolerance()).isEqualTo("first-attempt");
        assertThat(kept.rows().subList(0, 4))
                .extracting(r -> r.of("across").orElse(0))
                .containsExactly(520.0, 521.0, 519.5, 0.0);
    }

    @Test
    void oneStaysInACellUntilItHoldsAFigureOrIsGivenUp() {
        toTheRecord();
        down("520", "5,2o");
        assertThat(at.text("line")).startsWith("\"5,2o\" is no figure in millimetres: Overall across, P02");
        assertThat(AtTheWindow.onScreen(() -> table("record").isEditing())).isTrue();
        down("521");
        assertThat(at.text("line")).isBlank();
        down("-3");
        at.key(KeyEvent.VK_ESCAPE);
        assertThat(AtTheWindow.onScreen(() -> table("record").isEditing())).isFalse();
        assertThat(across().subList(0, 4)).containsExactly("520", "521", "", "");
    }

    @Test
    void aRecordThatWasOpenBeforeAnotherWasBegunIsNotWrittenOverUnasked() throws IOException {
        Path before = home.resolve("before.csv");
        Files.writeString(before, "learner,across\nAnna,520\n");
        toTheRecord();
        desk.set("record-file", before.toString());
        at.click("open-record");
        at.until("opened", () -> at.text("line").startsWith("Opened"));
        desk.set("record-file", home.resolve("next.csv").toString());
        at.click("open-record");
        at.until("begun", () -> at.text("line").startsWith("Begun for 20 learners"));
        desk.set("record-file", before.toString());
        at.click("save-record");
        at.window.optionPane().requireMessage("before.csv is there already. What is in it will be gone.");
        at.window.optionPane().buttonWithText("Cancel").click();
        assertThat(before).hasContent("learner,across\nAnna,520\n");
    }

    @Test
    void aRecordIsBegunForAClassListAndAnotherFileIsNotWrittenOverUnasked() throws IOException, FileRefused {
        Path list = home.resolve("class.csv");
        Files.writeString(list, "learner\n'=1+1\nAnna\n");
        Path other = home.resolve("other.record.json");
        Files.writeString(other, "mine");
        toTheRecord();
        desk.set("record-list", list.toString());
        at.click("open-record");
        at.until("begun", () -> at.text("line").equals("Begun for 2 learners"));
        down("520");
        desk.set("record-file", other.toString());
        at.click("save-record");
        at.window.optionPane().requireMessage("other.record.json is there already. What is in it will be gone.");
        at.window.optionPane().buttonWithText("Cancel").click();
        at.window.table("record").focus();
        at.key(KeyEvent.VK_ESCAPE);
        at.until("on the desk", () -> at.title().equals("Teacher's desk"));
        Path kept = home.resolve("Desk/porch-shelf.record.json");
        assertThat(at.text("notice")).isEqualTo("The record was kept in " + kept);
        assertThat(Files.readString(other)).isEqualTo("mine");
        assertThat(RecordFile.read(kept).rows())
                .extracting(RecordFile.Row::learner)
                .containsExactly("=1+1", "Anna");
    }

    @Test
    void everyPartOfEveryJobHasItsLine() {
        at.click("to-allot");
        at.until("at alloting", () -> at.title().equals("Porch shelf: allot boards"));
        at.click("allot");
        assertThat(at.text("line")).isEqualTo("Type what is on the rack, or say which file tells it");
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

    /** Types cells to the right, beginning where one is; an empty one is passed over. */
    private void across(String... cells) {
        for (String cell : cells) {
            if (!cell.isEmpty()) at.type(cell);
            at.key(KeyEvent.VK_TAB);
        }
    }

    private void toTheRack() {
        at.click("to-allot");
        at.until("at alloting", () -> at.title().equals("Porch shelf: allot boards"));
        at.window.table("rack-table").focus();
        at.robot.waitForIdle();
    }

    private String found() {
        return String.join(" | ", at.readable());
    }

    @Test
    void theRackIsTypedByKeysAloneAndAllotted() throws IOException, FileRefused {
        toTheRack();
        across("R1", "scots", "330", "130", "18", "", "", "", "60", "-40", "", "k1", "f1", "150", "70", "18", "15");
        assertThat(found()).contains("Board R1", "knot k1: doubtful", "a second surface would tell more");
        at.key(KeyEvent.VK_K, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        across("f2", "152", "67", "11", "10");
        assertThat(found()).contains("knot k1: sure, give or take");
        assertThat(column("rack-table", "knot")).containsExactly("k1", "k1", "");
        at.ctrl(KeyEvent.VK_N);
        across("310");
        assertThat(column("rack-table", "board")).containsExactly("R1", "", "R2", "");
        assertThat(column("rack-table", "species")).containsExactly("scots-pine", "", "scots-pine", "");
        assertThat(at.text("outcome")).endsWith("✓ 2 boards, all whole");

        at.ctrl(KeyEvent.VK_S);
        at.until("saved", () -> at.text("line").startsWith("Saved"));
        Path kept = home.resolve("Desk/rack.csv");
        RackFile rack = RackFile.read(kept);
        assertThat(rack.boards()).extracting(b -> b.bare().id()).containsExactly("R1", "R2");
        assertThat(rack.boards().get(0).knots())
                .singleElement()
                .satisfies(k -> assertThat(k.shows())
                        .containsExactly(
                                new Showing(Surface.FACE_1, 150, 70, 18, 15, false),
                                new Showing(Surface.FACE_2, 152, 67, 11, 10, false)));

        at.ctrl(KeyEvent.VK_ENTER);
        at.until("allotted", () -> at.text("outcome").contains("parts supplied"));
        assertThat(column("allotted", "Part")).hasSize(3);
        assertThat(at.text("allotted-heading")).startsWith("Job 1");
        at.ctrl(KeyEvent.VK_3);
        assertThat(found()).contains("To buy");

        at.click("leave-allot");
        at.until("on the desk", () -> at.title().equals("Teacher's desk"));
        toTheRack();
        at.until("there again", () -> at.text("outcome").endsWith("✓ 2 boards, all whole"));
    }

    @Test
    void whatIsNotTakenStandsInItsCellAndIsUndone() {
        toTheRack();
        across("R1", "scots", "a hand");
        assertThat(found()).contains("× length: expected a number above 0 up to 100000, found \"a hand\"");
        at.ctrl(KeyEvent.VK_G);
        at.type("330");
        at.key(KeyEvent.VK_ENTER);
        assertThat(column("rack-table", "length")).containsExactly("330", "");
        assertThat(at.text("outcome")).contains("1 board, 1 not whole: R1, its width is to come");
        at.click("allot");
        assertThat(at.text("line")).startsWith("No board of the rack is whole yet");
        at.ctrl(KeyEvent.VK_Z);
        assertThat(column("rack-table", "length")).containsExactly("a hand", "");
        at.ctrl(KeyEvent.VK_Z);
        at.ctrl(KeyEvent.VK_Z);
        at.ctrl(KeyEvent.VK_Z);
        assertThat(column("rack-table", "board")).containsExactly("");
        at.key(KeyEvent.VK_Z, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        assertThat(column("rack-table", "board")).containsExactly("R1", "");
    }

    @Test
    void whereOpeningAFileWasUndoneThatFileIsLeftAsItIs() throws IOException, FileRefused {
        Path other = home.resolve("theirs.csv");
        Files.copy(Path.of("src/test/resources/files/class.rack.csv"), other);
        byte[] theirs = Files.readAllBytes(other);
        toTheRack();
        across("R1", "scots", "330", "130", "18");
        desk.set("rack", other.toString());
        at.key(KeyEvent.VK_O, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        at.until("opened", () -> at.text("line").startsWith("Opened"));
        at.ctrl(KeyEvent.VK_Z);
        assertThat(column("rack-table", "board")).containsExactly("R1", "");
        at.window.table("rack-table").focus();
        at.key(KeyEvent.VK_ESCAPE);
        at.until("on the desk", () -> at.title().equals("Teacher's desk"));
        assertThat(Files.readAllBytes(other)).isEqualTo(theirs);
        assertThat(RackFile.read(home.resolve("theirs-2.csv")).boards())
                .extracting(b -> b.bare().id())
                .containsExactly("R1");
        assertThat(at.text("notice")).isEqualTo("The rack was kept in " + home.resolve("theirs-2.csv"));
    }

    @Test
    void figuresOfTheRackGoStraightDownAndALineIsTakenOut() {
        toTheRack();
        for (String id : new String[] {"R1", "R2", "R3"}) {
            at.type(id);
            at.key(KeyEvent.VK_ENTER);
        }
        assertThat(column("rack-table", "board")).containsExactly("R1", "R2", "R3", "");
        at.key(KeyEvent.VK_UP);
        at.key(KeyEvent.VK_DELETE, KeyEvent.VK_CONTROL);
        assertThat(column("rack-table", "board")).containsExactly("R1", "R2", "");
        at.ctrl(KeyEvent.VK_Z);
        assertThat(column("rack-table", "board")).containsExactly("R1", "R2", "R3", "");
    }

    @Test
    void aRackIsOpenedAndKeptHalfTyped() throws IOException {
        toTheRack();
        desk.type(
                "rack",
                Path.of("src/test/resources/files/class.rack.json")
                        .toAbsolutePath()
                        .toString());
        at.until("opened", () -> at.text("outcome").endsWith("boards, all whole"));
        int lines = column("rack-table", "board").size();
        desk.set("rack", home.resolve("other.csv").toString());
        at.window.table("rack-table").focus();
        at.robot.waitForIdle();
        for (int i = 1; i < lines; i++) at.key(KeyEvent.VK_DOWN);
        across("Z9", "oak-ish");
        at.click("leave-allot");
        at.until("kept", () -> Files.exists(home.resolve("other.csv")));
        assertThat(Files.readString(home.resolve("other.csv"))).contains("Z9,oak-ish");
        assertThat(lines).isGreaterThan(3);
    }

    @Test
    void whereASetWasHandedOutIsRememberedAndItsLearnersAreRecorded() throws IOException {
        Files.copy(Path.of("scenarios/peg-rail.scenario.json"), home.resolve("Desk/peg-rail.scenario.json"));
        Path stick = home.resolve("stick/shelf");
        handOut("Porch shelf");
        desk.type("learners", "2");
        desk.set("set-folder", stick.toString());
        at.click("make-set");
        at.until("made", () -> at.text("line").startsWith("Written to"));
        at.click("leave-hand-out");

        handOut("Porch shelf");
        assertThat(at.window.textBox("set-folder").text()).isEqualTo(stick.toString());
        at.click("leave-hand-out");
        handOut("Peg rail");
        assertThat(at.window.textBox("set-folder").text())
                .isEqualTo(home.resolve("stick/peg-rail").toString());
        at.click("leave-hand-out");

        chosen("Porch shelf");
        at.click("to-record");
        at.until("begun", () -> at.text("line").equals("Begun for the 2 learners to whom it was handed out"));
    }

    /** Chooses an exercise on the desk. */
    private void chosen(String exercise) {
        at.until(
                "on the desk",
                () -> at.title().equals("Teacher's desk")
                        && column("exercises-set", "Exercise").contains(exercise));
        int row = column("exercises-set", "Exercise").indexOf(exercise);
        Strokes.pointing(
                at.robot,
                () -> at.window
                        .table("exercises-set")
                        .cell(TableCell.row(row).column(0))
                        .click());
    }

    private void handOut(String exercise) {
        chosen(exercise);
        at.click("hand-out");
        at.until("handing out", () -> at.title().equals(exercise + ": hand out"));
    }
}
