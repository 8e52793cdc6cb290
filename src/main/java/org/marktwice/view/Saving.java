package org.marktwice.view;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.SwingWorker;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.CannotDo;
import org.marktwice.feedback.Replayed;
import org.marktwice.feedback.SheetText;
import org.marktwice.files.FileRefused;
import org.marktwice.files.Save;
import org.marktwice.print.Paper;
import org.marktwice.print.html.ReplayFile;

/** Saving an attempt to be kept or handed on: asks for the file, draws it away from the event thread, says what came of it. */
final class Saving {
    /** What can be made of an attempt, by the ending of the file's name. */
    enum Kind {
        PAGE("Replay and mark sheet for a browser", "html"),
        PAPER("Mark sheet for paper", "pdf"),
        TEXT("Mark sheet as plain text", "txt");

        private final String spoken;
        private final String ending;

        Kind(String spoken, String ending) {
            this.spoken = spoken;
            this.ending = ending;
        }

        FileNameExtensionFilter filter() {
            return new FileNameExtensionFilter(spoken + " (." + ending + ")", ending);
        }
    }

    private final JComponent over;
    private final Session session;
    private final Consumer<String> say;

    /** @param say takes one line at a time: what is being done, and what came of it */
    Saving(JComponent over, Session session, Consumer<String> say) {
        this.over = over;
        this.session = session;
        this.say = say;
    }

    /** Asks for a file, and saves to it; nothing is done where none is chosen. */
    void ask() {
        JFileChooser chooser = new JFileChooser();
        chooser.setName("save-as");
        chooser.setDialogTitle("Save what was done");
        chooser.setAcceptAllFileFilterUsed(false);
        String name = session.scenario().id() + "-"
                + LearnerFolder.forFile(session.attempt().learner());
        for (Kind kind : Kind.values()) chooser.addChoosableFileFilter(kind.filter());
        chooser.setFileFilter(chooser.getChoosableFileFilters()[0]);
        chooser.addPropertyChangeListener(
                JFileChooser.FILE_FILTER_CHANGED_PROPERTY, e -> named(chooser, name + "." + ending(chooser)));
        named(chooser, name + "." + ending(chooser));
        if (chooser.showSaveDialog(over) != JFileChooser.APPROVE_OPTION) return;
        Path file = chooser.getSelectedFile().toPath();
        if (kind(file) == null) file = file.resolveSibling(file.getFileName() + "." + ending(chooser));
        if (!Files.exists(file) || mayReplace(file)) to(file);
    }

    private static void named(JFileChooser chooser, String name) {
        chooser.setSelectedFile(
                chooser.getCurrentDirectory().toPath().resolve(name).toFile());
    }

    private static String ending(JFileChooser chooser) {
        return ((FileNameExtensionFilter) chooser.getFileFilter()).getExtensions()[0];
    }

    private boolean mayReplace(Path file) {
        return JOptionPane.showConfirmDialog(
                        over,
                        file.getFileName() + " is there already. Replace it?",
                        "Save what was done",
                        JOptionPane.OK_CANCEL_OPTION)
                == JOptionPane.OK_OPTION;
    }

    private static @Nullable Kind kind(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        for (Kind kind : Kind.values()) if (name.endsWith("." + kind.ending)) return kind;
        return null;
    }

    /** Saves what the file's name asks for. */
    void to(Path file) {
        say.accept("Saving " + file.getFileName() + " …");
        new SwingWorker<Void, Void>() {
            @Override
            protected Void doInBackground() throws FileRefused, CannotDo {
                write(file);
                return null;
            }

            @Override
            protected void done() {
                try {
                    get();
                    say.accept("Saved as " + file.getFileName() + ".");
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                } catch (ExecutionException e) {
                    failed(e.getCause());
                }
            }
        }.execute();
    }

    private void write(Path file) throws FileRefused, CannotDo {
        Replayed replayed = Replayed.of(session.scenario(), session.attempt(), List.of());
        if (kind(file) == Kind.TEXT) {
            String text = SheetText.of(replayed.sheet(), session.attempt().learner());
            Save.whole(file, text.getBytes(StandardCharsets.UTF_8));
        } else {
            ReplayFile.save(file, replayed, Paper.A4);
        }
    }

    private void failed(@Nullable Throwable cause) {
        if (cause instanceof FileRefused) say.accept(String.valueOf(cause.getMessage()));
        else throw new IllegalStateException(cause);
    }
}
