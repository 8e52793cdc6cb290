package org.marktwice.view;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import javax.accessibility.AccessibleRole;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import org.marktwice.picture.Ink;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Look.Style;

/** An exercise on the start page's list: its picture, its title and how one stands with it; the level above its
 * first, with how many of it are done. */
public final class ExerciseRow extends Painted implements ListCellRenderer<Scenario> {
    private static final long serialVersionUID = 1L;
    private static final int ROW = 84;
    private static final int LEVEL = 32;
    private static final int GAP = 8;

    private final transient Exercises exercises;
    private transient Scenario scenario;
    private boolean opensLevel;
    private boolean selected;

    ExerciseRow(Exercises exercises) {
        super(AccessibleRole.LIST_ITEM);
        this.exercises = exercises;
        this.scenario = exercises.all().get(0);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Scenario> list, Scenario value, int index, boolean isSelected, boolean focused) {
        scenario = value;
        opensLevel = exercises.opensLevel(index);
        selected = isSelected;
        readAs(spoken());
        return this;
    }

    private String spoken() {
        String mark = exercises.mark(scenario);
        return "Level " + scenario.level() + ", " + scenario.title()
                + (scenario.idea().isEmpty() ? "" : ", " + scenario.idea()) + (mark.isEmpty() ? "" : ", " + mark);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Look.px(360), Look.px(ROW + GAP + (opensLevel ? LEVEL : 0)));
    }

    @Override
    protected void draw(Graphics2D g) {
        double top = 0;
        if (opensLevel) {
            g.setFont(Style.HEADING.font());
            g.setColor(Look.colour(Ink.QUIET));
            g.drawString("LEVEL " + scenario.level(), Look.px(2), Look.px(LEVEL - 10));
            String done = exercises.done(scenario.level());
            g.setFont(Style.NOTE.font());
            int from = getWidth() - Look.px(2) - g.getFontMetrics().stringWidth(done);
            g.drawString(done, from, Look.px(LEVEL - 10));
            top = Look.px(LEVEL);
        }
        double height = Look.px(ROW);
        Card.paint(g, 1, top + 1, getWidth() - 2, height - 2, selected);
        double picture = Look.px(128);
        double inset = Look.px(8);
        JobPane.paint(g, scenario, new Rectangle2D.Double(inset, top + inset, picture - inset, height - 2 * inset));
        int x = (int) (picture + inset);
        int room = getWidth() - x - Look.px(16);
        int y = (int) (top + Look.px(30));
        int marked = mark(g, x + room, y);
        line(g, scenario.title(), Style.SUBTITLE, Ink.INK, x, y, room - marked);
        teaches(g, x, y + Look.px(20), room);
    }

    /** The mark so far, its end at x; the room that it takes in pixels. */
    private int mark(Graphics2D g, int x, int y) {
        String mark = exercises.mark(scenario);
        if (mark.isEmpty()) return 0;
        g.setFont(Style.NOTE.font());
        int width = g.getFontMetrics().stringWidth(mark);
        line(g, mark, Style.NOTE, Ink.ACTION, x - width, y, width);
        return width + Look.px(12);
    }

    /** What is new in it, on two lines at most; where nobody said, what it asks for. */
    private void teaches(Graphics2D g, int x, int y, int room) {
        String words = scenario.idea().isEmpty() ? Exercises.stages(scenario) : scenario.idea();
        g.setFont(Style.NOTE.font());
        FontMetrics metrics = g.getFontMetrics();
        int cut = words.length();
        while (cut > 0 && metrics.stringWidth(words.substring(0, cut)) > room) cut = words.lastIndexOf(' ', cut - 1);
        if (cut <= 0) cut = words.length();
        line(g, words.substring(0, cut), Style.NOTE, Ink.QUIET, x, y, room);
        line(g, words.substring(cut).strip(), Style.NOTE, Ink.QUIET, x, y + Look.px(17), room);
    }

    private static void line(Graphics2D g, String text, Style style, Ink ink, int x, int y, int room) {
        g.setFont(style.font());
        g.setColor(Look.colour(ink));
        g.drawString(clipped(text, g.getFontMetrics(), room), x, y);
    }

    /** The text, or as much of it as there is room for and an ellipsis. */
    public static String clipped(String text, FontMetrics metrics, int room) {
        if (metrics.stringWidth(text) <= room) return text;
        String shorter = text;
        while (!shorter.isEmpty() && metrics.stringWidth(shorter + "…") > room) {
            shorter = shorter.substring(0, shorter.length() - 1);
        }
        return shorter.stripTrailing() + "…";
    }
}
