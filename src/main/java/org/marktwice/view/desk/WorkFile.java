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

    /** Where to keep it when the screen is left, and nothing can be asked: never over another file. */
    Path whenLeft(Path usual) {
        Path wanted = field.path().orElse(usual);
        Path own = known();
        if (wanted.equals(own) || !Files.exists(wanted)) return wanted;
        return own != null ? own : free(wanted);
    }

    /** A name like this one under which nothing lies yet. */
    static Path free(Path wanted) {
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
