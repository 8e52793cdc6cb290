/**
 * What a learner does: actions, the attempt, and the bench folded from them. May use scenario and what that may use.
 *
 * <p>No clock, no files, no verdicts: an action is possible or not, never right or wrong.
 */
@NullMarked
package org.marktwice.bench;

import org.jspecify.annotations.NullMarked;
