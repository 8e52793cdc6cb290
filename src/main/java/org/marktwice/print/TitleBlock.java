package org.marktwice.print;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.marktwice.picture.Ink;

/**
 * The border of a sheet and the block that says what it is, by the habits of ISO 5457 and ISO 7200: a filing margin on the
 * left, the block at the foot. It bears no date, for the program doesn't know when it is used.
 *
 * @param kind what the sheet is: {@code working drawing}
 * @param title of the job or board
 * @param about one quieter line: level, species, learner
 * @param scale {@code 1 : 2}; empty where nothing is to scale
 */
record TitleBlock(String kind, String title, String about, String scale) {
    private static final double LEFT = Paper.points(20);
    private static final double OTHERS = Paper.points(10);
    private static final double HIGH = Paper.points(14);
    private static final double PAD = Paper.points(4);

    /** Where the sheet's content goes. */
    static Rectangle2D inside(Paper paper, boolean landscape) {
        Rectangle2D f = frame(paper, landscape);
        return new Rectangle2D.Double(
                f.getX() + PAD, f.getY() + PAD, f.getWidth() - 2 * PAD, f.getHeight() - HIGH - 2 * PAD);
    }

    static Rectangle2D frame(Paper paper, boolean landscape) {
        return new Rectangle2D.Double(
                LEFT, OTHERS, paper.width(landscape) - LEFT - OTHERS, paper.height(landscape) - 2 * OTHERS);
    }

    void draw(Pen pen, Paper paper, boolean landscape, int number, int of) {
        Rectangle2D f = frame(paper, landscape);
        pen.box(f, Pen.WIDE, Ink.INK);
        double top = f.getMaxY() - HIGH;
        pen.line(f.getX(), top, f.getMaxX(), top, Pen.WIDE, Ink.INK);
        double sheetWide = Paper.points(18);
        double scaleWide = Paper.points(20);
        double kindWide = Paper.points(44);
        double x = f.getMaxX() - sheetWide;
        cell(pen, x, top, sheetWide, "sheet", List.of(number + " of " + of), Type.BODY);
        x -= scaleWide;
        cell(pen, x, top, scaleWide, "scale", List.of(scale.isEmpty() ? "–" : scale), Type.BODY);
        x -= kindWide;
        cell(pen, x, top, kindWide, "kind of sheet", List.of(kind, "sizes in mm · Marktwice"), Type.STRONG);
        double room = x - f.getX();
        pen.write("title", f.getX() + PAD, top + 8, Type.CAPTION, Ink.QUIET);
        pen.write(Pen.cut(title, Type.HEAD, room - 2 * PAD), f.getX() + PAD, top + 21, Type.HEAD, Ink.INK);
        pen.write(Pen.cut(about, Type.NOTE, room - 2 * PAD), f.getX() + PAD, top + 33, Type.NOTE, Ink.QUIET);
    }

    private static void cell(
            Pen pen, double x, double top, double wide, String caption, List<String> lines, Type type) {
        pen.line(x, top, x, top + HIGH, Pen.NARROW, Ink.INK);
        double in = Paper.points(2.5);
        pen.write(caption, x + in, top + 8, Type.CAPTION, Ink.QUIET);
        pen.write(Pen.cut(lines.get(0), type, wide - 2 * in), x + in, top + 21, type, Ink.INK);
        for (int i = 1; i < lines.size(); i++) {
            pen.write(Pen.cut(lines.get(i), Type.NOTE, wide - 2 * in), x + in, top + 33, Type.NOTE, Ink.QUIET);
        }
    }
}
