/**
 * The job as drawn: parts, joints and the cuts that follow from their overlaps, turns, placings, and the refusals of a drawing
 * that contradicts itself.
 *
 * <p>May use timber. Nothing here knows what a learner did.
 */
@NullMarked
package org.marktwice.drawing;

import org.jspecify.annotations.NullMarked;
