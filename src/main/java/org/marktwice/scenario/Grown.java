package org.marktwice.scenario;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Board;

/**
 * Boards that are grown when they are first looked at: a shelf of exercises is shown long before anyone takes up the boards
 * of each. The grower must give the same boards every time; two threads that ask at once may both grow them.
 */
public final class Grown extends AbstractList<Board> {
    private final Supplier<List<Board>> grower;
    private volatile @Nullable List<Board> grown;

    public Grown(Supplier<List<Board>> grower) {
        this.grower = grower;
    }

    private List<Board> boards() {
        List<Board> known = grown;
        if (known == null) {
            known = List.copyOf(grower.get());
            grown = known;
        }
        return known;
    }

    @Override
    public Board get(int index) {
        return boards().get(index);
    }

    @Override
    public int size() {
        return boards().size();
    }
}
