package org.marktwice.view;

import java.awt.FontMetrics;
import java.awt.Frame;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Cautions;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Place;
import org.marktwice.view.Look.Style;

/** The windows with words to read: every command with its key, and the cautions. */
final class KeySheet {
    private static final int HELP = 330;

    private KeySheet() {}

    static JDialog keys(Frame owner) {
        Column columns =
                new Column(new MigLayout("insets 0, gap 40 0, fillx", "[grow,fill,sg][grow,fill,sg]", "[top]"));
        JPanel left = column();
        JPanel right = column();
        for (Place place : Place.values()) {
            List<Command> commands = Commands.of(place);
            if (commands.isEmpty()) continue;
            JPanel into = place == Place.BENCH ? right : left;
            into.add(Look.quiet(place.title().toUpperCase(java.util.Locale.ROOT), Style.HEADING), "span 2, gaptop 14");
            for (Command command : commands) line(into, command);
        }
        columns.add(left, "aligny top, wmin 0");
        columns.add(right, "aligny top, wmin 0");
        return dialog(owner, "Keys", columns, 980, 760);
    }

    private static JPanel column() {
        JPanel column = new JPanel(new MigLayout("insets 0, gap 14 5, wrap 2, fillx", "[84lp!,fill][grow,fill]"));
        column.setOpaque(false);
        return column;
    }

    private static void line(JPanel into, Command command) {
        JLabel key = Look.label(command.keyText().isEmpty() ? "menu" : command.keyText(), Style.STRONG);
        key.setEnabled(!command.keyText().isEmpty());
        into.add(key, "aligny top");
        JPanel words = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fillx", "[grow,fill]"));
        words.setOpaque(false);
        words.add(Look.label(command.word(), Style.BODY));
        for (String line : broken(command.help())) words.add(Look.quiet(line, Style.NOTE));
        into.add(words, "wmin 0");
    }

    /** Lines no wider than their column; a text area would know only once laid out how high it is. */
    private static List<String> broken(String words) {
        JLabel measure = Look.quiet("", Style.NOTE);
        FontMetrics metrics = measure.getFontMetrics(measure.getFont());
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && metrics.stringWidth(longer) > Look.px(HELP)) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        lines.add(line);
        return lines;
    }

    static JDialog cautions(Frame owner) {
        Column lines = new Column(new MigLayout("insets 0, gap 0 12, wrap 1, fillx", "[grow,fill]"));
        for (String caution : Cautions.ALL) lines.add(Look.prose(caution, Style.BODY, Ink.INK), "wmin 0");
        return dialog(owner, "At the real bench", lines, 560, 400);
    }

    static JDialog dialog(Frame owner, String title, Column content, int width, int height) {
        JDialog dialog = new JDialog(owner, title, true);
        dialog.setName(title);
        JPanel whole =
                new JPanel(new MigLayout("insets 20 24 16 24, wrap 1, fill", "[grow,fill]", "[]8[grow,fill]12[]"));
        whole.add(Look.label(title, Style.TITLE));
        JScrollPane scroll = content.scrolling();
        scroll.setName("sheet");
        whole.add(scroll, "grow, hmin 0");
        JButton close = new JButton("Close");
        close.setName("close");
        close.addActionListener(e -> dialog.dispose());
        whole.add(close, "alignx right, growx 0");
        dialog.setContentPane(whole);
        dialog.getRootPane()
                .registerKeyboardAction(
                        e -> dialog.dispose(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        scrollBy(dialog, scroll, "UP", -1, false);
        scrollBy(dialog, scroll, "DOWN", 1, false);
        scrollBy(dialog, scroll, "PAGE_UP", -1, true);
        scrollBy(dialog, scroll, "PAGE_DOWN", 1, true);
        dialog.getRootPane().setDefaultButton(close);
        dialog.setSize(Look.px(width), Look.px(height));
        dialog.setLocationRelativeTo(owner);
        return dialog;
    }

    private static void scrollBy(JDialog dialog, JScrollPane scroll, String key, int way, boolean page) {
        JScrollBar bar = scroll.getVerticalScrollBar();
        dialog.getRootPane()
                .registerKeyboardAction(
                        e -> bar.setValue(
                                bar.getValue() + way * (page ? bar.getBlockIncrement(way) : bar.getUnitIncrement(way))),
                        KeyStroke.getKeyStroke(key),
                        JComponent.WHEN_IN_FOCUSED_WINDOW);
    }
}
