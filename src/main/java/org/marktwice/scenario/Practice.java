package org.marktwice.scenario;

import java.util.Map;
import java.util.Set;
import org.marktwice.timber.Knot;

/**
 * The workshop's own practice: authorities differ, so each of these is the teacher's to set. Defaults as in the trade
 * notes; every one that is a design choice is marked so in the rule that reads it.
 *
 * @param size tolerance on sizes, ± millimetres
 * @param gap limit of a joint's gap, millimetres
 * @param worth marks by rule id, where these differ from the rule's default
 * @param proportions how large the parts of a joint are for their stuff
 */
public record Practice(
        FaceSide faceSide,
        HeartSide heartSide,
        KnotMargin knotMargin,
        CupRatio cupRatio,
        double size,
        double gap,
        Map<String, Double> worth,
        Guidance guidance,
        Set<Aid> aids,
        Proportions proportions) {

    public static final Practice DEFAULT = new Practice(
            FaceSide.TRUEST_IN,
            HeartSide.ANY,
            new KnotMargin(10, 1),
            new CupRatio(100, 75),
            1.0,
            1.0,
            Map.of(),
            Guidance.AT_HAND_IN,
            Set.of());

    /** With the usual proportions of joints. */
    public Practice(
            FaceSide faceSide,
            HeartSide heartSide,
            KnotMargin knotMargin,
            CupRatio cupRatio,
            double size,
            double gap,
            Map<String, Double> worth,
            Guidance guidance,
            Set<Aid> aids) {
        this(faceSide, heartSide, knotMargin, cupRatio, size, gap, worth, guidance, aids, Proportions.USUAL);
    }

    public Practice {
        worth = Map.copyOf(worth);
        aids = Set.copyOf(aids);
    }

    public Practice with(FaceSide other) {
        return new Practice(other, heartSide, knotMargin, cupRatio, size, gap, worth, guidance, aids, proportions);
    }

    public Practice with(HeartSide other) {
        return new Practice(faceSide, other, knotMargin, cupRatio, size, gap, worth, guidance, aids, proportions);
    }

    public Practice with(KnotMargin other) {
        return new Practice(faceSide, heartSide, other, cupRatio, size, gap, worth, guidance, aids, proportions);
    }

    public Practice with(CupRatio other) {
        return new Practice(faceSide, heartSide, knotMargin, other, size, gap, worth, guidance, aids, proportions);
    }

    public Practice withSize(double mm) {
        return new Practice(faceSide, heartSide, knotMargin, cupRatio, mm, gap, worth, guidance, aids, proportions);
    }

    public Practice withGap(double mm) {
        return new Practice(faceSide, heartSide, knotMargin, cupRatio, size, mm, worth, guidance, aids, proportions);
    }

    public Practice withWorth(Map<String, Double> marks) {
        return new Practice(faceSide, heartSide, knotMargin, cupRatio, size, gap, marks, guidance, aids, proportions);
    }

    public Practice with(Guidance other) {
        return new Practice(faceSide, heartSide, knotMargin, cupRatio, size, gap, worth, other, aids, proportions);
    }

    public Practice withAids(Set<Aid> other) {
        return new Practice(faceSide, heartSide, knotMargin, cupRatio, size, gap, worth, guidance, other, proportions);
    }

    public Practice with(Proportions other) {
        return new Practice(faceSide, heartSide, knotMargin, cupRatio, size, gap, worth, guidance, aids, other);
    }

    /** Which surface is the face side: the cleanest, shown outside, or the truest, turned in. */
    public enum FaceSide {
        BEST_OUT,
        TRUEST_IN;

        public String id() {
            return Ids.of(this);
        }
    }

    /** Which side the heart of the board looks, seen from the middle of the assembled job. */
    public enum HeartSide {
        ANY,
        AWAY,
        TOWARDS;

        public String id() {
            return Ids.of(this);
        }
    }

    /** When the learner is told. */
    public enum Guidance {
        EACH_STEP,
        EACH_PART,
        AT_HAND_IN,
        EXAMINATION;

        public String id() {
            return Ids.of(this);
        }
    }

    /** What a scenario grants beyond what one has at the bench. */
    public enum Aid {
        CUT_GHOST,
        CLEARANCE,
        TURN_PREVIEW,
        UNDO;

        public String id() {
            return Ids.of(this);
        }
    }

    /** The distance a knot keeps from a cut: the larger of so many millimetres and so many of its diameters. */
    public record KnotMargin(double mm, double diameters) {
        public double of(Knot knot) {
            return Math.max(mm, diameters * knot.diameter());
        }
    }

    /** Cup as 1 in so many of the width: clear up to one ratio, poor up to the other, refused beyond. */
    public record CupRatio(double clear, double poor) {
        /** The deepest cup that is still clear on this width, millimetres. */
        public double clearLimit(double width) {
            return width / clear;
        }

        /** The deepest cup with which a board is still used, millimetres. */
        public double poorLimit(double width) {
            return width / poor;
        }
    }
}
