/**
 * What boards and drawings look like on any Graphics2D: projection, figure of the wood, marks, dimensions, and the palette
 * by meaning. May use rulebook and below. No Swing.
 */
@NullMarked
package org.marktwice.picture;

import org.jspecify.annotations.NullMarked;
