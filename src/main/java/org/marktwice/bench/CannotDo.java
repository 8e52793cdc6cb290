package org.marktwice.bench;

import java.util.Locale;
import java.util.OptionalInt;

/** An action that can't be done on the bench as it stands; the message says why, in one line fit to show where it was tried. */
public final class CannotDo extends Exception {
    private static final long serialVersionUID = 1L;
    private final int step;
    private final String why;

    public CannotDo(String why) {
        this(0, why, why);
    }

    private CannotDo(int step, String why, String message) {
        super(message);
        this.step = step;
        this.why = why;
    }

    /** The same as met at this step of an attempt; the message then begins with it. */
    CannotDo at(int inAttempt) {
        return new CannotDo(inAttempt, why, String.format(Locale.ROOT, "step %d: %s", inAttempt, why));
    }

    /** The step of the attempt that can't be done; empty where a single action was tried. */
    public OptionalInt step() {
        return step == 0 ? OptionalInt.empty() : OptionalInt.of(step);
    }

    /** The reason without the step. */
    public String why() {
        return why;
    }
}
