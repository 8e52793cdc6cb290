package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.Surface;

/** Hints, estimates and less help, asked for in the window, journalled, and shown on the mark sheet. */
class HelpAtTheWindowTest extends BeforeAWindow {
    private String line() {
        JTextArea line = at.robot.finder().findByName("line", JTextArea.class, true);
        return AtTheWindow.onScreen(line::getText);
    }

    private <A extends Action> List<A> journalled(Class<A> kind) {
        return at.session().attempt().actions().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    @Test
    void hintsComeInGradesAndStandOnTheSheet() {
        begin("Porch shelf");
        at.tool("face-side");
        at.clickBoard(Surface.FACE_1, 160, 40);
        at.click("hint");
        assertThat(line()).startsWith("Hint 1 of 3, where to look: Look ");
        at.key(KeyEvent.VK_F3);
        assertThat(line()).startsWith("Hint 2 of 3, what to check: ");
        at.click("hint");
        assertThat(line()).startsWith("Hint 3 of 3, what the rule says: ");
        assertThat(journalled(Action.Hint.class)).extracting(Action.Hint::grade).containsExactly(1, 2, 3);

        at.click("hand-in");
        at.click("skip");
        assertThat(at.readable()).anyMatch(t -> t.endsWith("where to look, what to check, what the rule says"));
    }

    @Test
    void anEstimateBeforeTheTurnStandsBesideWhatCame() {
        begin("Porch shelf");
        at.key(KeyEvent.VK_N);
        at.clickBoard(Surface.FACE_1, 160, 60);
        at.key(KeyEvent.VK_1);
        at.key(KeyEvent.VK_T);
        at.key(KeyEvent.VK_F4);
        at.key(KeyEvent.VK_3);
        assertThat(line()).startsWith("You expect 10 mm");
        at.key(KeyEvent.VK_ENTER);
        assertThat(journalled(Action.EstimateClearance.class))
                .extracting(Action.EstimateClearance::mm)
                .containsExactly(10.0);
        assertThat(journalled(Action.Turning.class)).hasSize(1);

        at.click("hand-in");
        at.tick("part-shelf");
        at.click("hand-in");
        assertThat(at.readable())
                .anyMatch(t -> t.matches("Board A as the Left upright: estimated 10 mm, computed .* mm.*"))
                .anyMatch(t -> t.startsWith("Clearances: "));
        assertThat(journalled(Action.Estimate.class))
                .singleElement()
                .satisfies(e -> assertThat(e.parts()).containsExactly("shelf"));
    }

    @Test
    void estimatesAreComparedOverTime() {
        for (int time = 1; time <= 3; time++) {
            double guess = 5.0 * time;
            AtTheWindow.onScreen(() -> {
                at.frame.walk().begin(Samples.scenario("porch-shelf"));
                for (Action action : Samples.work("porch-shelf", "perfect")) {
                    if (action instanceof Action.Turning turn) {
                        Action said = new Action.EstimateClearance(turn.t(), turn.board(), guess);
                        at.frame.walk().session().orElseThrow().perform(t -> said);
                    }
                    at.frame.walk().session().orElseThrow().perform(t -> action);
                }
                at.frame.walk().toHandIn();
                return true;
            });
            at.robot.waitForIdle();
            at.click("hand-in");
            assertThat(at.title()).isEqualTo("Porch shelf: mark sheet");
            assertThat(at.showing("calibration")).as("after %d", time).isEqualTo(time > 1);
            at.click("exercises-button");
        }
    }

    @Test
    void lessHelpFadesTheGuidanceForThisAttempt() {
        begin("Peg rail");
        Practice.Guidance before = at.session().bench().guidance();
        assertThat(before).isEqualTo(Practice.Guidance.EACH_STEP);
        at.menu("item-less-help");
        assertThat(at.session().bench().guidance()).isEqualTo(Practice.Guidance.EACH_PART);
        assertThat(line()).isEqualTo("From here on you are told after each part.");
        assertThat(journalled(Action.LessHelp.class)).hasSize(1);
    }

    @Test
    void whoDoesWellIsOfferedLessHelpNextTime() throws Exception {
        begin("Peg rail");
        List<Action> good = Samples.work("peg-rail", "perfect");
        AtTheWindow.onScreen(() -> {
            for (Action action : good) at.frame.walk().session().orElseThrow().perform(t -> action);
            return true;
        });
        at.click("hand-in");
        at.click("skip");
        at.click("less-help");
        assertThat(at.title()).isEqualTo("Peg rail");
        assertThat(at.session().bench().guidance()).isEqualTo(Practice.Guidance.EACH_PART);
        assertThat(at.text("notice")).isEqualTo("You are told after each part this time.");
    }

    @Test
    void anExaminationIsKeptAndNothingIsShown() throws Exception {
        Path file = home.resolve("exam.scenario.json");
        String rail = Files.readString(Path.of("scenarios/peg-rail.scenario.json"));
        Files.writeString(
                file,
                rail.replace("\"each-step\"", "\"examination\"")
                        .replace("\"peg-rail\"", "\"peg-rail-exam\"")
                        .replace("Peg rail", "Peg rail, examined"),
                StandardCharsets.UTF_8);
        AtTheWindow.onScreen(() -> {
            at.frame.walk().open(file);
            return true;
        });
        at.robot.waitForIdle();
        at.click("enter");
        assertThat(at.title()).isEqualTo("Peg rail, examined");
        assertThat(at.showing("hint")).isFalse();
        at.tool("face-side");
        at.clickBoard(Surface.FACE_1, 210, 20);
        assertThat(line()).isEqualTo("Face side marked on face 1, towards edge 1");
        at.click("hand-in");
        at.click("skip");
        assertThat(at.text("kept")).isEqualTo("Your work is kept.");
        assertThat(at.showing("total")).isFalse();
        at.click("exercises-button");
        at.until("kept", () -> at.readable().contains("Handed in, and kept for your teacher."));
        assertThat(at.showing("best-sheet")).isFalse();
    }
}
