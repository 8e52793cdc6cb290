/**
 * The wood: board, surfaces, rings, knots, moisture, shape, clearance. Immutable values in millimetres, degrees and percent; JOML inside.
 *
 * <p>Nothing here knows of a job, a learner, a file or a screen.
 */
@NullMarked
package org.marktwice.timber;

import org.jspecify.annotations.NullMarked;
