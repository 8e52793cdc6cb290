package org.marktwice.print;

import java.awt.Graphics2D;
import java.util.List;

/**
 * One page, ready to be drawn any number of times.
 *
 * @param width in points; so is {@code height}
 * @param content draws it; its user space is points from the top left corner, to the right and down
 */
public record Page(double width, double height, Content content) {
    /** What stands on a page. */
    @FunctionalInterface
    public interface Content {
        void draw(Graphics2D g);
    }

    /** All pages in one, the next under the last, for files that hold one only. */
    static Page stacked(List<Page> pages) {
        double width = pages.stream().mapToDouble(Page::width).max().orElse(1);
        double height = pages.stream().mapToDouble(Page::height).sum();
        return new Page(width, height, g -> {
            Graphics2D own = (Graphics2D) g.create();
            for (Page page : pages) {
                page.content().draw(own);
                own.translate(0, page.height());
            }
            own.dispose();
        });
    }
}
