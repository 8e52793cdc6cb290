package org.marktwice.rulebook;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Iterator;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The few values that a sentence is filled with, by name, as they were given: nearly all sentences are judged again after
 * the next action and never read, and a table of hashes would be most of the work. Never changed.
 */
final class Pairs extends AbstractMap<String, Object> {
    private final Object[] pairs;

    private Pairs(Object[] pairs) {
        this.pairs = pairs;
    }

    /**
     * @param pairs names and values in turn, left as they are from now on; of two values of one name the later one counts
     */
    static Map<String, Object> of(Object... pairs) {
        for (int i = 0; i < pairs.length; i++) Objects.requireNonNull(pairs[i], "a value is missing");
        Pairs all = new Pairs(pairs);
        for (int i = 2; i < pairs.length; i += 2) {
            if (all.place(pairs[i]) != i) return of(all.withoutFirst(pairs[i]));
        }
        return all;
    }

    /** Where a name stands first; −1 where it doesn't. */
    private int place(Object name) {
        for (int i = 0; i < pairs.length; i += 2) {
            if (pairs[i] == name) return i;
        }
        for (int i = 0; i < pairs.length; i += 2) {
            if (pairs[i].equals(name)) return i;
        }
        return -1;
    }

    private Object[] withoutFirst(Object name) {
        int gone = place(name);
        return IntStream.range(0, pairs.length)
                .filter(i -> i != gone && i != gone + 1)
                .mapToObj(i -> pairs[i])
                .toArray();
    }

    @Override
    public boolean containsKey(@Nullable Object name) {
        return name != null && place(name) >= 0;
    }

    @Override
    public @Nullable Object get(@Nullable Object name) {
        int at = name == null ? -1 : place(name);
        return at < 0 ? null : pairs[at + 1];
    }

    @Override
    public Set<Entry<String, Object>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public int size() {
                return pairs.length / 2;
            }

            @Override
            public Iterator<Entry<String, Object>> iterator() {
                return IntStream.range(0, pairs.length / 2)
                        .mapToObj(i -> Map.entry((String) pairs[2 * i], pairs[2 * i + 1]))
                        .iterator();
            }
        };
    }
}
