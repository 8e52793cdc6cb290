package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JTable;
import org.assertj.swing.core.matcher.JButtonMatcher;
import org.assertj.swing.data.TableCell;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.feedback.SheetModel;
import org.marktwice.files.ActionWriter;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.rulebook.Situation;
import org.marktwice.rulebook.Slip;
import org.marktwice.rulebook.Slips;
import org.marktwice.rulebook.Texts;
import org.marktwice.rulebook.WorkedAttempt;
import org.marktwice.scenario.Scenario;

/**
 * A teacher makes an exercise from nothing and hands it out to three; three attempts come back, one of them damaged, and
 * the results say the right things.
 */
class TeachingAClassTest extends BeforeAWindow {
    private static final String STARTED = "2026-02-03T09:10:00Z";

    @BeforeEach
    void goToTheDesk() {
        at.ctrl(KeyEvent.VK_T);
    }

    private JTable table(String name) {
        return Objects.requireNonNull(at.window.table(name).target());
    }

    /** A table's cells in a column, from the top. */
    private List<String> column(String table, String head) {
        return AtTheWindow.onScreen(() -> {
            JTable of = table(table);
            int column = of.getColumnModel().getColumnIndex(head);
            return java.util.stream.IntStream.range(0, of.getRowCount())
                    .mapToObj(r -> String.valueOf(of.getValueAt(r, column)))
                    .toList();
        });
    }

    private void tab(String id) {
        Strokes.pointing(at.robot, () -> at.window.toggleButton("tab-" + id).click());
    }

    private Path cameBack(Path handedOut) throws IOException, FileRefused {
        Path back = Files.createDirectories(home.resolve("back"));
        Attempt first = WorkedAttempt.of(variant(handedOut, "P01"), "P01", STARTED);
        Files.writeString(back.resolve("P01.attempt.jsonl"), ActionWriter.text(first));
        Scenario second = variant(handedOut, "P02");
        Attempt good = WorkedAttempt.of(second, "P02", STARTED);
        Attempt slipped = Arrays.stream(Slip.values())
                .flatMap(s -> Slips.one(s, second, good, 3).stream())
                .findFirst()
                .orElseThrow()
                .attempt();
        Files.writeString(back.resolve("second.attempt.jsonl"), ActionWriter.text(slipped));
        String third = ActionWriter.text(WorkedAttempt.of(variant(handedOut, "P03"), "P03", STARTED));
        Files.writeString(back.resolve("P03.attempt.jsonl"), third.replaceFirst("\"do\":\"", "\"do\":\"hold "));
        return back;
    }

    private static Scenario variant(Path folder, String learner) throws FileRefused {
        return ScenarioFile.read(folder.resolve("key-shelf-" + learner + ".scenario.json"));
    }

    @Test
    void fromNothingToWhatToTeachTomorrow() throws IOException, FileRefused {
        at.click("new-exercise");
        desk.threeParts();
        desk.finish();
        at.click("leave-set");
        at.until("on the desk", () -> table("exercises-set").getRowCount() == 1);
        assertThat(column("exercises-set", "How far")).containsExactly("✓ finished");

        at.click("hand-out");
        at.until("at handing out", () -> at.title().equals("Key shelf: hand out"));
        Path folder = home.resolve("class");
        desk.type("learners", "3");
        desk.set("set-folder", folder.toString());
        at.click("make-set");
        at.until("made", () -> at.text("line").startsWith("Written to"));
        assertThat(column("set", "Learner")).containsExactly("P01", "P02", "P03");
        assertThat(column("set", "Within the band")).containsOnly("✓ within");

        Path back = cameBack(folder);
        at.click("collect");
        desk.set("mark-attempts", back.toString());
        at.click("mark-folder");
        at.until("marked", () -> at.text("standing").startsWith("2 of 3 files marked; 1 left out"));

        assertThat(column("learners", "Learner")).containsExactly("P01", "P02");
        List<String> marks = column("learners", "Marks");
        List<String> of = column("learners", "Of");
        assertThat(marks.get(0)).isEqualTo(of.get(0));
        assertThat(Double.parseDouble(marks.get(1))).isLessThan(Double.parseDouble(of.get(1)));
        assertThat(at.readable()).anyMatch(said -> said.endsWith("Nothing marked of P03."));
        tab("see-slips");
        assertThat(column("slips", "Who")).isNotEmpty().containsOnly("P02");
        tab("see-files");
        assertThat(column("files", "State")).containsExactly("✓ whole", "× unreadable", "✓ whole");
        assertThat(column("files", "Why").get(1)).contains("expected");
        tab("see-tomorrow");
        assertThat(at.window.panel("tomorrow").target().isShowing()).isTrue();

        opensWhereItWasDecided(folder, back);
        isDeletedOnRequest(folder, back);
    }

    /** All that is kept of a learner is listed, and gone once that is agreed to; the rest is marked anew. */
    private void isDeletedOnRequest(Path folder, Path back) {
        at.window.table("learners").cell(TableCell.row(1).column(0)).click();
        at.key(KeyEvent.VK_DELETE, KeyEvent.VK_CONTROL);
        at.until("asked", () -> at.showing("to-delete"));
        assertThat(at.readable())
                .anySatisfy(said -> assertThat(said)
                        .contains("second.attempt.jsonl", "key-shelf-P02.scenario.json", "index.csv")
                        .doesNotContain("P01"));
        JButton delete = Objects.requireNonNull(
                at.robot.finder().find(JButtonMatcher.withText("Delete").andShowing()));
        Strokes.pointing(at.robot, () -> at.robot.click(delete));
        at.until("marked anew", () -> at.text("standing").startsWith("1 of 2 files marked"));
        assertThat(column("learners", "Learner")).containsExactly("P01");
        assertThat(folder.resolve("key-shelf-P02.scenario.json")).doesNotExist();
        assertThat(back.resolve("second.attempt.jsonl")).doesNotExist();
        assertThat(back.resolve("P03.attempt.jsonl")).exists();
    }

    /** From a slip by Enter, and from a learner's rule by a double click: the replay stands at the step that decided it. */
    private void opensWhereItWasDecided(Path folder, Path back) throws IOException, FileRefused {
        tab("see-slips");
        List<String> rules = column("slips", "Rule");
        int row = IntStream.range(0, rules.size())
                .filter(r -> decided(folder, back, rules.get(r)).isPresent())
                .findFirst()
                .orElseThrow();
        String rule = rules.get(row);
        int decided = decided(folder, back, rule).orElseThrow();
        at.window.table("slips").focus();
        at.robot.waitForIdle();
        for (int i = 0; i <= row; i++) at.key(KeyEvent.VK_DOWN);
        at.key(KeyEvent.VK_ENTER);
        at.until("in the replay", () -> at.title().equals("Key shelf: replay"));
        assertThat(at.text("step")).startsWith("STEP " + decided + " OF");
        at.ctrl(KeyEvent.VK_T);
        assertThat(at.title()).isEqualTo("Mark");

        tab("see-learners");
        int column =
                AtTheWindow.onScreen(() -> table("learners").getColumnModel().getColumnIndex(rule));
        Strokes.pointing(
                at.robot,
                () -> at.window
                        .table("learners")
                        .cell(TableCell.row(1).column(column))
                        .click());
        assertThat(at.text("line")).startsWith("P02, " + rule + ": ");
        at.window.table("learners").cell(TableCell.row(1).column(column)).doubleClick();
        at.until("in the replay", () -> at.title().equals("Key shelf: replay"));
        assertThat(at.text("step")).startsWith("STEP " + decided + " OF");
        at.ctrl(KeyEvent.VK_T);
        assertThat(column("learners", "Learner")).containsExactly("P01", "P02");
    }

    private static OptionalInt decided(Path folder, Path back, String rule) {
        try {
            Attempt attempt =
                    AttemptFile.read(back.resolve("second.attempt.jsonl")).attempt();
            SheetModel sheet = SheetModel.of(Situation.of(Bench.after(variant(folder, "P02"), attempt)));
            return sheet.decidedAt(f -> Texts.of(f.rule()).title().equals(rule));
        } catch (CannotDo | FileRefused e) {
            throw new AssertionError("it was marked", e);
        }
    }

    @Test
    void whatIsAskedForWronglyIsMetByOneLine() {
        at.click("to-mark");
        tab("see-tomorrow");
        assertThat(at.readable()).contains("There are no results yet.");
        at.click("mark-folder");
        assertThat(at.text("line")).isEqualTo("Say which exercise it is");
        desk.set("mark-exercise", home.resolve("nowhere.scenario.json").toString());
        desk.set("mark-attempts", home.toString());
        at.click("mark-folder");
        at.until("refused", () -> at.text("line").contains("nowhere.scenario.json"));
        assertThat(at.text("standing")).isEqualTo("Nothing was marked.");
    }
}
