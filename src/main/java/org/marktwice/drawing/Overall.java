package org.marktwice.drawing;

/** The overall size of the assembled job, millimetres. */
public record Overall(double across, double deep, double high) {
    /** The size of the box around these parts. @param parts one at least */
    public static Overall around(java.util.List<Part> parts) {
        return OverallCheck.overall(parts);
    }

    public double along(JobAxis axis) {
        return switch (axis) {
            case ACROSS -> across;
            case DEEP -> deep;
            case HIGH -> high;
        };
    }
}
