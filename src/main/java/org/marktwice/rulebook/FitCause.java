package org.marktwice.rulebook;

import org.jspecify.annotations.Nullable;

/**
 * Something that a figure of the dry fit comes from.
 *
 * @param board whose line or size it is
 * @param step the action that struck the line; null for a size of the board itself
 * @param mm how much it is out by
 * @param says what, on which surface, from where
 */
public record FitCause(String board, @Nullable Integer step, double mm, String says) {}
