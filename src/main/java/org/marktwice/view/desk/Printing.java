package org.marktwice.view.desk;

import java.io.File;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import org.marktwice.print.Issue;
import org.marktwice.print.Page;
import org.marktwice.print.Paper;
import org.marktwice.print.SheetFile;
import org.marktwice.print.SheetKind;
import org.marktwice.print.Sheets;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** Saving sheets for the printer: what kind, on which paper, into which file. */
final class Printing {
    private Printing() {}

    /** A menu of an exercise's sheets: all of them, or one kind; on A4, or on letter paper; and what the title block says. */
    static JPopupMenu sheets(
            JComponent over, Callable<Scenario> scenario, String name, IssuedBy issued, Consumer<String> say) {
        JPopupMenu menu = onA4();
        JMenu letter = new JMenu("On letter paper");
        for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
            JComponent into = paper == Paper.A4 ? menu : letter;
            into.add(item(
                    "All sheets",
                    () -> ask(
                            over,
                            name + "-sheets.pdf",
                            to -> save(to, scenario, EnumSet.allOf(SheetKind.class), paper, issued.issue(), say))));
            for (SheetKind kind : SheetKind.values()) {
                String word = kind.spoken().substring(0, 1).toUpperCase(Locale.ROOT)
                        + kind.spoken().substring(1);
                into.add(item(
                        word,
                        () -> ask(
                                over,
                                name + "-" + kind.id() + ".pdf",
                                to -> save(to, scenario, EnumSet.of(kind), paper, issued.issue(), say))));
            }
        }
        menu.addSeparator();
        menu.add(letter);
        menu.add(item("Title block …", () -> {
            if (issued.ask(over)) say.accept("The next drawing's title block is filled in so");
        }));
        return menu;
    }

    static JMenuItem item(String word, Runnable does) {
        JMenuItem item = new JMenuItem(word);
        item.setName("print-" + word.toLowerCase(Locale.ROOT).replace(' ', '-'));
        item.addActionListener(e -> does.run());
        return item;
    }

    /** Says on what paper what is in the menu comes, where nothing else is said. */
    static JPopupMenu onA4() {
        JPopupMenu menu = new JPopupMenu();
        JLabel heading = Look.quiet("On A4 paper", Style.NOTE);
        // in line with the words of the items below it
        heading.setBorder(BorderFactory.createEmptyBorder(Look.px(6), Look.px(25), Look.px(4), Look.px(16)));
        menu.add(heading);
        return menu;
    }

    /** Shows a menu below a button; above it, where there is no room below. */
    static void drop(JPopupMenu menu, JComponent button) {
        JRootPane window = SwingUtilities.getRootPane(button);
        int below = SwingUtilities.convertPoint(button, 0, button.getHeight(), window).y;
        int high = menu.getPreferredSize().height;
        menu.show(button, 0, below + high <= window.getHeight() ? button.getHeight() : -high);
    }

    /** Asks for a file to save to; nothing is done where none is chosen. */
    static void ask(JComponent over, String suggested, Consumer<Path> then) {
        JFileChooser chooser = new JFileChooser();
        chooser.setSelectedFile(new File(suggested));
        if (chooser.showSaveDialog(over) != JFileChooser.APPROVE_OPTION) return;
        Path chosen = chooser.getSelectedFile().toPath();
        if (WorkFile.mayWrite(over, chosen)) then.accept(chosen);
    }

    /** Saves sheets of an exercise, of the kind of file that the name says. */
    static void save(
            Path to,
            Callable<Scenario> scenario,
            Set<SheetKind> kinds,
            Paper paper,
            Issue issue,
            Consumer<String> say) {
        save(
                to,
                () -> {
                    Scenario of = scenario.call();
                    return new Bound(Sheets.of(of, kinds, paper, issue), of.title());
                },
                say);
    }

    /** Pages with their title. */
    record Bound(List<Page> pages, String title) {}

    static void save(Path to, Callable<Bound> pages, Consumer<String> say) {
        say.accept("Drawing the sheets …");
        Aside.run(
                () -> {
                    Bound bound = pages.call();
                    SheetFile.save(to, bound.pages(), bound.title());
                    return to;
                },
                saved -> say.accept("Saved: " + saved),
                say);
    }
}
