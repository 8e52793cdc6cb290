package org.marktwice.view.bench;

import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Mark;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** Something that lies over the board while it is being worked on, in surface millimetres; each view draws it in its own way. */
public sealed interface Overlay {
    /** A mark as it would be made. */
    record GhostMark(Mark.Kind kind, Surface on, Surface towards) implements Overlay {}

    /** A part's name as it would be written. */
    record GhostName(String name, SurfacePoint at) implements Overlay {}

    /** The steel rule from one point to another of the same surface. */
    record RuleLaid(SurfacePoint from, SurfacePoint to) implements Overlay {}

    /** The end of the rule before it is laid, and what it takes to. */
    record RuleEnd(Snap at) implements Overlay {}

    /** A straight-edge; {@code at} is null where it lies along the board. */
    record StraightEdge(Surface on, @Nullable Double at) implements Overlay {}

    record WindingSticks(Surface on) implements Overlay {}

    /** A try-square, its stock on one surface and its blade on the other, at a position along the grain. */
    record TrySquare(Surface stock, Surface blade, double at) implements Overlay {}

    /** The outline of a whole surface. */
    record SurfacePicked(Surface surface) implements Overlay {}

    /** The place that keys move. */
    record CaretAt(SurfacePoint at) implements Overlay {}

    /** Pencil picked out for rubbing. */
    record PencilPicked(Pencil pencil) implements Overlay {}
}
