package org.marktwice.picture;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Box;

/**
 * One view of a joint's surroundings: the two parts as far as a window reaches, in the view's millimetres.
 *
 * @param broken where parts go on past the window
 * @param extent the window as the view shows it
 */
record Closeup(
        JobAxis looking,
        Linework lines,
        List<Line2D.Double> broken,
        Bores bores,
        Rectangle2D extent,
        List<JointSize> sizes) {
    private static final double SAME = 0.02;

    static Closeup of(
            Drawing drawing,
            List<Part> parts,
            Box window,
            JobAxis looking,
            WorkingDrawing.Method method,
            List<JointSize> sizes) {
        JobView view = JobView.along(looking, method);
        List<PartSolid> solids = parts.stream()
                .map(p -> PartSolid.unbored(drawing, p).within(window))
                .toList();
        Map<String, Rectangle2D> whole = new HashMap<>();
        for (Part p : parts) whole.put(p.id(), view.bounds(List.of(p.box())));
        Rectangle2D extent = view.bounds(List.of(window));
        Linework all = Linework.of(solids, view);
        List<Linework.Piece> seen = new ArrayList<>();
        Map<String, List<Line2D.Double>> broken = new LinkedHashMap<>();
        for (Linework.Piece p : all.seen()) {
            String side = side(p, extent, whole);
            if (side.isEmpty()) seen.add(p);
            else breakOff(broken.computeIfAbsent(side, k -> new ArrayList<>()), p.line());
        }
        List<Linework.Piece> hidden = all.hidden().stream()
                .filter(p -> side(p, extent, whole).isEmpty())
                .toList();
        return new Closeup(
                looking,
                new Linework(List.copyOf(seen), hidden),
                broken.values().stream().flatMap(List::stream).toList(),
                Bores.of(drawing, view).within(extent),
                extent,
                sizes.stream().filter(s -> s.looking() == looking).toList());
    }

    /** The side of the window at which this piece only shows where its part was broken off; empty for a true edge. */
    private static String side(Linework.Piece piece, Rectangle2D window, Map<String, Rectangle2D> whole) {
        Line2D.Double l = piece.line();
        Rectangle2D part = whole.get(piece.part());
        if (part == null) return "";
        if (Math.abs(l.x1 - l.x2) < SAME) {
            if (Math.abs(l.x1 - window.getMinX()) < SAME && part.getMinX() < window.getMinX() - SAME) return " left";
            if (Math.abs(l.x1 - window.getMaxX()) < SAME && part.getMaxX() > window.getMaxX() + SAME) return " right";
        }
        if (Math.abs(l.y1 - l.y2) < SAME) {
            if (Math.abs(l.y1 - window.getMinY()) < SAME && part.getMinY() < window.getMinY() - SAME) return " top";
            if (Math.abs(l.y1 - window.getMaxY()) < SAME && part.getMaxY() > window.getMaxY() + SAME) return " foot";
        }
        return "";
    }

    /** Adds a piece to those of a side that is broken off; what overlaps is one piece. */
    private static void breakOff(List<Line2D.Double> pieces, Line2D.Double added) {
        Rectangle2D all = added.getBounds2D();
        for (Line2D.Double piece : List.copyOf(pieces)) {
            Rectangle2D b = piece.getBounds2D();
            double common = Math.min(all.getMaxX(), b.getMaxX()) - Math.max(all.getMinX(), b.getMinX());
            double high = Math.min(all.getMaxY(), b.getMaxY()) - Math.max(all.getMinY(), b.getMinY());
            if (Math.max(common, high) <= SAME) continue;
            pieces.remove(piece);
            all.add(b);
        }
        pieces.add(new Line2D.Double(all.getMinX(), all.getMinY(), all.getMaxX(), all.getMaxY()));
    }

    /** Its sizes along the page's right (or up), the shortest first. */
    List<JointSize> sizes(boolean level) {
        JobAxis right = looking == JobAxis.ACROSS ? JobAxis.DEEP : JobAxis.ACROSS;
        return sizes.stream()
                .filter(s -> (s.axis() == right) == level)
                .sorted(Comparator.comparingDouble(JointSize::length))
                .toList();
    }
}
