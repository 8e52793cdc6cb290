package org.marktwice.timber;

import java.util.ArrayList;
import java.util.List;

/**
 * The light under a straight-edge laid on a board's true shape. On a hollow it rests at its ends, on a rounded surface on the
 * crown, held level. Gaps are in millimetres.
 *
 * @param from where it begins: on the arris, or at the end of the board
 * @param to where it ends
 * @param gaps at places evenly spread from the one to the other, both included
 */
public record Light(SurfacePoint from, SurfacePoint to, List<Double> gaps) {
    private static final int PLACES = 49;

    public Light {
        gaps = List.copyOf(gaps);
    }

    /** Laid across a long surface at a place along the grain; across the width on an end, where {@code x} doesn't count. */
    public static Light across(TrueForm form, Surface surface, double x) {
        Board board = form.board();
        double v = board.vExtent(surface);
        if (surface.isEnd()) {
            return laid(
                    form,
                    new SurfacePoint(surface, 0, v / 2),
                    new SurfacePoint(surface, board.uExtent(surface), v / 2));
        }
        return laid(form, new SurfacePoint(surface, x, 0), new SurfacePoint(surface, x, v));
    }

    /** Laid along the middle of a long surface. */
    public static Light along(TrueForm form, Surface surface) {
        double v = form.board().vExtent(surface) / 2;
        return laid(
                form,
                new SurfacePoint(surface, 0, v),
                new SurfacePoint(surface, form.board().uExtent(surface), v));
    }

    private static Light laid(TrueForm form, SurfacePoint from, SurfacePoint to) {
        double[] above = new double[PLACES];
        double first = form.out(from);
        double last = form.out(to);
        double highest = 0;
        for (int i = 0; i < PLACES; i++) {
            double share = i / (PLACES - 1.0);
            above[i] = form.out(between(from, to, share)) - (first + (last - first) * share);
            highest = Math.max(highest, above[i]);
        }
        List<Double> gaps = new ArrayList<>();
        for (double height : above) gaps.add(Math.max(0, highest - height));
        return new Light(from, to, gaps);
    }

    private static SurfacePoint between(SurfacePoint a, SurfacePoint b, double share) {
        return new SurfacePoint(a.surface(), a.u() + (b.u() - a.u()) * share, a.v() + (b.v() - a.v()) * share);
    }

    /** The place so much of the way along it, 0 to 1. */
    public SurfacePoint at(double share) {
        return between(from, to, share);
    }

    /** The widest gap. */
    public double widest() {
        return gaps.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }

    /** How far along it the widest gap is, 0 to 1; where it is as wide twice, the first. */
    public double worst() {
        return gaps.indexOf(widest()) / (PLACES - 1.0);
    }
}
