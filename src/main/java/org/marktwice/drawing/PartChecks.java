package org.marktwice.drawing;

import static org.marktwice.drawing.Refusals.refused;
import static org.marktwice.timber.Figures.mm;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.marktwice.timber.Board;

/** What must hold of each part by itself. */
final class PartChecks {
    private PartChecks() {}

    static void check(List<Part> parts) throws DrawingRefused {
        if (parts.isEmpty()) throw refused("parts", "A drawing needs at least one part");
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            String where = "parts[" + i + "]";
            if (!ids.add(part.id())) throw refused(where + ".id", "Two parts have the id \"%s\"", part.id());
            check(part, where);
        }
    }

    /** What is wrong with a part by itself; empty where nothing is. */
    static Optional<DrawingRefused> refusal(Part part, String where) {
        try {
            check(part, where);
            return Optional.empty();
        } catch (DrawingRefused e) {
            return Optional.of(e);
        }
    }

    private static void check(Part part, String where) throws DrawingRefused {
        lies(part, where);
        if (part.takesMarks()) {
            marks(part, where);
        } else if (!part.faceSide().isEmpty() || !part.faceEdge().isEmpty()) {
            String list = part.faceSide().isEmpty() ? ".faceEdge" : ".faceSide";
            throw refused(
                    where + list,
                    "%s is %s and takes no face marks",
                    part.name(),
                    part.stuff() == PartStuff.SHEET ? "sheet stuff" : "to be shaped");
        }
    }

    private static void lies(Part part, String where) throws DrawingRefused {
        if (part.length() == part.width()) {
            throw refused(
                    where + ".runs",
                    "Length and width of %s both run %s: they need an axis each",
                    part.name(),
                    part.length().id());
        }
        if (!part.at().isFinite()) throw refused(where + ".at", "%s needs three finite numbers here", part.name());
        double width = part.size().width();
        double thickness = part.size().thickness();
        if (width < thickness && !part.size().isSquare(Board.SIZE_TOLERANCE)) {
            throw refused(
                    where + ".size",
                    "%s is %s mm wide and %s mm thick: the width is the greater of the two",
                    part.name(),
                    mm(width),
                    mm(thickness));
        }
    }

    private static void marks(Part part, String where) throws DrawingRefused {
        boolean square = part.size().isSquare(Board.SIZE_TOLERANCE);
        Set<JobAxis> side = square ? Set.of(part.thickness(), part.width()) : Set.of(part.thickness());
        Set<JobAxis> edge = square ? Set.of(part.thickness(), part.width()) : Set.of(part.width());
        looks(part, "face side", part.faceSide(), side, where + ".faceSide");
        looks(part, "face edge", part.faceEdge(), edge, where + ".faceEdge");
        for (Direction s : part.faceSide()) {
            for (Direction e : part.faceEdge()) {
                if (s.axis() == e.axis()) {
                    throw refused(
                            where + ".faceEdge",
                            "Face side %s and face edge %s of %s do not lie square to each other",
                            s.id(),
                            e.id(),
                            part.name());
                }
            }
        }
    }

    private static void looks(Part part, String mark, List<Direction> given, Set<JobAxis> axes, String where)
            throws DrawingRefused {
        String allowed = Stream.of(Direction.values())
                .filter(d -> axes.contains(JobAxis.values()[d.axis()]))
                .map(Direction::id)
                .collect(Collectors.joining(" or "));
        if (given.isEmpty()) {
            throw refused(where, "%s is timber: say where its %s looks, %s", part.name(), mark, allowed);
        }
        Set<Direction> seen = new HashSet<>();
        for (Direction d : given) {
            if (!axes.contains(JobAxis.values()[d.axis()])) {
                throw refused(where, "The %s of %s looks %s, not %s", mark, part.name(), allowed, d.id());
            }
            if (!seen.add(d)) throw refused(where, "The %s of %s is given %s twice", mark, part.name(), d.id());
        }
    }
}
