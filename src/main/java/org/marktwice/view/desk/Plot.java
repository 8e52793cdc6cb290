package org.marktwice.view.desk;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.accessibility.AccessibleRole;
import org.jfree.chart.ChartFactory;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.IntervalXYDataset;
import org.jfree.data.xy.XYBarDataset;
import org.jfree.data.xy.XYDataset;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.Results;
import org.marktwice.picture.Ink;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Painted;

/** A plot of results in the window's own inks: plain, with thin lines and no ground of its own. */
final class Plot extends Painted {
    private static final long serialVersionUID = 1L;

    private enum Kind {
        BARS,
        LINES,
        POINTS
    }

    private transient @Nullable XYDataset data;
    private String across = "";
    private String up = "";
    private Kind kind = Kind.BARS;
    private String chosen = "";
    private final transient List<String> keys = new ArrayList<>();
    private double most = 1;
    private String nothing = "There are no results yet.";

    Plot() {
        super(AccessibleRole.CANVAS, 420, 220);
    }

    /** How many totals lie in each tenth of the marks. */
    void distribution(Results results) {
        XYSeries series = new XYSeries("learners");
        int[] tenths = results.distribution();
        int highest = 1;
        StringBuilder said = new StringBuilder();
        for (int i = 0; i < tenths.length; i++) {
            series.add(i * 10 + 5, tenths[i]);
            highest = Math.max(highest, tenths[i]);
            if (tenths[i] > 0) {
                said.append(String.format(Locale.ROOT, ", %d to %d: %d", i * 10, i * 10 + 10, tenths[i]));
            }
        }
        show(
                new XYBarDataset(new XYSeriesCollection(series), 9.2),
                "marks of 100",
                "learners",
                Kind.BARS,
                highest * 1.1);
        nothing = results.rows().isEmpty() ? "There are no results yet." : "";
        readAs("How the marks are spread" + said);
        setName("distribution");
    }

    /** The shares of the marks of those who tried more than once, try by try. */
    void progress(List<Results.Progress> progress) {
        XYSeriesCollection all = new XYSeriesCollection();
        keys.clear();
        for (Results.Progress one : progress) {
            XYSeries series = new XYSeries(one.learner() + ", " + one.exercise());
            for (int i = 0; i < one.shares().size(); i++) {
                series.add(i + 1, 100 * one.shares().get(i));
            }
            all.addSeries(series);
            keys.add(one.learner());
        }
        show(all, "try", "marks of 100", Kind.LINES, 116);
        nothing = progress.isEmpty() ? "Nobody has tried more than once." : "";
        readAs("Progress over the tries of " + progress.size() + " learners");
        setName("progress-plot");
    }

    /** How much of each rule's marks was reached, and how it goes with the rest of the marks. */
    void items(List<Results.Item> items) {
        XYSeriesCollection all = new XYSeriesCollection();
        keys.clear();
        for (Results.Item one : items) {
            if (one.discrimination().isEmpty()) continue;
            XYSeries series = new XYSeries(one.id());
            series.add(100 * one.facility(), one.discrimination().getAsDouble());
            all.addSeries(series);
            keys.add(one.id());
        }
        show(all, "marks reached, of 100", "tells learners apart", Kind.POINTS, 1);
        nothing = keys.isEmpty() ? "It takes several learners to tell." : "";
        readAs("How hard and how telling " + keys.size() + " rules are");
        setName("items-plot");
    }

    /** Picks one of the series out, by its learner or rule; what none has picks none. */
    void choose(String key) {
        chosen = key;
        repaint();
    }

    private void show(XYDataset next, String xWords, String yWords, Kind as, double highest) {
        data = next;
        across = xWords;
        up = yWords;
        kind = as;
        most = highest;
        repaint();
    }

    @Override
    protected void draw(Graphics2D g) {
        XYDataset now = data;
        if (getWidth() < Look.px(80) || getHeight() < Look.px(60)) return;
        if (now != null && nothing.isEmpty()) {
            chart(now).draw(g, new Rectangle2D.Double(0, 0, getWidth(), getHeight()));
        } else {
            drawInstead(g, nothing);
        }
    }

    /** Made anew each time, so that it follows light, dark and the text size. */
    private JFreeChart chart(XYDataset of) {
        JFreeChart chart = kind == Kind.BARS
                ? ChartFactory.createXYBarChart(null, across, false, up, (IntervalXYDataset) of)
                : ChartFactory.createXYLineChart(null, across, up, of);
        chart.removeLegend();
        chart.setBackgroundPaint(null);
        chart.setPadding(new RectangleInsets(Look.px(6), Look.px(4), Look.px(4), Look.px(12)));
        XYPlot plot = chart.getXYPlot();
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinesVisible(false);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setRangeGridlinePaint(Look.colour(Ink.BORDER));
        plot.setRangeGridlineStroke(new BasicStroke(Look.px(1)));
        NumberAxis x = (NumberAxis) plot.getDomainAxis();
        NumberAxis y = (NumberAxis) plot.getRangeAxis();
        dress(x);
        dress(y);
        range(plot, x, y);
        plot.setRenderer(kind == Kind.BARS ? barred() : drawn(of.getSeriesCount()));
        return chart;
    }

    private void range(XYPlot plot, NumberAxis x, NumberAxis y) {
        switch (kind) {
            case BARS -> {
                x.setRange(0, 100);
                x.setTickUnit(new NumberTickUnit(20));
                y.setRange(0, most);
                y.setTickUnit(new NumberTickUnit(Math.max(1, Math.ceil(most / 6))));
            }
            case LINES -> {
                // room for the dots of full marks and of none, and for a name above
                y.setRange(-4, most);
                y.setTickUnit(new NumberTickUnit(20));
                x.setTickUnit(new NumberTickUnit(1));
                x.setLowerMargin(0.04);
                x.setUpperMargin(0.04);
            }
            case POINTS -> {
                x.setRange(0, 104);
                x.setTickUnit(new NumberTickUnit(20));
                y.setRange(-1, 1.04);
                y.setTickUnit(new NumberTickUnit(0.5, new java.text.DecimalFormat("0.0")));
                plot.addRangeMarker(new ValueMarker(0, Look.colour(Ink.QUIET), new BasicStroke(Look.px(1))));
            }
        }
    }

    private static void dress(ValueAxis axis) {
        axis.setLabelFont(Style.NOTE.font());
        axis.setTickLabelFont(Style.NOTE.font());
        Color quiet = Look.colour(Ink.QUIET);
        axis.setLabelPaint(quiet);
        axis.setTickLabelPaint(quiet);
        axis.setAxisLinePaint(Look.colour(Ink.BORDER));
        axis.setTickMarkPaint(Look.colour(Ink.BORDER));
    }

    private static XYBarRenderer barred() {
        XYBarRenderer renderer = new XYBarRenderer();
        renderer.setBarPainter(new StandardXYBarPainter());
        renderer.setShadowVisible(false);
        renderer.setSeriesPaint(0, Look.colour(Ink.ACTION));
        return renderer;
    }

    /** The one picked out is larger and bears its name; the others step back while one is. */
    private XYLineAndShapeRenderer drawn(int series) {
        boolean some = keys.contains(chosen);
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(kind == Kind.LINES, true);
        for (int i = 0; i < series; i++) {
            boolean picked = keys.get(i).equals(chosen);
            double r = Look.px(picked ? 5 : 3);
            double share = picked ? 1 : some ? 0.35 : series > 12 ? 0.5 : 0.85;
            renderer.setSeriesPaint(i, Look.palette().of(Ink.ACTION, share));
            renderer.setSeriesStroke(i, new BasicStroke(Look.px(picked ? 3 : 1.4)));
            renderer.setSeriesShape(i, new Ellipse2D.Double(-r, -r, 2 * r, 2 * r));
            if (picked && kind == Kind.LINES) named(renderer, i);
        }
        return renderer;
    }

    private void named(XYLineAndShapeRenderer renderer, int series) {
        renderer.setSeriesItemLabelGenerator(
                series, (data, of, item) -> item == data.getItemCount(of) - 1 ? chosen : "");
        renderer.setSeriesItemLabelsVisible(series, true);
        renderer.setSeriesItemLabelFont(series, Style.STRONG.font());
        renderer.setSeriesItemLabelPaint(series, Look.colour(Ink.INK));
        renderer.setSeriesPositiveItemLabelPosition(
                series, new ItemLabelPosition(ItemLabelAnchor.OUTSIDE12, TextAnchor.BOTTOM_RIGHT));
    }
}
