package org.marktwice.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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

    @ParameterizedTest
    @EnumSource(AnyJoint.Kind.class)
    void bothSharesFillTheOverlapAndNothingElse(AnyJoint.Kind kind) {
        Random random = new Random(kind.ordinal());
        for (int i = 0; i < JOBS; i++) {
            Drawing drawing = AnyJoint.drawing(kind, random);
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
    @EnumSource(AnyJoint.Kind.class)
    void whatIsCutAndWhatRemainsMakeThePart(AnyJoint.Kind kind) {
        Random random = new Random(50 + kind.ordinal());
        for (int i = 0; i < JOBS; i++) {
            Drawing drawing = AnyJoint.drawing(kind, random);
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
    @EnumSource(AnyJoint.Kind.class)
    void theCutsOfTheMirroredJobAreTheMirroredCuts(AnyJoint.Kind kind) {
        Random random = new Random(100 + kind.ordinal());
        for (int i = 0; i < JOBS; i++) {
            Drawing drawing = AnyJoint.drawing(kind, random);
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
}
