package org.marktwice.bench;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What was computed once and will be asked for again, by what it follows from. Safe for several threads. There is an end
 * to what it keeps, so that marking any number of attempts takes no more memory than marking some: what comes later is
 * computed each time.
 *
 * @param <K> all that the value follows from
 */
public final class Kept<K, V> {
    private static final int MOST = 4096;

    private final Map<K, V> values = new ConcurrentHashMap<>();
    private final int most;

    public Kept() {
        this(MOST);
    }

    /** @param most how many values are kept; a few more where several threads are about it */
    public Kept(int most) {
        this.most = most;
    }

    /** The value of this key, computed now if it isn't kept. What computes it may ask for other values. */
    public V of(K key, Supplier<V> computed) {
        V known = values.get(key);
        if (known != null) return known;
        V value = computed.get();
        if (isFull()) return value;
        V first = values.putIfAbsent(key, value);
        return first == null ? value : first;
    }

    /** The value of this key; null where it isn't kept. */
    public @Nullable V find(K key) {
        return values.get(key);
    }

    /** Whether no more is kept. */
    public boolean isFull() {
        return values.size() >= most;
    }

    public void keep(K key, V value) {
        if (!isFull()) values.put(key, value);
    }
}
