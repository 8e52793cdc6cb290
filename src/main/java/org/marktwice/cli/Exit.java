package org.marktwice.cli;

/** What the program says to the shell. */
final class Exit {
    static final int DONE = 0;
    /** The answer to what was asked is no. */
    static final int NO = 1;
    /** Wrong use, or a file that can't be read. */
    static final int WRONG = 2;

    private Exit() {}
}
