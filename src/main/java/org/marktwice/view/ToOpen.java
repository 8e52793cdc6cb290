package org.marktwice.view;

import java.awt.Component;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileNameExtensionFilter;

/** Asks which exercise or attempt is to be opened. */
final class ToOpen {
    private ToOpen() {}

    /** Empty where none is chosen. */
    static Optional<Path> ask(Component over) {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileFilter(new FileNameExtensionFilter(
                "Exercises and attempts (*.scenario.json, *.attempt.jsonl)", "json", "jsonl"));
        boolean chosen = chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION;
        return chosen ? Optional.of(chooser.getSelectedFile().toPath()) : Optional.empty();
    }
}
