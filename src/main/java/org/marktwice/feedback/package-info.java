/**
 * What comes back to a learner, in words and pictures to be: the mark sheet by boards, the attempt step by step with the
 * findings that each step decided, and the board to show for each. May use picture and below; paper, files for a browser and
 * the window show the same.
 */
@NullMarked
package org.marktwice.feedback;

import org.jspecify.annotations.NullMarked;
