package org.marktwice.drawing;

import static org.marktwice.drawing.Refusals.refused;
import static org.marktwice.timber.Figures.mm;

import org.marktwice.timber.Board;
import org.marktwice.timber.Box;

/** Where housings can be cut. */
final class HousingChecks {
    private HousingChecks() {}

    static void through(Part in, Box overlap, String what, String where) throws DrawingRefused {
        Box box = in.box();
        int deep = housingDepth(in, overlap);
        if (Reach.of(overlap, box, deep) != Reach.ONE_SIDE) {
            throw refused(
                    where,
                    "A housing lies in a face of %s and is less deep than its thickness of %s mm; this overlap is %s",
                    in.name(),
                    mm(in.size().thickness()),
                    mm(overlap));
        }
        int length = in.length().ordinal();
        int across = 3 - deep - length;
        Reach along = Reach.of(overlap, box, length);
        Reach over = Reach.of(overlap, box, across);
        // sheet stuff has no grain that a housing would have to run across
        boolean through = over == Reach.THROUGH || (in.stuff() == PartStuff.SHEET && along == Reach.THROUGH);
        if (!through) {
            throw refused(
                    where,
                    "%s runs from edge to edge of %s, which is %s mm; this overlap runs over %s mm",
                    what,
                    in.name(),
                    mm(box.extent(across)),
                    mm(overlap.extent(across)));
        }
        Reach beside = over == Reach.THROUGH ? along : over;
        if (beside != Reach.INSIDE) {
            throw refused(
                    where,
                    "A housing has wood of %s on both sides; this overlap reaches its end, which makes it a rebate",
                    in.name());
        }
    }

    /** The axis along which a housing is deep: the thickness, or of square stock whichever the overlap enters from one side. */
    private static int housingDepth(Part in, Box overlap) {
        int thickness = in.thickness().ordinal();
        int width = in.width().ordinal();
        boolean square = in.size().isSquare(Board.SIZE_TOLERANCE);
        boolean fromWidth = Reach.of(overlap, in.box(), width) == Reach.ONE_SIDE;
        return square && fromWidth && Reach.of(overlap, in.box(), thickness) != Reach.ONE_SIDE ? width : thickness;
    }

    /** A housing that would run through, were it not stopped. */
    static void stopped(Joint.StoppedHousing joint, Part in, Part takes, Box overlap, String where)
            throws DrawingRefused {
        through(in, overlap, "A stopped housing", where);
        int over = 3 - housingDepth(in, overlap) - in.length().ordinal();
        Direction at = joint.at();
        if (at.axis() != over && Reach.of(overlap, in.box(), at.axis()) != Reach.THROUGH) {
            throw refused(
                    where + ".stops.at",
                    "The housing in %s runs %s: it stops %s or %s, not %s",
                    in.name(),
                    JobAxis.values()[over].id(),
                    Direction.on(over, -1).id(),
                    Direction.on(over, +1).id(),
                    at.id());
        }
        double runs = overlap.extent(at.axis());
        if (!(joint.mm() > Drawing.TOLERANCE)) {
            throw refused(where + ".stops.mm", "A stop of %s mm is none: make it a through housing", mm(joint.mm()));
        }
        if (!(joint.mm() < runs - Drawing.TOLERANCE)) {
            throw refused(
                    where + ".stops.mm",
                    "The housing in %s runs over %s mm: stopped %s mm short of its %s edge nothing is left for %s",
                    in.name(),
                    mm(runs),
                    mm(joint.mm()),
                    at.id(),
                    takes.name());
        }
    }
}
