package org.marktwice.view.desk;

import java.awt.KeyboardFocusManager;

/** A field whose content is taken when one leaves it: what is typed and not yet taken can be taken before that. */
interface Typed {
    /** Takes what is typed, as if the field were left. */
    void take();

    /** Whether something is typed that isn't taken yet. */
    boolean isPending();

    /** Whether something is typed, in the field that one is in, that isn't taken yet. */
    static boolean isAnyPending() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() instanceof Typed field
                && field.isPending();
    }

    /** Takes what is typed in the field that one is in, so that a key given there finds it. */
    static void takeAll() {
        if (KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() instanceof Typed field) field.take();
    }

    /** What is typed first, and then this. */
    static Runnable before(Runnable does) {
        return () -> {
            takeAll();
            does.run();
        };
    }
}
