package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.marktwice.bench.Action;
import org.marktwice.rulebook.Faulty;
import org.marktwice.rulebook.SlipWords;
import org.marktwice.rulebook.Slipped;

/** Another hand's work taken over from the start page, its slip named, and the whole handed in. */
class FindTheFaultTest {
    @TempDir
    Path home;

    private AtTheWindow at;

    @BeforeEach
    void open() {
        at = new AtTheWindow(home);
    }

    @AfterEach
    void close() {
        at.close();
    }

    @Test
    void theSlipIsNamedOnTheBoardAndMarked() {
        at.click("find-fault");
        Session session = at.session();
        int seed = session.attempt().actions().stream()
                .filter(Action.TakeOver.class::isInstance)
                .map(a -> ((Action.TakeOver) a).seed())
                .findFirst()
                .orElseThrow();
        Faulty other = Faulty.of(session.scenario(), seed);
        assertThat(session.attempt().actions()).startsWith(other.given().toArray(new Action[0]));
        assertThat(at.text("notice")).startsWith("Another hand did this work");

        Slipped slip = other.slips().get(0);
        at.key(KeyEvent.VK_F7);
        at.key(KeyEvent.VK_1 + SlipWords.toBeNamed().indexOf(slip.slip()));
        assertThat(session.bench().faults())
                .extracting(Action.Fault::slip)
                .containsExactly(slip.slip().id());

        at.click("hand-in");
        at.click("skip");
        assertThat(at.showing("finding-fault-named-" + slip.board())).isTrue();
        at.click("finding-fault-named-" + slip.board());
        assertThat(at.readable()).anyMatch(t -> t.startsWith("Rightly named on board " + slip.board()));
        at.click("replay");
        at.click("step-on");
        assertThat(at.text("step")).startsWith("ANOTHER HAND");
    }

    @Test
    void itCountsForNoBestMark() {
        at.click("find-fault");
        at.click("hand-in");
        at.click("skip");
        at.click("exercises-button");
        assertThat(at.showing("best-sheet")).isFalse();
    }
}
