package org.marktwice.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * A page before it is known how many there are.
 *
 * @param content is given the room inside the border
 */
record Leaf(boolean landscape, TitleBlock block, Blocks.Drawn content) {

    /** The leaves as pages, numbered through. */
    static List<Page> bound(List<Leaf> leaves, Paper paper) {
        List<Page> pages = new ArrayList<>();
        for (int i = 0; i < leaves.size(); i++) {
            Leaf leaf = leaves.get(i);
            int number = i + 1;
            pages.add(new Page(paper.width(leaf.landscape()), paper.height(leaf.landscape()), g -> {
                Pen pen = new Pen(g);
                leaf.content().in(pen, leaf.block().room(paper, leaf.landscape()));
                leaf.block().draw(pen, paper, leaf.landscape(), number, leaves.size());
            }));
        }
        return List.copyOf(pages);
    }

    /** Blocks set one under the other in a column, on as many upright leaves as they need. */
    static List<Leaf> flowing(TitleBlock block, Paper paper, List<Block> blocks) {
        Rectangle2D room = block.room(paper, false);
        List<Leaf> leaves = new ArrayList<>();
        for (List<Block> page : pages(blocks, room.getWidth(), room.getHeight())) {
            leaves.add(new Leaf(false, block, (pen, place) -> column(pen, place, page)));
        }
        return leaves;
    }

    private static void column(Pen pen, Rectangle2D place, List<Block> blocks) {
        double y = place.getY();
        for (Block b : blocks) {
            b.draw(pen, place.getX(), y, place.getWidth());
            y += b.height(place.getWidth());
        }
    }

    /** A block that leads is taken over to the next page with what it leads; a table that goes on there has its head again. */
    static List<List<Block>> pages(List<Block> blocks, double width, double height) {
        List<List<Block>> pages = new ArrayList<>();
        List<Block> page = new ArrayList<>();
        double used = 0;
        for (int i = 0; i < blocks.size(); i++) {
            int end = i;
            while (end < blocks.size() - 1 && blocks.get(end).leads()) end++;
            double needed = 0;
            for (Block b : blocks.subList(i, end + 1)) needed += b.height(width);
            if (!page.isEmpty() && used + needed > height) {
                pages.add(page);
                page = new ArrayList<>();
                used = 0;
                Block head = blocks.get(i).head();
                if (head != null) {
                    page.add(head);
                    used += head.height(width);
                }
            }
            for (Block b : blocks.subList(i, end + 1)) {
                page.add(b);
                used += b.height(width);
            }
            i = end;
        }
        if (!page.isEmpty()) pages.add(page);
        return pages;
    }
}
