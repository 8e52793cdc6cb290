package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.drawing.Drawing;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.timber.Box;

/** Painting from far to near against looking along rays: at every place the box painted last is the nearest one. */
class FarToNearTest {
    /** Rays that pass a box nearer to its outline than this are left out: either answer is right there. */
    private static final double GRAZES = 0.02;

    static Stream<Arguments> shipped() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(Path.of("scenarios"))) {
            files = all.filter(f -> f.toString().endsWith(".scenario.json")).toList();
        }
        assertThat(files).hasSizeGreaterThanOrEqualTo(5);
        return files.stream().map(f -> Arguments.of(f.getFileName().toString(), f));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("shipped")
    void shippedDrawingsAreInOrder(String name, Path file) throws FileRefused {
        Drawing drawing = ScenarioFile.read(file).drawing();
        List<FarToNear.Item<String>> items = items(drawing);
        assertThat(checked(FarToNear.sorted(items), 60)).isGreaterThan(600);
        agreesWhereItIsPointedAt(drawing, items);
    }

    @Test
    void railsHalvedOverPostsAreInOrder() {
        assertThat(checked(FarToNear.sorted(items(Samples.trellis())), 60)).isGreaterThan(300);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void anyBoxesThatDoNotOverlapAreInOrder(long seed) {
        Random r = new Random(seed);
        List<FarToNear.Item<String>> items = new ArrayList<>();
        for (int tries = 0; tries < 120 && items.size() < 14; tries++) {
            Vector3d from = new Vector3d(60 * r.nextDouble(), 60 * r.nextDouble(), 60 * r.nextDouble());
            Vector3d size = new Vector3d(4 + 20 * r.nextDouble(), 4 + 20 * r.nextDouble(), 4 + 20 * r.nextDouble());
            size.setComponent(r.nextInt(3), 4 + 50 * r.nextDouble());
            Box box = new Box(from, from.add(size, new Vector3d()));
            if (items.stream().allMatch(i -> i.box().overlap(box, 1e-9).isEmpty())) {
                items.add(new FarToNear.Item<>(box, "b" + tries));
            }
        }
        assertThat(items).hasSizeGreaterThan(4);
        assertThat(checked(FarToNear.sorted(items), 50)).isGreaterThan(200);
    }

    /** Three sticks, each in front of the next: no order of whole boxes is right, so they are cut up. */
    @Test
    void aRingOfBoxesThatEachHideTheNextIsCutUp() {
        List<FarToNear.Item<String>> ring = List.of(
                new FarToNear.Item<>(Box.of(0, 20, 20, 30, 25, 25), "along"),
                new FarToNear.Item<>(Box.of(10, 0, 10, 15, 30, 15), "back"),
                new FarToNear.Item<>(Box.of(20, 10, 0, 25, 15, 30), "up"));
        for (int i = 0; i < 3; i++) {
            Box a = ring.get(i).box();
            Box b = ring.get((i + 1) % 3).box();
            assertThat(FarToNear.inFront(a, b)).isTrue();
            assertThat(FarToNear.inFront(b, a)).isFalse();
        }
        List<FarToNear.Item<String>> sorted = FarToNear.sorted(ring);
        assertThat(checked(sorted, 80)).isGreaterThan(200);
        double volume = sorted.stream().mapToDouble(i -> i.box().volume()).sum();
        assertThat(volume).isEqualTo(3 * 30 * 5 * 5);
    }

    private static List<FarToNear.Item<String>> items(Drawing drawing) {
        List<FarToNear.Item<String>> out = new ArrayList<>();
        for (PartSolid solid : PartSolid.of(drawing)) {
            for (Box box : solid.boxes()) {
                out.add(new FarToNear.Item<>(box, solid.part().id()));
            }
        }
        return out;
    }

    /** Compares on a grid of rays; how many hit something. */
    private static int checked(List<FarToNear.Item<String>> sorted, int across) {
        Rectangle2D page = JobView.ISOMETRIC.bounds(
                sorted.stream().map(FarToNear.Item::box).toList());
        int hits = 0;
        for (int i = 0; i < across * across; i++) {
            double x = page.getX() + page.getWidth() * (i % across + 0.37) / across;
            double y = page.getY() + page.getHeight() * (i / across + 0.41) / across;
            Seen seen = look(sorted, x, y);
            if (seen.grazes || seen.nearest < 0) continue;
            hits++;
            assertThat(sorted.get(seen.last))
                    .as("painted last at %.2f %.2f", x, y)
                    .isEqualTo(sorted.get(seen.nearest));
        }
        return hits;
    }

    /** What a part is picked as, where it is pointed at, is the part that a ray meets first. */
    private static void agreesWhereItIsPointedAt(Drawing drawing, List<FarToNear.Item<String>> items) {
        JobPicture picture = JobPicture.of(drawing);
        Rectangle2D area = new Rectangle2D.Double(0, 0, 400, 300);
        Rectangle2D page =
                JobView.ISOMETRIC.bounds(items.stream().map(FarToNear.Item::box).toList());
        double scale = picture.scale(area);
        for (int i = 0; i < 900; i++) {
            Point2D at = new Point2D.Double(400 * (i % 30 + 0.5) / 30, 300 * (i / 30 + 0.5) / 30);
            double x = page.getCenterX() + (at.getX() - area.getCenterX()) / scale;
            double y = page.getCenterY() + (at.getY() - area.getCenterY()) / scale;
            Seen seen = look(items, x, y);
            if (seen.grazes) continue;
            assertThat(picture.partAt(at, area).orElse("none"))
                    .isEqualTo(
                            seen.nearest < 0 ? "none" : items.get(seen.nearest).of());
        }
    }

    /** @param last the hit that comes last in the list, {@code nearest} the hit nearest to the eye; −1 for none */
    private record Seen(int last, int nearest, boolean grazes) {}

    private static Seen look(List<FarToNear.Item<String>> items, double x, double y) {
        Vector3d origin = new Vector3d(JobView.ISOMETRIC.right()).mul(x).fma(-y, JobView.ISOMETRIC.up());
        Vector3d eye = new Vector3d(JobView.ISOMETRIC.towards());
        int last = -1;
        int nearest = -1;
        double depth = Double.NEGATIVE_INFINITY;
        boolean grazes = false;
        for (int i = 0; i < items.size(); i++) {
            double[] through = through(items.get(i).box(), origin, eye);
            if (Math.abs(through[1] - through[0]) < GRAZES) grazes = true;
            if (through[1] <= through[0]) continue;
            last = i;
            if (through[1] > depth) {
                depth = through[1];
                nearest = i;
            }
        }
        return new Seen(last, nearest, grazes);
    }

    /** Where along the ray it enters and leaves the box; the second below the first where it misses. */
    private static double[] through(Box box, Vector3d origin, Vector3d eye) {
        double from = Double.NEGATIVE_INFINITY;
        double to = Double.POSITIVE_INFINITY;
        for (int axis = 0; axis < 3; axis++) {
            double a = (box.min(axis) - origin.get(axis)) / eye.get(axis);
            double b = (box.max(axis) - origin.get(axis)) / eye.get(axis);
            from = Math.max(from, Math.min(a, b));
            to = Math.min(to, Math.max(a, b));
        }
        return new double[] {from, to};
    }
}
