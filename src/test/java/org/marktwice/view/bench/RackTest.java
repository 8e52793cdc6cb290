package org.marktwice.view.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.event.MouseEvent;
import javax.swing.JList;
import org.assertj.swing.edt.GuiActionRunner;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.CannotDo;

class RackTest {
    @Test
    void a_card_tells_its_boards_grades_and_the_room_below_tells_nothing() throws CannotDo {
        try (AtTheBench bench = new AtTheBench(Worked.porchShelf())) {
            JList<?> rack = bench.window.list("rack").target();
            assertThat(tip(rack, 0)).isEqualTo(Words.grades(bench.board("A").board()));
            assertThat(tip(rack, 1)).isEqualTo(Words.grades(bench.board("B").board()));
            assertThat(tip(rack, -1)).isNull();
        }
    }

    /** At the middle of a card; for -1 below the last of them. */
    private static @Nullable String tip(JList<?> rack, int index) {
        return GuiActionRunner.execute(() -> {
            java.awt.Rectangle card = rack.getCellBounds(Math.max(index, 0), Math.max(index, 0));
            int y = index < 0 ? rack.getModel().getSize() * card.height + 40 : (int) card.getCenterY();
            Point at = new Point((int) card.getCenterX(), y);
            return rack.getToolTipText(new MouseEvent(rack, MouseEvent.MOUSE_MOVED, 0, 0, at.x, at.y, 0, false));
        });
    }
}
