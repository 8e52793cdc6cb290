package org.marktwice.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.Fixtures.timber;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import org.joml.Matrix3d;
import org.joml.Quaterniond;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.Fixtures;
import org.marktwice.timber.Surface;

class TurnTest {
    private static final Part FLAT = Fixtures.UPRIGHT_LEFT;
    private static final Part SQUARE = timber("leg", "Leg")
            .size(400, 40, 40)
            .runs(JobAxis.HIGH, JobAxis.DEEP)
            .part();

    @Test
    void theFourTurnsOfAFlatBoardAreThoseOfAnIndependentImplementation() throws IOException {
        Set<Map<Surface, Direction>> found = new HashSet<>();
        for (Turn turn : Turn.in(FLAT, false)) found.add(facings(turn));

        assertThat(found).hasSize(4).isEqualTo(published());
    }

    /** Length runs high, width runs deep; figures by an independent implementation in another language. */
    private static Set<Map<Surface, Direction>> published() throws IOException {
        Set<Map<Surface, Direction>> turns = new HashSet<>();
        try (InputStream in = TurnTest.class.getResourceAsStream("/published/reference-cases.json")) {
            JsonNode root = new ObjectMapper().readTree(Objects.requireNonNull(in));
            for (JsonNode turn : root.get("turns")) {
                Map<Surface, Direction> facings = new EnumMap<>(Surface.class);
                turn.fields()
                        .forEachRemaining(e -> facings.put(
                                Surface.of(e.getKey()).orElseThrow(),
                                Direction.of(e.getValue().asText()).orElseThrow()));
                turns.add(facings);
            }
        }
        return turns;
    }

    private static Map<Surface, Direction> facings(Turn turn) {
        Map<Surface, Direction> facings = new EnumMap<>(Surface.class);
        for (Surface s : Surface.values()) facings.put(s, turn.of(s));
        return facings;
    }

    @Test
    void squareStockHasEightTurnsThatKeepTheLengthWhereItRuns() {
        List<Turn> turns = Turn.in(SQUARE, true);

        assertThat(turns).doesNotHaveDuplicates().hasSize(8);
        assertThat(turns).allSatisfy(t -> assertThat(t.x().axis()).isEqualTo(JobAxis.HIGH.ordinal()));
        assertThat(turns).containsAll(Turn.in(SQUARE, false));
    }

    @Test
    void everyTurnIsAProperRotation() {
        assertThat(all()).hasSize(24).allSatisfy(t -> {
            Matrix3d m = new Matrix3d(t.rotation());
            assertThat(m.determinant()).isEqualTo(1.0, within(1e-12));
            assertThat(m.mul(m.transpose(new Matrix3d()), new Matrix3d())).isEqualTo(new Matrix3d());
        });
    }

    /** All the ways to name two axes; half of the third directions are mirror images. */
    private static List<Turn> all() {
        List<Turn> turns = new ArrayList<>();
        for (Direction x : Direction.values()) {
            for (Direction y : Direction.values()) {
                Turn.facing(Surface.END_2, x, Surface.EDGE_2, y).ifPresent(turns::add);
            }
        }
        return turns;
    }

    @Test
    void aMirrorImageIsNoTurn() {
        for (Turn t : all()) {
            assertThatThrownBy(() -> new Turn(t.x().opposite(), t.y(), t.z()))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new Turn(t.y(), t.x(), t.z())).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> new Turn(Direction.LEFT, Direction.LEFT, Direction.TOP))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void rotationsAgreeWithCommonsGeometryAndWithQuaternions() {
        Random random = new Random(11);
        for (Turn turn : all()) {
            QuaternionRotation theirs = QuaternionRotation.createBasisRotation(
                    Vector3D.Unit.PLUS_X, Vector3D.Unit.PLUS_Y, vector(turn.x()), vector(turn.y()));
            Quaterniond joml = new Quaterniond().setFromNormalized(turn.rotation());
            for (int i = 0; i < 20; i++) {
                Vector3d point = new Vector3d(random.nextDouble(), random.nextDouble(), random.nextDouble()).mul(500);
                Vector3d ours = turn.rotation().transform(point, new Vector3d());
                Vector3D other = theirs.apply(Vector3D.of(point.x, point.y, point.z));
                assertThat(ours.distance(other.getX(), other.getY(), other.getZ()))
                        .isLessThan(1e-9);
                assertThat(ours.distance(joml.transform(new Vector3d(point)))).isLessThan(1e-9);
            }
        }
    }

    private static Vector3D vector(Direction d) {
        return Vector3D.of(d.unit().x(), d.unit().y(), d.unit().z());
    }

    @ParameterizedTest
    @EnumSource(Surface.class)
    void whatLooksSomewhereIsFoundThere(Surface surface) {
        for (Turn turn : all()) {
            assertThat(turn.looking(turn.of(surface))).isEqualTo(surface);
            assertThat(turn.of(surface).opposite()).isEqualTo(turn.of(surface.opposite()));
            Vector3d normal = turn.rotation().transform(surface.normal(), new Vector3d());
            assertThat(normal).isEqualTo(turn.of(surface).unit());
        }
    }

    @Test
    void anyTwoAdjoiningSurfacesNameATurn() {
        for (Turn turn : all()) {
            for (Surface one : Surface.values()) {
                for (Surface other : Surface.values()) {
                    Optional<Turn> named = Turn.facing(one, turn.of(one), other, turn.of(other));
                    assertThat(named).isEqualTo(one.adjoins(other) ? Optional.of(turn) : Optional.empty());
                }
            }
            assertThat(turn.named().keySet()).containsExactlyInAnyOrder(Surface.FACE_1, Surface.EDGE_1);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "FACE_1, RIGHT, EDGE_1, FRONT, END_2, BOTTOM", // the design's example: end-2 is at the bottom
        "FACE_1, LEFT, EDGE_1, FRONT, END_2, TOP",
        "FACE_1, TOP, EDGE_1, FRONT, END_2, RIGHT",
        "FACE_2, TOP, EDGE_2, FRONT, END_1, LEFT",
    })
    void theThirdDirectionFollows(Surface a, Direction da, Surface b, Direction db, Surface c, Direction dc) {
        assertThat(Turn.facing(a, da, b, db).orElseThrow().of(c)).isEqualTo(dc);
    }
}
