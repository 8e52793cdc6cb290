package org.marktwice.view.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import org.marktwice.classroom.Forgetting;
import org.marktwice.files.FileRefused;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** Deleting all that is kept of a learner, once it has been listed and agreed to. */
final class DeleteLearner {
    private static final int MOST_SAID = 200;

    private DeleteLearner() {}

    /**
     * @param folders in which to look, those below them too; what isn't a folder is passed over
     * @param gone is called when it was agreed to and done
     */
    static void ask(JComponent over, String learner, List<Path> folders, Runnable gone, Consumer<String> say) {
        Aside.run(
                () -> find(learner, folders),
                found -> {
                    if (found.stream().allMatch(Forgetting::isEmpty)) {
                        say.accept("Nothing is kept of " + learner);
                    } else if (agreed(over, learner, found)) {
                        delete(learner, found, gone, say);
                    }
                },
                say);
    }

    private static List<Forgetting> find(String learner, List<Path> folders) throws FileRefused {
        List<Forgetting> found = new ArrayList<>();
        for (Path folder : outermost(folders)) found.add(Forgetting.find(folder, learner));
        return found;
    }

    /** Each folder once, and none that lies in another. */
    private static List<Path> outermost(List<Path> folders) {
        Set<Path> all = new LinkedHashSet<>();
        for (Path folder : folders) {
            if (Files.isDirectory(folder)) all.add(folder.toAbsolutePath().normalize());
        }
        return all.stream()
                .filter(f -> all.stream().noneMatch(o -> !o.equals(f) && f.startsWith(o)))
                .toList();
    }

    private static boolean agreed(JComponent over, String learner, List<Forgetting> found) {
        JTextArea list = Look.prose(said(found), Style.BODY, Ink.INK);
        list.setName("to-delete");
        list.setRows(12);
        list.setColumns(56);
        Object[] words = {"Delete", "Cancel"};
        int answer = JOptionPane.showOptionDialog(
                over,
                new JScrollPane(list),
                "Delete all that is kept of " + learner + " for good?",
                JOptionPane.OK_CANCEL_OPTION,
                JOptionPane.PLAIN_MESSAGE,
                null,
                words,
                words[1]);
        return answer == 0;
    }

    private static String said(List<Forgetting> found) {
        List<String> lines = new ArrayList<>();
        part(lines, "To be deleted:", all(found, Forgetting::files));
        part(lines, "To lose the learner's lines:", all(found, Forgetting::tables));
        part(lines, "Left as it is; look whether it is the learner's:", all(found, Forgetting::doubtful));
        return String.join("\n", lines);
    }

    private static List<Path> all(List<Forgetting> found, Function<Forgetting, List<Path>> which) {
        return found.stream().map(which).flatMap(List::stream).toList();
    }

    private static void part(List<String> lines, String head, List<Path> files) {
        if (files.isEmpty()) return;
        lines.add((lines.isEmpty() ? "" : "\n") + head);
        files.stream().limit(MOST_SAID).forEach(f -> lines.add("· " + f));
        if (files.size() > MOST_SAID) lines.add("· and " + (files.size() - MOST_SAID) + " more");
    }

    private static void delete(String learner, List<Forgetting> found, Runnable gone, Consumer<String> say) {
        Aside.run(
                () -> {
                    for (Forgetting one : found) one.delete();
                    return learner;
                },
                done -> {
                    gone.run();
                    say.accept("Nothing is kept of " + done + " any more");
                },
                say);
    }
}
