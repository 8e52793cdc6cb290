package org.marktwice.view.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action;
import org.marktwice.bench.Mark;
import org.marktwice.bench.Reason;
import org.marktwice.bench.Tool;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Trim;
import org.marktwice.picture.Lie;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

class BenchByKeysTest {
    private AtTheBench bench;

    @BeforeEach
    void open() {
        bench = new AtTheBench(Worked.fresh(Fixtures.withAids(Fixtures.porchShelf())));
    }

    @AfterEach
    void close() {
        bench.close();
    }

    @Test
    void the_arrows_roll_the_board_and_turn_it_end_for_end() {
        bench.key(KeyEvent.VK_RIGHT);
        assertThat(bench.screen.model().lie()).isEqualTo(Lie.FIRST.rollForward());
        bench.key(KeyEvent.VK_LEFT);
        bench.key(KeyEvent.VK_UP);
        assertThat(bench.screen.model().lie()).isEqualTo(Lie.FIRST.endForEnd());
        assertThat(bench.steps()).isZero();
    }

    @Test
    void both_marks_are_made() {
        bench.key(KeyEvent.VK_F);
        bench.enter();
        bench.key(KeyEvent.VK_DOWN, KeyEvent.VK_SHIFT);
        bench.enter();
        bench.key(KeyEvent.VK_E);
        bench.keys(KeyEvent.VK_DOWN, KeyEvent.VK_DOWN);
        bench.key(KeyEvent.VK_UP, KeyEvent.VK_SHIFT);
        bench.enter();
        assertThat(bench.board("A").marks())
                .containsExactly(
                        new Mark(Mark.Kind.FACE_SIDE, Surface.FACE_1, Surface.EDGE_1, 1),
                        new Mark(Mark.Kind.FACE_EDGE, Surface.EDGE_1, Surface.FACE_1, 2));
    }

    @Test
    void escape_puts_the_tool_down_so_that_the_arrows_turn_the_board_again() {
        bench.key(KeyEvent.VK_F);
        assertThat(bench.screen.model().tool()).isPresent();
        bench.key(KeyEvent.VK_ESCAPE);
        assertThat(bench.screen.model().tool()).isEmpty();
        bench.key(KeyEvent.VK_RIGHT);
        assertThat(bench.screen.model().lie()).isEqualTo(Lie.FIRST.rollForward());
    }

    @Test
    void a_distance_is_measured_by_moving_the_caret() {
        bench.key(KeyEvent.VK_M);
        bench.key(KeyEvent.VK_RIGHT);
        bench.enter();
        bench.times(3, KeyEvent.VK_RIGHT, KeyEvent.VK_CONTROL);
        bench.times(2, KeyEvent.VK_LEFT);
        bench.enter();
        assertThat(bench.last())
                .isEqualTo(new Action.Measure(
                        0,
                        "A",
                        new SurfacePoint(Surface.FACE_1, 157, 60),
                        new SurfacePoint(Surface.FACE_1, 185, 60),
                        28.0));
        assertThat(bench.line()).isEqualTo("Rule, face 1: 28 mm");
    }

    @Test
    void tab_steps_to_the_next_edge_of_a_knot() {
        bench.key(KeyEvent.VK_M);
        bench.key(KeyEvent.VK_TAB, KeyEvent.VK_SHIFT);
        assertThat(bench.line()).startsWith("Knot 1, face 1, ");
        bench.enter();
        bench.key(KeyEvent.VK_TAB);
        bench.enter();
        assertThat(bench.last()).isInstanceOf(Action.Measure.class);
    }

    @Test
    void tools_are_laid_on_the_surface_chosen() {
        bench.key(KeyEvent.VK_S);
        bench.key(KeyEvent.VK_DOWN);
        bench.key(KeyEvent.VK_DOWN);
        bench.key(KeyEvent.VK_RIGHT, KeyEvent.VK_SHIFT);
        bench.enter();
        assertThat(bench.last())
                .isEqualTo(new Action.Test(0, "A", Tool.STRAIGHT_EDGE, Surface.EDGE_1, 166.0, null, 0.0));
        bench.key(KeyEvent.VK_UP, KeyEvent.VK_SHIFT);
        bench.enter();
        assertThat(bench.last())
                .isEqualTo(new Action.Test(0, "A", Tool.STRAIGHT_EDGE, Surface.EDGE_1, null, null, 0.0));
        bench.key(KeyEvent.VK_W);
        bench.enter();
        bench.enter();
        assertThat(((Action.Test) bench.last()).with()).isEqualTo(Tool.WINDING_STICKS);
    }

    @Test
    void the_squares_stock_changes_its_side() {
        bench.key(KeyEvent.VK_Q);
        bench.keys(KeyEvent.VK_DOWN, KeyEvent.VK_UP);
        assertThat(bench.line()).endsWith("edge 2, as sawn; stock on face 1");
        bench.key(KeyEvent.VK_UP, KeyEvent.VK_SHIFT);
        assertThat(bench.line()).endsWith("edge 2, as sawn; stock on face 2");
        bench.enter();
        Action.Test test = (Action.Test) bench.last();
        assertThat(test.from()).isEqualTo(Surface.FACE_2);
        assertThat(bench.line()).startsWith("Try-square, face 2 to edge 2: light at the toe, 0.2 mm over 18 mm");
    }

    @Test
    void the_end_grain_is_read() {
        bench.key(KeyEvent.VK_P);
        bench.enter();
        bench.key(KeyEvent.VK_RIGHT);
        bench.enter();
        assertThat(bench.last()).isEqualTo(new Action.Test(0, "A", Tool.END_GRAIN, Surface.END_2, null, null, 40.0));
        assertThat(bench.line())
                .isEqualTo("End grain of end 2: pith about 40 mm beyond face 2, 50 mm from edge 1; face 1 is the bark"
                        + " side");
    }

    @Test
    void the_shape_is_shown_larger_and_less_large_and_is_labelled() {
        bench.keys(KeyEvent.VK_H, KeyEvent.VK_H);
        assertThat(bench.screen.model().shape().says()).isEqualTo("shape ×5");
        assertThat(bench.window.toggleButton("tool-shape").text()).isEqualTo("Shape ×5");
        bench.key(KeyEvent.VK_H, KeyEvent.VK_SHIFT);
        assertThat(bench.screen.model().shape().says()).isEqualTo("shape ×2");
        assertThat(bench.steps()).isZero();
    }

    @Test
    void a_board_is_named_turned_trimmed_and_settled() {
        bench.key(KeyEvent.VK_N);
        bench.key(KeyEvent.VK_RIGHT, KeyEvent.VK_CONTROL);
        bench.enter();
        bench.key(KeyEvent.VK_2);
        assertThat(bench.board("A").named().orElseThrow().part()).isEqualTo("upright-right");

        bench.key(KeyEvent.VK_T);
        bench.key(KeyEvent.VK_RIGHT);
        bench.key(KeyEvent.VK_UP);
        bench.times(3, KeyEvent.VK_RIGHT, KeyEvent.VK_SHIFT);
        bench.enter();
        Action.Turning turn = (Action.Turning) bench.last();
        assertThat(turn.facing()).isEqualTo(Map.of(Surface.FACE_1, Direction.RIGHT, Surface.EDGE_1, Direction.FRONT));
        assertThat(bench.screen.model().tool()).isEmpty();

        bench.key(KeyEvent.VK_X);
        bench.times(2, KeyEvent.VK_RIGHT);
        bench.enter();
        assertThat(((Action.Turning) bench.last()).trim()).isNotEqualTo(turn.trim());
        assertThat(((Action.Turning) bench.last()).trim()).isInstanceOf(Trim.class);
    }

    @Test
    void pencil_is_picked_and_rubbed_out_and_taken_back() {
        bench.keys(KeyEvent.VK_F, KeyEvent.VK_ENTER, KeyEvent.VK_ENTER);
        assertThat(bench.board("A").marks()).hasSize(1);
        bench.keys(KeyEvent.VK_R, KeyEvent.VK_ENTER, KeyEvent.VK_ENTER);
        assertThat(bench.board("A").marks()).isEmpty();
        bench.key(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        assertThat(bench.board("A").marks()).hasSize(1);
        bench.key(KeyEvent.VK_Y, KeyEvent.VK_CONTROL);
        assertThat(bench.board("A").marks()).isEmpty();
    }

    @Test
    void another_board_is_taken_and_set_aside() {
        bench.keys(KeyEvent.VK_PAGE_DOWN, KeyEvent.VK_PAGE_DOWN);
        bench.key(KeyEvent.VK_A);
        bench.key(KeyEvent.VK_1);
        assertThat(bench.board("C").setAside().orElseThrow().because()).isEqualTo(Reason.KNOT_IN_EVERY_TURN);
    }

    @Test
    void the_board_can_be_read_as_text() {
        bench.key(KeyEvent.VK_F2);
        assertThat(bench.window.dialog("report").textBox("report-text").text()).startsWith("Board A, Scots pine");
        bench.window.dialog("report").close();
    }

    @Test
    void where_undo_is_not_granted_it_says_so() {
        bench.close();
        bench = new AtTheBench(Worked.fresh(Fixtures.porchShelf()));
        bench.keys(KeyEvent.VK_F, KeyEvent.VK_ENTER, KeyEvent.VK_ENTER);
        bench.key(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        assertThat(bench.line()).isEqualTo("This exercise has no undo: rub out the pencil, or do it again");
        assertThat(bench.board("A").marks()).hasSize(1);
    }
}
