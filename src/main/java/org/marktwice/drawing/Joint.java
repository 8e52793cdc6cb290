package org.marktwice.drawing;

import org.jspecify.annotations.Nullable;

/** Where two parts' boxes overlap (or, for a butt, touch). The kind says how the overlap is shared out as cuts. */
public sealed interface Joint {
    String id();

    /** The part the joint is cut into. */
    String in();

    /** The part it takes. */
    String takes();

    /** The kind's name in files. */
    String kind();

    /** What it is called in a sentence. */
    default String noun() {
        return switch (kind()) {
            case "through-housing" -> "housing";
            case "butt", "dowelled" -> kind() + " joint";
            case "mortise-tenon" -> "mortise and tenon";
            default -> kind().replace('-', ' ');
        };
    }

    /** The whole overlap is taken out of {@link #in()}; it runs from edge to edge. */
    record ThroughHousing(String id, String in, String takes) implements Joint {
        @Override
        public String kind() {
            return "through-housing";
        }
    }

    /**
     * A housing that stops short of an edge so that it doesn't show there: {@link #in()} loses the overlap less the stop,
     * {@link #takes()} is notched by the overlap within the stop.
     *
     * @param at the edge of {@link #in()} at which it stops
     * @param mm how far short of that edge
     */
    record StoppedHousing(String id, String in, String takes, Direction at, double mm) implements Joint {
        @Override
        public String kind() {
            return "stopped-housing";
        }
    }

    /** The whole overlap is taken out of {@link #in()}, at its end or along its edge. */
    record Rebate(String id, String in, String takes) implements Joint {
        @Override
        public String kind() {
            return "rebate";
        }
    }

    /** {@link #in()} loses the half of the overlap that lies towards {@code from}, {@link #takes()} the other half. */
    record Halving(String id, String in, String takes, Direction from) implements Joint {
        @Override
        public String kind() {
            return "halving";
        }
    }

    /** {@link #in()} is slotted at its end by the middle third of its thickness, {@link #takes()} loses the outer thirds. */
    record Bridle(String id, String in, String takes) implements Joint {
        @Override
        public String kind() {
            return "bridle";
        }
    }

    /**
     * {@link #in()} is mortised, {@link #takes()} is tenoned: what the overlap shows of it beside the tenon comes off at the
     * shoulders.
     */
    record MortiseTenon(
            String id,
            String in,
            String takes,
            Tenon tenon,
            @Nullable Haunch haunch) implements Joint {
        @Override
        public String kind() {
            return "mortise-tenon";
        }
    }

    /**
     * A tenon's section, millimetres; its length is that of the overlap. It stands in the middle of its part's thickness.
     *
     * @param thickness across the grain of the mortised part
     * @param width along the grain of the mortised part
     * @param inset how far the tenon is set in from its part's edge, on the side of the mortised part's nearer end; null: in
     *     the middle
     */
    record Tenon(double thickness, double width, @Nullable Double inset) {}

    /** The stub that is left beside a tenon over its inset, as thick as the tenon. @param length how far it enters, millimetres */
    record Haunch(double length) {}

    /** The two parts touch, and each loses half of every dowel's length. */
    record Dowelled(String id, String in, String takes, Dowels dowels) implements Joint {
        @Override
        public String kind() {
            return "dowelled";
        }
    }

    /** Dowels in a row along the longer side of where the parts touch, evenly spread; diameter and length in millimetres. */
    record Dowels(int count, double diameter, double length) {}

    /** The two parts touch; nothing is cut. */
    record Butt(String id, String in, String takes) implements Joint {
        @Override
        public String kind() {
            return "butt";
        }
    }
}
