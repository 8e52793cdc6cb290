package org.marktwice.timber;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A board's cross-section as it stands at some moisture, after it was planed true at its {@code planedAt}: the
 * stress-free map about the pith, {@code r → a·r}, {@code θ → (b/a)·θ}, with a and b the ratios of the radial and
 * tangential sizes.
 */
public final class Seasoned {
    private Seasoned() {}

    public static Seasoned of(Board board, double moisture) {
        return new Seasoned();
    }

    /** The board at the moisture that it has now. */
    public static Seasoned now(Board board) {
        return of(board, board.facts().moisture());
    }

    public double moisture() {
        throw new UnsupportedOperationException();
    }

    /** Whether the section contains the pith, so that no stress-free map exists: expect a check. */
    public boolean boxedHeart() {
        throw new UnsupportedOperationException();
    }

    /** Width now at mid-thickness, in millimetres; empty with a boxed heart. */
    public OptionalDouble width() {
        throw new UnsupportedOperationException();
    }

    /** Thickness now at mid-width, in millimetres; empty with a boxed heart. */
    public OptionalDouble thickness() {
        throw new UnsupportedOperationException();
    }

    /** The deepest departure from a straight-edge laid across a face: + hollow, − rounded, millimetres; empty with a boxed heart; 0 for sheet stuff. */
    public OptionalDouble cup(Surface face) {
        throw new UnsupportedOperationException();
    }

    /** The same over a part of the face only, between two positions across the width (board y, millimetres). */
    public OptionalDouble cup(Surface face, double from, double to) {
        throw new UnsupportedOperationException();
    }

    /** The face that looks away from the pith; empty for sheet stuff, or where neither does. */
    public static Optional<Surface> barkSide(Board board) {
        throw new UnsupportedOperationException();
    }
}
