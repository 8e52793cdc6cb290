package org.marktwice.view;

import java.awt.Component;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;

/** Asks for another folder where one can't be written to. */
public final class AnotherFolder {
    private AnotherFolder() {}

    /** Lets a folder be chosen; empty where none is. */
    public static Optional<Path> choose(Component over) {
        JFileChooser chooser = new JFileChooser();
        chooser.setName("another-folder");
        chooser.setDialogTitle("A folder that can be written to");
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        boolean chosen = chooser.showDialog(over, "Keep it here") == JFileChooser.APPROVE_OPTION;
        return chosen ? Optional.of(chooser.getSelectedFile().toPath()) : Optional.empty();
    }

    /**
     * Says why something can't be kept, and offers to choose a folder, for as long as the person would rather have one.
     *
     * @param why one line
     * @param otherwise the word for going without
     * @return empty where the person goes without
     */
    public static Optional<Path> offer(Component over, String why, String otherwise) {
        while (true) {
            Object[] ways = {"Choose a folder …", otherwise};
            int way = JOptionPane.showOptionDialog(
                    over,
                    why,
                    "Not saved",
                    JOptionPane.DEFAULT_OPTION,
                    JOptionPane.WARNING_MESSAGE,
                    null,
                    ways,
                    ways[0]);
            if (way != 0) return Optional.empty();
            Optional<Path> folder = choose(over);
            if (folder.isPresent()) return folder;
        }
    }
}
