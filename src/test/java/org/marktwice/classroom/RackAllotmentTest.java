package org.marktwice.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.advice.Options;
import org.marktwice.drawing.Part;
import org.marktwice.files.RackFile;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.KnotFit.Sureness;
import org.marktwice.timber.MeasuredBoard;
import org.marktwice.timber.MeasuredBoard.Measured;
import org.marktwice.timber.Showing;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;

/** Real boards to real parts: the best there is, what is not sure, and what to buy. */
class RackAllotmentTest {
    private static final Scenario SHELF = Handed.shelf();

    /** A board of the exercise as somebody would measure it. */
    private static MeasuredBoard measured(Board board, String id) {
        List<Measured> knots = board.bodies().stream()
                .map(b -> new Measured(
                        b.knot().id(), b.traces().stream().map(Showing::of).toList()))
                .filter(m -> !m.shows().isEmpty())
                .toList();
        return new MeasuredBoard(renamed(board, id, List.of()), knots);
    }

    private static Board.Facts renamed(Board board, String id, List<org.marktwice.timber.Knot> knots) {
        Board.Facts f = board.facts();
        return new Board.Facts(
                id,
                f.stuff(),
                f.species(),
                f.size(),
                f.planedAt(),
                f.moisture(),
                f.dressed(),
                f.pith(),
                f.ringWidth(),
                knots,
                f.shape(),
                f.seed());
    }

    private static RackFile rack(int copies) {
        List<MeasuredBoard> boards = new ArrayList<>();
        for (int i = 0; i < copies; i++) {
            for (Board board : SHELF.boards()) boards.add(measured(board, board.id() + i));
        }
        return new RackFile(boards);
    }

    @Test
    void measuredFromTheirTracesTheExercisesOwnBoardsServeAsInTheModelAnswer() {
        ModelAnswer truth = ModelAnswer.of(SHELF);

        RackAllotment found = RackAllotment.of(SHELF, rack(1), 1);

        assertThat(found.clear()).isEqualTo(truth.clear());
        assertThat(found.jobs().get(0).least()).isCloseTo(truth.least(), within(1.0));
        assertThat(found.jobs().get(0).sum()).isCloseTo(truth.sum(), within(3.0));
        assertThat(found.toBuy()).isEmpty();
    }

    /** What counts, in its order, as one number. */
    private record Score(int supplied, int clear, double least, double sum) {
        boolean betterThan(Score o) {
            if (supplied != o.supplied) return supplied > o.supplied;
            if (clear != o.clear) return clear > o.clear;
            if (Math.abs(least - o.least) > 2e-3) return least > o.least;
            return sum > o.sum + 1e-2;
        }
    }

    private static Score score(List<Option> options) {
        return new Score(
                options.size(),
                (int) options.stream().filter(Option::clear).count(),
                options.stream().mapToDouble(Option::clearance).min().orElse(Option.CAP),
                options.stream().mapToDouble(Option::clearance).sum());
    }

    /** Every way to give boards to two jobs' parts, tried. */
    private static Score byTrying(Scenario scenario, List<Part> parts, int next, Set<String> used, List<Option> so) {
        if (next == parts.size()) return score(so);
        Score best = byTrying(scenario, parts, next + 1, used, so);
        for (Board board : scenario.boards()) {
            if (used.contains(board.id())) continue;
            Optional<Option> option = Options.best(scenario, board, parts.get(next));
            if (option.isEmpty()) continue;
            used.add(board.id());
            so.add(option.get());
            Score found = byTrying(scenario, parts, next + 1, used, so);
            if (found.betterThan(best)) best = found;
            so.remove(so.size() - 1);
            used.remove(board.id());
        }
        return best;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void noOtherWayOfGivingBoardsToTwoJobsIsBetter(long seed) {
        Random random = new Random(seed);
        List<MeasuredBoard> boards = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Board board = SHELF.boards().get(random.nextInt(SHELF.boards().size()));
            MeasuredBoard one = measured(board, "R" + i);
            List<Measured> shifted = one.knots().stream()
                    .map(k -> new Measured(
                            k.id(),
                            k.shows().stream()
                                    .map(s -> new Showing(
                                            s.surface(),
                                            Math.min(
                                                    board.size().length(),
                                                    s.u() + (s.surface().isEnd() ? 0 : 20 * random.nextDouble())),
                                            s.v(),
                                            s.length(),
                                            s.width(),
                                            s.dead()))
                                    .toList()))
                    .toList();
            boards.add(new MeasuredBoard(one.bare(), shifted));
        }

        RackAllotment found = RackAllotment.of(SHELF, new RackFile(boards), 2);

        List<Part> parts = new ArrayList<>(SHELF.drawing().parts());
        parts.addAll(SHELF.drawing().parts());
        Score tried = byTrying(found.scenario(), parts, 0, new HashSet<>(), new ArrayList<>());
        Score own =
                score(found.jobs().stream().flatMap(j -> j.placings().stream()).toList());
        assertThat(tried.betterThan(own)).as("%s against %s", tried, own).isFalse();
        assertThat(own.supplied()).isEqualTo(tried.supplied());
        Set<String> used = new HashSet<>();
        for (ModelAnswer job : found.jobs()) {
            for (Option option : job.placings()) {
                assertThat(used.add(option.placing().board().id())).isTrue();
            }
        }
    }

    @Test
    void whereTheRackDoesNotGoRoundWholeJobsComeFirstAndTheRestIsToBuy() {
        RackAllotment found = RackAllotment.of(SHELF, rack(1), 3);

        assertThat(found.supplied()).isLessThan(9);
        assertThat(found.jobs()).extracting(ModelAnswer::supplied).isSortedAccordingTo((a, b) -> b - a);
        int missing = found.toBuy().stream()
                .filter(p -> p.instead().isEmpty())
                .mapToInt(RackAllotment.Purchase::count)
                .sum();
        assertThat(missing).isEqualTo(9 - found.supplied());
        int all = found.toBuy().stream().mapToInt(RackAllotment.Purchase::count).sum();
        assertThat(all).isEqualTo(9 - found.clear());
        assertThat(found.toBuy()).allSatisfy(p -> assertThat(p.parts()).isNotEmpty());
    }

    @Test
    void aBoardOfAnotherSizeIsLeftOverWithItsReason() {
        Board board = SHELF.boards().get(0);
        Board.Facts f = board.facts();
        Board narrow = Board.of(new Board.Facts(
                "N",
                f.stuff(),
                f.species(),
                new Size(f.size().length(), f.size().width() - 20, f.size().thickness()),
                f.planedAt(),
                f.moisture(),
                f.dressed(),
                f.pith(),
                f.ringWidth(),
                List.of(),
                f.shape(),
                f.seed()));

        RackAllotment found = RackAllotment.of(SHELF, new RackFile(List.of(measured(narrow, "N"))), 1);

        assertThat(found.leftOver()).hasSize(1);
        assertThat(found.leftOver().get(0).why().orElseThrow()).contains("Board N is 110 mm wide");
    }

    @Test
    void readingsThatBelongToNoOneBranchAreKeptClearOfOneByOneAndToldToBeMeasuredAgain() {
        MeasuredBoard one = measured(SHELF.boards().get(0), "R1");
        List<Measured> torn = List.of(new Measured(
                "k1",
                List.of(
                        new Showing(Surface.FACE_1, 60, 70, 18, 15, false),
                        new Showing(Surface.FACE_2, 200, 20, 11, 10, false))));

        RackAllotment found = RackAllotment.of(SHELF, new RackFile(List.of(new MeasuredBoard(one.bare(), torn))), 1);

        assertThat(found.rack().get(0).board().knots())
                .extracting(k -> k.id())
                .containsExactly("k1-face-1", "k1-face-2");
        assertThat(found.rack().get(0).fits()).extracting(f -> f.sureness()).containsOnly(Sureness.DOUBTFUL);
        assertThat(found.checks()).hasSize(2);
    }
}
