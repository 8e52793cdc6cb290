package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.CutAt;
import org.marktwice.bench.Cutter;
import org.marktwice.bench.Marker;
import org.marktwice.timber.Surface;

class RewritingTest {
    private static final Action MARK_A = new Action.FaceSide(1, "A", Surface.FACE_1, Surface.EDGE_1);
    private static final Action LINE_1 = line(2, new Action.Datum.End(Surface.END_1), 40);
    private static final Action LINE_2 = line(3, new Action.Datum.Step(2), 18);
    private static final Action WASTE = new Action.Waste(4, "B", "housing", 2, 3);
    private static final Action RUB_OUT = new Action.RubOut(5, 1);
    private static final Action HAND_IN = new Action.HandIn(6);

    private static Action line(double t, Action.Datum from, double at) {
        return new Action.Line(t, "B", Surface.FACE_1, Surface.EDGE_1, from, at, null, Marker.KNIFE);
    }

    private static Rewriting rewriting() {
        List<Action> actions = List.of(MARK_A, LINE_1, LINE_2, WASTE, RUB_OUT, HAND_IN);
        return new Rewriting(new Attempt("s", "", "P01", "2026-02-03T09:10:00Z", actions));
    }

    private static BoardWork.Step aside(String board) {
        return t -> new Action.SetAside(t, board, org.marktwice.bench.Reason.CUPPED);
    }

    @Test
    void stepsThatLaterOnesSpeakOfAreToldAnew() {
        Attempt with = rewriting()
                .after(a -> a == MARK_A, List.of(aside("C"), aside("D")))
                .attempt();

        assertThat(with.actions()).hasSize(8);
        assertThat(with.actions().get(4)).isEqualTo(line(3, new Action.Datum.Step(4), 18));
        assertThat(with.actions().get(5)).isEqualTo(new Action.Waste(4, "B", "housing", 4, 5));
        assertThat(with.actions().get(6)).isEqualTo(RUB_OUT);
        assertThat(with.actions()).extracting(Action::t).isSorted();
    }

    @Test
    void aCutAndABevelKeepToTheirLines() {
        Action cut = new Action.Cut(3, "B", 2, Cutter.SAW, CutAt.WASTE);
        Action bevel = new Action.Bevel(
                4, "B", Surface.FACE_1, Surface.EDGE_1, new Action.Datum.Step(2), 5, 45, Marker.PENCIL);
        Attempt given = new Attempt("any", "", "P01", "2026-01-12T09:30:00Z", List.of(MARK_A, LINE_1, cut, bevel));

        Attempt with = new Rewriting(given)
                .after(a -> a == MARK_A, List.of(aside("C")))
                .attempt();
        Attempt without = new Rewriting(given).without(a -> a == LINE_1).attempt();

        assertThat(with.actions().get(3)).isEqualTo(new Action.Cut(3, "B", 3, Cutter.SAW, CutAt.WASTE));
        assertThat(with.actions().get(4))
                .isEqualTo(new Action.Bevel(
                        4, "B", Surface.FACE_1, Surface.EDGE_1, new Action.Datum.Step(3), 5, 45, Marker.PENCIL));
        assertThat(without.actions()).containsExactly(MARK_A);
    }

    @Test
    void whatSpeaksOfAStepThatIsGoneGoesWithIt() {
        Attempt without = rewriting().without(a -> a == LINE_1 || a == MARK_A).attempt();

        assertThat(without.actions()).containsExactly(HAND_IN);
    }

    @Test
    void whatStandsInsteadGoesWhereTheFirstOfThemStood() {
        Attempt instead =
                rewriting().instead(Rewriting.on("B"), List.of(aside("B"))).attempt();

        assertThat(instead.actions())
                .extracting(Action::verb)
                .containsExactly("face-side", "set-aside", "rub-out", "hand-in");
    }

    @Test
    void whatHasNoPlaceYetGoesBeforeTheHandIn() {
        Attempt more = rewriting().after(Rewriting.on("Z"), List.of(aside("Z"))).attempt();

        assertThat(more.actions().get(5)).isInstanceOf(Action.SetAside.class);
        assertThat(more.actions().get(6)).isEqualTo(HAND_IN);
    }
}
