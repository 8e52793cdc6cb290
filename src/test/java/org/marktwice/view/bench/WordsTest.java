package org.marktwice.view.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.Tool;
import org.marktwice.drawing.Placing;
import org.marktwice.picture.Lie;
import org.marktwice.timber.Board;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.Trace;
import org.marktwice.view.Session;

class WordsTest {
    private final Session session;

    WordsTest() throws CannotDo {
        session = Worked.porchShelf();
    }

    private BoardState board(String id) {
        return session.bench().board(id);
    }

    @Test
    void a_settled_board_says_how_it_lies_and_what_follows() {
        Placing placing = session.bench().placing(board("A")).orElseThrow();
        assertThat(Words.turned(board("A"), placing.part(), placing.turn(), true))
                .isEqualTo(
                        "as the right upright: face side to the left, face edge to the front, so end 1 is at the bottom");
        assertThat(Words.turned(board("A"), placing.part(), placing.turn(), false))
                .doesNotContain("end 1");
    }

    @Test
    void a_board_on_the_bench_says_how_it_lies() {
        assertThat(Words.lying(board("B"), Lie.FIRST)).isEqualTo("face 1 up, edge 1 in front, end 1 at the left");
        assertThat(Words.lying(board("A"), Lie.FIRST.endForEnd()))
                .isEqualTo("face side up, edge 2 in front, end 2 at the left");
    }

    @Test
    void what_is_pointed_at_is_named_as_the_trade_would() {
        assertThat(pointed("B", new SurfacePoint(Surface.FACE_1, 20, 60))).isEqualTo("face 1, planed, heart side");
        assertThat(pointed("A", new SurfacePoint(Surface.EDGE_2, 20, 9))).isEqualTo("edge 2, as sawn");
        assertThat(pointed("A", new SurfacePoint(Surface.FACE_1, 20, 60)))
                .isEqualTo("face 1, marked as face side, planed, bark side");
        Trace knot = board("C").board().traces(Surface.FACE_1).get(1);
        assertThat(pointed("C", knot.middle()))
                .startsWith("knot 2, face 1: ")
                .contains(" mm along the grain, ")
                .endsWith(" round face knot");
    }

    @Test
    void the_rack_says_how_a_boards_surfaces_are_graded() {
        assertThat(Words.grades(board("A").board()))
                .isEqualTo(
                        "Scots pine · EN 942: face 1 J20 (knot 12 mm), edge 1 no knot, face 2 J10 (knot 8 mm), edge 2 no knot");
    }

    private String pointed(String id, SurfacePoint at) {
        return Words.pointed(board(id), new Aim(at, new Snap(at, Snap.To.NOTHING, "")));
    }

    @ParameterizedTest
    @CsvSource({"63.24, 63", "63.25, 63.5", "63.74, 63.5", "63.75, 64", "0.2, 0"})
    void a_steel_rule_is_read_to_half_a_millimetre(double mm, double reads) {
        assertThat(Reading.toHalf(mm)).isEqualTo(reads);
    }

    @Test
    void tools_say_what_they_read() {
        assertThat(Reading.of(board("A"), new Action.Test(0, "A", Tool.TRY_SQUARE, Surface.EDGE_1, 150.0)))
                .isEqualTo("try-square, face side to edge 1: square, no light");
        assertThat(Reading.of(board("A"), new Action.Test(0, "A", Tool.TRY_SQUARE, Surface.EDGE_2, 150.0)))
                .isEqualTo("try-square, face side to edge 2: light at the heel, 0.2 mm over 18 mm");
        assertThat(Reading.of(board("A"), new Action.Test(0, "A", Tool.WINDING_STICKS, Surface.FACE_1, null)))
                .isEqualTo("winding sticks on face 1: no wind");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "52|-40|pith about 40 mm beyond face 2, 50 mm from edge 1; face 1 is the bark side",
                "-17|61|pith about 45 mm beyond face 1, 15 mm beyond edge 1; face 2 is the bark side",
                "150|9|pith level with the board, 30 mm beyond edge 2; neither face is the bark side",
                "61|9|the pith is in the board, 10 mm from face 2, 60 mm from edge 1: boxed heart, expect a check",
            })
    void the_end_grain_says_where_the_pith_lies(double y, double z, String says) {
        Board.Facts f = board("A").board().facts();
        Board board = Board.of(new Board.Facts(
                f.id(),
                f.stuff(),
                f.species(),
                f.size(),
                f.planedAt(),
                f.moisture(),
                f.dressed(),
                new Pith(y, z),
                f.ringWidth(),
                List.of(),
                f.shape(),
                f.seed()));
        assertThat(Reading.of(BoardState.fresh(board), new Action.Test(0, "A", Tool.END_GRAIN, Surface.END_1, null)))
                .isEqualTo("end grain of end 1: " + says);
    }

    @Test
    void a_board_can_be_read_as_text() {
        String report =
                BoardReport.of(session.scenario(), board("A"), session.bench().placing(board("A")), List.of());
        assertThat(report)
                .startsWith("Board A, Scots pine, 312 × 120 × 18 mm\nBoth marks made\nNamed Right upright\n")
                .contains("6 mm off end 1, 6 mm off end 2")
                .contains("face side mark, towards edge 1")
                .contains("knot 1, face 1: ")
                .contains("What the tools read\n");
        assertThat(BoardReport.of(session.scenario(), board("B"), Optional.empty(), List.of()))
                .contains("Not named yet");
    }

    @Test
    void progress_counts_and_never_judges() {
        assertThat(session.scenario().stages().stream()
                        .map(s -> Progress.of(session.bench(), s).orElseThrow().toString()))
                .containsExactly("2 of 3", "2 of 3", "2 of 3");
        assertThat(Progress.marks(board("A"))).isEqualTo("both marks made");
        assertThat(Progress.marks(board("B"))).isEqualTo("no marks yet");
        assertThat(Progress.marks(board("C"))).isEqualTo("face side marked");
    }

    @Test
    void parts_say_what_is_still_to_do() {
        assertThat(PartState.of(session.bench()).stream().map(p -> p.sign() + " " + p.title() + ": " + p.says()))
                .containsExactly(
                        "○ Left upright: choose a board",
                        "● Right upright · board A: knot 1 meets the joint: turn it",
                        "✓ Shelf · board D: settled");
    }
}
