/**
 * Swing: start page, bench, mark sheet, replay. May use all but the command line. No verdict is made here.
 */
@NullMarked
package org.marktwice.view;

import org.jspecify.annotations.NullMarked;
