/**
 * The quiz in the window: one picture, one question, one place to answer, then the reason; and how far one has come. No
 * question is made and nothing is judged here: the package {@code org.marktwice.quiz} does.
 */
@NullMarked
package org.marktwice.view.quiz;

import org.jspecify.annotations.NullMarked;
