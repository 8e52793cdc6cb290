package org.marktwice.view.bench;

import java.awt.Component;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.marktwice.bench.Bench;
import org.marktwice.picture.Ink;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The exercise, how far its stages have got, and what leads on. */
final class HeaderPanel extends JPanel {
    private static final long serialVersionUID = 1L;
    /** How wide the brief may run, at the usual text size. */
    private static final int BRIEF = 320;

    private final transient BenchModel model;
    private final transient List<StageCell> cells = new ArrayList<>();

    HeaderPanel(BenchModel model, Deed undo, Deed redo, Deed slip, Deed hint, Deed handIn) {
        super(new MigLayout(
                "insets 0 20lp 0 20lp, gapx 16lp, fillx, novisualpadding",
                "[sg side,left][grow,center][sg side,right]",
                "[grow,center]"));
        this.model = model;
        setOpaque(true);
        Scenario scenario = model.session().scenario();
        JPanel words = clear(new MigLayout("insets 10lp 0 10lp 0, gapy 1lp, wrap 1", "[]"));
        words.add(Look.label(scenario.title(), Style.TITLE), "wmin 0");
        JTextArea sub = Look.prose(" ", Style.NOTE, Ink.QUIET);
        sub.setName("brief");
        sub.setText(fitting(scenario, sub.getFontMetrics(sub.getFont())));
        sub.setToolTipText(scenario.brief());
        words.add(sub, "wmin 0, w " + BRIEF + "lp!");
        add(words, "wmin 0");

        JPanel stages = clear(new MigLayout("insets 0, gapx 28lp", "", "[center]"));
        for (Stage stage : scenario.stages()) {
            StageCell cell = new StageCell(stage);
            cells.add(cell);
            stages.add(cell);
        }
        add(stages, "aligny center");

        JPanel right = clear(new MigLayout("insets 0, gapx 4lp, aligny center"));
        right.add(button(Look.plain(new JButton(undo)), "undo"));
        right.add(button(Look.plain(new JButton(redo)), "redo"));
        if (slip.isEnabled()) right.add(button(Look.plain(new JButton(slip)), "name-slip"));
        // in an examination there is nothing to ask for
        if (hint.isEnabled()) right.add(button(Look.plain(new JButton(hint)), "hint"));
        right.add(button(Look.primary(new JButton(handIn)), "hand-in"), "gapleft 12lp");
        add(right);
        refresh();
    }

    private static JButton button(JButton button, String name) {
        button.setName(name);
        button.setFocusable(true);
        return button;
    }

    /** The level, and as many whole sentences of the brief as two lines hold; the first one in any case. */
    private static String fitting(Scenario scenario, FontMetrics metrics) {
        String[] sentences = scenario.brief().split("(?<=[.!?]) ", -1);
        String text = "level " + scenario.level() + " · " + Words.lower(sentences[0]);
        // A line that is broken between words holds a little less than its width.
        double room = 1.8 * Look.px(BRIEF);
        for (int i = 1; i < sentences.length; i++) {
            String more = text + " " + sentences[i];
            if (metrics.stringWidth(more) > room) break;
            text = more;
        }
        return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    }

    private static JPanel clear(MigLayout layout) {
        JPanel panel = new JPanel(layout);
        panel.setOpaque(false);
        return panel;
    }

    void refresh() {
        Bench bench = model.session().bench();
        Optional<Stage> current = Progress.current(bench);
        for (StageCell cell : cells)
            cell.show(bench, current.filter(s -> s == cell.stage).isPresent());
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(Look.colour(Ink.PANEL));
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(Look.colour(Ink.BORDER));
        g.fillRect(0, getHeight() - 1, getWidth(), 1);
    }

    @Override
    protected void paintChildren(Graphics g) {
        super.paintChildren(g);
        // The line under the current stage lies on the header's own edge.
        for (StageCell cell : cells) {
            if (!cell.current) continue;
            int x = cell.getX();
            for (Component up = cell.getParent(); up != null && up != this; up = up.getParent()) x += up.getX();
            int thick = Look.px(3);
            g.setColor(Look.colour(Ink.ACTION));
            g.fillRect(x, getHeight() - thick, cell.getWidth(), thick);
        }
    }

    /** One stage: its word, and how far it has got. */
    private static final class StageCell extends JPanel {
        private static final long serialVersionUID = 1L;
        private final Stage stage;
        private final JLabel title;
        private final JLabel count = Look.quiet(" ", Style.NOTE);
        private boolean current;

        StageCell(Stage stage) {
            super(new MigLayout("insets 0, gapy 1lp, wrap 1", "[72lp!,fill]"));
            this.stage = stage;
            this.title = Look.label(stage.title(), Style.BODY);
            setName("stage-" + stage.id());
            setOpaque(false);
            add(title);
            add(count);
        }

        void show(Bench bench, boolean now) {
            current = now;
            Optional<Progress.Count> progress = Progress.of(bench, stage);
            boolean full = progress.map(Progress.Count::isFull).orElse(false);
            count.setText(progress.map(c -> (full ? "✓ " : "") + c).orElse(" "));
            Look.inked(title, now ? Style.STRONG : Style.BODY, Ink.INK);
            getAccessibleContext().setAccessibleName(stage.title() + ", " + count.getText() + (now ? ", current" : ""));
        }
    }
}
