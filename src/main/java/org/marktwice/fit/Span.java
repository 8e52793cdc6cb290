package org.marktwice.fit;

/** From the least to the greatest place of a side that may be out of line, along a job axis, millimetres. */
record Span(double low, double high) {
    static Span of(double one, double other) {
        return new Span(Math.min(one, other), Math.max(one, other));
    }

    Span and(double at) {
        return new Span(Math.min(low, at), Math.max(high, at));
    }

    double middle() {
        return (low + high) / 2;
    }

    double width() {
        return high - low;
    }
}
