package org.marktwice.quiz;

import java.util.List;

/**
 * How many days lie between two questions about one idea: the first gap after it was answered rightly once, the next after
 * it was answered rightly when it was due again, and so on; the last gap then stays. Equal gaps do as well as growing ones
 * (Latimier et al. 2021), so after two short ones they are weekly.
 */
public record Spacing(List<Integer> gaps) {
    public static final Spacing WEEKLY = new Spacing(List.of(1, 3, 7));

    /** @throws IllegalArgumentException where there is no gap, or one is below a day */
    public Spacing {
        gaps = List.copyOf(gaps);
        if (gaps.isEmpty() || gaps.stream().anyMatch(g -> g < 1)) throw new IllegalArgumentException("gaps " + gaps);
    }

    /** How many right answers in their time it takes until the gaps grow no more. */
    int steps() {
        return gaps.size();
    }

    /** Days until an idea is due again that is this many steps along. */
    int gap(int step) {
        return gaps.get(Math.max(0, Math.min(step, steps()) - 1));
    }
}
