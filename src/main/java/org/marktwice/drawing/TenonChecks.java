package org.marktwice.drawing;

import static org.marktwice.drawing.Refusals.refused;
import static org.marktwice.timber.Figures.mm;

import org.marktwice.timber.Box;

/** Where a mortise and tenon can be cut. */
final class TenonChecks {
    private static final double TOLERANCE = Drawing.TOLERANCE;

    private final Mortising of;
    private final Part in;
    private final Part takes;
    private final Box overlap;
    private final Joint.Tenon tenon;
    private final String where;

    private TenonChecks(Mortising of, String where) {
        this.of = of;
        this.in = of.in();
        this.takes = of.takes();
        this.overlap = of.overlap();
        this.tenon = of.joint().tenon();
        this.where = where;
    }

    static void check(Mortising of, String where) throws DrawingRefused {
        TenonChecks checks = new TenonChecks(of, where);
        checks.lies();
        checks.thickness();
        checks.width();
        checks.haunch();
    }

    private void lies() throws DrawingRefused {
        if (in.length() == takes.length()) {
            throw refused(
                    where,
                    "The lengths of %s and %s both run %s: a tenon enters across the grain of the mortised part",
                    in.name(),
                    takes.name(),
                    in.length().id());
        }
        Reach end = Reach.of(overlap, takes.box(), of.entering());
        if (end != Reach.ONE_SIDE) {
            throw refused(
                    where,
                    "The tenon is cut on an end of %s, and this overlap %s",
                    takes.name(),
                    end == Reach.INSIDE ? "reaches none" : "is all of its length");
        }
        for (int axis : new int[] {of.along(), of.through()}) {
            if (Reach.of(overlap, takes.box(), axis) == Reach.THROUGH) continue;
            throw refused(
                    where,
                    "%s meets %s over %s mm of its %s mm %s: all of its section stands on the mortised part",
                    takes.name(),
                    in.name(),
                    mm(overlap.extent(axis)),
                    mm(takes.box().extent(axis)),
                    JobAxis.values()[axis].id());
        }
    }

    private void thickness() throws DrawingRefused {
        double part = takes.box().extent(of.through());
        double thick = tenon.thickness();
        if (!(thick > TOLERANCE)) throw refused(where + ".tenon.thickness", "A tenon is thicker than 0 mm");
        if (thick > part + TOLERANCE) {
            throw refused(
                    where + ".tenon.thickness",
                    "A tenon of %s mm is thicker than %s, which is %s mm",
                    mm(thick),
                    takes.name(),
                    mm(part));
        }
        Box box = of.tenon();
        if (Reach.of(box, in.box(), of.through()) != Reach.INSIDE) {
            throw refused(
                    where + ".tenon.thickness",
                    "A mortise of %s mm leaves no cheeks on both sides of it in %s, which is %s mm %s",
                    mm(thick),
                    in.name(),
                    mm(in.box().extent(of.through())),
                    JobAxis.values()[of.through()].id());
        }
    }

    private void width() throws DrawingRefused {
        double part = overlap.extent(of.along());
        Double inset = tenon.inset();
        double taken = tenon.width() + (inset == null ? 0 : inset);
        if (!(tenon.width() > TOLERANCE)) throw refused(where + ".tenon.width", "A tenon is wider than 0 mm");
        if (inset != null && !(inset >= 0)) throw refused(where + ".tenon.inset", "An inset is 0 mm or more");
        if (taken > part + TOLERANCE) {
            throw refused(
                    where + ".tenon.width",
                    "A tenon of %s mm%s is wider than %s, which is %s mm",
                    mm(tenon.width()),
                    inset == null || inset == 0 ? "" : ", set in by " + mm(inset) + " mm,",
                    takes.name(),
                    mm(part));
        }
        if (Reach.of(of.tenon(), in.box(), of.along()) != Reach.INSIDE) {
            throw refused(
                    where + ".tenon" + (inset == null ? "" : ".inset"),
                    "The mortise would come out at the end of %s: set the tenon in, or make it a bridle",
                    in.name());
        }
    }

    private void haunch() throws DrawingRefused {
        Joint.Haunch haunch = of.joint().haunch();
        if (haunch == null) return;
        String at = where + ".haunch";
        Double inset = tenon.inset();
        if (inset == null || inset <= TOLERANCE) {
            throw refused(at, "A haunch stands beside a tenon that is set in: give the tenon an inset");
        }
        double tenonLength = overlap.extent(of.entering());
        if (!(haunch.length() > TOLERANCE) || haunch.length() >= tenonLength - TOLERANCE) {
            throw refused(
                    at + ".length",
                    "A haunch is shorter than its tenon, which is %s mm long, and longer than 0; this one is %s mm",
                    mm(tenonLength),
                    mm(haunch.length()));
        }
    }
}
