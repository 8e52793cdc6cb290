package org.marktwice.rulebook;

import java.util.Set;
import org.marktwice.bench.Attempt;

/**
 * An attempt with one slip more in it.
 *
 * @param board the board on which the slip was made
 * @param touches the boards whose handling the slip changes or rests on, {@code board} among them
 * @param rule the rule that is to find it
 */
public record Slipped(Slip slip, String board, Set<String> touches, String rule, Attempt attempt) {
    public Slipped {
        touches = Set.copyOf(touches);
    }
}
