/**
 * Sheets of paper: pages drawn on any Graphics2D by the painters of the screen, and the files they are written to (PDF, SVG,
 * PNG). May use all packages below the window. Lengths are points, a 72nd of an inch, unless they say otherwise; paper is
 * always light, and says no date and no time.
 */
@NullMarked
package org.marktwice.print;

import org.jspecify.annotations.NullMarked;
