package org.marktwice.view.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.view.bench.AtTheBench.at;

import java.awt.event.KeyEvent;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action;
import org.marktwice.bench.Mark;
import org.marktwice.bench.Reason;
import org.marktwice.bench.Tool;
import org.marktwice.bench.ToolReading;
import org.marktwice.drawing.Direction;
import org.marktwice.picture.Lie;
import org.marktwice.timber.Surface;
import org.marktwice.timber.Trace;

class BenchByMouseTest {
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
    void both_marks_are_made_where_one_clicks_their_tails_to_the_nearest_arris() {
        bench.word("face-side");
        bench.click(bench.screen.boardView(), at(Surface.FACE_1, 200, 30));
        bench.word("face-edge");
        bench.click(bench.screen.unrolledView(), at(Surface.EDGE_1, 150, 14));
        assertThat(bench.board("A").marks())
                .containsExactly(
                        new Mark(Mark.Kind.FACE_SIDE, Surface.FACE_1, Surface.EDGE_1, 1),
                        new Mark(Mark.Kind.FACE_EDGE, Surface.EDGE_1, Surface.FACE_1, 2));
        assertThat(bench.line()).isEqualTo("Face edge marked on edge 1, towards face 1");
    }

    @Test
    void the_rule_takes_to_an_end_and_a_knot_and_reads_to_half_a_millimetre() {
        Trace knot = bench.board("A").board().traces(Surface.FACE_1).get(0);
        double near = knot.middle().u() - knot.length() / 2;
        bench.word("rule");
        bench.drag(
                bench.screen.unrolledView(),
                at(Surface.FACE_1, 2, knot.middle().v()),
                at(Surface.FACE_1, near - 1, knot.middle().v()));
        Action.Measure measured = (Action.Measure) bench.last();
        assertThat(measured.from().u()).isZero();
        assertThat(measured.to().u()).isEqualTo(near, within(0.3));
        String reads = Reading.mm(ToolReading.of(measured.from(), measured.to()));
        assertThat(bench.line()).isEqualTo("Rule, face 1: " + reads);
        assertThat(measured.reads()).isEqualTo(ToolReading.of(measured.from(), measured.to()));
        assertThat(bench.window.textBox("readings").text()).contains("rule, face 1: " + reads);
    }

    @Test
    void the_rule_stays_on_the_surface_it_was_laid_on() {
        bench.word("rule");
        bench.drag(bench.screen.unrolledView(), at(Surface.FACE_1, 250, 60), at(Surface.EDGE_1, 250, 9));
        Action.Measure measured = (Action.Measure) bench.last();
        assertThat(measured.to().surface()).isEqualTo(Surface.FACE_1);
        assertThat(measured.to().v()).isZero();
    }

    @Test
    void tools_are_laid_where_one_clicks_and_drawn_along_the_grain() {
        bench.word("straight-edge");
        bench.click(bench.screen.boardView(), at(Surface.FACE_1, 150, 60));
        Action.Test across = (Action.Test) bench.last();
        assertThat(across.with()).isEqualTo(Tool.STRAIGHT_EDGE);
        assertThat(across.at()).isEqualTo(150, within(1.5));
        bench.drag(bench.screen.boardView(), at(Surface.FACE_1, 60, 60), at(Surface.FACE_1, 240, 60));
        assertThat(((Action.Test) bench.last()).at()).isNull();
        bench.word("winding-sticks");
        bench.click(bench.screen.unrolledView(), at(Surface.FACE_2, 150, 60));
        bench.word("try-square");
        bench.click(bench.screen.unrolledView(), at(Surface.EDGE_2, 150, 9));
        assertThat(bench.line()).isEqualTo("Try-square, face 1 to edge 2: light at the heel, 0.2 mm over 18 mm");
        assertThat(bench.board("A").tests()).hasSize(4);
    }

    @Test
    void shift_and_click_lays_the_straight_edge_along() {
        bench.word("straight-edge");
        bench.click(bench.screen.boardView(), at(Surface.FACE_1, 150, 60), KeyEvent.VK_SHIFT);
        Action.Test along = (Action.Test) bench.last();
        assertThat(along.at()).isNull();
        assertThat(bench.line()).startsWith("Straight-edge along face 1: ");
        assertThat(overlay().isLaid()).isTrue();
    }

    @Test
    void near_an_arris_the_squares_stock_bears_beyond_it() {
        bench.word("try-square");
        bench.click(bench.screen.unrolledView(), at(Surface.EDGE_2, 150, 2));
        assertThat(((Action.Test) bench.last()).from()).isEqualTo(Surface.FACE_2);
        assertThat(overlay().says()).isEqualTo("0.2 mm at the toe");
        bench.click(bench.screen.unrolledView(), at(Surface.EDGE_2, 150, 16));
        assertThat(((Action.Test) bench.last()).from()).isEqualTo(Surface.FACE_1);
        assertThat(overlay().says()).isEqualTo("0.2 mm at the heel");
    }

    @Test
    void an_end_tells_where_the_pith_lies() {
        bench.word("end-grain");
        bench.click(bench.screen.boardView(), at(Surface.END_1, 60, 9));
        assertThat(((Action.Test) bench.last()).reads()).isEqualTo(40.0);
        assertThat(bench.line()).contains("face 1 is the bark side");
        bench.click(bench.screen.boardView(), at(Surface.FACE_1, 60, 60));
        assertThat(bench.line()).isEqualTo("The arcs of the end grain show on an end: look at end 1 or end 2");
    }

    private Overlay.ToolLaid overlay() {
        return bench.screen.model().tool().orElseThrow().overlays().stream()
                .filter(o -> o instanceof Overlay.ToolLaid laid && laid.isLaid())
                .map(Overlay.ToolLaid.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void one_points_at_the_board_where_its_shape_shown_large_has_put_it() {
        bench.close();
        bench = new AtTheBench(Worked.outOfTrueSession());
        bench.take(1);
        for (int i = 0; i < 4; i++) bench.word("shape");
        assertThat(bench.screen.model().shape().times()).isEqualTo(20);
        bench.word("straight-edge");
        for (PatchView view : new PatchView[] {bench.screen.boardView(), bench.screen.unrolledView()}) {
            bench.click(view, at(Surface.FACE_1, 40, 20));
            assertThat(((Action.Test) bench.last()).at()).isEqualTo(40, within(1.5));
            bench.click(view, at(Surface.EDGE_1, 290, 9));
            assertThat(((Action.Test) bench.last()).on()).isEqualTo(Surface.EDGE_1);
            assertThat(((Action.Test) bench.last()).at()).isEqualTo(290, within(1.5));
        }
    }

    @Test
    void a_board_is_named_turned_trimmed_and_settled() {
        bench.word("name");
        bench.click(bench.screen.boardView(), at(Surface.FACE_1, 220, 60));
        bench.choose("choose-part-upright-right");
        assertThat(bench.board("A").named().orElseThrow().part()).isEqualTo("upright-right");

        bench.word("turn");
        bench.word("up");
        bench.drag(bench.screen.unrolledView(), at(Surface.FACE_1, 200, 60), at(Surface.FACE_1, 193, 60));
        bench.word("settle");
        Action.Turning turn = (Action.Turning) bench.last();
        assertThat(turn.facing()).isEqualTo(Map.of(Surface.FACE_1, Direction.LEFT, Surface.EDGE_1, Direction.BACK));
        assertThat(Objects.requireNonNull(turn.trim()).mm()).isEqualTo(7, within(1.0));
        assertThat(bench.window.label("part-upright-right").text()).isEqualTo("Right upright · board A");
    }

    @Test
    void a_turn_needs_a_name_and_says_so_where_it_was_tried() {
        bench.word("turn");
        assertThat(bench.line()).isEqualTo("Name the board first: it is turned as the part that it becomes");
        assertThat(bench.screen.model().callout()).isPresent();
        assertThat(bench.steps()).isZero();
    }

    @Test
    void what_cannot_be_done_changes_nothing_and_says_why() {
        bench.word("face-side");
        bench.click(bench.screen.boardView(), at(Surface.END_1, 60, 9));
        assertThat(bench.line()).isEqualTo("A face side mark goes on a long surface, not on an end");
        assertThat(bench.window.label("line-sign").text()).isEqualTo("!");
        assertThat(bench.screen.model().callout().orElseThrow().at().surface()).isEqualTo(Surface.END_1);
        assertThat(bench.steps()).isZero();
    }

    @Test
    void pencil_is_rubbed_out_and_taken_back() {
        bench.word("face-side");
        bench.click(bench.screen.boardView(), at(Surface.FACE_1, 200, 30));
        bench.word("rub-out");
        Pencil mark = Pencil.on(bench.session.bench(), bench.board("A")).get(0);
        bench.click(bench.screen.boardView(), mark.middle());
        assertThat(bench.board("A").marks()).isEmpty();
        bench.press("undo");
        assertThat(bench.board("A").marks()).hasSize(1);
        bench.press("redo");
        assertThat(bench.board("A").marks()).isEmpty();
    }

    @Test
    void a_board_is_set_aside_with_its_reason() {
        bench.take(2);
        bench.word("set-aside");
        bench.choose("choose-reason-cupped");
        assertThat(bench.board("C").setAside().orElseThrow().because()).isEqualTo(Reason.CUPPED);
        assertThat(bench.line()).isEqualTo("Board C is set aside: cupped");
    }

    @Test
    void the_menu_at_the_pointer_does_what_can_be_done_there() {
        bench.rightClick(bench.screen.boardView(), at(Surface.FACE_1, 200, 30));
        bench.choose("here-face-side");
        assertThat(bench.board("A").faceSide()).isPresent();
    }

    @Test
    void the_line_names_what_is_pointed_at() {
        bench.point(bench.screen.unrolledView(), at(Surface.EDGE_2, 100, 9));
        assertThat(bench.line()).endsWith("dge 2, as sawn");
    }

    @Test
    void dragging_without_a_tool_tilts_and_changes_nothing() {
        bench.drag(bench.screen.boardView(), at(Surface.FACE_1, 100, 60), at(Surface.FACE_1, 200, 20));
        assertThat(bench.steps()).isZero();
        assertThat(bench.screen.model().lie()).isEqualTo(Lie.FIRST);
    }

    @Test
    void handing_in_asks_whoever_opened_the_bench() {
        bench.press("hand-in");
        assertThat(bench.handedIn()).isEqualTo(1);
    }
}
