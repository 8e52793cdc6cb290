package org.marktwice.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Blocks set in columns, one column after another. */
final class Columns {
    private Columns() {}

    /** What stands in each column; more than there are columns where they don't suffice. The last one sets the size of these. */
    static List<List<Block>> fill(List<Block> blocks, List<Rectangle2D> columns) {
        List<List<Block>> filled = new ArrayList<>();
        List<Block> rest = blocks;
        while (!rest.isEmpty()) {
            Rectangle2D column = columns.get(Math.min(filled.size(), columns.size() - 1));
            List<Block> first =
                    Leaf.pages(rest, column.getWidth(), column.getHeight()).get(0);
            if (tooHigh(first, column)) {
                // not even one thing fits: leave all of it to another page
                while (filled.size() < columns.size()) filled.add(List.of());
                filled.add(rest);
                return filled;
            }
            filled.add(first);
            rest = rest.subList(first.size(), rest.size());
        }
        return filled;
    }

    /** The same, and where they all fit, as evenly as they go. */
    static List<List<Block>> even(List<Block> blocks, List<Rectangle2D> columns) {
        List<List<Block>> best = fill(blocks, columns);
        if (best.size() > columns.size()) return best;
        for (double share = 0.96; share > 0.2; share -= 0.04) {
            List<Rectangle2D> shorter = new ArrayList<>();
            for (Rectangle2D c : columns) {
                shorter.add(new Rectangle2D.Double(c.getX(), c.getY(), c.getWidth(), c.getHeight() * share));
            }
            List<List<Block>> one = fill(blocks, shorter);
            if (one.size() > columns.size()) return best;
            best = one;
        }
        return best;
    }

    private static boolean tooHigh(List<Block> blocks, Rectangle2D column) {
        return blocks.stream().mapToDouble(b -> b.height(column.getWidth())).sum() > column.getHeight() + 1e-6;
    }

    static void draw(Pen pen, Rectangle2D column, List<Block> blocks) {
        double y = column.getY();
        for (Block b : blocks) {
            b.draw(pen, column.getX(), y, column.getWidth());
            y += b.height(column.getWidth());
        }
    }
}
