package org.marktwice.view.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JOptionPane;
import org.jspecify.annotations.Nullable;
import org.marktwice.files.FileRefused;
import org.marktwice.files.Save;
import org.marktwice.view.AnotherFolder;

/**
 * The file in which a screen's work is kept. No other file is written over unless that was agreed to; and where opening a
 * file was undone, that file is another again.
 */
final class WorkFile {
    private final PathField field;
    private final Steps<?> steps;
    private final Deque<At> opened = new ArrayDeque<>();

    /** @param depth of the step since which the work lies there */
    private record At(Path file, int depth) {}

    /** @param field where its path is typed or chosen */
    WorkFile(PathField field, Steps<?> steps) {
        this.field = field;
        this.steps = steps;
        steps.addListener(() -> {
            // what was undone and can't be done again never was
            if (!steps.canRedo()) opened.removeIf(at -> at.depth() > steps.depth());
        });
    }

    Optional<Path> path() {
        return field.path();
    }

    /** The last step opened this file. */
    void opened(Path file) {
        opened.push(new At(file, steps.depth()));
    }

    /** The work was saved there, and is kept there from now on. */
    void saved(Path file) {
        Optional<At> before = now();
        before.ifPresent(opened::remove);
        opened.push(new At(file, before.map(At::depth).orElse(0)));
    }

    private Optional<At> now() {
        return opened.stream().filter(at -> at.depth() <= steps.depth()).findFirst();
    }

    private @Nullable Path known() {
        return now().map(At::file).orElse(null);
    }

    /** Whether it may be written there; where another file is, that is asked. */
    boolean agreed(JComponent over, Path file) {
        return file.equals(known()) || mayWrite(over, file);
    }

    /** What is written into a file, of the kind that its name says. */
    interface Written {
        /** @throws FileRefused where it can't be of that kind */
        byte[] in(Path file) throws FileRefused;
    }

    /**
     * Keeps the work when its screen is left, before anything else comes: where it lies, or was to lie; where that can't be,
     * on the desk; where that can't be either, it asks for a folder, so that nothing is lost unasked.
     *
     * @param what as in "The record"
     * @param usual where it lies on the desk
     */
    void keepWhenLeft(Desk desk, JComponent over, String what, Path usual, Written bytes) {
        if (steps.isSaved()) return;
        Path to = whenLeft(usual);
        try {
            write(to, bytes.in(to));
            saved(to);
            steps.saved();
            if (!field.path().filter(to::equals).isPresent()) desk.notice(what + " was kept in " + to);
        } catch (FileRefused e) {
            keepBeside(desk, over, what, free(usual), bytes, e);
        }
    }

    private void keepBeside(Desk desk, JComponent over, String what, Path to, Written bytes, FileRefused refused) {
        try {
            write(to, bytes.in(to));
            steps.saved();
            desk.notice(refused.getMessage() + ". " + what + " was kept in " + to);
        } catch (FileRefused e) {
            AnotherFolder.offer(over, e.getMessage() + ". " + what + " is not kept yet.", "Leave without it")
                    .map(folder -> free(folder.resolve(to.getFileName())))
                    .ifPresent(other -> keepBeside(desk, over, what, other, bytes, refused));
        }
    }

    /** Where to keep it when the screen is left, and nothing can be asked: never over another file. */
    private Path whenLeft(Path usual) {
        Path wanted = field.path().orElse(usual);
        Path own = known();
        if (wanted.equals(own) || !Files.exists(wanted)) return wanted;
        return own != null ? own : free(wanted);
    }

    /** A name like this one under which nothing lies yet. */
    private static Path free(Path wanted) {
        String name = String.valueOf(wanted.getFileName());
        int dot = name.indexOf('.', 1);
        String stem = dot < 0 ? name : name.substring(0, dot);
        String ending = dot < 0 ? "" : name.substring(dot);
        Path free = wanted;
        for (int i = 2; Files.exists(free); i++) free = wanted.resolveSibling(stem + "-" + i + ending);
        return free;
    }

    /** Whether a file may be written there; where there is one already, that is asked. */
    static boolean mayWrite(JComponent over, Path file) {
        if (!Files.exists(file)) return true;
        Object[] words = {"Write over it", "Cancel"};
        int answer = JOptionPane.showOptionDialog(
                over,
                file.getFileName() + " is there already. What is in it will be gone.",
                "Write over it?",
                JOptionPane.OK_CANCEL_OPTION,
                JOptionPane.WARNING_MESSAGE,
                null,
                words,
                words[1]);
        return answer == 0;
    }

    /** Saves, and makes its folder where there is none. */
    static void write(Path file, byte[] bytes) throws FileRefused {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) Save.folder(folder);
        Save.whole(file, bytes);
    }
}
