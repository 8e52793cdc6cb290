package org.marktwice.view.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.Mark;
import org.marktwice.picture.Lie;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

class BenchModelTest {
    private static final SurfacePoint NEAR_EDGE_1 = new SurfacePoint(Surface.FACE_1, 150, 20);

    private static Aim aim(SurfacePoint at) {
        return new Aim(at, new Snap(at, Snap.To.NOTHING, ""));
    }

    private static BenchModel guided(Practice.Guidance guidance) {
        Scenario s = Fixtures.porchShelf();
        Practice p = s.practice();
        Practice guiding = new Practice(
                p.faceSide(),
                p.heartSide(),
                p.knotMargin(),
                p.cupRatio(),
                p.size(),
                p.gap(),
                p.worth(),
                guidance,
                Set.of());
        return new BenchModel(Worked.fresh(Fixtures.withPractice(s, guiding)));
    }

    private static void markUnproved(BenchModel model) {
        MarkTool tool = new MarkTool(model, Mark.Kind.FACE_SIDE);
        model.take(tool);
        tool.release(aim(NEAR_EDGE_1));
    }

    @Test
    void told_at_each_step_a_learner_hears_what_the_step_decided_with_its_sign() {
        BenchModel model = guided(Practice.Guidance.EACH_STEP);
        markUnproved(model);
        assertThat(model.callout())
                .as("what a mark is worth rests on what the board becomes")
                .isEmpty();
        model.perform(NEAR_EDGE_1, t -> new Action.FaceEdge(t, "A", Surface.EDGE_2, Surface.FACE_2));
        model.perform(NEAR_EDGE_1, t -> new Action.Name(t, "A", "upright-right", NEAR_EDGE_1));
        // Marked unproved, on a sawn edge, the two marks apart: the worst is said, the others are named.
        assertThat(model.callout()).isPresent();
        assertThat(model.callout().orElseThrow().tone()).isEqualTo(Note.Tone.WRONG);
        assertThat(model.line().tone().sign()).isEqualTo("✗");
        assertThat(model.line().words()).contains("See to these too: ");
    }

    @ParameterizedTest
    @EnumSource(
            value = Practice.Guidance.class,
            names = {"AT_HAND_IN", "EXAMINATION", "EACH_PART"})
    void told_later_a_learner_hears_only_what_was_done(Practice.Guidance guidance) {
        BenchModel model = guided(guidance);
        markUnproved(model);
        assertThat(model.callout()).isEmpty();
        assertThat(model.line()).isEqualTo(Note.read("Face side marked on face 1, towards edge 1"));
    }

    @Test
    void cuts_and_clearances_lie_on_the_board_only_where_they_are_granted() throws CannotDo {
        BenchModel granted = new BenchModel(Worked.porchShelf());
        assertThat(granted.shownCuts()).isNotEmpty();
        assertThat(Scene.of(granted).picture().cuts()).isNotEmpty();
        assertThat(Scene.of(granted).picture().callouts()).hasSize(1);

        BenchModel bare = guided(Practice.Guidance.AT_HAND_IN);
        assertThat(bare.perform(NEAR_EDGE_1, t -> new Action.Name(t, "A", "upright-right", NEAR_EDGE_1)))
                .isTrue();
        TurnTool turn = new TurnTool(bare, false);
        bare.take(turn);
        assertThat(bare.trial()).isPresent();
        assertThat(Scene.of(bare).picture().cuts()).isEmpty();
        assertThat(Scene.of(bare).picture().callouts()).isEmpty();
        assertThat(Scene.of(bare).picture().offcuts()).isNotEmpty();
    }

    @Test
    void without_the_preview_the_end_that_follows_is_for_the_learner_to_find() {
        BenchModel bare = guided(Practice.Guidance.AT_HAND_IN);
        bare.perform(NEAR_EDGE_1, t -> new Action.Name(t, "A", "upright-right", NEAR_EDGE_1));
        TurnTool turn = new TurnTool(bare, false);
        bare.take(turn);
        turn.key(ToolKey.of(ToolKey.Stroke.UP));
        assertThat(bare.said().words()).startsWith("As the right upright: ").doesNotContain("end 1");
        turn.settle();
        assertThat(bare.said().words()).contains("so end 1 is at the ");
    }

    @Test
    void a_trial_left_unsettled_leaves_nothing_behind() throws CannotDo {
        BenchModel model = new BenchModel(Worked.porchShelf());
        Lie settled = model.lie();
        int steps = model.session().bench().steps();
        TurnTool turn = new TurnTool(model, false);
        model.take(turn);
        turn.key(ToolKey.of(ToolKey.Stroke.UP));
        assertThat(model.lie()).isEqualTo(settled.endForEnd());
        model.putDown();
        assertThat(model.lie()).isEqualTo(settled);
        assertThat(model.session().bench().steps()).isEqualTo(steps);
    }

    @Test
    void trimming_stays_within_what_there_is_to_spare() throws CannotDo {
        BenchModel model = new BenchModel(Worked.porchShelf());
        TurnTool trim = new TurnTool(model, true);
        model.take(trim);
        for (int i = 0; i < 30; i++) trim.key(ToolKey.of(ToolKey.Stroke.LEFT));
        double one = model.trial().orElseThrow().offEnd1();
        for (int i = 0; i < 30; i++) trim.key(ToolKey.of(ToolKey.Stroke.RIGHT));
        double other = model.trial().orElseThrow().offEnd1();
        assertThat(Set.of(one, other)).containsExactlyInAnyOrder(0.0, 12.0);
    }

    @Test
    void choosing_another_board_keeps_the_tool_and_forgets_what_was_said() throws CannotDo {
        BenchModel model = new BenchModel(Worked.porchShelf());
        markUnproved(model);
        model.select("B");
        assertThat(model.tool()).isPresent();
        assertThat(model.line()).isEqualTo(Note.SILENT);
        model.selectNext(-2);
        assertThat(model.board().board().id()).isEqualTo("D");
    }
}
