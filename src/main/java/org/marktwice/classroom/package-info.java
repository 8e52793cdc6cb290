/**
 * What a teacher does for a whole class: class sets, marking in bulk, results, allotting real boards, handouts. May use
 * all packages below the window. No Swing, no clock and no randomness of its own; nothing here prints.
 */
@NullMarked
package org.marktwice.classroom;

import org.jspecify.annotations.NullMarked;
