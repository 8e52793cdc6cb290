package org.marktwice.view.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import org.marktwice.picture.FigureCache;
import org.marktwice.view.Screen;

/** The screen for marking, whose first marking waits after so many files until it is told to stop. */
public final class HeldMarking {
    private final CountDownLatch never = new CountDownLatch(1);
    private final AtomicBoolean held = new AtomicBoolean();
    private final int after;

    private HeldMarking(int after) {
        this.after = after;
    }

    /** @param exercise the scenario's file to begin with */
    public static Screen screen(Desk.Host host, Path folder, Path exercise, int after) {
        HeldMarking marking = new HeldMarking(after);
        Desk desk = new Desk(host, folder, List.of(), new FigureCache(1));
        return new MarkScreen(
                desk,
                exercise,
                (set, from, even, told) -> Marking.of(set, from, even, (done, of) -> {
                    told.at(done, of);
                    if (done == marking.after && !marking.held.getAndSet(true)) marking.hold();
                }));
    }

    private void hold() {
        try {
            never.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
