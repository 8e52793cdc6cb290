package org.marktwice.drawing;

import static org.marktwice.drawing.Refusals.refused;
import static org.marktwice.timber.Figures.mm;

import org.marktwice.timber.Board;
import org.marktwice.timber.Box;

/** Where the joints of frames can be cut: halvings and bridles. */
final class FrameChecks {
    private FrameChecks() {}

    static void halving(Part in, Part takes, Box overlap, Direction from, String where) throws DrawingRefused {
        for (Part part : new Part[] {in, takes}) {
            if (part.length().ordinal() == from.axis()) {
                throw refused(
                        where + ".from",
                        "The length of %s runs %s: a halving is shared across it",
                        part.name(),
                        part.length().id());
            }
        }
        open(in, overlap, from, where);
        open(takes, overlap, from.opposite(), where);
    }

    /** A halving can be sawn only where it comes out on the part's surface. */
    private static void open(Part part, Box overlap, Direction from, String where) throws DrawingRefused {
        Box box = part.box();
        int axis = from.axis();
        double beneath = from.sign() > 0 ? box.max(axis) - overlap.max(axis) : overlap.min(axis) - box.min(axis);
        if (beneath > Drawing.TOLERANCE) {
            throw refused(
                    where + ".from",
                    "The half that %s loses lies %s mm below its %s surface: it must come out there",
                    part.name(),
                    mm(beneath),
                    from.id());
        }
    }

    static void bridle(Part in, Part takes, Box overlap, String where) throws DrawingRefused {
        if (in.length() == takes.length()) {
            throw refused(
                    where,
                    "The lengths of %s and %s both run %s: a bridle joins parts that cross",
                    in.name(),
                    takes.name(),
                    in.length().id());
        }
        int thirds = 3 - in.length().ordinal() - takes.length().ordinal();
        for (Part part : new Part[] {in, takes}) {
            if (part.thickness().ordinal() != thirds && !part.size().isSquare(Board.SIZE_TOLERANCE)) {
                throw refused(
                        where,
                        "The thickness of %s runs %s: a bridle shares it in thirds, so it runs %s in both parts",
                        part.name(),
                        part.thickness().id(),
                        JobAxis.values()[thirds].id());
            }
            if (Reach.of(overlap, part.box(), thirds) != Reach.THROUGH) {
                throw refused(
                        where,
                        "%s is %s mm thick, but the overlap only %s mm: the parts of a bridle lie flush on both sides",
                        part.name(),
                        mm(part.box().extent(thirds)),
                        mm(overlap.extent(thirds)));
            }
        }
        slot(in, takes, overlap, where);
    }

    private static void slot(Part in, Part takes, Box overlap, String where) throws DrawingRefused {
        int along = in.length().ordinal();
        if (Reach.of(overlap, in.box(), along) == Reach.INSIDE) {
            throw refused(
                    where,
                    "%s is slotted at its end, but the overlap does not reach one: a bridle is not at an end",
                    in.name());
        }
        if (Reach.of(overlap, in.box(), takes.length().ordinal()) != Reach.THROUGH) {
            throw refused(
                    where,
                    "The slot of a bridle runs through the whole width of %s; this overlap runs over %s mm of %s mm",
                    in.name(),
                    mm(overlap.extent(takes.length().ordinal())),
                    mm(in.box().extent(takes.length().ordinal())));
        }
        if (Reach.of(overlap, takes.box(), along) != Reach.THROUGH) {
            throw refused(
                    where,
                    "%s is %s mm wide where the bridle is, but the slot in %s is only %s mm deep",
                    takes.name(),
                    mm(takes.box().extent(along)),
                    in.name(),
                    mm(overlap.extent(along)));
        }
    }
}
