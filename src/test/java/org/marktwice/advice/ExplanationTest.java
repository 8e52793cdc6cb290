package org.marktwice.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.Fixtures.board;
import static org.marktwice.Fixtures.knot;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.advice.Explanation.Use;
import org.marktwice.drawing.Part;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

class ExplanationTest {
    private static final Scenario PORCH_SHELF = Fixtures.porchShelf();

    @Test
    void itsAnswerIsTheModelAnswer() {
        assertThat(Explanation.of(PORCH_SHELF).answer()).isEqualTo(ModelAnswer.of(PORCH_SHELF));
    }

    @Test
    void aBoardsTableHasEveryPartAndEveryTurn() {
        Explanation explanation = Explanation.of(PORCH_SHELF);
        Board a = PORCH_SHELF.boards().get(0);
        List<Use> uses = explanation.uses(a);

        assertThat(uses)
                .extracting(Use::part)
                .containsExactlyElementsOf(PORCH_SHELF.drawing().parts());
        assertThat(uses.get(0).unfit()).isEmpty();
        assertThat(uses.get(0).ways()).hasSize(4);
        assertThat(uses.get(2).unfit()).contains("Board A is 312 mm long, Shelf 476 mm");
        assertThat(uses.get(2).ways()).isEmpty();
    }

    @Test
    void aWayIsAllowedWhereThePlaningAllowsItAndChosenWhereTheModelAnswerTakesIt() {
        Explanation explanation = Explanation.of(PORCH_SHELF);
        int chosen = 0;
        for (Board board : PORCH_SHELF.boards()) {
            for (Use use : explanation.uses(board)) {
                for (Explanation.Way way : use.ways()) {
                    assertThat(way.allowed())
                            .isEqualTo(Options.turns(board, use.part())
                                    .contains(way.option().placing().turn()));
                    if (!way.chosen()) continue;
                    chosen++;
                    assertThat(explanation.answer().placings()).contains(way.option());
                }
            }
        }
        assertThat(chosen).isEqualTo(3);
    }

    @Test
    void theNextBestIsTheBestInWhichABoardServesLessWell() {
        int found = 0;
        for (int seed = 0; seed < 40; seed++) {
            Scenario scenario = random(seed, 4);
            Explanation explanation = Explanation.of(scenario);
            Optional<ModelAnswer> next = explanation.nextBest();
            if (explanation.answer().supplied() == 0) {
                assertThat(next).isEmpty();
                continue;
            }
            ModelAnswer best = bestOther(scenario, explanation.answer());
            assertThat(figures(next.orElseThrow())).as("seed %d", seed).isEqualTo(figures(best));
            if (!figures(best).equals(figures(explanation.answer()))) found++;
        }
        assertThat(found).as("seeds in which the next best is worse").isGreaterThan(15);
    }

    private static List<Number> figures(ModelAnswer a) {
        return List.of(a.supplied(), a.clear(), Math.round(a.least() * 1000), Math.round(a.sum() * 1000));
    }

    private static boolean servesLess(ModelAnswer set, ModelAnswer than) {
        return than.placings().stream().anyMatch(o -> {
            Optional<Option> here = set.of(o.placing().board());
            return here.isEmpty()
                    || (o.clear() && !here.get().clear())
                    || (o.clear() == here.get().clear()
                            && Math.round(here.get().clearance() * 1000) < Math.round(o.clearance() * 1000));
        });
    }

    /** By trying every allotment of boards to parts. */
    private static ModelAnswer bestOther(Scenario scenario, ModelAnswer not) {
        List<List<Option>> all = new ArrayList<>();
        extend(scenario, 0, new ArrayList<>(), new HashSet<>(), all);
        return all.stream()
                .map(ModelAnswer::new)
                .filter(a -> servesLess(a, not))
                .max((a, b) -> {
                    for (int i = 0; i < 4; i++) {
                        int by = Long.compare(
                                figures(a).get(i).longValue(), figures(b).get(i).longValue());
                        if (by != 0) return by;
                    }
                    return 0;
                })
                .orElseThrow();
    }

    private static void extend(
            Scenario scenario, int part, List<Option> set, Set<Board> taken, List<List<Option>> all) {
        List<Part> parts = scenario.drawing().parts();
        if (part == parts.size()) {
            all.add(List.copyOf(set));
            return;
        }
        extend(scenario, part + 1, set, taken, all);
        for (Board board : scenario.boards()) {
            Optional<Option> best = Options.best(scenario, board, parts.get(part));
            if (best.isEmpty() || !taken.add(board)) continue;
            set.add(best.get());
            extend(scenario, part + 1, set, taken, all);
            set.remove(set.size() - 1);
            taken.remove(board);
        }
    }

    private static Scenario random(int seed, int knots) {
        Random random = new Random(seed);
        List<Board> boards = new ArrayList<>();
        int uprights = random.nextInt(5);
        for (int i = 0; i < uprights; i++) boards.add(RandomBoards.knotty(random, "U" + i, 300, knots));
        int shelves = random.nextInt(3);
        for (int i = 0; i < shelves; i++) boards.add(RandomBoards.knotty(random, "S" + i, 476, 3));
        if (boards.isEmpty()) boards.add(board("X").sheet().board());
        return Fixtures.withBoards(PORCH_SHELF, boards);
    }

    /** Wherever not every part can be supplied, or be clear, there is a set of parts with too few boards, and nowhere else. */
    @Test
    void aShortageProvesWhatCannotBe() {
        int short1 = 0;
        int shortClear = 0;
        for (int seed = 0; seed < 60; seed++) {
            Scenario scenario = random(seed, 10);
            Explanation explanation = Explanation.of(scenario);
            List<Shortage> shortages = explanation.shortages();
            int parts = scenario.drawing().parts().size();
            boolean lacks = explanation.answer().supplied() < parts;
            boolean lacksClear = mostClear(scenario) < parts;

            assertThat(shortages.isEmpty()).as("seed %d", seed).isEqualTo(!lacksClear);
            assertThat(shortages.stream().anyMatch(s -> !s.clear())).isEqualTo(lacks);
            for (Shortage s : shortages) {
                assertThat(s.boards()).hasSize(s.parts().size() - 1);
                assertThat(s.boards()).containsExactlyElementsOf(serving(scenario, s));
                if (s.clear()) shortClear++;
                else short1++;
            }
        }
        assertThat(short1).isGreaterThan(4);
        assertThat(shortClear).isGreaterThan(4);
    }

    private static List<Board> serving(Scenario scenario, Shortage s) {
        return scenario.boards().stream()
                .filter(b -> s.parts().stream()
                        .flatMap(p -> Options.best(scenario, b, p).stream())
                        .anyMatch(o -> o.clear() || !s.clear()))
                .toList();
    }

    private static int mostClear(Scenario scenario) {
        List<List<Option>> all = new ArrayList<>();
        extend(scenario, 0, new ArrayList<>(), new HashSet<>(), all);
        return all.stream()
                .mapToInt(set -> (int) set.stream().filter(Option::clear).count())
                .max()
                .orElse(0);
    }

    @Test
    void twoGoodBoardsForThreePartsAreAShortageOfTheThree() {
        Board good = board("A").board();
        Board bad = board("B")
                .knots(knot("k1", 90, 90, 90), knot("k2", 210, 90, 90))
                .board();
        Board shelf = board("D").size(476, 120, 18).board();
        Scenario scenario = Fixtures.withBoards(PORCH_SHELF, List.of(good, bad, shelf));

        List<Shortage> shortages = Explanation.of(scenario).shortages();

        // the shelf's board is long enough for an upright too, so it is one of the boards that serve them
        assertThat(shortages).hasSize(1);
        assertThat(shortages.get(0).clear()).isTrue();
        assertThat(shortages.get(0).parts())
                .extracting(Part::id)
                .containsExactly("upright-left", "upright-right", "shelf");
        assertThat(shortages.get(0).boards()).extracting(Board::id).containsExactly("A", "D");
    }

    @Test
    void aTurnThatNoPlanedSurfaceAllowsIsShownWithItsClearanceAllTheSame() {
        Board board = board("A")
                .dressed(Surface.FACE_1, Surface.EDGE_1)
                .knots(knot("k1", 60, 90, 90))
                .board();
        Scenario scenario = Fixtures.withBoards(PORCH_SHELF, List.of(board));
        Use use = Explanation.of(scenario).uses(board).get(0);

        assertThat(use.ways()).extracting(Explanation.Way::allowed).containsOnlyOnce(true);
        assertThat(use.ways().get(0).option().nearest()).isPresent();
        assertThat(use.ways())
                .allSatisfy(w -> assertThat(w.option().clearance())
                        .isEqualTo(Options.judge(scenario, w.option().placing()).clearance(), within(1e-9)));
    }
}
