package org.marktwice.timber;

import java.util.List;
import java.util.Locale;

/**
 * What shape a knot shows on a surface, by how its longest diameter compares with its shortest: EN 844-9, terms for sawn
 * timber; the two limits are from memory.
 */
public enum KnotKind {
    /** Cut nearly square to the branch. */
    ROUND(1.5),
    OVAL(4),
    /** Cut along the branch, or nearly so; in North America a spike knot. */
    SPLAY(Double.POSITIVE_INFINITY);

    private final double upTo;

    KnotKind(double upTo) {
        this.upTo = upTo;
    }

    /** The kind of the outline as it is exposed: of a knot cut through by an arris, no more than this surface shows. */
    public static KnotKind of(Trace trace) {
        double ratio = ratio(trace.outline());
        for (KnotKind kind : values()) if (ratio <= kind.upTo) return kind;
        return SPLAY;
    }

    /** The longest diameter of a convex outline as a multiple of the shortest, both between parallel lines that touch it. */
    static double ratio(List<SurfacePoint> outline) {
        double longest = 0;
        double shortest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < outline.size(); i++) {
            SurfacePoint a = outline.get(i);
            SurfacePoint b = outline.get((i + 1) % outline.size());
            double side = Math.hypot(b.u() - a.u(), b.v() - a.v());
            double across = 0;
            for (SurfacePoint p : outline) {
                longest = Math.max(longest, Math.hypot(p.u() - a.u(), p.v() - a.v()));
                double off = (b.u() - a.u()) * (p.v() - a.v()) - (b.v() - a.v()) * (p.u() - a.u());
                across = Math.max(across, Math.abs(off) / side);
            }
            // The shortest diameter of a convex polygon is square to one of its sides (Shamos, 1978).
            shortest = Math.min(shortest, across);
        }
        return longest / shortest;
    }

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
