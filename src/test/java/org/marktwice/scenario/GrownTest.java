package org.marktwice.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.Fixtures.board;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.marktwice.Fixtures;
import org.marktwice.timber.Board;

class GrownTest {
    private static final List<Board> BOARDS =
            List.of(board("A").board(), board("B").board());

    private final AtomicInteger times = new AtomicInteger();
    private final Grown grown = new Grown(() -> {
        times.incrementAndGet();
        return BOARDS;
    });

    @Test
    void areGrownOnceAndOnlyWhenLookedAt() {
        Scenario scenario = with(grown);

        assertThat(scenario.hashCode()).isEqualTo(with(BOARDS).hashCode());
        assertThat(times).hasValue(0);
        assertThat(scenario.boards()).isEqualTo(BOARDS).hasSize(2);
        assertThat(scenario).isEqualTo(with(BOARDS));
        assertThat(times).hasValue(1);
    }

    private static Scenario with(List<Board> boards) {
        Scenario s = Fixtures.porchShelf();
        return new Scenario(
                s.id(),
                s.title(),
                s.level(),
                s.brief(),
                s.idea(),
                s.stages(),
                s.practice(),
                s.drawing(),
                boards,
                Optional.empty(),
                OptionalInt.empty(),
                s.digest());
    }
}
