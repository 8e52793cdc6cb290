package org.marktwice.print;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.JobRecord.Judged;
import org.marktwice.classroom.Measure;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Sign;
import org.marktwice.rulebook.Verdict;

/** A line of a record sheet: what is measured, its size and bands, and two boxes to write in. */
final class RecordRow implements Block {
    /** Room for a pencil: 7 mm. */
    private static final double HIGH = Paper.points(7);
    /** Five columns of figures stand to the right of what is measured; the last two are boxes. */
    private static final double[] WIDE = {13, 26, 25, 20, 22};

    private static final double PAD = 5;

    private final String title;
    private final List<String> figures;
    private final @Nullable Verdict verdict;
    private final boolean head;

    private RecordRow(String title, List<String> figures, @Nullable Verdict verdict, boolean head) {
        this.title = title;
        this.figures = figures;
        this.verdict = verdict;
        this.head = head;
    }

    /** What is good and what is fair, in words. */
    record Band(String good, String fair) {
        static Band about(double drawn, double limit) {
            return new Band(
                    Figure.number(drawn - limit / 2) + " – " + Figure.number(drawn + limit / 2),
                    Figure.number(drawn - limit) + " – " + Figure.number(drawn + limit));
        }

        static Band upTo(double limit) {
            return new Band("to " + Figure.number(limit / 2), "to " + Figure.number(limit));
        }
    }

    static RecordRow captions() {
        return new RecordRow("measure", List.of("drawn", "good", "fair", "measured", "out by, ±"), null, true);
    }

    /** @param band null for what is judged with another */
    static RecordRow of(Measure measure, @Nullable Band band, String measured, Optional<Judged> judged) {
        String drawn =
                measure.kind() == Measure.Kind.GAP ? "none" : Figure.number(Math.rint(measure.drawn() * 10) / 10);
        // a gap is what it is out by
        boolean gap = measure.kind() == Measure.Kind.GAP;
        return of(measure.title(), drawn, band, measured, judged, !gap);
    }

    /** What is reckoned from others that were measured. */
    static RecordRow reckoned(String title, Band band, Optional<Judged> judged) {
        return of(title, "", band, "", judged, true);
    }

    private static RecordRow of(
            String title, String drawn, @Nullable Band band, String measured, Optional<Judged> judged, boolean out) {
        return new RecordRow(
                title,
                List.of(
                        drawn,
                        band == null ? "" : band.good(),
                        band == null ? "" : band.fair(),
                        measured,
                        judged.filter(j -> out)
                                .map(j -> RecordSheets.off(j.off()))
                                .orElse("")),
                judged.map(j -> RecordSheets.verdict(j.band())).orElse(null),
                false);
    }

    private Type type() {
        return head ? Type.NOTE : Type.TABLE;
    }

    private static double figuresWide() {
        double all = 0;
        for (double mm : WIDE) all += Paper.points(mm);
        return all;
    }

    private List<String> lines(double width) {
        return Pen.wrapped(title, type(), width - figuresWide() - PAD);
    }

    @Override
    public double height(double width) {
        double text = lines(width).size() * type().leading();
        return head ? text + 4 : Math.max(HIGH, text + 5);
    }

    @Override
    public void draw(Pen pen, double x, double y, double width) {
        double high = height(width);
        List<String> lines = lines(width);
        double base = y + (high - lines.size() * type().leading()) / 2 + type().size();
        for (String line : lines) {
            pen.write(line, x, base, type(), head ? Ink.QUIET : Ink.INK);
            base += type().leading();
        }
        double at = x + width - figuresWide();
        double middle = y + high / 2 + type().size() * 0.36;
        for (int i = 0; i < WIDE.length; i++) {
            double wide = Paper.points(WIDE[i]);
            if (!head && i >= 3) pen.line(at, y, at, y + high, Pen.NARROW, Ink.QUIET);
            pen.writeRight(figures.get(i), at + wide - PAD, middle, type(), head ? Ink.QUIET : Ink.INK);
            at += wide;
        }
        if (!head) pen.line(x + width, y, x + width, y + high, Pen.NARROW, Ink.QUIET);
        if (verdict != null) {
            pen.g.setColor(Pen.PALETTE.of(Ink.of(verdict)));
            Sign.draw(pen.g, verdict, at - Paper.points(WIDE[4]) + PAD, middle, Type.TABLE.size() * 0.8);
        }
        pen.line(x, y + high, x + width, y + high, Pen.NARROW, Ink.QUIET);
    }

    @Override
    public boolean leads() {
        return head;
    }
}
