package org.marktwice.print;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The sheets that can be printed for an exercise, in the order in which they are bound. */
public enum SheetKind {
    /** Views and sizes of the job. */
    DRAWING("working drawing"),
    /** The parts to be made, and the boards there are. */
    PARTS("parts list"),
    /** The boards unrolled, to be marked in pencil. Holds no answers. */
    WORKSHEET("worksheet"),
    /** What the boards allow at best: marks, turns and clearances. */
    ANSWERS("answer sheet"),
    /** Every rule with why it matters. */
    RULES("rule book"),
    /** What is said before real work. */
    CAUTIONS("cautions"),
    /** What to measure on the finished job, to be filled in at the bench. */
    RECORD("record sheet");

    private final String spoken;

    SheetKind(String spoken) {
        this.spoken = spoken;
    }

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String spoken() {
        return spoken;
    }

    public static Optional<SheetKind> of(String id) {
        return Stream.of(values()).filter(k -> k.id().equals(id)).findFirst();
    }
}
