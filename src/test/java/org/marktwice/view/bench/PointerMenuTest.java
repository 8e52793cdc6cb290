package org.marktwice.view.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.view.bench.AtTheBench.at;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.CutAt;
import org.marktwice.bench.Cutter;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** Where joints are set out the menu at the pointer offers the tools that can be used just there, in either view. */
class PointerMenuTest {
    private AtTheBench bench;

    @BeforeEach
    void open() throws CannotDo {
        bench = new AtTheBench(Worked.settingOut());
        bench.key(KeyEvent.VK_PAGE_DOWN);
    }

    @AfterEach
    void close() {
        bench.close();
    }

    /** On the board itself, turned so that its face can be pointed at. */
    private void menuOnTheBoard(SurfacePoint at) {
        GuiActionRunner.execute(() -> bench.screen.model().show(at.surface()));
        bench.rightClick(bench.screen.boardView(), at);
    }

    private List<String> offered(SurfacePoint at) {
        return Objects.requireNonNull(GuiActionRunner.execute(() -> {
            BenchModel model = bench.screen.model();
            Choosers chooser = new Choosers(model, bench.screen.boardView(), bench.screen.unrolledView());
            JPopupMenu menu = PointerMenu.of(model, chooser, c -> {}, at);
            List<String> texts = new ArrayList<>();
            for (Component c : menu.getComponents()) if (c instanceof JMenuItem item) texts.add(item.getText());
            return texts;
        }));
    }

    private void strike(double x) {
        bench.word("line");
        bench.click(bench.screen.unrolledView(), at(Surface.FACE_1, x, 60));
        bench.key(KeyEvent.VK_ESCAPE);
    }

    @Test
    void only_what_can_be_done_there_is_offered() {
        assertThat(offered(at(Surface.FACE_1, 150, 20)))
                .contains("Bevel here, its stock on edge 1", "Cramp a pair: board C against face 1")
                .noneMatch(t -> t.startsWith("Saw or chisel"));
        assertThat(offered(at(Surface.EDGE_1, 150, 4)))
                .contains("Bevel here, its stock on face 2")
                .noneMatch(t -> t.startsWith("Cramp"));
        assertThat(offered(at(Surface.END_1, 60, 9))).noneMatch(t -> t.matches("(Bevel|Cramp|Saw).*"));

        strike(150);

        assertThat(offered(at(Surface.FACE_1, 153, 20))).contains("Saw or chisel: the line at 150 mm on face 1 …");
        assertThat(offered(at(Surface.FACE_1, 190, 20))).noneMatch(t -> t.startsWith("Saw or chisel"));
    }

    @Test
    void the_bevel_is_laid_where_one_pointed() {
        bench.rightClick(bench.screen.unrolledView(), at(Surface.FACE_1, 150, 20));
        bench.choose("here-bevel");
        bench.enter();

        assertThat(bench.last()).isInstanceOfSatisfying(Action.Bevel.class, b -> {
            assertThat(b.at()).isEqualTo(150);
            assertThat(b.stock()).isEqualTo(Surface.EDGE_1);
        });
    }

    @Test
    void a_line_is_sawn_on_the_side_that_is_chosen_and_then_not_offered_again() {
        strike(150);
        int line = bench.steps();
        menuOnTheBoard(at(Surface.FACE_1, 151, 60));
        bench.choose("here-cut");
        bench.choose("choose-side-waste");

        assertThat(bench.last()).isInstanceOfSatisfying(Action.Cut.class, c -> {
            assertThat(c.step()).isEqualTo(line);
            assertThat(c.with()).isEqualTo(Cutter.SAW);
            assertThat(c.side()).isEqualTo(CutAt.WASTE);
        });
        assertThat(offered(at(Surface.FACE_1, 151, 60))).noneMatch(t -> t.startsWith("Saw or chisel"));
    }

    @Test
    void a_pair_is_cramped_and_taken_apart() {
        menuOnTheBoard(at(Surface.FACE_1, 60, 60));
        bench.choose("here-cramp");
        bench.enter();
        assertThat(bench.last())
                .isInstanceOfSatisfying(
                        Action.Cramp.class, c -> assertThat(c.mate()).isEqualTo("C"));

        assertThat(offered(at(Surface.FACE_1, 60, 60))).contains("Cramp a pair: take board C off");
        bench.key(KeyEvent.VK_ESCAPE);
        menuOnTheBoard(at(Surface.FACE_1, 60, 60));
        bench.choose("here-cramp");
        assertThat(bench.last()).isInstanceOf(Action.Uncramp.class);
    }

    @Test
    void by_keys_the_menu_opens_at_the_caret() {
        bench.key(KeyEvent.VK_F10, KeyEvent.VK_SHIFT);
        bench.choose("here-bevel");
        bench.enter();

        assertThat(bench.last()).isInstanceOf(Action.Bevel.class);
    }
}
