package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Place;

class CommandsTest {
    @Test
    void noTwoCommandsShareAKeyWhereBothCouldBeMeant() {
        assertThat(Commands.all()).hasSizeGreaterThan(5);
        assertThat(Commands.clashes(Commands.all())).isEmpty();
    }

    @Test
    void everyCommandHasItsOwnIdAWordAndALineOfHelp() {
        assertThat(Commands.all()).extracting(Command::id).doesNotHaveDuplicates();
        assertThat(Commands.all()).allSatisfy(c -> {
            assertThat(c.word()).as(c.id()).isNotBlank();
            assertThat(c.help()).as(c.id()).isNotBlank().doesNotEndWith(".");
        });
    }

    @Test
    void everyKeyIsAKey() {
        assertThat(Commands.all())
                .allSatisfy(
                        c -> assertThat(c.keyStroke(InputEvent.CTRL_DOWN_MASK).isPresent())
                                .as(c.id())
                                .isEqualTo(!c.key().isEmpty()));
    }

    @Test
    void theSameKeyInOnePlaceIsAClashAndInTwoPlacesIsNot() {
        Command bench = new Command("a", Place.BENCH, "A", "LEFT", "does a");
        Command alsoBench = new Command("b", Place.BENCH, "B", "LEFT", "does b");
        Command replay = new Command("c", Place.REPLAY, "C", "LEFT", "does c");
        Command anywhere = new Command("d", Place.WINDOW, "D", "LEFT", "does d");

        assertThat(Commands.clashes(List.of(bench, alsoBench))).containsExactly("a and b share LEFT");
        assertThat(Commands.clashes(List.of(bench, replay))).isEmpty();
        assertThat(Commands.clashes(List.of(replay, anywhere))).containsExactly("c and d share LEFT");
    }

    @Test
    void theMenuKeyIsAddedToTheOthers() {
        Command redo = new Command("redo", Place.BENCH, "Redo", "menu shift Z", "does it again");
        assertThat(Commands.clashes(List.of(redo, new Command("x", Place.BENCH, "X", "shift ctrl Z", "does x"))))
                .hasSize(1);
        assertThat(Commands.clashes(List.of(redo, new Command("y", Place.BENCH, "Y", "menu Z", "does y"))))
                .isEmpty();
    }
}
