package org.marktwice.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.timber.Board;
import org.marktwice.timber.SawnBoard;
import org.marktwice.timber.Size;
import org.marktwice.timber.Species;
import org.marktwice.timber.SpeciesTable;
import org.marktwice.timber.Surface;

class RackTest {
    private static final Drawing DRAWING = Fixtures.porchShelfDrawing();

    private static Stock stock(int seed, int spare, double difficulty) {
        return new Stock(seed, SpeciesTable.byId("scots-pine").orElseThrow(), spare, difficulty);
    }

    private static List<Board> fill(Stock stock) {
        return Rack.fill(stock, DRAWING, Practice.DEFAULT);
    }

    private static List<Board.Facts> facts(Stock stock) {
        return fill(stock).stream().map(Board::facts).toList();
    }

    @Test
    void theSameSeedFillsTheSameRack() {
        assertThat(facts(stock(7, 2, 0.6))).isEqualTo(facts(stock(7, 2, 0.6)));
        assertThat(facts(stock(7, 2, 0.6))).isNotEqualTo(facts(stock(8, 2, 0.6)));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 5, 20})
    void thereIsABoardForEachPartAndTheSpareOnesBesides(int spare) {
        List<Board> boards = fill(stock(3, spare, 0.5));
        assertThat(boards).hasSize(3 + spare);
        assertThat(boards).extracting(Board::id).isEqualTo(letters(3 + spare));
        assertThat(boards).allMatch(b -> b.size().width() == 120 && b.size().thickness() == 18);
        assertThat(boards)
                .allMatch(b -> List.of(300.0, 476.0).stream()
                        .anyMatch(l -> b.size().length() >= l + 6 && b.size().length() <= l + 14));
        List<SawnBoard> sawn = Rack.sawn(stock(3, spare, 0.5), DRAWING, Practice.DEFAULT);
        for (int i = 0; i < 3; i++) {
            double more = sawn.get(i).board().size().length()
                    - DRAWING.parts().get(i).size().length();
            assertThat(more).isBetween(6.0, 14.0);
        }
    }

    private static List<String> letters(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> String.valueOf((char) ('A' + i)))
                .toList();
    }

    @Test
    void afterZComesAA() {
        Part[] parts = IntStream.range(0, 30)
                .mapToObj(i -> Fixtures.timber("slat-" + i, "Slat")
                        .size(200, 40, 10)
                        .at(0, 0, 10.0 * i)
                        .runs(JobAxis.ACROSS, JobAxis.DEEP)
                        .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
                        .part())
                .toArray(Part[]::new);
        Drawing slats = Fixtures.drawing(new Overall(200, 40, 300), List.of(parts));
        List<Board> boards = Rack.fill(stock(1, 0, 0.5), slats, Practice.DEFAULT);
        assertThat(boards).extracting(Board::id).startsWith("A", "B").endsWith("Z", "AA", "AB", "AC", "AD");
    }

    @Test
    void theLettersDoNotTellWhatIsMeantForWhat() {
        assertThat(IntStream.range(0, 10)
                        .mapToObj(seed -> Rack.sawn(stock(seed, 0, 0.5), DRAWING, Practice.DEFAULT).stream()
                                .map(s -> s.board().id())
                                .toList())
                        .distinct())
                .hasSizeGreaterThan(3);
    }

    @Test
    void sheetIsNotGrownAndShapedPartsArePlanedOnTwoSurfaces() {
        Part sheet = new Part(
                "back",
                "Back",
                PartStuff.SHEET,
                new Size(300, 200, 4),
                new Vector3d(0, 30, 0),
                JobAxis.ACROSS,
                JobAxis.HIGH,
                List.of(),
                List.of());
        Part post = new Part(
                "post",
                "Post",
                PartStuff.SHAPED,
                new Size(200, 30, 30),
                new Vector3d(0, 0, 0),
                JobAxis.HIGH,
                JobAxis.DEEP,
                List.of(),
                List.of());
        List<Board> boards = Rack.fill(
                stock(5, 0, 0.5), Fixtures.drawing(new Overall(300, 34, 200), List.of(sheet, post)), Practice.DEFAULT);
        Board back = boards.stream().filter(Board::isSheet).findFirst().orElseThrow();
        Board stick = boards.stream().filter(b -> !b.isSheet()).findFirst().orElseThrow();
        assertThat(back.size()).isEqualTo(sheet.size());
        assertThat(back.species()).isEmpty();
        assertThat(stick.facts().dressed()).containsExactlyInAnyOrder(Surface.FACE_1, Surface.EDGE_1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 1})
    void thePartsOwnBoardsCanBeClear(double difficulty) {
        for (Species species : SpeciesTable.all()) {
            for (int seed = 0; seed < 3; seed++) {
                List<SawnBoard> sawn = Rack.sawn(new Stock(seed, species, 1, difficulty), DRAWING, Practice.DEFAULT);
                for (int i = 0; i < 3; i++) {
                    Part part = DRAWING.parts().get(i);
                    assertThat(WrongTurns.share(
                                    DRAWING, Practice.DEFAULT, sawn.get(i).board(), part))
                            .as("%s, seed %d, %s", species.id(), seed, part.id())
                            .isLessThan(1);
                }
            }
        }
    }

    /** Even where a workshop keeps knots farther away than a log can give. */
    @Test
    void aMarginThatNoKnotKeepsIsMetByClearTimber() {
        Practice wide = new Practice(
                Practice.FaceSide.TRUEST_IN,
                Practice.HeartSide.ANY,
                new Practice.KnotMargin(900, 1),
                Practice.DEFAULT.cupRatio(),
                1,
                1,
                Map.of(),
                Practice.Guidance.AT_HAND_IN,
                Set.of());
        List<SawnBoard> sawn = Rack.sawn(stock(1, 0, 1), DRAWING, wide);
        // The shelf has no cuts, but dead knots would keep from its ends too.
        assertThat(sawn).allMatch(b -> b.board().knots().isEmpty());
    }

    /** Two of three parts of one thickness at least come out of one log, whatever the seed. */
    @Test
    void boardsBelongTogether() {
        for (int seed = 0; seed < 20; seed++) {
            List<SawnBoard> sawn = Rack.sawn(stock(seed, 0, 0.5), DRAWING, Practice.DEFAULT);
            assertThat(sawn.stream().map(SawnBoard::log).distinct()).hasSizeLessThan(3);
        }
    }

    @ParameterizedTest
    @CsvSource({"3986, 400, 120, true", "3987, 100, 20, false", "300, 400.5, 20, false", "300, 200, 121, false"})
    void aPartLargerThanALogGivesIsRefused(double length, double width, double thickness, boolean taken) {
        Part part = Fixtures.timber("beam", "Beam")
                .size(length, width, thickness)
                .at(0, 0, 0)
                .runs(JobAxis.ACROSS, JobAxis.DEEP)
                .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
                .part();
        Drawing drawing = Fixtures.drawing(new Overall(length, width, thickness), List.of(part));
        assertThat(Rack.refusal(drawing).isEmpty()).isEqualTo(taken);
        if (taken) {
            assertThat(Rack.fill(stock(1, 0, 0.5), drawing, Practice.DEFAULT)).hasSize(1);
        } else {
            assertThat(Rack.refusal(drawing).orElseThrow())
                    .isEqualTo("no log gives a board for part \"beam\": at most 3986 × 400 × 120 mm");
        }
    }
}
