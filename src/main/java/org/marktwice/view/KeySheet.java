package org.marktwice.view;

import java.awt.Frame;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Cautions;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Place;
import org.marktwice.view.Look.Style;

/** The windows with words to read: every command with its key, and the cautions. */
final class KeySheet {
    private KeySheet() {}

    static JDialog keys(Frame owner) {
        JPanel columns = new JPanel(new MigLayout("insets 0, gap 40 0", "[][]", "[top]"));
        columns.setOpaque(false);
        JPanel left = column();
        JPanel right = column();
        for (Place place : Place.values()) {
            List<Command> commands = Commands.of(place);
            if (commands.isEmpty()) continue;
            JPanel into = place == Place.BENCH ? right : left;
            into.add(Look.quiet(place.title().toUpperCase(java.util.Locale.ROOT), Style.HEADING), "span 2, gaptop 14");
            for (Command command : commands) line(into, command);
        }
        columns.add(left, "aligny top");
        columns.add(right, "aligny top");
        return dialog(owner, "Keys", columns, 980, 760);
    }

    private static JPanel column() {
        JPanel column = new JPanel(new MigLayout("insets 0, gap 14 5, wrap 2", "[84lp::,fill][280lp::,fill]"));
        column.setOpaque(false);
        return column;
    }

    private static void line(JPanel into, Command command) {
        JLabel key = Look.label(command.keyText().isEmpty() ? "menu" : command.keyText(), Style.STRONG);
        key.setEnabled(!command.keyText().isEmpty());
        into.add(key, "aligny top");
        JPanel words = new JPanel(new MigLayout("insets 0, gap 0, wrap 1"));
        words.setOpaque(false);
        words.add(Look.label(command.word(), Style.BODY));
        words.add(Look.quiet(command.help(), Style.NOTE));
        into.add(words);
    }

    static JDialog cautions(Frame owner) {
        JPanel lines = new JPanel(new MigLayout("insets 0, gap 0 12, wrap 1", "[grow,fill]"));
        lines.setOpaque(false);
        for (String caution : Cautions.ALL) lines.add(Look.prose(caution, Style.BODY, Ink.INK), "wmin 0");
        return dialog(owner, "At the real bench", lines, 560, 400);
    }

    private static JDialog dialog(Frame owner, String title, JComponent content, int width, int height) {
        JDialog dialog = new JDialog(owner, title, true);
        dialog.setName(title);
        JPanel whole =
                new JPanel(new MigLayout("insets 20 24 16 24, wrap 1, fill", "[grow,fill]", "[]8[grow,fill]12[]"));
        whole.add(Look.label(title, Style.TITLE));
        JScrollPane scroll = new JScrollPane(
                content,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getVerticalScrollBar().setUnitIncrement(Look.px(24));
        whole.add(scroll, "grow, hmin 0");
        JButton close = new JButton("Close");
        close.setName("close");
        close.addActionListener(e -> dialog.dispose());
        whole.add(close, "alignx right, growx 0");
        dialog.setContentPane(whole);
        dialog.getRootPane()
                .registerKeyboardAction(
                        e -> dialog.dispose(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.getRootPane().setDefaultButton(close);
        dialog.setSize(Look.px(width), Look.px(height));
        dialog.setLocationRelativeTo(owner);
        return dialog;
    }
}
