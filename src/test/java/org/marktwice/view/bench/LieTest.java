package org.marktwice.view.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.joml.Matrix3d;
import org.joml.Quaterniond;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Turn;
import org.marktwice.picture.Lie;
import org.marktwice.timber.Surface;

class LieTest {
    static List<Lie> all() {
        List<Lie> lies = new ArrayList<>();
        for (Surface up : Surface.LONG) {
            for (Surface near : Surface.LONG) if (up.adjoins(near)) lies.add(new Lie(up, near));
        }
        return lies;
    }

    @ParameterizedTest
    @CsvSource({
        "FACE_1, EDGE_1, END_1",
        "FACE_1, EDGE_2, END_2",
        "FACE_2, EDGE_1, END_2",
        "FACE_2, EDGE_2, END_1",
        "EDGE_1, FACE_2, END_1",
        "EDGE_1, FACE_1, END_2",
    })
    void the_end_at_the_left_follows_by_the_right_hand_rule(Surface up, Surface near, Surface left) {
        assertThat(new Lie(up, near).left()).isEqualTo(left);
    }

    @Test
    void a_board_cannot_stand_on_an_end_or_lie_on_two_opposite_surfaces() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Lie(Surface.END_1, Surface.FACE_1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Lie(Surface.FACE_1, Surface.FACE_2));
    }

    @ParameterizedTest
    @MethodSource("all")
    void a_lie_is_a_proper_rotation_that_brings_its_surfaces_where_it_says(Lie lie) {
        Matrix3d m = new Matrix3d(lie.matrix());
        assertThat(m.determinant()).isEqualTo(1, within(1e-12));
        assertThat(m.transform(new Vector3d(lie.up().normal()))).isEqualTo(new Vector3d(0, 0, 1));
        assertThat(m.transform(new Vector3d(lie.near().normal()))).isEqualTo(new Vector3d(0, -1, 0));
        assertThat(m.transform(new Vector3d(lie.left().normal()))).isEqualTo(new Vector3d(-1, 0, 0));
    }

    @ParameterizedTest
    @MethodSource("all")
    void rolling_is_a_quarter_turn_about_the_length_and_four_of_them_come_back(Lie lie) {
        Matrix3d quarter = new Matrix3d().rotationX(Math.PI / 2);
        assertClose(lie.rollForward().matrix(), quarter.mul(lie.matrix(), new Matrix3d()));
        assertThat(lie.rollForward().rollForward().rollForward().rollForward()).isEqualTo(lie);
        assertThat(lie.rollForward().rollBack()).isEqualTo(lie);
    }

    @ParameterizedTest
    @MethodSource("all")
    void turning_end_for_end_is_half_a_turn_on_the_bench_and_twice_comes_back(Lie lie) {
        Matrix3d half = new Matrix3d().rotationZ(Math.PI);
        assertClose(lie.endForEnd().matrix(), half.mul(lie.matrix(), new Matrix3d()));
        assertThat(lie.endForEnd().endForEnd()).isEqualTo(lie);
    }

    private static void assertClose(org.joml.Matrix3dc a, org.joml.Matrix3dc b) {
        assertThat(new Matrix3d(a).equals(b, 1e-12)).as("%s and %s", a, b).isTrue();
    }

    @ParameterizedTest
    @EnumSource(Surface.class)
    void any_surface_can_be_brought_to_where_it_is_seen(Surface surface) {
        for (Lie lie : all()) assertThat(lie.showing(surface).shows(surface)).isTrue();
    }

    static Stream<Part> parts() {
        return Stream.of(Fixtures.UPRIGHT_LEFT, Fixtures.UPRIGHT_RIGHT, Fixtures.SHELF);
    }

    @ParameterizedTest
    @MethodSource("parts")
    void every_turn_of_a_part_has_its_own_lie_and_comes_back_from_it(Part part) {
        List<Turn> turns = Turn.in(part, true);
        assertThat(turns).hasSize(8);
        assertThat(turns.stream().map(t -> Lie.of(t, part)).distinct()).hasSize(8);
        for (Turn turn : turns) assertThat(Lie.of(turn, part).turn(part)).isEqualTo(turn);
    }

    @Test
    void a_motion_starts_and_ends_at_its_attitudes_and_takes_under_a_quarter_of_a_second() {
        Quaterniond from = Lie.FIRST.rotation();
        Quaterniond to = Lie.FIRST.rollForward().rotation();
        Motion motion = new Motion(from, to, Motion.TURN);
        assertThat(Motion.TURN).isLessThan(0.25);
        assertThat(motion.at(0).equals(from, 1e-12)).isTrue();
        assertThat(motion.at(Motion.TURN).equals(to, 1e-12)).isTrue();
        assertThat(motion.isOver(Motion.TURN - 1e-6)).isFalse();
        assertThat(motion.isOver(Motion.TURN)).isTrue();
        assertThat(Motion.still(to).at(0)).isEqualTo(to);
    }

    @Test
    void a_motion_only_ever_goes_on() {
        Quaterniond from = Lie.FIRST.rotation();
        Motion motion = new Motion(from, Lie.FIRST.endForEnd().rotation(), Motion.TURN);
        double before = -1;
        for (int i = 0; i <= 50; i++) {
            double angle = from.difference(motion.at(Motion.TURN * i / 50), new Quaterniond())
                    .angle();
            assertThat(angle).isGreaterThan(before - 1e-9);
            before = angle;
        }
        assertThat(before).isEqualTo(Math.PI, within(1e-6));
    }
}
