package org.marktwice.fit;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/**
 * How far sizes may be out, ± millimetres: the same for every size, or by how large it is.
 *
 * @param id the name in files and on the command line
 * @param title the name in a sentence
 */
public record Tolerances(String id, String title, DoubleUnaryOperator of) {
    /** Common in schools, and a teacher's to choose. */
    public static final Tolerances STRICT = fixed("strict", "strict", 0.5);

    public static final Tolerances STANDARD = fixed("standard", "standard", 1);
    public static final Tolerances FIRST_ATTEMPT = fixed("first-attempt", "first attempt", 2);

    private static Tolerances fixed(String id, String title, double mm) {
        return new Tolerances(id, title, size -> mm);
    }

    /** The same for every size. @param mm ± */
    public static Tolerances of(double mm) {
        return fixed("as-set", "as set", mm);
    }

    /** All that can be chosen by their id: the three of the trade notes, then the four classes of ISO 2768-1. */
    public static List<Tolerances> presets() {
        return Stream.concat(
                        Stream.of(STRICT, STANDARD, FIRST_ATTEMPT),
                        Stream.of(GeneralTolerance.values())
                                .map(c -> new Tolerances(
                                        "iso-2768-" + c.letter(), "ISO 2768-1 " + c.title(), c::plusMinus)))
                .toList();
    }

    public static Optional<Tolerances> preset(String id) {
        return presets().stream().filter(t -> t.id().equals(id)).findFirst();
    }

    /** For a size, ± millimetres. */
    public double plusMinus(double size) {
        return of.applyAsDouble(size);
    }
}
