/**
 * What follows from how a job was set out: lines as they really land on a board's true shape, what must be marked for each
 * joint, the dry fit of parts cut to the learner's lines, and tolerance stacks.
 *
 * <p>May use bench and what that may use. Nothing here praises or blames; the rule book does.
 */
@NullMarked
package org.marktwice.fit;

import org.jspecify.annotations.NullMarked;
