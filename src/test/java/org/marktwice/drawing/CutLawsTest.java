package org.marktwice.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.Fixtures.timber;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.timber.Box;

/** What holds of the cuts of any joint of any kind, tried on jobs at random. */
class CutLawsTest {
    private static final int JOBS = 200;
    /** A side of a cut lies within this of what was meant, so that a volume of 10⁶ mm³ may be out by a few mm³. */
    private static final double RELATIVE = 1e-9;

    enum Kind {
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

    @ParameterizedTest
    @EnumSource(Kind.class)
    void bothSharesFillTheOverlapAndNothingElse(Kind kind) {
        Random random = new Random(kind.ordinal());
        for (int i = 0; i < JOBS; i++) {
            Drawing drawing = drawing(kind, random);
            Joint joint = drawing.joints().get(0);
            List<Box> all = new ArrayList<>(boxes(drawing, 0));
            all.addAll(boxes(drawing, 1));
            assertThat(overlapping(all)).as("%s overlap", all).isFalse();
            if (joint instanceof Joint.Dowelled) continue;
            double overlap = drawing.overlap(joint).map(Box::volume).orElse(0.0);
            assertThat(volume(all)).isEqualTo(overlap, within(RELATIVE * overlap));
            assertThat(all)
                    .allSatisfy(b -> assertThat(inside(b, drawing.overlap(joint).orElseThrow()))
                            .isTrue());
        }
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void whatIsCutAndWhatRemainsMakeThePart(Kind kind) {
        Random random = new Random(50 + kind.ordinal());
        for (int i = 0; i < JOBS; i++) {
            Drawing drawing = drawing(kind, random);
            for (int p = 0; p < 2; p++) {
                Box part = drawing.parts().get(p).box();
                List<Box> left = List.of(part);
                for (Box gone : boxes(drawing, p)) {
                    assertThat(inside(gone, part))
                            .as("%s lies in %s", gone, part)
                            .isTrue();
                    left = left.stream()
                            .flatMap(b -> b.less(gone, 1e-9).stream())
                            .toList();
                }
                assertThat(overlapping(left)).isFalse();
                assertThat(volume(left) + volume(boxes(drawing, p)))
                        .isEqualTo(part.volume(), within(RELATIVE * part.volume()));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void theCutsOfTheMirroredJobAreTheMirroredCuts(Kind kind) {
        Random random = new Random(100 + kind.ordinal());
        for (int i = 0; i < JOBS; i++) {
            Drawing drawing = drawing(kind, random);
            Drawing mirrored = Frames.joined(
                    mirrored(drawing.parts().get(0)),
                    mirrored(drawing.parts().get(1)),
                    drawing.joints().get(0));
            for (int p = 0; p < 2; p++) {
                double there = volume(boxes(drawing, p));
                assertThat(volume(boxes(mirrored, p))).isEqualTo(there, within(1e-6 + RELATIVE * there));
                for (Box box : boxes(drawing, p)) {
                    double met = boxes(mirrored, p).stream()
                            .flatMap(b -> b.overlap(mirrored(box), 1e-9).stream())
                            .mapToDouble(Box::volume)
                            .sum();
                    assertThat(met).isEqualTo(box.volume(), within(1e-6 + RELATIVE * box.volume()));
                }
            }
        }
    }

    private static Box mirrored(Box box) {
        return box.with(0, -box.max(0), -box.min(0));
    }

    private static Part mirrored(Part p) {
        Box box = mirrored(p.box());
        return new Part(
                p.id(), p.name(), p.stuff(), p.size(), box.min(), p.length(), p.width(), p.faceSide(), p.faceEdge());
    }

    private static List<Box> boxes(Drawing drawing, int part) {
        return drawing.cuts(drawing.parts().get(part)).stream()
                .flatMap(c -> c.boxes().stream())
                .toList();
    }

    private static double volume(List<Box> boxes) {
        return boxes.stream().mapToDouble(Box::volume).sum();
    }

    private static boolean inside(Box box, Box in) {
        return in.contains(box.min(), 1e-9) && in.contains(box.max(), 1e-9);
    }

    private static boolean overlapping(List<Box> boxes) {
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (boxes.get(i).overlap(boxes.get(j), 1e-9).isPresent()) return true;
            }
        }
        return false;
    }

    private static double any(Random random, double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    /** A job of two parts of random sizes, joined so. */
    private static Drawing drawing(Kind kind, Random r) {
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
