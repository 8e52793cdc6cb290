package org.marktwice.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.marktwice.advice.Option;
import org.marktwice.classroom.Laying;
import org.marktwice.classroom.RackAllotment;
import org.marktwice.classroom.RackAllotment.Check;
import org.marktwice.drawing.Placing;
import org.marktwice.picture.Ink;

/** Labels to stick on a rack's boards: whose it is, what it becomes, how it is marked, trimmed and laid. */
public final class LabelSheet {
    private static final int ACROSS = 2;
    private static final int DOWN = 7;
    private static final double PAD = Paper.points(4);
    private static final double INCH = 72;

    /**
     * Where labels lie on a sheet of self-adhesive ones, fourteen to the sheet, as such sheets are commonly divided; points.
     *
     * @param gap between the two columns; the rows touch
     */
    private record Division(double wide, double high, double gap) {
        static Division of(Paper paper) {
            return switch (paper) {
                case A4 -> new Division(Paper.points(99.1), Paper.points(38.1), Paper.points(2.5));
                case LETTER -> new Division(4 * INCH, 4 * INCH / 3, 3 * INCH / 16);
            };
        }

        Rectangle2D place(Paper paper, int i) {
            double left = (paper.width(false) - ACROSS * wide - (ACROSS - 1) * gap) / 2;
            double top = (paper.height(false) - DOWN * high) / 2;
            return new Rectangle2D.Double(left + i % ACROSS * (wide + gap), top + i / ACROSS * high, wide, high);
        }
    }

    private LabelSheet() {}

    /** @param names whose job each is; one a job */
    public static List<Page> of(RackAllotment allotment, List<String> names, Paper paper) {
        List<Label> labels = new ArrayList<>();
        for (int job = 0; job < names.size(); job++) {
            for (Option option : allotment.jobs().get(job).placings()) {
                labels.add(label(allotment, names.get(job), option));
            }
        }
        List<Page> pages = new ArrayList<>();
        for (int from = 0; from < labels.size(); from += ACROSS * DOWN) {
            List<Label> own = labels.subList(from, Math.min(labels.size(), from + ACROSS * DOWN));
            pages.add(new Page(paper.width(false), paper.height(false), g -> draw(new Pen(g), paper, own)));
        }
        return List.copyOf(pages);
    }

    /** @param warning of what has to be looked at before anything is cut; empty where nothing has */
    private record Label(String board, String part, String job, List<String> lines, String warning) {}

    private static Label label(RackAllotment allotment, String name, Option option) {
        Placing placing = option.placing();
        Laying laying = Laying.of(placing);
        List<String> lines = new ArrayList<>();
        lines.add(capital(laying.marks()));
        lines.add(capital(laying.lies()) + "; " + Laying.trimmed(placing));
        return new Label(
                placing.board().id(),
                placing.part().name(),
                allotment.scenario().title() + " · " + name,
                lines,
                warning(allotment, option));
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private static String warning(RackAllotment allotment, Option option) {
        List<String> knots = allotment.checks().stream()
                .filter(c ->
                        c.option().placing().board().equals(option.placing().board()))
                .map(Check::fit)
                .map(f -> f.knot().id())
                .toList();
        if (!knots.isEmpty()) return "Measure again before cutting: knot " + String.join(", ", knots);
        if (option.clear()) return "";
        return option.nearest()
                .map(n -> String.format(
                        Locale.ROOT, "Not clear: knot %s is %.1f mm from %s", n.knot(), n.clearance(), n.joint()))
                .orElse("");
    }

    private static void draw(Pen pen, Paper paper, List<Label> labels) {
        Division division = Division.of(paper);
        for (int i = 0; i < labels.size(); i++) {
            Rectangle2D place = division.place(paper, i);
            pen.box(place, Pen.NARROW, Ink.BORDER);
            draw(pen, place, labels.get(i));
        }
    }

    private static void draw(Pen pen, Rectangle2D place, Label label) {
        double x = place.getX() + PAD;
        double right = place.getMaxX() - PAD;
        double width = right - x;
        double y = place.getY() + PAD + Type.TITLE.size();
        pen.writeRight(label.board(), right, y, Type.TITLE, Ink.INK);
        double room = width - Type.TITLE.width(label.board()) - PAD;
        pen.write(Pen.cut(label.part(), Type.TITLE, room), x, y, Type.TITLE, Ink.INK);
        y += Type.BODY.leading() + 2;
        pen.write(Pen.cut(label.job(), Type.BODY, width), x, y, Type.BODY, Ink.QUIET);
        y += 5;
        pen.line(x, y, right, y, Pen.NARROW, Ink.BORDER);
        y += 1;
        for (String line : label.lines()) {
            for (String part : Pen.wrapped(line, Type.BODY, width)) {
                y += Type.BODY.leading();
                pen.write(part, x, y, Type.BODY, Ink.INK);
            }
        }
        if (label.warning().isEmpty()) return;
        y += 2;
        for (String part : Pen.wrapped(label.warning(), Type.STRONG, width)) {
            y += Type.STRONG.leading();
            pen.write(part, x, y, Type.STRONG, Ink.WRONG);
        }
    }
}
