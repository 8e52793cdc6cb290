package org.marktwice.view.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.view.bench.AtTheBench.at;

import java.awt.event.KeyEvent;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.CutAt;
import org.marktwice.bench.Cutter;
import org.marktwice.bench.Marker;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Placing;
import org.marktwice.fit.DryFit;
import org.marktwice.fit.TrueLine;
import org.marktwice.fit.TrueLines;
import org.marktwice.fit.WorkedSettingOut;
import org.marktwice.timber.Surface;

/** A housing set out on the left upright, board B of 308 × 120 × 18: end 1 is at the top, the shelf's top 98 mm up. */
class SettingOutTest {
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

    private List<Action> struck() {
        return bench.board("B").struck().stream()
                .map(BoardState.Done::action)
                .map(Action.class::cast)
                .toList();
    }

    private TrueLine lastLine() {
        List<TrueLine> all =
                TrueLines.of(bench.session.bench(), bench.board("B")).all();
        return all.get(all.size() - 1);
    }

    private static double distance(Action action) {
        return Objects.requireNonNull(line(action).at());
    }

    private static Action.Line line(Action action) {
        return (Action.Line) action;
    }

    @Test
    void a_line_is_struck_where_one_clicks_to_a_whole_millimetre_from_the_datum() {
        bench.word("line");
        bench.click(bench.screen.unrolledView(), at(Surface.FACE_1, 98.3, 60));
        Action.Line struck = line(bench.last());
        assertThat(struck.from()).isEqualTo(new Datum.End(Surface.END_1));
        assertThat(struck.at()).isEqualTo(98.0);
        assertThat(struck.square()).isEqualTo(Surface.EDGE_1);
        assertThat(struck.with()).isEqualTo(Marker.KNIFE);
        assertThat(bench.line()).isEqualTo("Knife line across face 1, 98 mm from end 1, stock on face edge");
    }

    @Test
    void drawn_from_the_other_end_it_is_measured_from_there() {
        bench.word("line");
        bench.drag(bench.screen.unrolledView(), at(Surface.FACE_1, 307, 60), at(Surface.FACE_1, 230, 60));
        assertThat(line(bench.last()).from()).isEqualTo(new Datum.End(Surface.END_2));
        assertThat(line(bench.last()).at()).isEqualTo(78.0);
        assertThat(bench.window.toggleButton("tool-choice").text()).isEqualTo("From end 2");
    }

    @Test
    void near_an_arris_the_stock_bears_beyond_it_and_the_line_lands_where_that_puts_it() {
        bench.word("line");
        bench.click(bench.screen.unrolledView(), at(Surface.FACE_1, 150, 112));
        assertThat(line(bench.last()).square()).isEqualTo(Surface.EDGE_2);
        // edge 2 tapers by 0.5 mm in 308, and springs
        assertThat(Math.abs(lastLine().lean())).isGreaterThan(0.1);
    }

    @Test
    void a_line_is_squared_round_by_clicking_near_it_on_the_next_surface() {
        bench.word("line");
        bench.click(bench.screen.unrolledView(), at(Surface.FACE_1, 98, 60));
        int first = bench.steps();
        bench.click(bench.screen.unrolledView(), at(Surface.EDGE_1, 99, 9));
        assertThat(line(bench.last()).from()).isEqualTo(new Datum.Step(first));
        assertThat(line(bench.last()).at()).isZero();
        assertThat(line(bench.last()).square()).isEqualTo(Surface.FACE_1);
        assertThat(bench.line()).contains("squared round from the line at 98 mm");
    }

    @Test
    void a_pencil_line_is_rubbed_out_and_a_knife_line_is_not() {
        bench.word("line");
        bench.word("marker");
        bench.click(bench.screen.unrolledView(), at(Surface.FACE_2, 60, 60));
        assertThat(line(bench.last()).with()).isEqualTo(Marker.PENCIL);
        bench.word("rub-out");
        bench.click(bench.screen.unrolledView(), at(Surface.FACE_2, 60, 30));
        assertThat(struck()).isEmpty();
        bench.word("line");
        bench.key(KeyEvent.VK_K);
        bench.click(bench.screen.unrolledView(), at(Surface.FACE_2, 60, 60));
        bench.word("rub-out");
        bench.click(bench.screen.unrolledView(), at(Surface.FACE_2, 60, 30));
        assertThat(struck()).hasSize(1);
        assertThat(bench.line()).contains("no pencil here");
    }

    /** Drawn 40 mm along and 40 mm in from the arris the bevel is set to 45°; typed, to what is typed. */
    @Test
    void a_bevel_is_set_by_drawing_or_typing_and_stays_set() {
        bench.word("bevel");
        bench.drag(bench.screen.unrolledView(), at(Surface.FACE_1, 100, 2), at(Surface.FACE_1, 140, 40));
        assertThat(bench.last())
                .isInstanceOfSatisfying(
                        Action.Bevel.class, b -> assertThat(b.degrees()).isCloseTo(45, within(3.0)))
                .isInstanceOfSatisfying(
                        Action.Bevel.class, b -> assertThat(b.stock()).isEqualTo(Surface.EDGE_1));
        bench.type("75");
        bench.enter();
        assertThat(((Action.Bevel) bench.last()).degrees()).isEqualTo(75);
        assertThat(lastLine().lean()).isCloseTo(120 / Math.tan(Math.toRadians(75)), within(1.0));
        bench.click(bench.screen.unrolledView(), at(Surface.FACE_1, 200, 110));
        assertThat(((Action.Bevel) bench.last()).degrees()).isEqualTo(75);
        assertThat(((Action.Bevel) bench.last()).stock()).isEqualTo(Surface.EDGE_2);
    }

    @Test
    void the_gauge_is_set_by_drawing_and_stays_set() {
        bench.word("gauge");
        bench.drag(bench.screen.unrolledView(), at(Surface.EDGE_1, 150, 17.5), at(Surface.EDGE_1, 150, 12));
        assertThat(((Action.Gauge) bench.last()).set()).isEqualTo(6, within(0.51));
        assertThat(((Action.Gauge) bench.last()).fence()).isEqualTo(Surface.FACE_1);
        double set = ((Action.Gauge) bench.last()).set();
        bench.click(bench.screen.unrolledView(), at(Surface.EDGE_2, 150, 17));
        assertThat((Action.Gauge) bench.last()).satisfies(g -> {
            assertThat(g.on()).isEqualTo(Surface.EDGE_2);
            assertThat(g.set()).isEqualTo(set);
        });
    }

    @Test
    void a_line_is_sawn_on_the_side_that_one_chooses() {
        bench.word("line");
        bench.click(bench.screen.unrolledView(), at(Surface.FACE_1, 202, 60));
        int line = bench.steps();
        bench.word("cut");
        assertThat(bench.line())
                .startsWith("Set out everything and check it before the first cut: waste is shaded at 0 of 2");
        bench.click(bench.screen.unrolledView(), at(Surface.FACE_1, 203, 60));
        bench.choose("choose-side-waste");
        assertThat(bench.last())
                .isInstanceOfSatisfying(
                        Action.Cut.class,
                        c -> assertThat(c).isEqualTo(new Action.Cut(c.t(), "B", line, Cutter.SAW, CutAt.WASTE)));
        bench.key(KeyEvent.VK_RIGHT);
        bench.enter();
        bench.key(KeyEvent.VK_2);
        assertThat(bench.line()).contains("is cut already");
    }

    @Test
    void a_pair_in_the_cramp_is_lined_at_once_and_comes_out_handed() {
        bench.word("cramp");
        assertThat(bench.window.toggleButton("tool-choice").text()).isEqualTo("With board C");
        bench.click(bench.screen.unrolledView(), at(Surface.FACE_1, 40, 90));
        assertThat(bench.last())
                .isInstanceOfSatisfying(
                        Action.Cramp.class,
                        c -> assertThat(List.of(c.on(), c.to(), c.level(), c.with()))
                                .containsExactly(Surface.FACE_1, Surface.FACE_1, Surface.END_1, Surface.END_2));
        bench.word("line");
        bench.click(bench.screen.unrolledView(), at(Surface.EDGE_1, 202, 9));
        assertThat(bench.line()).endsWith("and on board C");
        TrueLine other =
                TrueLines.of(bench.session.bench(), bench.board("C")).all().get(0);
        assertThat(other.meant()).isEqualTo(304.0 - distance(bench.last()));
        bench.keys(KeyEvent.VK_C, KeyEvent.VK_ENTER);
        assertThat(bench.last()).isInstanceOf(Action.Uncramp.class);
    }

    /** The whole housing by mouse: two lines on the face, squared round, gauged, shaded, checked. */
    @Test
    void a_housing_by_mouse() {
        UnrolledView view = bench.screen.unrolledView();
        bench.word("line");
        bench.click(view, at(Surface.FACE_1, 202, 60));
        bench.word("mate");
        bench.click(view, at(Surface.FACE_1, 204, 60));
        bench.word("line");
        for (double x : new double[] {202, 220}) {
            bench.click(view, at(Surface.EDGE_1, x, 9));
            bench.click(view, at(Surface.EDGE_2, x, 9));
        }
        bench.word("gauge");
        bench.drag(view, at(Surface.EDGE_1, 150, 17.5), at(Surface.EDGE_1, 150, 12));
        bench.click(view, at(Surface.EDGE_2, 150, 17));
        bench.word("waste");
        bench.click(view, at(Surface.FACE_1, 211, 100));
        bench.word("rule");
        bench.drag(view, at(Surface.FACE_1, 1, 30), at(Surface.FACE_1, 202, 30));

        Action.Line fromMate = line(struck().get(1));
        assertThat(fromMate.mate()).isEqualTo("D");
        assertThat(struck()).hasSize(9);
        assertThat((Action.Waste) struck().get(8))
                .satisfies(w -> assertThat(w.joint()).isEqualTo("left-housing"));
        assertThat(((Action.Measure) bench.last()).reads())
                .isCloseTo(line(struck().get(0)).at(), within(1.0));
    }

    /** The other boards are set out as a careful hand does it. */
    private void setOutAllBut(String board) {
        Map<String, String> boards = new HashMap<>();
        for (BoardState b : bench.session.bench().boards()) {
            b.named().ifPresent(n -> boards.put(n.part(), b.board().id()));
        }
        for (String other : boards.values()) {
            if (other.equals(board)) continue;
            Placing placing = bench.session.bench().placing(bench.board(other)).orElseThrow();
            List<WorkedSettingOut.Timed> steps = WorkedSettingOut.steps(
                    placing, boards, bench.session.bench().steps());
            GuiActionRunner.execute(() -> {
                for (WorkedSettingOut.Timed step : steps) bench.session.perform(step::at);
            });
        }
    }

    private double acrossOff() {
        return DryFit.of(bench.session.bench()).sizes().stream()
                .filter(s -> s.axis() == JobAxis.ACROSS)
                .findFirst()
                .orElseThrow()
                .off()
                .orElseThrow();
    }

    /**
     * Gauged 6 mm from the back, the housing is 12 deep and the job 6 mm too narrow in the dry fit; gauged again from the face
     * side it comes right but for what the board is out of true.
     */
    @Test
    void the_dry_fit_fails_from_a_wrong_stock_surface_and_is_mended() {
        setOutAllBut("B");
        UnrolledView view = bench.screen.unrolledView();
        bench.word("line");
        bench.click(view, at(Surface.FACE_1, 202, 60));
        bench.click(view, at(Surface.FACE_1, 220, 60));
        bench.click(view, at(Surface.FACE_1, 300, 60));
        bench.word("gauge");
        bench.type("6");
        bench.click(view, at(Surface.EDGE_1, 150, 2));
        bench.click(view, at(Surface.EDGE_2, 150, 2));
        assertThat(((Action.Gauge) bench.last()).fence()).isEqualTo(Surface.FACE_2);
        assertThat(acrossOff()).isCloseTo(-6, within(1.0));

        bench.key(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        bench.key(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        bench.click(view, at(Surface.EDGE_1, 150, 16));
        bench.click(view, at(Surface.EDGE_2, 150, 16));
        assertThat(((Action.Gauge) bench.last()).fence()).isEqualTo(Surface.FACE_1);
        assertThat(acrossOff()).isCloseTo(0, within(1.0));
    }

    /** The same by keys alone. */
    @Test
    void a_housing_by_keys() {
        bench.key(KeyEvent.VK_L);
        bench.keys(KeyEvent.VK_ENTER);
        showFace1();
        bench.type("202");
        bench.enter();
        assertThat(line(bench.last()).at()).isEqualTo(202.0);
        assertThat(line(bench.last()).on()).isEqualTo(Surface.FACE_1);
        bench.keys(KeyEvent.VK_I, KeyEvent.VK_ENTER);
        while (!bench.line().contains("on face 1")) bench.key(KeyEvent.VK_UP);
        bench.key(KeyEvent.VK_ENTER);
        assertThat(line(bench.last()).mate()).isEqualTo("D");
        bench.keys(KeyEvent.VK_L, KeyEvent.VK_ENTER);
        while (!bench.line().contains("across edge 1")) bench.key(KeyEvent.VK_UP);
        while (!bench.line().contains("squared round")) bench.key(KeyEvent.VK_TAB);
        bench.key(KeyEvent.VK_ENTER);
        assertThat(line(bench.last()).at()).isZero();
        bench.keys(KeyEvent.VK_G, KeyEvent.VK_ENTER);
        while (!bench.line().contains("along edge 1")) bench.key(KeyEvent.VK_UP);
        bench.type("6");
        bench.enter();
        assertThat((Action.Gauge) bench.last())
                .satisfies(g -> assertThat(g.set()).isEqualTo(6.0))
                .satisfies(g -> assertThat(g.fence()).isEqualTo(Surface.FACE_1));
        bench.keys(KeyEvent.VK_V, KeyEvent.VK_ENTER);
        for (int i = 0; i < 200 && !bench.line().contains("Enter shades"); i++) {
            bench.key(KeyEvent.VK_UP, KeyEvent.VK_CONTROL);
            bench.key(KeyEvent.VK_TAB);
        }
        bench.key(KeyEvent.VK_ENTER);
        assertThat(((Action.Waste) bench.last()).joint()).isEqualTo("left-housing");
    }

    private void showFace1() {
        while (!bench.line().contains("across face 1")) bench.key(KeyEvent.VK_UP);
    }
}
