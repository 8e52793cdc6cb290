package org.marktwice.view.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Objects;
import javax.swing.JComponent;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.marktwice.files.ScenarioFile;
import org.marktwice.picture.WorkingDrawing;
import org.marktwice.view.Look;
import org.marktwice.view.Strokes;

/** Beside the bench the working drawing's joints are looked at, one after the other. */
class DrawingPanelTest {
    private static AtTheBench atTheScreenFrame() throws Exception {
        return new AtTheBench(Worked.fresh(ScenarioFile.read(Path.of("scenarios/screen-frame.scenario.json"))));
    }

    private static JComponent page(AtTheBench bench) {
        Component drawing = bench.window.panel("drawing").target();
        return Objects.requireNonNull(GuiActionRunner.execute(() -> {
            for (Component c : ((JComponent) drawing).getComponents()) {
                if (c.getAccessibleContext().getAccessibleName() != null
                        && c.getAccessibleContext().getAccessibleName().matches("(Working drawing|Joint ).*")) {
                    return (JComponent) c;
                }
            }
            throw new AssertionError("no page");
        }));
    }

    private static String shown(AtTheBench bench) {
        return Objects.requireNonNull(
                GuiActionRunner.execute(() -> page(bench).getAccessibleContext().getAccessibleName()));
    }

    @Test
    void byKeyAndByWordTheJointsComeOneAfterTheOther() throws Exception {
        try (AtTheBench bench = atTheScreenFrame()) {
            assertThat(shown(bench)).isEqualTo("Working drawing");

            bench.key(KeyEvent.VK_U);
            assertThat(shown(bench)).startsWith("Joint A, stub mortise and tenon: 8 deep");
            bench.word("joint");
            assertThat(shown(bench)).startsWith("Joint B, bridle");
            bench.key(KeyEvent.VK_U);
            assertThat(shown(bench)).isEqualTo("Working drawing");
        }
    }

    @Test
    void aPressOnARingOpensItsJointAndAnotherClosesIt() throws Exception {
        try (AtTheBench bench = atTheScreenFrame()) {
            JComponent page = page(bench);
            Point ring = Objects.requireNonNull(GuiActionRunner.execute(() -> ring(bench, page, "B")));

            press(bench, page, ring);
            assertThat(shown(bench)).startsWith("Joint B, bridle");
            press(bench, page, new Point(20, 20));
            assertThat(shown(bench)).isEqualTo("Working drawing");
        }
    }

    private static void press(AtTheBench bench, JComponent page, Point at) {
        Strokes.pointing(bench.window.robot(), () -> bench.window.robot().click(page, at));
    }

    private static Point ring(AtTheBench bench, JComponent page, String letter) {
        WorkingDrawing drawn = WorkingDrawing.of(bench.session.scenario().drawing(), WorkingDrawing.Method.FIRST_ANGLE)
                .lettered();
        Rectangle all = new Rectangle(page.getSize());
        for (int y = 0; y < all.height; y += 3) {
            for (int x = 0; x < all.width; x += 3) {
                Point at = new Point(x, y);
                if (drawn.detailAt(at, all, Look.Style.NOTE.font())
                        .filter(d -> d.letter().equals(letter))
                        .isPresent()) return at;
            }
        }
        throw new AssertionError("no ring " + letter);
    }
}
