package org.marktwice.picture;

import org.marktwice.timber.Surface;

/** What is pointed at on a board, and so outlined. */
public sealed interface Pointed {
    record AtSurface(Surface surface) implements Pointed {}

    record AtArris(org.marktwice.timber.Arris arris) implements Pointed {}

    record AtKnot(String knot) implements Pointed {}

    /** A face mark, line, gauge line or waste shading, by the step that made it. */
    record AtMark(int step) implements Pointed {}

    record AtName() implements Pointed {}

    /** A cut laid on the board, by its joint. */
    record AtCut(String joint) implements Pointed {}
}
