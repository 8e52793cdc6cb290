package org.marktwice.drawing;

import static org.marktwice.drawing.Refusals.refused;
import static org.marktwice.timber.Figures.mm;

/** Where dowels can be bored. The two parts are known to touch. */
final class DowelChecks {
    private DowelChecks() {}

    static void check(Joint.Dowelled joint, Part in, Part takes, String where) throws DrawingRefused {
        Joint.Dowels dowels = joint.dowels();
        String at = where + ".dowels";
        Dowelling lies = Dowelling.of(joint, in, takes).orElseThrow();
        if (dowels.count() < 1) throw refused(at + ".count", "A dowelled joint has at least one dowel");
        if (!(dowels.diameter() > Drawing.TOLERANCE)) throw refused(at + ".diameter", "A dowel is thicker than 0 mm");
        if (!(dowels.length() > Drawing.TOLERANCE)) throw refused(at + ".length", "A dowel is longer than 0 mm");
        double narrow = lies.contact().extent(lies.narrow());
        if (dowels.diameter() > narrow - Drawing.TOLERANCE) {
            throw refused(
                    at + ".diameter",
                    "%s and %s touch over %s mm: a dowel of %s mm finds no wood round it there",
                    in.name(),
                    takes.name(),
                    mm(narrow),
                    mm(dowels.diameter()));
        }
        if (dowels.diameter() > lies.spacing() - Drawing.TOLERANCE) {
            throw refused(
                    at + ".count",
                    "%s and %s touch over %s mm: %d dowels of %s mm find no wood between them",
                    in.name(),
                    takes.name(),
                    mm(lies.contact().extent(lies.row())),
                    dowels.count(),
                    mm(dowels.diameter()));
        }
        for (Part part : new Part[] {in, takes}) {
            double wood = part.box().extent(lies.across());
            if (lies.depth() > wood - Drawing.TOLERANCE) {
                throw refused(
                        at + ".length",
                        "A dowel of %s mm goes %s mm into %s, which has only %s mm of wood there",
                        mm(dowels.length()),
                        mm(lies.depth()),
                        part.name(),
                        mm(wood));
            }
        }
    }
}
