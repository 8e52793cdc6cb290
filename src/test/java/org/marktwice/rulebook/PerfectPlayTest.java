package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.Fixtures;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.bench.Reason;
import org.marktwice.bench.Tool;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/** Who plays the model answer, and proves, marks and names as the trade does, loses nothing on faces and names. */
class PerfectPlayTest {
    private static final List<Stage> STAGES = List.of(Stage.FACES, Stage.NAMES);

    @ParameterizedTest
    @EnumSource(Practice.FaceSide.class)
    void theModelAnswerIsSoundThroughout(Practice.FaceSide setting) {
        Situations played = played(Fixtures.porchShelf(), setting);

        MarkSheet sheet = RuleBook.judge(played.situation());

        assertThat(ofTheseStages(sheet))
                .hasSizeGreaterThan(20)
                .allSatisfy(f -> assertThat(f.verdict()).as(played.told(f)).isEqualTo(Verdict.SOUND))
                .allSatisfy(f -> assertThat(f.credit()).isEqualTo(1));
        assertThat(sheet.notJudged()).doesNotContain("handed-pair", "marks-as-drawn", "choice-of-surface");
    }

    @Test
    void aScenarioWithoutTurnsCanBePlayedPerfectlyToo() {
        Situations played =
                played(Fixtures.porchShelf(), Practice.FaceSide.TRUEST_IN).asking(Stage.FACES, Stage.NAMES);

        assertThat(ofTheseStages(RuleBook.judge(played.situation())))
                .hasSizeGreaterThan(20)
                .extracting(Finding::verdict)
                .containsOnly(Verdict.SOUND);
    }

    @Test
    void beforeAnythingIsDoneEverythingIsOpenAndEarnsNothing() {
        MarkSheet sheet = RuleBook.judge(Situations.of(Fixtures.porchShelf()).situation());

        assertThat(ofTheseStages(sheet))
                .isNotEmpty()
                .extracting(Finding::verdict)
                .containsOnly(Verdict.OPEN);
        assertThat(ofTheseStages(sheet)).extracting(Finding::step).containsOnlyNulls();
    }

    private static List<Finding> ofTheseStages(MarkSheet sheet) {
        return sheet.entries().stream()
                .filter(e -> STAGES.contains(e.rule().stage()))
                .map(MarkSheet.Entry::finding)
                .toList();
    }

    private static Situations played(Scenario scenario, Practice.FaceSide setting) {
        Situations given = Situations.of(scenario).faceSide(setting);
        ModelAnswer model = ModelAnswer.of(scenario);
        assertThat(model.clear()).isEqualTo(3);
        for (Option option : model.placings()) {
            Placing lies = option.placing();
            Part part = lies.part();
            Board board = lies.board();
            Surface side = lies.turn().looking(part.faceSide().get(0));
            Surface edge = lies.turn().looking(part.faceEdge().get(0));
            Direction sideLooks = lies.turn().of(side);
            given.tests(board.id(), Tool.STRAIGHT_EDGE, side)
                    .tests(board.id(), Tool.STRAIGHT_EDGE, side, 100)
                    .tests(board.id(), Tool.WINDING_STICKS, side)
                    .tests(board.id(), Tool.TRY_SQUARE, edge)
                    .marks(board.id(), side, edge)
                    .names(
                            board.id(),
                            part.id(),
                            Footprint.clearest(board, List.of(lies)).orElseThrow())
                    .turns(board.id(), side, sideLooks, edge, lies.turn().of(edge), lies.trim());
        }
        scenario.boards().stream()
                .filter(b -> model.of(b).isEmpty())
                .forEach(b -> given.setsAside(b.id(), Reason.NOT_NEEDED));
        return given;
    }
}
