package org.marktwice.print;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.Ink;

/**
 * The border of a sheet and the block that says what it is, by the habits of ISO 5457 and ISO 7200: a filing margin on the
 * left, the block at the foot. A drawing's has a second row over the first, for who drew, checked and owns it, and when.
 *
 * @param kind what the sheet is: {@code working drawing}
 * @param title of the job or board; on two lines where it is long
 * @param about one quieter line: level, species, learner
 * @param scale {@code 1 : 2}; empty where nothing is to scale
 * @param signed what the second row says; null for none
 */
record TitleBlock(
        String kind,
        String title,
        String about,
        String scale,
        @Nullable Signed signed) {
    private static final double LEFT = Paper.points(20);
    private static final double OTHERS = Paper.points(10);
    private static final double HIGH = Paper.points(14);
    private static final double SIGNED = Paper.points(9);
    private static final double PAD = Paper.points(4);
    private static final double IN = Paper.points(2.5);

    /** @param number by which the drawing is found again */
    record Signed(Issue issue, String number) {}

    TitleBlock(String kind, String title, String about, String scale) {
        this(kind, title, about, scale, null);
    }

    TitleBlock signed(Issue issue, String number) {
        return new TitleBlock(kind, title, about, scale, new Signed(issue, number));
    }

    /** Where the sheet's content goes. */
    Rectangle2D room(Paper paper, boolean landscape) {
        return signed == null ? inside(paper, landscape) : insideSigned(paper, landscape);
    }

    /** Where the content of a sheet goes that has no second row. */
    static Rectangle2D inside(Paper paper, boolean landscape) {
        return above(HIGH, paper, landscape);
    }

    static Rectangle2D insideSigned(Paper paper, boolean landscape) {
        return above(HIGH + SIGNED, paper, landscape);
    }

    private static Rectangle2D above(double high, Paper paper, boolean landscape) {
        Rectangle2D f = frame(paper, landscape);
        return new Rectangle2D.Double(
                f.getX() + PAD, f.getY() + PAD, f.getWidth() - 2 * PAD, f.getHeight() - high - 2 * PAD);
    }

    static Rectangle2D frame(Paper paper, boolean landscape) {
        return new Rectangle2D.Double(
                LEFT, OTHERS, paper.width(landscape) - LEFT - OTHERS, paper.height(landscape) - 2 * OTHERS);
    }

    void draw(Pen pen, Paper paper, boolean landscape, int number, int of) {
        Rectangle2D f = frame(paper, landscape);
        pen.box(f, Pen.WIDE, Ink.INK);
        double top = f.getMaxY() - HIGH;
        if (signed != null) {
            signed(pen, f, top - SIGNED, signed);
            pen.line(f.getX(), top, f.getMaxX(), top, Pen.NARROW, Ink.INK);
        } else {
            pen.line(f.getX(), top, f.getMaxX(), top, Pen.WIDE, Ink.INK);
        }
        double sheetWide = Paper.points(18);
        double scaleWide = Paper.points(20);
        double kindWide = Paper.points(44);
        double x = f.getMaxX() - sheetWide;
        cell(pen, x, top, sheetWide, "sheet", List.of(number + " of " + of), Type.BODY);
        x -= scaleWide;
        cell(pen, x, top, scaleWide, "scale", List.of(scale.isEmpty() ? "–" : scale), Type.BODY);
        x -= kindWide;
        cell(pen, x, top, kindWide, "kind of sheet", List.of(kind, "sizes in mm · Marktwice"), Type.STRONG);
        title(pen, f.getX() + PAD, top, x - f.getX() - 2 * PAD);
    }

    private void title(Pen pen, double x, double top, double room) {
        pen.write("title", x, top + 8, Type.CAPTION, Ink.QUIET);
        if (Type.HEAD.width(title) <= room) {
            pen.write(title, x, top + 21, Type.HEAD, Ink.INK);
            pen.write(Pen.cut(about, Type.NOTE, room), x, top + 33, Type.NOTE, Ink.QUIET);
            return;
        }
        // a long one takes the line that says less
        double beside = Type.CAPTION.width("title  ");
        pen.write(Pen.cut(about, Type.CAPTION, room - beside), x + beside, top + 8, Type.CAPTION, Ink.QUIET);
        List<String> lines = Pen.wrapped(title, Type.STRONG, room);
        pen.write(lines.get(0), x, top + 20, Type.STRONG, Ink.INK);
        String rest = String.join(" ", lines.subList(1, lines.size()));
        pen.write(Pen.cut(rest, Type.STRONG, room), x, top + 32, Type.STRONG, Ink.INK);
    }

    /** What is not known is left blank, with room to write it in. */
    private static void signed(Pen pen, Rectangle2D f, double top, Signed signed) {
        pen.line(f.getX(), top, f.getMaxX(), top, Pen.WIDE, Ink.INK);
        double x = f.getMaxX();
        x = small(pen, x, top, 32, "drawing number", signed.number());
        x = small(pen, x, top, 26, "date of issue", signed.issue().date());
        x = small(pen, x, top, 32, "checked by", "");
        x = small(pen, x, top, 32, "drawn by", signed.issue().by());
        double room = x - f.getX() - 2 * PAD;
        pen.write("school or workshop", f.getX() + PAD, top + 8, Type.CAPTION, Ink.QUIET);
        pen.write(Pen.cut(signed.issue().owner(), Type.BODY, room), f.getX() + PAD, top + 20, Type.BODY, Ink.INK);
    }

    private static double small(Pen pen, double right, double top, double mm, String caption, String text) {
        double wide = Paper.points(mm);
        double x = right - wide;
        pen.line(x, top, x, top + SIGNED, Pen.NARROW, Ink.INK);
        pen.write(caption, x + IN, top + 8, Type.CAPTION, Ink.QUIET);
        pen.write(Pen.cut(text, Type.BODY, wide - 2 * IN), x + IN, top + 20, Type.BODY, Ink.INK);
        return x;
    }

    private static void cell(
            Pen pen, double x, double top, double wide, String caption, List<String> lines, Type type) {
        pen.line(x, top, x, top + HIGH, Pen.NARROW, Ink.INK);
        pen.write(caption, x + IN, top + 8, Type.CAPTION, Ink.QUIET);
        pen.write(Pen.cut(lines.get(0), type, wide - 2 * IN), x + IN, top + 21, type, Ink.INK);
        for (int i = 1; i < lines.size(); i++) {
            pen.write(Pen.cut(lines.get(i), Type.NOTE, wide - 2 * IN), x + IN, top + 33, Type.NOTE, Ink.QUIET);
        }
    }
}
