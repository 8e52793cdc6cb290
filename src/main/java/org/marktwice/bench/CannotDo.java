package org.marktwice.bench;

/** An action that can't be done on the bench as it stands; the message says why, in one line fit to show where it was tried. */
public final class CannotDo extends Exception {
    private static final long serialVersionUID = 1L;

    public CannotDo(String why) {
        super(why);
    }
}
