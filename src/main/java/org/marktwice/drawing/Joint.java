package org.marktwice.drawing;

/** Where two parts' boxes overlap (or, for a butt, touch). The kind says how the overlap is shared out as cuts. */
public sealed interface Joint {
    String id();

    /** The part the joint is cut into. */
    String in();

    /** The part it takes. */
    String takes();

    /** The kind's name in files. */
    String kind();

    /** The whole overlap is taken out of {@link #in()}; it runs from edge to edge. */
    record ThroughHousing(String id, String in, String takes) implements Joint {
        @Override
        public String kind() {
            return "through-housing";
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

    /** The two parts touch; nothing is cut. */
    record Butt(String id, String in, String takes) implements Joint {
        @Override
        public String kind() {
            return "butt";
        }
    }
}
