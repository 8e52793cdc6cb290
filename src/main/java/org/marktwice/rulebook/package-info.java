/**
 * Rules, findings, mark sheet, and their words. May use advice and below. A rule never reads another rule's result, and
 * nothing here reads files or draws.
 */
@NullMarked
package org.marktwice.rulebook;

import org.jspecify.annotations.NullMarked;
