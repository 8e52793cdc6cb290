package org.marktwice.view.dryfit;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Part;
import org.marktwice.fit.ToleranceStack;
import org.marktwice.picture.Ink;
import org.marktwice.picture.StackPicture;
import org.marktwice.rulebook.FitCause;
import org.marktwice.rulebook.FitSheet;
import org.marktwice.rulebook.FitSheet.Kind;
import org.marktwice.rulebook.FitSheet.Line;
import org.marktwice.view.Column;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Sign;

/** What was found about the line that is chosen, and where it comes from; of an overall size, how its parts add up. */
final class FitWhy {
    private final Column column = new Column(new MigLayout("insets 0 0 0 8, gap 0 6, wrap 1", "[grow,fill]"));

    FitWhy() {
        column.setName("fit-why");
    }

    JScrollPane scrolling() {
        return column.scrolling();
    }

    void show(FitSheet sheet, Optional<Line> chosen) {
        column.removeAll();
        if (chosen.isPresent()) line(sheet, chosen.get());
        else whole(sheet);
        column.revalidate();
        column.repaint();
    }

    private void whole(FitSheet sheet) {
        List<String> missing = sheet.missing();
        column.add(Look.label(
                missing.isEmpty() ? "Choose a line to see where it comes from." : "What is missing", Style.STRONG));
        missing.forEach(m -> prose(m, Ink.INK));
    }

    private void line(FitSheet sheet, Line line) {
        JLabel head = Look.label(line.title(), Style.STRONG);
        head.setIcon(new Sign(line.verdict()));
        head.setIconTextGap(Look.px(8));
        column.add(head, "wmin 0");
        prose(line.says(), Ink.INK);
        for (FitCause cause : line.why()) prose("· " + cause.says(), Ink.QUIET);
        if (line.isHeldByOthers())
            prose("· The rest comes from other joints, which hold these parts where they are.", Ink.QUIET);
        if (line.kind() == Kind.SIZE) {
            JobAxis axis = JobAxis.valueOf(line.id().toUpperCase(Locale.ROOT));
            Optional<ToleranceStack> stack = sheet.stack(axis);
            if (stack.isPresent()) stack(sheet, line, stack.get());
            else
                prose(
                        "No parts that bear on each other lead through the job this way, so that nothing adds up.",
                        Ink.QUIET);
        } else if (line.why().isEmpty()
                && line.kind() != Kind.DIAGONAL
                && line.mm() != null
                && Math.abs(line.mm()) > 0.05) {
            prose("No one line or size is out by as much as 0.05 mm.", Ink.QUIET);
        }
    }

    private void prose(String text, Ink ink) {
        JComponent area = Look.prose(text, Style.NOTE, ink);
        area.setName("fit-says");
        column.add(area, "wmin 0, growx");
    }

    // How sizes add up

    private void stack(FitSheet sheet, Line line, ToleranceStack stack) {
        column.add(Look.label("How it adds up", Style.STRONG), "gaptop 6");
        JPanel table = new JPanel(new MigLayout("insets 0, gap 8 2, wrap 4", "[12lp!,right][right][grow][right]"));
        table.setOpaque(false);
        for (ToleranceStack.Link link : stack.links()) {
            table.add(Look.label(link.sign() > 0 ? "+" : "−", Style.NOTE));
            table.add(Look.label(figure(link.size()), Style.NOTE));
            table.add(
                    Look.quiet(
                            part(sheet.fit().drawing(), link.part()) + ", "
                                    + link.of().spoken(),
                            Style.NOTE),
                    "wmin 0");
            table.add(Look.quiet("±" + figure(link.plusMinus()), Style.NOTE));
        }
        table.add(Look.label("=", Style.NOTE));
        table.add(Look.label(figure(stack.nominal()), Style.NOTE));
        column.add(table, "growx, wmin 0");
        ToleranceStack.Trial trial = stack.trial(FitSheet.TRIAL_JOBS, FitSheet.TRIAL_SEED);
        JLabel worst = Look.label(
                "At worst ±" + figure(stack.worst()) + " mm, likely ±" + figure(stack.likely()) + " mm", Style.NOTE);
        worst.setName("fit-stack");
        column.add(worst, "wmin 0");
        prose(
                String.format(
                        Locale.ROOT,
                        "Of %,d jobs made so, each link normal and its tolerance three standard deviations, %.1f %% come"
                                + " within ±%s mm.",
                        trial.jobs(),
                        100 * trial.within(line.limit()),
                        figure(line.limit())),
                Ink.QUIET);
        column.add(new Histogram(new StackPicture(stack, trial, line.limit(), line.mm())), "growx, h 150lp!, wmin 0");
    }

    private static String part(Drawing drawing, String id) {
        return drawing.part(id).map(Part::name).orElse(id);
    }

    private static String figure(double mm) {
        String s = String.format(Locale.ROOT, "%.2f", mm);
        return s.replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    private static final class Histogram extends JPanel {
        private static final long serialVersionUID = 1L;
        private final transient StackPicture picture;

        Histogram(StackPicture picture) {
            this.picture = picture;
            setOpaque(false);
            setName("fit-histogram");
            getAccessibleContext().setAccessibleName("How the size comes out over many jobs");
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = Look.smooth((Graphics2D) graphics.create());
            picture.paint(g, new Rectangle2D.Double(0, 0, getWidth(), getHeight()), Style.NOTE.font(), Look.palette());
            g.dispose();
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(Look.px(300), Look.px(150));
        }
    }
}
