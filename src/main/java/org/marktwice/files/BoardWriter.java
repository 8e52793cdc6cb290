package org.marktwice.files;

import java.util.LinkedHashMap;
import java.util.Map;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Species;
import org.marktwice.timber.Surface;

/** Board objects as files have them. */
final class BoardWriter {
    private BoardWriter() {}

    static Map<String, Object> board(Board board) {
        Board.Facts facts = board.facts();
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("id", facts.id());
        if (board.isSheet()) out.put("stuff", facts.stuff().id());
        Species species = facts.species();
        if (species != null) out.put("species", species.id());
        out.put("size", ScenarioWriter.size(facts.size()));
        if (!board.isSheet()) {
            out.put("planedAt", facts.planedAt());
            out.put("moisture", facts.moisture());
        }
        if (facts.dressed().size() < Surface.values().length) {
            out.put(
                    "dressed",
                    facts.dressed().stream().sorted().map(Surface::id).toList());
        }
        Pith pith = facts.pith();
        if (pith != null) out.put("pith", ScenarioWriter.pair("y", pith.y(), "z", pith.z()));
        if (!board.isSheet()) out.put("ringWidth", facts.ringWidth());
        if (!facts.knots().isEmpty())
            out.put("knots", facts.knots().stream().map(BoardWriter::knot).toList());
        if (!facts.shape().equals(Shape.TRUE)) out.put("shape", shape(facts.shape()));
        return out;
    }

    private static Map<String, Object> knot(Knot knot) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("id", knot.id());
        out.put("x", knot.x());
        out.put("azimuth", knot.azimuth());
        out.put("lean", knot.lean());
        out.put("halfAngle", knot.halfAngle());
        out.put("maxRadius", knot.maxRadius());
        if (knot.deadFrom() < Double.POSITIVE_INFINITY) out.put("deadFrom", knot.deadFrom());
        if (knot.endsAt() < Double.POSITIVE_INFINITY) out.put("endsAt", knot.endsAt());
        return out;
    }

    private static Map<String, Object> shape(Shape shape) {
        Map<String, Object> out = new LinkedHashMap<>();
        unlessZero(out, "bow", shape.bow());
        unlessZero(out, "spring", shape.spring());
        unlessZero(out, "twist", shape.twist());
        unlessZero(out, "taper", shape.taper());
        unlessZero(out, "thickening", shape.thickening());
        if (!shape.outOfSquare().isEmpty()) {
            Map<String, Object> square = new LinkedHashMap<>();
            shape.outOfSquare().keySet().stream().sorted().forEach(s -> square.put(s.id(), shape.outOfSquare(s)));
            out.put("outOfSquare", square);
        }
        return out;
    }

    private static void unlessZero(Map<String, Object> out, String name, double value) {
        if (value != 0) out.put(name, value);
    }
}
