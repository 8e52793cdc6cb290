package org.marktwice.print;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Sign;
import org.marktwice.rulebook.Verdict;

/** The blocks that text sheets are made of. */
final class Blocks {
    private Blocks() {}

    /** A block that is written or drawn so, as high as its width asks for. */
    static Block of(DoubleUnaryOperator height, Content content) {
        return new Block() {
            @Override
            public double height(double width) {
                return height.applyAsDouble(width);
            }

            @Override
            public void draw(Pen pen, double x, double y, double width) {
                content.draw(pen, x, y, width);
            }
        };
    }

    /** A block that is equally high, however wide it is. */
    static Block of(double high, Content content) {
        return of(width -> high, content);
    }

    static Block space(double high) {
        return of(high, (pen, x, y, width) -> {});
    }

    /** A heading with a thin rule under it; what stands on the right, or nothing. */
    static Block heading(String text, String right) {
        return new Block() {
            @Override
            public double height(double width) {
                return Type.HEAD.leading() + 14;
            }

            @Override
            public void draw(Pen pen, double x, double y, double width) {
                double base = y + 8 + Type.HEAD.size();
                double room = width - Type.BODY.width(right) - 12;
                pen.write(Pen.cut(text, Type.HEAD, room), x, base, Type.HEAD, Ink.INK);
                pen.writeRight(right, x + width, base, Type.BODY, Ink.QUIET);
                pen.line(x, base + 4.5, x + width, base + 4.5, Pen.NARROW, Ink.BORDER);
            }

            @Override
            public boolean leads() {
                return true;
            }
        };
    }

    static Block text(String text, Type type, Ink ink) {
        return labelled("", 0, text, type, ink);
    }

    /** A quiet word in the margin, and the text beside it; {@code indent} from the left, points. */
    static Block labelled(String label, double indent, String text, Type type, Ink ink) {
        return of(width -> Pen.wrapped(text, type, width - indent).size() * type.leading() + 2, (pen, x, y, width) -> {
            double base = y + type.size();
            pen.write(label, x + (indent > 46 ? 12 : 0), base, Type.NOTE, Ink.QUIET);
            for (String line : Pen.wrapped(text, type, width - indent)) {
                pen.write(line, x + indent, base, type, ink);
                base += type.leading();
            }
        });
    }

    /** A strong line, with a quiet word on the right. */
    static Block title(String text, String right) {
        return of(Type.STRONG.leading() + 2, (pen, x, y, width) -> {
            double base = y + Type.STRONG.size();
            double room = width - Type.NOTE.width(right) - 12;
            pen.write(Pen.cut(text, Type.STRONG, room), x, base, Type.STRONG, Ink.INK);
            pen.writeRight(right, x + width, base, Type.NOTE, Ink.QUIET);
        });
    }

    /** Room for the marks at the end of a line, so that figures before them stand in a column. */
    private static final double MARKS = 56;

    /** A line that begins with a verdict's sign and word; its figure and marks on the right. */
    static Block verdict(Verdict verdict, String title, String figure, String marks) {
        return of(Type.STRONG.leading() + 4, (pen, x, y, width) -> {
            double base = y + 3 + Type.STRONG.size();
            Ink ink = Ink.of(verdict);
            pen.g.setColor(Pen.PALETTE.of(ink));
            Sign.draw(pen.g, verdict, x, base + 0.5, Type.STRONG.size() * 0.8);
            pen.write(verdict.id(), x + 12, base, Type.BODY, ink);
            double right = x + width - Math.max(MARKS, Type.BODY.width(marks));
            pen.writeRight(marks, x + width, base, Type.BODY, Ink.QUIET);
            double figures = right - 10 - Type.BODY.width(figure);
            pen.write(figure, figures, base, Type.BODY, ink);
            double room = figures - 8 - (x + 48);
            pen.write(Pen.cut(title, Type.STRONG, room), x + 48, base, Type.STRONG, Ink.INK);
        });
    }

    /** A table of so few rows is not broken over two pages. */
    private static final int SHORT = 16;

    /** A heading, a head and rows: in one piece where they are few, else with the head again on each page. */
    static List<Block> table(List<Block> blocks) {
        return table(blocks, SHORT);
    }

    /** @param few so many blocks, and no more, are kept in one piece */
    static List<Block> table(List<Block> blocks, int few) {
        if (blocks.isEmpty()) return List.of();
        if (blocks.size() <= few) return List.of(together(blocks));
        List<Block> all = new ArrayList<>();
        Block head = null;
        for (Block block : blocks) {
            all.add(block.leads() || head == null ? block : under(head, block));
            head = block.leads() ? block : head;
        }
        return all;
    }

    private static Block under(Block head, Block row) {
        return new Block() {
            @Override
            public double height(double width) {
                return row.height(width);
            }

            @Override
            public void draw(Pen pen, double x, double y, double width) {
                row.draw(pen, x, y, width);
            }

            @Override
            public Block head() {
                return head;
            }
        };
    }

    /** Blocks kept together. */
    static Block together(List<Block> blocks) {
        return of(width -> blocks.stream().mapToDouble(b -> b.height(width)).sum(), (pen, x, y, width) -> {
            double at = y;
            for (Block b : blocks) {
                b.draw(pen, x, at, width);
                at += b.height(width);
            }
        });
    }

    /** A row of a table; a head is smaller, and stands over what follows. */
    static Block row(Columns columns, List<String> cells, boolean head) {
        Type type = head ? Type.NOTE : Type.TABLE;
        return new Block() {
            @Override
            public double height(double width) {
                int most = 1;
                for (int i = 0; i < cells.size(); i++)
                    most = Math.max(most, lines(i, width).size());
                return most * type.leading() + (head ? 4 : 5);
            }

            private List<String> lines(int i, double width) {
                return Pen.wrapped(cells.get(i), type, columns.room(i, width));
            }

            @Override
            public void draw(Pen pen, double x, double y, double width) {
                for (int i = 0; i < cells.size(); i++) {
                    double base = y + type.size() + 1.5;
                    for (String line : lines(i, width)) {
                        double at = x + columns.start(i, width);
                        if (columns.right(i)) at += columns.room(i, width) - type.width(line);
                        pen.write(line, at, base, type, head ? Ink.QUIET : Ink.INK);
                        base += type.leading();
                    }
                }
                double foot = y + height(width) - 1;
                pen.line(x, foot, x + width, foot, Pen.NARROW * (head ? 1 : 0.7), head ? Ink.QUIET : Ink.BORDER);
            }

            @Override
            public boolean leads() {
                return head;
            }
        };
    }

    /**
     * The columns of a table.
     *
     * @param shares their widths, as shares that add up to 1
     * @param figures for each column {@code l}, set from the left, or {@code r}, set to the right
     */
    record Columns(List<Double> shares, String figures) {
        private static final double GAP = 6;

        static Columns of(String figures, double... shares) {
            List<Double> all = new java.util.ArrayList<>();
            for (double s : shares) all.add(s);
            return new Columns(List.copyOf(all), figures);
        }

        double start(int i, double width) {
            return width * shares.subList(0, i).stream().mapToDouble(s -> s).sum() + indent(i);
        }

        double room(int i, double width) {
            return width * shares.get(i) - (i == shares.size() - 1 ? 0 : GAP) - indent(i);
        }

        /** Words after figures keep away from them. */
        private double indent(int i) {
            return i > 0 && !right(i) && right(i - 1) ? 2 * GAP : 0;
        }

        boolean right(int i) {
            return figures.charAt(i) == 'r';
        }
    }

    /** A picture of a fixed height. */
    static Block picture(double high, Drawn drawn, @Nullable String caption) {
        double foot = caption == null ? 0 : Type.NOTE.leading();
        return of(high + foot + 6, (pen, x, y, width) -> {
            drawn.in(pen, new java.awt.geom.Rectangle2D.Double(x, y, width, high));
            if (caption != null) pen.write(caption, x, y + high + Type.NOTE.size() + 1, Type.NOTE, Ink.QUIET);
        });
    }

    /** Blocks with a picture to the right of them, which takes the rest of the width and is as high as they are. */
    static Block beside(List<Block> blocks, double share, double least, Drawn drawn) {
        Block left = together(blocks);
        DoubleUnaryOperator height = width -> Math.max(least, left.height(width * share));
        return of(height, (pen, x, y, width) -> {
            left.draw(pen, x, y, width * share);
            double from = x + width * share + 16;
            drawn.in(
                    pen,
                    new java.awt.geom.Rectangle2D.Double(
                            from, y + 4, x + width - from, height.applyAsDouble(width) - 8));
        });
    }

    /** Lines to write on, each with what belongs there, and its share of the width. */
    static Block blanks(Object... wordsAndShares) {
        return of(24.5, (pen, x, y, width) -> {
            double total = 0;
            for (int i = 1; i < wordsAndShares.length; i += 2) total += (Double) wordsAndShares[i];
            double gap = width * (1 - total) / Math.max(1, wordsAndShares.length / 2 - 1);
            double at = x;
            for (int i = 0; i < wordsAndShares.length; i += 2) {
                double wide = width * (Double) wordsAndShares[i + 1];
                pen.line(at, y + 15, at + wide, y + 15, Pen.NARROW, Ink.QUIET);
                pen.write((String) wordsAndShares[i], at, y + 22, Type.CAPTION, Ink.QUIET);
                at += wide + gap;
            }
        });
    }

    /** What a block has in it, from its upper left corner. */
    @FunctionalInterface
    interface Content {
        void draw(Pen pen, double x, double y, double width);
    }

    /** Something drawn into a place. */
    @FunctionalInterface
    interface Drawn {
        void in(Pen pen, java.awt.geom.Rectangle2D place);
    }
}
