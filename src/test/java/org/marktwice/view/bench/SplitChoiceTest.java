package org.marktwice.view.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.timber.Board;

class SplitChoiceTest {
    private static final List<Board> BOARDS = Fixtures.porchShelfBoards();

    @Test
    void a_usual_window_stacks_the_views() {
        SplitChoice choice = SplitChoice.best(BOARDS, 990, 870, 1);
        assertThat(choice.stacked()).isTrue();
        assertThat(choice.share()).isBetween(0.4, 0.64);
    }

    @Test
    void a_low_wide_room_lays_them_side_by_side() {
        assertThat(SplitChoice.best(BOARDS, 2400, 420, 1).stacked()).isFalse();
    }

    @Test
    void without_any_room_it_still_gives_an_answer() {
        assertThat(SplitChoice.best(BOARDS, 10, 10, 1).share()).isBetween(0.3, 0.7);
    }
}
