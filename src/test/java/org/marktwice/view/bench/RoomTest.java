package org.marktwice.view.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.List;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.timber.Board;
import org.marktwice.timber.Climate;

/** The board as it settles in another room. */
class RoomTest {
    /** Scots pine, planed flat at 12 %, its heart side face 2: it dries in the heated room and hollows on face 1. */
    private static final Board BOARD =
            Fixtures.board("A").pith(60, -40).moisture(12, 12).board();

    private static String told(Board board, double moisture) {
        return RoomWords.of(board, new ShapeShown.Room("", moisture));
    }

    @Test
    void dryingMakesItNarrowerAndThinnerAndHollowOnTheBarkSide() {
        String told = told(BOARD, new Climate(21, 40).settledMoisture());

        assertThat(told.lines().toList().get(0)).isEqualTo("12.0 → 7.7 % moisture");
        assertThat(told).containsPattern("width 120\\.0 → 11[89]\\.\\d mm").contains("face 1 hollow");
    }

    @Test
    void inADampRoomItTurnsTheOtherWay() {
        assertThat(told(BOARD, 18)).contains("face 2 hollow");
    }

    @Test
    void whereNothingChangesItStaysFlat() {
        assertThat(told(BOARD, 12).lines())
                .containsExactly(
                        "12.0 → 12.0 % moisture", "width 120.0 → 120.0 mm", "thickness 18.0 → 18.0 mm", "flat across");
    }

    @Test
    void aBoxedHeartHasNoFiguresAndSheetStuffStays() {
        Board boxed = Fixtures.board("B").pith(60, 9).board();
        assertThat(told(boxed, 8)).contains("expect a check").doesNotContain("mm");
        assertThat(told(Fixtures.board("S").sheet().board(), 8)).startsWith("Sheet stuff");
    }

    @Test
    void atTheBenchItIsAskedForByKeyAndLeftWhenAToolIsTakenUp() {
        try (AtTheBench bench = new AtTheBench(Worked.outOfTrueSession())) {
            bench.key(KeyEvent.VK_O);
            assertThat(says(bench)).contains("% moisture", "width");
            assertThat(shown(bench)).contains("once settled at 21 °C, 40 %, 7.7 % moisture");

            bench.window.spinner("room-humidity").enterTextAndCommit("80");
            assertThat(shown(bench)).contains("21 °C, 80 %");

            bench.window.spinner("room-moisture").enterTextAndCommit("14");
            assertThat(shown(bench)).contains("once settled at 14.0 % moisture");

            GuiActionRunner.execute(() -> bench.screen.boardView().requestFocusInWindow());
            bench.key(KeyEvent.VK_S);
            assertThat(List.of(shown(bench))).containsExactly("shape ×1");
        }
    }

    private static String says(AtTheBench bench) {
        String text = bench.window.textBox("room-says").text();
        return text == null ? "" : text;
    }

    private static String shown(AtTheBench bench) {
        String says = GuiActionRunner.execute(() -> bench.screen.model().shape().says());
        return says == null ? "" : says;
    }
}
