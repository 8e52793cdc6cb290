package org.marktwice.timber;

/** Length along the grain, width and thickness, in millimetres; all above 0. */
public record Size(double length, double width, double thickness) {
    /** @throws IllegalArgumentException where a size is not a finite number above 0 */
    public Size {
        if (!(length > 0) || !(width > 0) || !(thickness > 0) || Double.isInfinite(length + width + thickness)) {
            throw new IllegalArgumentException("sizes must be above 0: " + length + ", " + width + ", " + thickness);
        }
    }

    /** The size along a board axis: 0 = length, 1 = width, 2 = thickness. */
    public double along(int axis) {
        return switch (axis) {
            case 0 -> length;
            case 1 -> width;
            case 2 -> thickness;
            default -> throw new IllegalArgumentException("no axis " + axis);
        };
    }

    /** Whether width and thickness agree, so that the stock has four like surfaces and eight turns. */
    public boolean isSquare(double tolerance) {
        return Math.abs(width - thickness) <= tolerance;
    }

    /** The box {@code 0..length × 0..width × 0..thickness}. */
    public Box box() {
        return Box.of(0, 0, 0, length, width, thickness);
    }
}
