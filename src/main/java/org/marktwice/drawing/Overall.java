package org.marktwice.drawing;

/** The overall size of the assembled job, millimetres. */
public record Overall(double across, double deep, double high) {
    public double along(JobAxis axis) {
        return switch (axis) {
            case ACROSS -> across;
            case DEEP -> deep;
            case HIGH -> high;
        };
    }
}
