package org.marktwice.view;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JOptionPane;
import org.jspecify.annotations.Nullable;
import org.marktwice.files.FileRefused;

/** The attempt on the bench, and where it is kept; there may be none. */
final class Running {
    private final LearnerFolder folder;
    private final Supplier<MainWindow> window;
    private @Nullable Session session;
    private @Nullable Keeper keeper;

    /** @param window where what isn't saved is said */
    Running(LearnerFolder folder, Supplier<MainWindow> window) {
        this.folder = folder;
        this.window = window;
    }

    Optional<Session> session() {
        return Optional.ofNullable(session);
    }

    /** The file that the attempt is kept in; empty where nothing is kept yet. */
    Optional<Path> file() {
        return Optional.ofNullable(keeper).flatMap(Keeper::file);
    }

    /** Takes an attempt up. What could not be written stays said, over whichever screen, until it is written. */
    void take(Session next, Keeper where) {
        next.addListener(() -> window.get().trouble(next.trouble().orElse("")));
        session = next;
        keeper = where;
    }

    /** Lets go of the attempt; all of it is on disk. False where it isn't, and the learner would rather stay. */
    boolean leave() {
        Session now = session;
        if (now == null) return true;
        now.write();
        Optional<String> trouble = now.trouble();
        if (trouble.isPresent() && !mayLeave(now, trouble.get())) return false;
        close();
        session = null;
        window.get().trouble("");
        return true;
    }

    private void close() {
        Keeper open = keeper;
        if (open != null) open.close();
        keeper = null;
    }

    /** What isn't saved is kept elsewhere, or lost where the learner says so. */
    private boolean mayLeave(Session now, String trouble) {
        Object[] ways = {"Keep it elsewhere …", "Leave, and lose it", "Stay"};
        int way = JOptionPane.showOptionDialog(
                window.get(),
                trouble,
                "Not saved",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.WARNING_MESSAGE,
                null,
                ways,
                ways[0]);
        if (way == 0) keepElsewhere();
        return way == 1 || (way == 0 && now.trouble().isEmpty());
    }

    /** Lets a folder be chosen that attempts are kept in from now on, this one with all that was done in it. */
    void keepElsewhere() {
        AnotherFolder.choose(window.get()).ifPresent(this::keepIn);
    }

    private void keepIn(Path other) {
        Path before = folder.kept();
        folder.keepIn(other);
        Session now = session;
        if (now == null) return;
        try {
            Keeper there = Keeper.of(folder.begin(now.attempt()));
            close();
            now.keepIn(there);
            keeper = there;
            window.get().trouble("");
            window.get()
                    .notice("Your work is kept in " + other
                            + ", all of it. To go on another day, open its file there.");
        } catch (FileRefused e) {
            folder.keepIn(before);
            window.get().trouble("Not saved yet (" + e.getMessage() + "). Your work stands; choose another folder.");
        }
    }
}
