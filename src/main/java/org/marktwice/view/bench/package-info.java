/**
 * The bench screen: the rack, the board in its two views, the tools, the working drawing and the parts still to do.
 *
 * <p>Tools work in surface coordinates and know no component, so that both views share them. Nothing here reads or writes
 * files; the attempt changes through the session alone.
 */
@NullMarked
package org.marktwice.view.bench;

import org.jspecify.annotations.NullMarked;
