/**
 * What could be done best: a board's options in a part, and the exact model answer. May use bench and below; the rule book
 * stands on it, for a finding says what would have been better.
 */
@NullMarked
package org.marktwice.advice;

import org.jspecify.annotations.NullMarked;
