/**
 * The quiz at home: questions made from boards and drawings that are grown from a seed, their answers and reasons, and
 * when each idea is due again. May use files and picture, and what these may use. No Swing, no clock and no randomness of
 * its own: the day comes in from outside, and a seed makes the same question on every machine.
 */
@NullMarked
package org.marktwice.quiz;

import org.jspecify.annotations.NullMarked;
