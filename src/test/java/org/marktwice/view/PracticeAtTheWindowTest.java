package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import org.junit.jupiter.api.Test;

/** The workshop's practice on a page, from wherever an exercise is showing, by mouse and by keys. */
class PracticeAtTheWindowTest extends BeforeAWindow {
    private static final String PAGE = "The workshop's practice";

    private void readAndClosed(String exercise, String tag) {
        assertThat(at.showing(PAGE)).isTrue();
        assertThat(at.readable())
                .anyMatch(t -> t.startsWith(exercise + ". Authorities differ"))
                .contains("Face side", "Marks", "Told")
                .anyMatch(t -> t.startsWith("Strict ± 0.5 mm, standard ± 1 mm"));
        assertThat(at.text("tag-heartSide")).isEqualTo(tag);
        at.key(KeyEvent.VK_ESCAPE);
        assertThat(at.showing(PAGE)).isFalse();
    }

    @Test
    void byKeys() {
        at.key(KeyEvent.VK_F12);
        readAndClosed("Peg rail", "as usual");
        at.key(KeyEvent.VK_ENTER);
        at.key(KeyEvent.VK_F12);
        readAndClosed("Peg rail", "as usual");
        assertThat(at.title()).isEqualTo("Peg rail");
        at.ctrl(KeyEvent.VK_ENTER);
        at.key(KeyEvent.VK_F12);
        readAndClosed("Peg rail", "as usual");
        at.ctrl(KeyEvent.VK_K);
        at.key(KeyEvent.VK_F12);
        readAndClosed("Peg rail", "as usual");
        assertThat(at.title()).isEqualTo("Peg rail: mark sheet");
    }

    @Test
    void byMouse() {
        at.exercise("Hearth step");
        at.click("practice");
        readAndClosed("Hearth step", "not as usual");
        at.click("enter");
        at.menu("item-practice");
        readAndClosed("Hearth step", "not as usual");
        at.click("hand-in");
        at.click("skip");
        at.click("practice");
        readAndClosed("Hearth step", "not as usual");
    }

    @Test
    void atTheTeachersDeskItIsOfTheExerciseBeingSet() {
        at.ctrl(KeyEvent.VK_T);
        at.key(KeyEvent.VK_F12);
        assertThat(at.showing(PAGE)).as("no exercise is showing").isFalse();
        at.ctrl(KeyEvent.VK_N);
        at.key(KeyEvent.VK_F12);
        readAndClosed("This exercise", "as usual");
    }
}
