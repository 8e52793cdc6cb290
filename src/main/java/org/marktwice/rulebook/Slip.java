package org.marktwice.rulebook;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The slips of the bench that the program must recognise, numbered as the trade notes list them. */
public enum Slip {
    MARKS_WITHOUT_SHARED_ARRIS(1),
    MARK_TO_WRONG_ARRIS(2),
    UNSOUND_SURFACE_MARKED(3),
    THIRD_SURFACE_MARKED(4),
    TWO_LEFTS(5),
    FACE_SIDES_NOT_AS_DRAWN(6),
    SQUARE_WALKED_ROUND(7),
    GAUGED_FROM_BACK(8),
    CHAINED_SIZES(9),
    NOMINAL_THICKNESS(10),
    WRONG_SIDE_OF_LINE(11),
    RULE_MISREAD(12),
    HEART_SIDE_CONFUSED(13),
    KNOT_SEEN_ON_ONE_SURFACE(14),
    HANDED_IN_UNCHECKED(15),
    MARKS_ON_SHEET_OR_SHAPED(16),
    TURNED_OVER_FOR_END_FOR_END(17),
    REFUSED_OR_USED_WRONGLY(18);

    private final int number;

    Slip(int number) {
        this.number = number;
    }

    public int number() {
        return number;
    }

    /** Stable, in files. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Slip> of(String id) {
        return Stream.of(values()).filter(s -> s.id().equals(id)).findFirst();
    }
}
