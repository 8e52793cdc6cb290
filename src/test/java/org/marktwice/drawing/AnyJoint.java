package org.marktwice.drawing;

import static org.marktwice.Fixtures.timber;

import java.util.List;
import java.util.Random;

/** Two parts of random sizes, joined in each of the ways that there are. */
public final class AnyJoint {
    public enum Kind {
        THROUGH_HOUSING,
        STOPPED_HOUSING,
        REBATE,
        HALVING,
        BRIDLE,
        TENON,
        HAUNCHED,
        DOWELLED,
        BUTT
    }

    private AnyJoint() {}

    private static double any(Random random, double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    /** A job of two parts of random sizes, joined so. */
    public static Drawing drawing(Kind kind, Random r) {
        boolean box = kind == Kind.THROUGH_HOUSING || kind == Kind.STOPPED_HOUSING || kind == Kind.REBATE;
        return box ? carcase(kind, r) : frame(kind, r);
    }

    private static Drawing carcase(Kind kind, Random r) {
        double width = any(r, 60, 200);
        double thick = any(r, 12, 30);
        double shelf = any(r, 12, 30);
        double high = any(r, 200, 500);
        double depth = any(r, thick / 4, thick * 2 / 3);
        Part side = timber("side", "Side")
                .size(high, width, thick)
                .runs(JobAxis.HIGH, JobAxis.DEEP)
                .marks(List.of(Direction.RIGHT), List.of(Direction.FRONT))
                .part();
        double up = kind == Kind.REBATE ? high - shelf : any(r, 20, high - shelf - 20);
        Part across = timber("shelf", "Shelf")
                .size(any(r, 150, 400), width, shelf)
                .at(thick - depth, 0, up)
                .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
                .part();
        Direction at = r.nextBoolean() ? Direction.FRONT : Direction.BACK;
        return Frames.joined(
                side,
                across,
                switch (kind) {
                    case THROUGH_HOUSING -> new Joint.ThroughHousing("j", "side", "shelf");
                    case STOPPED_HOUSING -> new Joint.StoppedHousing("j", "side", "shelf", at, any(r, 6, width / 2));
                    default -> new Joint.Rebate("j", "side", "shelf");
                });
    }

    private static Drawing frame(Kind kind, Random r) {
        double thick = any(r, 15, 40);
        double wide = any(r, thick + 1, 80);
        double railWide = any(r, thick + 1, 80);
        double high = any(r, 250, 500);
        double railLong = any(r, 200, 400);
        boolean atEnd = kind == Kind.BRIDLE || (kind == Kind.HALVING && r.nextBoolean());
        double up = atEnd ? (r.nextBoolean() ? 0 : high - railWide) : any(r, 20, high - railWide - 20);
        boolean touching = kind == Kind.DOWELLED || kind == Kind.BUTT;
        boolean tenoned = kind == Kind.TENON || kind == Kind.HAUNCHED;
        double entering = touching ? 0 : tenoned ? any(r, wide / 3, wide) : wide;
        Part stile = timber("stile", "Stile")
                .size(high, wide, thick)
                .runs(JobAxis.HIGH, JobAxis.ACROSS)
                .marks(List.of(Direction.FRONT), List.of(Direction.RIGHT))
                .part();
        Part rail = timber("rail", "Rail")
                .size(railLong, railWide, thick)
                .at(wide - entering, 0, up)
                .runs(JobAxis.ACROSS, JobAxis.HIGH)
                .marks(List.of(Direction.FRONT), List.of(Direction.TOP))
                .part();
        double inset = any(r, 1, railWide / 3);
        return Frames.joined(
                stile,
                rail,
                switch (kind) {
                    case HALVING ->
                        new Joint.Halving("j", "stile", "rail", r.nextBoolean() ? Direction.FRONT : Direction.BACK);
                    case BRIDLE -> new Joint.Bridle("j", "stile", "rail");
                    case TENON -> Frames.tenon(thick * any(r, 0.2, 0.9), railWide * any(r, 0.4, 1), null);
                    case HAUNCHED -> Frames.haunched(thick / 3, railWide - inset, inset, entering * any(r, 0.1, 0.9));
                    case DOWELLED ->
                        Frames.dowelled(
                                1 + r.nextInt(3),
                                Math.min(thick, railWide / 3) * any(r, 0.2, 0.9),
                                wide * any(r, 0.5, 1.9));
                    default -> new Joint.Butt("j", "stile", "rail");
                });
    }
}
