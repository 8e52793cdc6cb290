package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import org.assertj.swing.core.matcher.JButtonMatcher;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.marktwice.classroom.BulkMarking;
import org.marktwice.classroom.ClassList;
import org.marktwice.classroom.ClassSet;
import org.marktwice.classroom.Variants;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.DraftFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RecordFile;
import org.marktwice.files.ScenarioFile;
import org.marktwice.files.ScenarioWriter;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Surface;

/** Places that can't be written to, and windows closed too soon: one clear line, another way, and nothing lost. */
class NothingIsLostTest {
    @TempDir
    Path temp;

    private final List<AtTheWindow> opened = new ArrayList<>();

    @AfterEach
    void close() {
        opened.forEach(AtTheWindow::close);
    }

    /** The one window of a test. */
    private AtTheWindow at() {
        return opened.get(0);
    }

    private AtTheDesk setting(Path home) {
        opened.add(new AtTheWindow(home));
        at().click("to-desk");
        at().click("new-exercise");
        return new AtTheDesk(at());
    }

    /** A folder that can't be made, whoever asks: there is a file in the way. */
    private Path unwritable() throws IOException {
        return Files.writeString(temp.resolve("in the way"), "a file").resolve("home");
    }

    private static JButtonMatcher way(String word) {
        return JButtonMatcher.withName("OptionPane.button").andText(word).andShowing();
    }

    private void answer(String word) {
        at().until(word + " is offered", () -> isOffered(word));
        JButton button = Objects.requireNonNull(at().robot.finder().find(way(word)));
        Strokes.pointing(at().robot, () -> at().robot.click(button));
    }

    private boolean isOffered(String word) {
        return !at().robot.finder().findAll(way(word)).isEmpty();
    }

    /** Chooses a folder where one is asked for. */
    private void choose(Path folder) {
        at().until("a folder is asked for", () -> at().showing("another-folder"));
        JFileChooser chooser = at().robot.finder().findByName("another-folder", JFileChooser.class, true);
        AtTheWindow.onScreen(() -> {
            chooser.setSelectedFile(folder.toFile());
            chooser.approveSelection();
            return true;
        });
        at().robot.waitForIdle();
    }

    private String asked() {
        JOptionPane pane = at().robot.finder().findByType(JOptionPane.class, true);
        return AtTheWindow.onScreen(() -> String.valueOf(pane.getMessage()));
    }

    private static List<String> names(Path folder) throws IOException {
        if (!Files.exists(folder)) return List.of();
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    // Closing

    @Test
    void theTitleNamesTheExerciseAndSaysWhatIsNotSaved() {
        AtTheDesk desk = setting(temp);
        assertThat(at().title()).isEqualTo("New exercise");
        desk.type("title", "Boot bench");
        assertThat(at().title()).isEqualTo("Boot bench: set, not saved");
        at().ctrl(KeyEvent.VK_S);
        at().until("saved", () -> at().title().equals("Boot bench: set"));
        at().ctrl(KeyEvent.VK_N);
        assertThat(at().title()).isEqualTo("Boot bench: set, not saved");
        at().ctrl(KeyEvent.VK_Z);
        assertThat(at().title()).isEqualTo("Boot bench: set");
    }

    @Test
    void closingAsksAndOneMayStay() throws IOException {
        AtTheDesk desk = setting(temp);
        desk.fill("title", "Boot bench");
        at().window.close();
        at().until("asked", () -> isOffered("Go on setting"));
        assertThat(asked()).isEqualTo("\"Boot bench\" has changes that are not saved.");
        answer("Go on setting");
        assertThat(at().frame.isShowing()).isTrue();
        assertThat(names(temp.resolve("Desk"))).isEmpty();
        at().window.close();
        answer("Save");
        at().until("closed", () -> !at().frame.isShowing());
        assertThat(names(temp.resolve("Desk"))).containsExactly("boot-bench.draft.json");
    }

    @Test
    void closingWithoutSavingKeepsWhatWasSavedBefore() throws IOException, FileRefused {
        AtTheDesk desk = setting(temp);
        desk.fill("title", "Boot bench");
        at().ctrl(KeyEvent.VK_S);
        at().until("saved", () -> at().text("line").startsWith("Saved as a draft"));
        desk.fill("title", "Boat bench");
        at().window.close();
        answer("Don't save");
        at().until("closed", () -> !at().frame.isShowing());
        assertThat(DraftFile.read(temp.resolve("Desk/boot-bench.draft.json")).title())
                .isEqualTo("Boot bench");
    }

    @Test
    void whatIsStillBeingTypedIsSavedToo() throws FileRefused {
        AtTheDesk desk = setting(temp);
        desk.fill("title", "Boot bench");
        at().ctrl(KeyEvent.VK_S);
        at().until("saved", () -> at().text("line").startsWith("Saved as a draft"));
        assertThat(at().title()).isEqualTo("Boot bench: set");
        assertThat(DraftFile.read(temp.resolve("Desk/boot-bench.draft.json")).title())
                .isEqualTo("Boot bench");
    }

    // What can't be

    @Test
    void aFigureThatCantBeIsKeptToBePutRightAndUndoneFirst() {
        AtTheDesk desk = setting(temp);
        at().click("add-part");
        desk.fill("part-0-width", "120");
        desk.fill("part-0-length", "300");
        desk.fill("part-0-width", "-12");
        desk.fill("part-0-name", "Seat");
        assertThat(at().text("line"))
                .isEqualTo("Width, mm: expected a number above 0, found \"-12\"; 120 still stands");
        assertThat(at().window.textBox("part-0-width").text()).isEqualTo("-12");
        at().ctrl(KeyEvent.VK_Z);
        assertThat(at().window.textBox("part-0-width").text()).isEqualTo("120");
        assertThat(at().window.textBox("part-0-name").text()).isEqualTo("Seat");
        at().ctrl(KeyEvent.VK_Z);
        assertThat(at().window.textBox("part-0-name").text()).isEmpty();
    }

    @Test
    void undoGoesToWhereItIsSeen() {
        setting(temp);
        at().click("add-part");
        at().ctrl(KeyEvent.VK_3);
        at().tick("stage-setting-out");
        at().ctrl(KeyEvent.VK_1);
        at().until("at the job", () -> at().showing("part-0-name"));
        at().ctrl(KeyEvent.VK_Z);
        at().until("at the task", () -> at().showing("stage-setting-out"));
        assertThat(at().window.checkBox("stage-setting-out").target().isSelected())
                .isFalse();
        at().ctrl(KeyEvent.VK_Z);
        at().until("at the job", () -> at().showing("parts-form"));
        assertThat(at().showing("part-0-name")).isFalse();
    }

    @Test
    void twoPartsOfOneNameAreToldApart() {
        AtTheDesk desk = setting(temp);
        at().click("add-part");
        desk.fill("part-0-name", "Leg");
        at().click("add-part");
        desk.type("part-1-name", "leg");
        assertThat(at().text("part-1-gap")).contains("Two parts are called leg");
    }

    // Places that can't be written to

    @Test
    void anExerciseIsKeptElsewhereWhereTheDeskCantBeWrittenTo() throws IOException, FileRefused {
        Path home = unwritable();
        Path stick = Files.createDirectories(temp.resolve("stick"));
        opened.add(new AtTheWindow(temp.resolve("first"), home));
        at().click("to-desk");
        at().click("new-exercise");
        AtTheDesk desk = new AtTheDesk(at());
        desk.type("title", "Boot bench");
        at().ctrl(KeyEvent.VK_S);
        at().until("said", () -> isOffered("Choose a folder …"));
        assertThat(asked())
                .contains("Desk", "there is a file where a folder should be")
                .doesNotContain("Exception");
        answer("Not now");
        assertThat(at().title()).isEqualTo("Boot bench: set, not saved");
        at().click("leave-set");
        answer("Choose a folder …");
        choose(stick);
        at().until("on the desk", () -> at().window.table("exercises-set").rowCount() == 1);
        assertThat(DraftFile.read(stick.resolve("boot-bench.draft.json")).title())
                .isEqualTo("Boot bench");
    }

    @Test
    void aSetIsWrittenElsewhereWithoutBeingMadeAnewAndIsWhatTheCommandLineMakes() throws Exception {
        opened.add(new AtTheWindow(temp.resolve("home")));
        AtTheDesk desk = new AtTheDesk(at());
        at().click("to-desk");
        at().click("new-exercise");
        desk.threeParts();
        desk.finish();
        at().click("leave-set");
        at().until("on the desk", () -> at().window.table("exercises-set").rowCount() == 1);
        at().click("hand-out");
        at().until("handing out", () -> at().title().equals("Key shelf: hand out"));
        desk.fill("learners", "3000");
        at().ctrl(KeyEvent.VK_ENTER);
        assertThat(at().text("line")).contains("expected a whole number from 1 to 500", "\"3000\"");
        desk.set("set-folder", unwritable().toString());
        desk.fill("set-seed", "7");
        desk.fill("learners", "3");
        at().ctrl(KeyEvent.VK_ENTER);
        answer("Choose a folder …");
        Path stick = Files.createDirectories(temp.resolve("stick"));
        choose(stick);
        at().until("written", () -> at().text("line").startsWith("Written to"));
        Scenario exercise = ScenarioFile.read(temp.resolve("home/Desk/key-shelf.scenario.json"));
        Path other = temp.resolve("by the command");
        ClassSet.make(
                        Variants.of(exercise, 7, Variants.BAND),
                        exercise.id(),
                        ClassList.numbered(3),
                        BulkMarking.Progress.NONE)
                .write(other);
        assertThat(names(stick)).isEqualTo(names(other)).hasSize(4);
        for (String name : names(other)) {
            assertThat(stick.resolve(name)).hasSameBinaryContentAs(other.resolve(name));
        }
    }

    @Test
    void anAttemptIsKeptElsewhereWholeAndGoneOnWithFromThere() throws IOException, FileRefused {
        Path home = unwritable();
        Path stick = Files.createDirectories(temp.resolve("stick"));
        opened.add(new AtTheWindow(temp.resolve("first"), home));
        at().click("enter");
        at().until("on the bench", () -> at().showing("unrolled-view"));
        at().tool("face-side");
        at().clickBoard(Surface.FACE_1, 60, 4);
        assertThat(at().text("notice"))
                .startsWith("Not saved yet (")
                .contains("there is a file where a folder should be")
                .doesNotContain("Exception");
        int done = at().session().attempt().actions().size();
        at().click("keep-elsewhere");
        choose(stick);
        at().until("kept", () -> at().text("notice").startsWith("Your work is kept in " + stick));
        at().clickBoard(Surface.FACE_2, 60, 4);
        List<String> files =
                names(stick).stream().filter(n -> n.endsWith(".jsonl")).toList();
        assertThat(files).hasSize(1);
        Path file = stick.resolve(files.get(0));
        assertThat(AttemptFile.read(file).attempt().actions()).hasSize(done + 1);
        // another day
        at().menu("item-exercises");
        AtTheWindow.onScreen(() -> {
            at().frame.walk().open(file);
            return true;
        });
        at().until("on the bench", () -> at().showing("unrolled-view"));
        assertThat(at().session().attempt().actions()).hasSize(done + 1);
    }

    @Test
    void anExerciseOpensFromAPlaceThatIsOnlyReadAndSaysWhereTheWorkGoes() throws IOException, FileRefused {
        Path home = temp.resolve("home");
        opened.add(new AtTheWindow(home));
        Scenario given = Shelf.scenarios().get(0);
        Path zip = temp.resolve("handed out.zip");
        try (FileSystem inside = FileSystems.newFileSystem(zip, Map.of("create", "true"))) {
            Path file = inside.getPath("/" + given.id() + "-P07.scenario.json");
            Files.write(file, ScenarioWriter.bytes(given));
            AtTheWindow.onScreen(() -> {
                at().frame.walk().open(file);
                return true;
            });
            assertThat(at().text("line"))
                    .isEqualTo("Opened " + file.getFileName() + ". Your work at it is kept in " + home + ".");
            at().click("enter");
            at().until("on the bench", () -> at().showing("unrolled-view"));
            at().tool("face-side");
            at().clickBoard(Surface.FACE_1, 60, 4);
            at().menu("item-exercises");
            assertThat(names(inside.getPath("/")))
                    .containsExactly(file.getFileName().toString());
        }
        assertThat(names(home))
                .anySatisfy(n -> assertThat(n).startsWith(given.id()).endsWith(".attempt.jsonl"));
    }

    /** Its lock can't be taken, as where its disk has come to be one that can only be read. */
    @Test
    void anAttemptThatCanOnlyBeReadIsGoneOnWithElsewhere() throws IOException, FileRefused {
        Path home = temp.resolve("home");
        Path stick = Files.createDirectories(temp.resolve("stick"));
        opened.add(new AtTheWindow(home));
        at().click("enter");
        at().until("on the bench", () -> at().showing("unrolled-view"));
        at().tool("face-side");
        at().clickBoard(Surface.FACE_1, 60, 4);
        int done = at().session().attempt().actions().size();
        at().menu("item-exercises");
        String name = names(home).stream()
                .filter(n -> n.endsWith(".attempt.jsonl"))
                .findFirst()
                .orElseThrow();
        Files.createDirectory(home.resolve("." + name + ".lock"));
        AtTheWindow.onScreen(() -> {
            at().frame.walk().open(home.resolve(name));
            return true;
        });
        at().until("on the bench", () -> at().showing("unrolled-view"));
        assertThat(at().text("notice")).startsWith("It can be read, but not gone on with there");
        at().tool("face-edge");
        at().clickBoard(Surface.EDGE_1, 60, 4);
        assertThat(at().text("notice")).startsWith("Not saved yet");
        at().click("keep-elsewhere");
        choose(stick);
        at().until("kept", () -> at().text("notice").startsWith("Your work is kept in"));
        assertThat(AttemptFile.read(stick.resolve(names(stick).stream()
                                .filter(n -> n.endsWith(".attempt.jsonl"))
                                .findFirst()
                                .orElseThrow()))
                        .attempt()
                        .actions())
                .hasSize(done + 1);
        assertThat(AttemptFile.read(home.resolve(name)).attempt().actions()).hasSize(done);
    }

    /** At a screen of the one exercise on the desk, whose folder then comes to be one that can't be written to. */
    private void atTheDeskThatCantBeWrittenToAnyMore(String way, String title) throws IOException {
        Path desk = Files.createDirectories(temp.resolve("home/Desk"));
        Path exercise = desk.resolve("porch-shelf.scenario.json");
        Files.copy(Path.of("scenarios/porch-shelf.scenario.json"), exercise);
        opened.add(new AtTheWindow(temp.resolve("home")));
        at().click("to-desk");
        at().until("on the desk", () -> at().window.table("exercises-set").rowCount() == 1);
        at().click(way);
        at().until("at work", () -> at().title().equals(title));
        Files.delete(exercise);
        Files.delete(desk);
        Files.writeString(desk, "a file");
    }

    @Test
    void finishedJobsAreKeptElsewhereWhereTheDeskCantBeWrittenTo() throws IOException, FileRefused {
        atTheDeskThatCantBeWrittenToAnyMore("to-record", "Porch shelf: finished jobs");
        Path stick = Files.createDirectories(temp.resolve("stick"));
        at().window.table("record").focus();
        at().robot.waitForIdle();
        at().type("520");
        at().key(KeyEvent.VK_ENTER);
        at().click("save-record");
        at().until("refused", () -> at().text("line").contains("there is a file where a folder should be"));
        assertThat(at().title()).isEqualTo("Porch shelf: finished jobs");
        at().click("leave-record");
        at().until("said", () -> isOffered("Choose a folder …"));
        assertThat(asked()).endsWith("The record is not kept yet.").doesNotContain("Exception");
        answer("Choose a folder …");
        choose(stick);
        at().until("on the desk", () -> at().title().equals("Teacher's desk"));
        Path kept = stick.resolve("porch-shelf.record.json");
        assertThat(at().text("notice")).endsWith("The record was kept in " + kept);
        assertThat(RecordFile.read(kept).rows().get(0).of("across")).hasValue(520);
    }

    @Test
    void aRackIsLeftWithoutOnlyWhenThatIsAgreedTo() throws IOException {
        atTheDeskThatCantBeWrittenToAnyMore("to-allot", "Porch shelf: allot boards");
        at().window.table("rack-table").focus();
        at().robot.waitForIdle();
        at().type("R1");
        at().key(KeyEvent.VK_ENTER);
        at().window.close();
        at().until("said", () -> isOffered("Leave without it"));
        assertThat(asked()).endsWith("The rack is not kept yet.");
        assertThat(at().frame.isShowing()).isTrue();
        answer("Leave without it");
        at().until("closed", () -> !at().frame.isShowing());
    }
}
