package org.marktwice.view.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.bench.Pairing;
import org.marktwice.bench.Tool;
import org.marktwice.bench.ToolReading;
import org.marktwice.fit.TrueLine;
import org.marktwice.timber.Light;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.TrueForm;

/** Something that lies over the board while it is being worked on, in surface millimetres; each view draws it in its own way. */
public sealed interface Overlay {
    /** A mark as it would be made. */
    record GhostMark(Mark.Kind kind, Surface on, Surface towards) implements Overlay {}

    /** A part's name as it would be written. */
    record GhostName(String name, SurfacePoint at) implements Overlay {}

    /** The steel rule from one point to another of the same surface. @param says what it reads; empty where that stands elsewhere */
    record RuleLaid(SurfacePoint from, SurfacePoint to, String says) implements Overlay {
        RuleLaid(SurfacePoint from, SurfacePoint to) {
            this(from, to, Reading.mm(ToolReading.of(from, to)));
        }
    }

    /** The end of the rule before it is laid, and what it takes to. */
    record RuleEnd(Snap at) implements Overlay {}

    /**
     * A tool laid to be read.
     *
     * @param test how it is laid
     * @param stock the surface that a try-square's stock bears on
     * @param pith where the arcs of the end grain lead to; null for the other tools, and in sheet stuff
     * @param light the light under a straight-edge; null for the others
     * @param reads what it reads, as {@link ToolReading#of}
     * @param says the same in a few words; empty until it is laid
     */
    record ToolLaid(
            Action.Test test,
            Surface stock,
            @Nullable Pith pith,
            @Nullable Light light,
            double reads,
            String says) implements Overlay {
        static ToolLaid of(BoardState state, Action.Test test, boolean laid) {
            return new ToolLaid(
                    test,
                    ToolReading.stock(state, test),
                    test.with() == Tool.END_GRAIN ? state.board().facts().pith() : null,
                    test.with() == Tool.STRAIGHT_EDGE ? light(state, test) : null,
                    ToolReading.of(state, test).orElse(0),
                    laid ? Reading.inShort(state, test) : "");
        }

        private static Light light(BoardState state, Action.Test test) {
            TrueForm form = TrueForm.now(state.board());
            Double at = test.at();
            return at == null && !test.on().isEnd()
                    ? Light.along(form, test.on())
                    : Light.across(form, test.on(), at == null ? 0 : at);
        }

        boolean isLaid() {
            return !says.isEmpty();
        }
    }

    /**
     * The try-square laid to strike a line.
     *
     * @param lands the line as it would really lie
     * @param side on which side of the line the blade lies along the grain, +1 or −1
     * @param says how it is measured
     */
    record SquareLaid(TrueLine lands, int side, boolean knife, String says) implements Overlay {}

    /** The marking gauge laid. @param at where along its line; @param says what it is set to */
    record GaugeLaid(TrueLine lands, SurfacePoint at, String says) implements Overlay {}

    /** Another board held in place. @param from where its near side is, along the grain */
    record MateLaid(TrueLine lands, double from, boolean knife, String says) implements Overlay {}

    /**
     * The other board of a pair.
     *
     * @param there its size
     * @param made whether it lies in the cramp, or would
     */
    record PairLaid(Pairing pairing, Size there, boolean made, String says) implements Overlay {
        static PairLaid of(Bench bench, Pairing pairing, boolean made) {
            Size there = bench.board(pairing.there()).board().size();
            return new PairLaid(pairing, there, made, (made ? "in the cramp: board " : "board ") + pairing.there());
        }
    }

    /** A line picked out. */
    record LinePicked(TrueLine line) implements Overlay {}

    /** Waste that would be shaded. */
    record WastePicked(List<SurfacePoint> outline) implements Overlay {
        public WastePicked {
            outline = List.copyOf(outline);
        }
    }

    /** The outline of a whole surface. */
    record SurfacePicked(Surface surface) implements Overlay {}

    /** The place that keys move. */
    record CaretAt(SurfacePoint at) implements Overlay {}

    /** Pencil picked out for rubbing. */
    record PencilPicked(Pencil pencil) implements Overlay {}
}
