package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.Fixtures.board;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.Reason;
import org.marktwice.bench.Tool;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Trim;
import org.marktwice.rulebook.MarkSheet.Entry;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

class RuleBookTest {
    @Test
    void aRulesWorthIsSharedEvenlyAmongItsFindings() {
        Situations given = Situations.porchShelf(
                        board("A").board(),
                        board("B").board(),
                        board("S").size(480, 120, 18).board())
                .asking(Stage.NAMES)
                .names("A", "upright-left")
                .names("B", "upright-right");

        List<Entry> entries = entriesOf(RuleBook.judge(given.situation()), "every-part-named");

        assertThat(entries).hasSize(3).allSatisfy(e -> assertThat(e.worth()).isEqualTo(1.0 / 3));
        assertThat(entries.stream().mapToDouble(Entry::lost).sum()).isEqualTo(1.0 / 3, within(1e-12));
    }

    @Test
    void theScenarioSetsWhatARuleIsWorth() {
        Situations given = Situations.porchShelf(board("A").board(), board("Z").board())
                .asking(Stage.NAMES)
                .practice(p -> new Practice(
                        p.faceSide(),
                        p.heartSide(),
                        p.knotMargin(),
                        p.cupRatio(),
                        p.size(),
                        p.gap(),
                        Map.of("board-fits-part", 6.0),
                        p.guidance(),
                        p.aids()))
                .names("A", "upright-left");

        assertThat(entriesOf(RuleBook.judge(given.situation()), "board-fits-part"))
                .hasSize(3)
                .allSatisfy(e -> assertThat(e.worth()).isEqualTo(2));
    }

    @Test
    void onlyTheStagesAskedForAreJudgedAndNothingToJudgeIsNoPass() {
        Situations given = Situations.porchShelf(board("A").board()).asking(Stage.FACES, Stage.NAMES);

        MarkSheet sheet = RuleBook.judge(given.situation());

        assertThat(sheet.entries()).extracting(e -> e.rule().stage()).doesNotContain(Stage.TURNS);
        assertThat(sheet.notJudged()).containsExactly("marks-as-drawn", "handed-pair");
        assertThat(sheet.entries()).extracting(e -> e.rule().id()).doesNotContain("marks-as-drawn", "handed-pair");
    }

    private static List<Entry> entriesOf(MarkSheet sheet, String rule) {
        return sheet.entries().stream().filter(e -> e.rule().id().equals(rule)).toList();
    }

    /** Forty random walks at the bench a seed; after each the laws of every finding are held. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void everyFindingKeepsTheLawsWhateverWasDone(long seed) {
        Random random = new Random(seed);
        for (int walk = 0; walk < 40; walk++) {
            Scenario scenario = scenario(random);
            Bench bench = walk(scenario, random, 5 + random.nextInt(40));
            MarkSheet sheet = RuleBook.judge(Situation.of(bench));

            assertThat(RuleBook.judge(Situation.of(bench))).as("judged twice").isEqualTo(sheet);
            Set<String> boards = scenario.boards().stream().map(Board::id).collect(Collectors.toSet());
            for (Entry entry : sheet.entries()) holdsLaws(entry, scenario, bench, boards);
            assertThat(sheet.marks()).isBetween(0.0, sheet.outOf() + 1e-9);
        }
    }

    private static void holdsLaws(Entry entry, Scenario scenario, Bench bench, Set<String> boards) {
        Finding f = entry.finding();
        assertThat(f.rule()).isEqualTo(entry.rule().id());
        assertThat(f.credit()).isBetween(0.0, 1.0);
        if (f.verdict() == Verdict.SOUND) assertThat(f.credit()).isEqualTo(1);
        if (f.verdict() == Verdict.OPEN) assertThat(f.credit()).isZero();
        if (f.verdict() == Verdict.CLOSE) assertThat(f.credit()).isBetween(0.01, 0.99);
        if (f.subject().board() != null) assertThat(boards).contains(f.subject().board());
        if (f.subject().part() != null) {
            assertThat(scenario.drawing().part(f.subject().part())).isPresent();
        }
        if (f.step() != null) assertThat(f.step()).isBetween(1, bench.steps());
        if (f.measured() != null) {
            assertThat(f.measured().value()).isFinite();
            assertThat(f.measured().limit()).isFinite();
            assertThat(f.measured().unit()).isIn("mm", "degrees", "%", "ratio", "count");
        }
        assertThat(Texts.says(f, scenario))
                .isNotBlank()
                .doesNotContain("{", "}", "  ")
                .matches("[A-Z0-9].*[.]");
        String instead = Texts.instead(f, scenario);
        assertThat(instead).doesNotContain("{", "}", "  ");
        assertThat(instead.isEmpty()).isEqualTo(f.verdict() == Verdict.SOUND);
    }

    static Scenario scenario(Random random) {
        List<Board> boards = new ArrayList<>(Fixtures.porchShelfBoards());
        boards.add(board("E").size(300, 120, 18).sheet().board());
        boards.add(board("F").size(290, 110, 18).board());
        Scenario s = random.nextInt(4) == 0
                ? Fixtures.oneRail()
                : Fixtures.scenario("porch", Fixtures.porchShelfDrawing(), boards);
        Practice p = s.practice();
        Practice mixed = new Practice(
                random.nextBoolean() ? Practice.FaceSide.BEST_OUT : Practice.FaceSide.TRUEST_IN,
                Practice.HeartSide.values()[random.nextInt(3)],
                p.knotMargin(),
                p.cupRatio(),
                p.size(),
                p.gap(),
                p.worth(),
                p.guidance(),
                p.aids());
        EnumSet<Stage> stages = EnumSet.of(Stage.FACES);
        if (random.nextInt(4) > 0) stages.add(Stage.NAMES);
        if (random.nextInt(4) > 0) stages.add(Stage.TURNS);
        return new Scenario(s.id(), s.title(), 1, s.brief(), List.copyOf(stages), mixed, s.drawing(), s.boards(), "");
    }

    static Bench walk(Scenario scenario, Random random, int steps) {
        Bench bench = Bench.of(scenario);
        for (int i = 0; i < steps; i++) {
            try {
                bench = bench.after(action(scenario, random, i + 1));
            } catch (CannotDo e) {
                assertThat(e.why()).isNotBlank();
            }
        }
        return bench;
    }

    private static Action action(Scenario scenario, Random random, double t) {
        Board on = scenario.boards().get(random.nextInt(scenario.boards().size()));
        String board = on.id();
        List<Part> parts = scenario.drawing().parts();
        return switch (random.nextInt(10)) {
            case 0 -> new Action.FaceSide(t, board, any(random), any(random));
            case 1 -> new Action.FaceEdge(t, board, any(random), any(random));
            case 2, 3 ->
                new Action.Name(
                        t, board, parts.get(random.nextInt(parts.size())).id(), point(on, random));
            case 4, 5 ->
                new Action.Turning(
                        t,
                        board,
                        Map.of(
                                random.nextBoolean() ? Surface.FACE_1 : Surface.FACE_2,
                                direction(random),
                                random.nextBoolean() ? Surface.EDGE_1 : Surface.EDGE_2,
                                direction(random)),
                        random.nextBoolean() ? null : new Trim(Surface.END_1, random.nextInt(5)));
            case 6 -> new Action.Measure(t, board, point(on, random), point(on, random));
            case 7 ->
                new Action.Test(
                        t, board, Tool.values()[random.nextInt(3)], any(random), random.nextBoolean() ? null : 100.0);
            case 8 ->
                random.nextInt(3) == 0
                        ? new Action.SetAside(t, board, Reason.values()[random.nextInt(4)])
                        : new Action.RubOut(t, 1 + random.nextInt((int) t));
            default -> new Action.FaceSide(t, board, Surface.FACE_1, Surface.EDGE_1);
        };
    }

    private static Surface any(Random random) {
        return Surface.values()[random.nextInt(6)];
    }

    private static Direction direction(Random random) {
        return Direction.values()[random.nextInt(6)];
    }

    private static SurfacePoint point(Board on, Random random) {
        Surface surface = any(random);
        return new SurfacePoint(
                surface, on.uExtent(surface) * random.nextDouble(), on.vExtent(surface) * random.nextDouble());
    }
}
