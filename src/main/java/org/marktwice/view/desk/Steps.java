package org.marktwice.view.desk;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * A value that is edited step by step, with every step before it kept: undo is going back to one. It holds no component
 * and tells whoever listens when the value is another.
 */
final class Steps<T> {
    private final Deque<T> before = new ArrayDeque<>();
    private final Deque<T> undone = new ArrayDeque<>();
    private final List<Runnable> listeners = new ArrayList<>();
    private T now;
    private T shown;
    private T saved;

    Steps(T first) {
        now = first;
        shown = first;
        saved = first;
    }

    void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** What is to be seen: what it is, or what is being tried. */
    T now() {
        return shown;
    }

    /** Goes a step on. What is the same as before is no step. */
    void edit(T next) {
        boolean tried = !shown.equals(now);
        shown = next;
        if (next.equals(now)) {
            if (tried) tell();
            return;
        }
        before.push(now);
        undone.clear();
        now = next;
        tell();
    }

    /** Shows something that is no step yet, as while a thing is being dragged. */
    void attempt(T next) {
        if (next.equals(shown)) return;
        shown = next;
        tell();
    }

    /** Puts another value in the place of this step and of no other, as when it is given its name. */
    void amend(T next) {
        now = next;
        shown = next;
        tell();
    }

    /** How many steps there are before this. */
    int depth() {
        return before.size();
    }

    boolean canUndo() {
        return !before.isEmpty();
    }

    boolean canRedo() {
        return !undone.isEmpty();
    }

    void undo() {
        if (before.isEmpty()) return;
        undone.push(now);
        now = before.pop();
        shown = now;
        tell();
    }

    void redo() {
        if (undone.isEmpty()) return;
        before.push(now);
        now = undone.pop();
        shown = now;
        tell();
    }

    boolean isSaved() {
        return now.equals(saved);
    }

    /** What it is now is kept. */
    void saved() {
        saved = now;
        tell();
    }

    private void tell() {
        for (Runnable listener : List.copyOf(listeners)) listener.run();
    }
}
