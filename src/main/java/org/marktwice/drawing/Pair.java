package org.marktwice.drawing;

/**
 * Two opposite parts, each the mirror image of the other, cuts and all.
 *
 * @param across the axis along which they are mirrored
 */
public record Pair(Part one, Part other, JobAxis across) {}
