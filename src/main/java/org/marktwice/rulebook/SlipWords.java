package org.marktwice.rulebook;

import java.util.List;
import java.util.stream.Stream;

/** The slips as the trade names them; the words lie in {@code slips.properties}. */
public final class SlipWords {
    private SlipWords() {}

    public static String title(Slip slip) {
        String title = Texts.shared("slips.properties").get(slip.id());
        if (title == null) throw new IllegalArgumentException("no words for the slip " + slip.id());
        return title;
    }

    /** The same by its id; the id itself where the list doesn't hold it. */
    public static String title(String slip) {
        return Slip.of(slip).map(SlipWords::title).orElse(slip);
    }

    /** Those that can be seen in work not handed in yet, in the trade's order. */
    public static List<Slip> toBeNamed() {
        return Stream.of(Slip.values())
                .filter(s -> s != Slip.HANDED_IN_UNCHECKED)
                .toList();
    }
}
