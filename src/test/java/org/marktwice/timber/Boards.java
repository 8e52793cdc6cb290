package org.marktwice.timber;

import java.util.EnumSet;
import java.util.List;

/** Boards for the tests of this package. */
final class Boards {
    private Boards() {}

    static Knot knot(double x, double azimuth, double lean, double halfAngle, double maxRadius) {
        return knot(x, azimuth, lean, halfAngle, maxRadius, Double.POSITIVE_INFINITY);
    }

    static Knot knot(double x, double azimuth, double lean, double halfAngle, double maxRadius, double endsAt) {
        return new Knot("k", x, azimuth, lean, halfAngle, maxRadius, 60, endsAt);
    }

    static Board timber(Size size, Pith pith, Knot... knots) {
        return timber("scots-pine", size, 16, 11, pith, Shape.TRUE, knots);
    }

    static Board timber(
            String species, Size size, double planedAt, double moisture, Pith pith, Shape shape, Knot... knots) {
        return Board.of(new Board.Facts(
                "A",
                Stuff.TIMBER,
                SpeciesTable.byId(species).orElseThrow(),
                size,
                planedAt,
                moisture,
                EnumSet.allOf(Surface.class),
                pith,
                2.5,
                List.of(knots),
                shape,
                1));
    }

    static Board sheet(Size size) {
        return Board.of(new Board.Facts(
                "S", Stuff.SHEET, null, size, 0, 0, EnumSet.allOf(Surface.class), null, 0, List.of(), Shape.TRUE, 1));
    }

    /** The part of one knot inside a board of this size. */
    static KnotBody body(Size size, Pith pith, Knot knot) {
        return KnotBody.of(knot, timber(size, pith, knot).facts());
    }
}
