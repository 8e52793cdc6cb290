package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.bench.Bench;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.fit.CutPart;
import org.marktwice.fit.DryFit;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Box;

/** Parts as they were cut, as solids. */
class WoodMeshTest {
    private static final Path FOLDER = Path.of("scenarios");

    private static Bench bench(String id, String kind) throws FileRefused {
        Scenario scenario = ScenarioFile.read(FOLDER.resolve(id + ".scenario.json"));
        return AttemptFile.open(FOLDER.resolve("attempts").resolve(id + "-" + kind + ".attempt.jsonl"), scenario)
                .bench();
    }

    static List<String> scenarios() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(".scenario.json"))
                    .map(f -> f.replace(".scenario.json", ""))
                    .toList();
        }
    }

    /** The theorem of Gauss over the sides, each two triangles: right only if they close up, and all look outwards. */
    private static double volume(WoodMesh mesh) {
        double six = 0;
        for (WoodMesh.Piece piece : mesh.pieces()) {
            Vector3d[] c = piece.corners();
            for (int i = 1; i < 3; i++) {
                six += piece.sign() * c[0].dot(c[i].cross(c[i + 1], new Vector3d()));
            }
        }
        return six / 6;
    }

    /** What is left of the drawn part beside its cuts; bored holes are drawn on, not cut. */
    private static double drawn(Drawing drawing, Part part) {
        double gone = drawing.cuts(part).stream()
                .filter(c -> !(drawing.joint(c.joint()).orElseThrow() instanceof org.marktwice.drawing.Joint.Dowelled))
                .map(Cut::boxes)
                .flatMap(List::stream)
                .mapToDouble(Box::volume)
                .sum();
        return part.box().volume() - gone;
    }

    /** With what is out left out, a part's solid is the drawn part less its cuts, to the cubic millimetre. */
    @ParameterizedTest
    @MethodSource("scenarios")
    void cutAsDrawnAPartIsItsBoxLessItsCuts(String id) throws FileRefused {
        Bench bench = bench(id, "perfect");
        DryFit fit = DryFit.of(bench);
        Drawing drawing = fit.drawing();
        List<CutPart> parts = drawing.parts().stream()
                .flatMap(p -> fit.solid(p.id()).stream())
                .toList();
        assertThat(parts).hasSameSizeAs(fit.parts());
        for (CutPart part : parts) {
            double drawn = drawn(drawing, part.part());
            assertThat(volume(WoodMesh.of(part, 0, new Vector3d()))).isEqualTo(drawn, within(1e-9 * drawn + 1e-3));
        }
    }

    /** As it was cut it differs by no more than its sides are out, and it stays closed however large that is drawn. */
    @ParameterizedTest
    @MethodSource("scenarios")
    void asItWasCutItStaysClosed(String id) throws FileRefused {
        DryFit fit = DryFit.of(bench(id, "flawed"));
        for (Part p : fit.drawing().parts()) {
            fit.solid(p.id()).ifPresent(part -> {
                for (double times : new double[] {0.5, 1, 2}) {
                    WoodMesh here = WoodMesh.of(part, times, new Vector3d());
                    WoodMesh there = WoodMesh.of(part, times, new Vector3d(300, -200, 500));
                    // a solid that isn't closed would change its volume by being moved
                    assertThat(volume(there)).isEqualTo(volume(here), within(1e-6 * volume(here)));
                    assertThat(volume(here)).isPositive();
                }
            });
        }
    }

    @Test
    void theFirstCameraIsTheIsometricView() {
        FitCamera.View view = FitCamera.FIRST.fit(List.of(), new java.awt.geom.Rectangle2D.Double(0, 0, 100, 100));
        assertThat(new Vector3d(view.right()).distance(JobView.ISOMETRIC.right()))
                .isLessThan(1e-12);
        assertThat(new Vector3d(view.up()).distance(JobView.ISOMETRIC.up())).isLessThan(1e-12);
        assertThat(new Vector3d(view.towards()).distance(JobView.ISOMETRIC.towards()))
                .isLessThan(1e-12);
    }

    /** Whatever lies nearer the eye is seen, whichever is drawn first. */
    @Test
    void theNearerSideIsSeen() {
        FitCamera.View view =
                new FitCamera.View(new Vector3d(1, 0, 0), new Vector3d(0, 0, 1), new Vector3d(0, -1, 0), 1, 0, 100);
        for (boolean nearFirst : new boolean[] {true, false}) {
            WoodRaster raster = new WoodRaster(100, 100);
            List<Integer> order = new ArrayList<>(nearFirst ? List.of(1, 2) : List.of(2, 1));
            for (int of : order) {
                double y = of == 1 ? -20 : 20;
                Vector3d[] side = WoodMesh.corners(Box.of(0, y, 0, 100, y, 100), 1, y);
                WoodRaster.Texture plain = new WoodRaster.Texture(new int[] {0x808080}, 1, 1, 0, 0, 1, 1);
                WoodRaster.Skin skin = new WoodRaster.Skin(plain, new java.awt.Color(0, true), java.awt.Color.BLACK, 0);
                raster.fill(view, side, new double[4][2], skin, of);
            }
            assertThat(raster.owner(50, 50)).isEqualTo(1);
            assertThat(raster.isSeen(50, 50, 20)).isTrue();
            assertThat(raster.isSeen(50, 50, -20)).isFalse();
        }
    }
}
