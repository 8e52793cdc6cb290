package org.marktwice.view.bench;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Surface;
import org.marktwice.view.Commands.Command;

/**
 * Something held in the hand. It is told where it is pointed on the board, whichever view that happens in, and which keys
 * are struck; what it would do lies over the board as overlays until it is done.
 */
public interface BenchTool {
    /** The word and key it is taken up by. */
    Command command();

    /** One line: what to do with it now. */
    String hint();

    /** The surface that a drag may not leave; null where it may go anywhere. */
    default @Nullable Surface holding() {
        return null;
    }

    /** Whether its points take to arrises, knots and lines. */
    default boolean snaps() {
        return false;
    }

    /** The pointer moved; null when it left the board. */
    default void point(@Nullable Aim aim) {}

    default void press(Aim aim) {}

    default void drag(Aim aim) {}

    default void release(Aim aim) {}

    /** Whether the key meant something to it. */
    default boolean key(ToolKey key) {
        return false;
    }

    /** A character typed: a digit, a decimal point or a backspace. Whether it meant something. */
    default boolean type(char c) {
        return false;
    }

    /** Whether it strikes lines, with knife or pencil. */
    default boolean strikes() {
        return false;
    }

    /** What there is to be chosen about it, as it stands now: {@code from end 1}; empty where there is nothing. */
    default Optional<String> choice() {
        return Optional.empty();
    }

    /** The next that can be chosen. */
    default void chooseNext() {}

    /** Taken up: sets itself to the board that lies there. Called again when another board is chosen. */
    default void takenUp() {}

    default List<Overlay> overlays() {
        return List.of();
    }
}
