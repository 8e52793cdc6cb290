/**
 * The command line, and Main. Thin: it calls the same services as the window and exits from one place.
 */
@NullMarked
package org.marktwice.cli;

import org.jspecify.annotations.NullMarked;
