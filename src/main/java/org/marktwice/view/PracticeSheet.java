package org.marktwice.view;

import java.awt.Frame;
import java.util.List;
import java.util.Locale;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.PracticeWords;
import org.marktwice.rulebook.PracticeWords.Setting;
import org.marktwice.view.Look.Style;

/** The workshop's practice on one page: every setting as it is in force, what it does, what is usual, where authorities differ. */
final class PracticeSheet {
    /** Widths at the usual text size. */
    private static final int NAME = 110;

    private static final int GAP = 20;
    private static final int WIDE = 560;

    private PracticeSheet() {}

    static JDialog of(Frame owner, Screen.Workshop workshop) {
        Column rows = new Column(new MigLayout(
                "insets 0, gap " + GAP + "lp 0, wrap 2", "[" + NAME + "lp!,fill][" + WIDE + "lp!,fill]", "[top]"));
        List<Setting> all = PracticeWords.page(workshop.practice());
        JTextArea head = prose(workshop.exercise() + ". " + said(all), Style.BODY, Ink.INK, NAME + GAP + WIDE);
        rows.add(head, "span 2, w " + (NAME + GAP + WIDE) + "lp!");
        heading(rows, "How work is judged");
        all.stream().filter(s -> !s.isHelp()).forEach(s -> row(rows, s));
        heading(rows, "What help there is");
        all.stream().filter(Setting::isHelp).forEach(s -> row(rows, s));
        return KeySheet.dialog(owner, "The workshop's practice", rows, 760, 720);
    }

    private static String said(List<Setting> all) {
        long own = all.stream().filter(Setting::departs).count();
        String departs = own == 0
                ? "Here all is as is usual."
                : own == 1
                        ? "One setting departs from what is usual: it is marked."
                        : own + " settings depart from what is usual: they are marked.";
        return "Authorities differ, so a mark sheet names what it was marked by. " + departs;
    }

    private static void heading(JPanel into, String words) {
        into.add(Look.quiet(words.toUpperCase(Locale.ROOT), Style.HEADING), "span 2, gaptop 20, gapbottom 2");
    }

    private static void row(JPanel into, Setting setting) {
        JPanel name = column();
        name.add(Look.label(setting.name(), Style.STRONG), "wmin 0");
        JLabel tag = setting.departs()
                ? Look.inked(new JLabel("not as usual"), Style.NOTE, Ink.ACTION)
                : Look.quiet(setting.isHelp() ? "this exercise's own" : "as usual", Style.NOTE);
        tag.setName("tag-" + setting.key());
        name.add(tag, "wmin 0");
        into.add(name, "gaptop 10");
        JPanel words = column();
        line(words, capital(setting.value()), Style.STRONG, Ink.INK);
        line(words, setting.meaning(), Style.BODY, Ink.INK);
        if (!setting.value().equals(setting.usual())) {
            String left = setting.isHelp() ? "Where nothing is set: " : "Usual: ";
            line(words, left + setting.usual() + ".", Style.BODY, Ink.INK);
        }
        line(words, setting.choices(), Style.NOTE, Ink.QUIET);
        into.add(words, "growx, wmin 0, gaptop 10");
    }

    private static void line(JPanel into, String words, Style style, Ink ink) {
        into.add(prose(words, style, ink, WIDE), "w " + WIDE + "lp!");
    }

    /** As wide as it will be from the first, so that it knows how high it is. */
    private static JTextArea prose(String words, Style style, Ink ink, int width) {
        JTextArea area = Look.prose(words, style, ink);
        area.setSize(Look.px(width), Short.MAX_VALUE);
        // a sheet opens at its top, wherever text was set last
        if (area.getCaret() instanceof DefaultCaret caret) {
            caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        }
        return area;
    }

    private static JPanel column() {
        JPanel column = new JPanel(new MigLayout("insets 0, gap 0 1, wrap 1, fillx", "[grow,fill]"));
        column.setOpaque(false);
        return column;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
