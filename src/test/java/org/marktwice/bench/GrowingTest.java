package org.marktwice.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class GrowingTest {
    /** Any of the lists so far is gone on from; all of them stay what they were. */
    @Test
    void goingOnFromAListChangesNoOther() {
        Random random = new Random(3);
        List<Growing<Integer>> lists = new ArrayList<>(List.of(Growing.of(List.of(7))));
        List<List<Integer>> expected = new ArrayList<>(List.of(List.of(7)));
        for (int i = 0; i < 500; i++) {
            int from = random.nextInt(lists.size());
            lists.add(lists.get(from).and(i));
            List<Integer> longer = new ArrayList<>(expected.get(from));
            longer.add(i);
            expected.add(longer);
        }

        assertThat(lists).isEqualTo(expected);
    }

    @Test
    void endsWhereItEnds() {
        Growing<String> one = Growing.of(List.of("a"));
        Growing<String> two = one.and("b");

        assertThat(two).containsExactly("a", "b");
        assertThatThrownBy(() -> one.get(1)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> one.add("c")).isInstanceOf(UnsupportedOperationException.class);
    }
}
