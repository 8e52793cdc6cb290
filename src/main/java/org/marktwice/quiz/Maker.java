package org.marktwice.quiz;

import org.marktwice.timber.Chance;

/** Makes questions of one kind. A maker keeps nothing: all that it does comes from the chance it is given. */
interface Maker {
    Kind kind();

    /** @param level 1 to {@link Quiz#HARDEST} */
    Question.Draft make(int level, Chance chance);
}
