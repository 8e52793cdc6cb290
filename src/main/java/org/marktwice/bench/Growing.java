package org.marktwice.bench;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A list that never changes, and of which a longer one is made without copying: the first to go on from a list shares its
 * array with it, since each looks only at the places below its own size. Without it a log of a hundred actions would be
 * copied a hundred times. Safe for several threads.
 */
final class Growing<E> extends AbstractList<E> implements RandomAccess {
    private final Object[] array;
    private final int size;
    /** How many places of the array are taken, by whatever list. */
    private final AtomicInteger taken;

    private Growing(Object[] array, int size, AtomicInteger taken) {
        this.array = array;
        this.size = size;
        this.taken = taken;
    }

    static <E> Growing<E> of(List<E> list) {
        return list instanceof Growing<E> known
                ? known
                : new Growing<>(list.toArray(), list.size(), new AtomicInteger(list.size()));
    }

    Growing<E> and(E last) {
        if (size < array.length && taken.compareAndSet(size, size + 1)) {
            array[size] = last;
            return new Growing<>(array, size + 1, taken);
        }
        Object[] longer = Arrays.copyOf(array, Math.max(8, 2 * size));
        longer[size] = last;
        return new Growing<>(longer, size + 1, new AtomicInteger(size + 1));
    }

    @Override
    public E get(int index) {
        if (index >= size) throw new IndexOutOfBoundsException(index);
        @SuppressWarnings("unchecked")
        E found = (E) array[index];
        return found;
    }

    @Override
    public int size() {
        return size;
    }
}
