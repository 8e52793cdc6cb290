package org.marktwice.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.marktwice.bench.Acts.bench;
import static org.marktwice.bench.Acts.name;
import static org.marktwice.bench.Acts.undo;

import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.Fixtures;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Practice.Guidance;
import org.marktwice.scenario.Scenario;

/** What is said at the bench and leaves the boards as they are: hints, estimates, less help, work taken over. */
class RemarksTest {
    private static final Scenario SHELF = Fixtures.porchShelf();
    private static final Scenario WITH_UNDO = Fixtures.withAids(SHELF);
    private static final Action HINT = new Action.Hint(2, "best-turn", "A", "shelf", null, 1);

    private static Scenario told(Guidance guidance) {
        Practice p = SHELF.practice();
        return Fixtures.withPractice(
                SHELF,
                new Practice(
                        p.faceSide(),
                        p.heartSide(),
                        p.knotMargin(),
                        p.cupRatio(),
                        p.size(),
                        p.gap(),
                        p.worth(),
                        guidance,
                        p.aids()));
    }

    private static String refused(Bench bench, Action action) {
        CannotDo refused = catchThrowableOfType(CannotDo.class, () -> bench.after(action));
        assertThat(refused).as("%s", action).isNotNull();
        return refused.why();
    }

    @Test
    void aHintStaysGivenWhateverIsTakenBack() {
        Bench bench = bench(WITH_UNDO, name("A", "shelf"), HINT, undo());

        assertThat(bench.hints()).containsExactly((Action.Hint) HINT);
        assertThat(bench.board("A").named()).isEmpty();
        assertThat(bench.canRedo()).isTrue();
    }

    @Test
    void aHintLeavesWhatWasTakenBackToBeDoneAgain() {
        assertThat(bench(WITH_UNDO, name("A", "shelf"), undo(), HINT).canRedo()).isTrue();
    }

    @Test
    void anExaminationHasNoHints() {
        assertThat(refused(bench(told(Guidance.EXAMINATION)), HINT)).isEqualTo("There are no hints in an examination");
    }

    @ParameterizedTest
    @EnumSource(Guidance.class)
    void helpFadesAndNeverComesBack(Guidance to) {
        Bench bench = bench(told(Guidance.EACH_PART));
        Action less = new Action.LessHelp(1, to);

        if (to == Guidance.AT_HAND_IN) {
            assertThat(bench(told(Guidance.EACH_PART), less).guidance()).isEqualTo(to);
        } else if (to == Guidance.EXAMINATION) {
            assertThat(refused(bench, less)).isEqualTo("An examination is set by the teacher");
        } else {
            assertThat(refused(bench, less)).isEqualTo("That would not be less help than now");
        }
    }

    @Test
    void workTakenOverIsNotTakenBackByUndo() {
        Bench bench = bench(WITH_UNDO, name("A", "shelf"), new Action.TakeOver(3, 7));

        assertThat(bench.takenOver()).isEqualTo(2);
        assertThat(bench.canUndo()).isFalse();
        assertThat(refused(bench, undo())).startsWith("Another hand did that");
        assertThat(refused(bench, new Action.TakeOver(4, 8))).contains("taken over before");
    }

    @Test
    void aFaultIsNamedInAnothersWorkOnlyAndCanBeTakenBack() {
        Action fault = new Action.Fault(4, "A", "two-lefts");

        assertThat(refused(bench(SHELF), fault)).startsWith("There is no other hand's work");
        Bench named = bench(WITH_UNDO, new Action.TakeOver(3, 7), fault);
        assertThat(named.faults()).containsExactly((Action.Fault) fault);
        assertThat(bench(WITH_UNDO, new Action.TakeOver(3, 7), fault, undo()).faults())
                .isEmpty();
    }

    @Test
    void partsAreExpectedAsLastSaid() {
        Bench said = bench(SHELF, new Action.Estimate(1, Set.of(), Set.of("shelf")));

        assertThat(said.expectedParts()).contains(Set.of("shelf"));
        assertThat(bench(SHELF, new Action.Estimate(1, Set.of())).expectedParts())
                .isEmpty();
        assertThat(Objects.requireNonNull(said.action(1)).verb()).isEqualTo("estimate");
    }
}
