package org.marktwice.view.desk;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** A file or folder, typed or chosen. While one isn't in it, the end of a long path is shown, and all of it on pointing. */
final class PathField extends JPanel {
    private static final long serialVersionUID = 1L;

    /** What can be chosen. */
    enum Kind {
        FILE(JFileChooser.FILES_ONLY),
        FOLDER(JFileChooser.DIRECTORIES_ONLY),
        EITHER(JFileChooser.FILES_AND_DIRECTORIES);

        private final int mode;

        Kind(int mode) {
            this.mode = mode;
        }
    }

    private final Kind kind;
    private final String what;
    private final JTextField text = new JTextField(16);
    private transient Runnable onChosen = () -> {};

    PathField(String name, String what, Kind kind, Runnable changed) {
        super(new MigLayout("insets 0, gapx 6, fillx", "[grow,fill][]"));
        this.kind = kind;
        this.what = what;
        setOpaque(false);
        text.setName(name);
        text.getAccessibleContext().setAccessibleName(what);
        text.setToolTipText(what);
        Look.styled(text, Style.BODY);
        text.getDocument().addDocumentListener(new javax.swing.event.DocumentListener() {
            @Override
            public void insertUpdate(javax.swing.event.DocumentEvent event) {
                told();
                changed.run();
            }

            @Override
            public void removeUpdate(javax.swing.event.DocumentEvent event) {
                told();
                changed.run();
            }

            @Override
            public void changedUpdate(javax.swing.event.DocumentEvent event) {}
        });
        text.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                showEnd();
            }
        });
        text.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                showEnd();
            }
        });
        JButton choose = new JButton("Choose …");
        choose.setName(name + "-choose");
        choose.addActionListener(e -> choose());
        add(text, "wmin 0");
        add(choose);
    }

    /** Told when a file is chosen, or Enter pressed on one that is typed. */
    void onChosen(Runnable chosen) {
        onChosen = chosen;
        text.addActionListener(e -> chosen.run());
    }

    /** Empty while nothing, or nothing that could be a path, is typed. */
    Optional<Path> path() {
        String typed = text.getText().strip();
        if (typed.isEmpty()) return Optional.empty();
        try {
            return Optional.of(Path.of(typed));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    void show(@Nullable Path path) {
        text.setText(path == null ? "" : path.toString());
        showEnd();
    }

    /** Takes the focus to it, with all of the path picked out. */
    void focus() {
        text.requestFocusInWindow();
        text.selectAll();
    }

    private void told() {
        text.setToolTipText(text.getText().isBlank() ? what : text.getText());
    }

    private void showEnd() {
        if (text.isFocusOwner()) return;
        text.setCaretPosition(text.getDocument().getLength());
        // the field measures its words when it paints, and then knows how far they reach
        SwingUtilities.invokeLater(
                () -> text.setScrollOffset(text.getHorizontalVisibility().getMaximum()));
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileSelectionMode(kind.mode);
        path().map(Path::toFile).filter(File::exists).ifPresent(chooser::setSelectedFile);
        if (chooser.showDialog(this, "Choose") == JFileChooser.APPROVE_OPTION) {
            show(chooser.getSelectedFile().toPath());
            onChosen.run();
        }
    }
}
