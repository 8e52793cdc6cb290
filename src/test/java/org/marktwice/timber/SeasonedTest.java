package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.EDGE_2;
import static org.marktwice.timber.Surface.END_1;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import java.util.Random;
import org.joml.Vector2d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeasonedTest {
    private static Board board(String species, double w, double t, double planedAt, Pith pith) {
        return Boards.timber(species, new Size(300, w, t), planedAt, planedAt, pith, Shape.TRUE);
    }

    /** Derived in closed form, no published number: c = (1−S_R)·d·[cos(kθ₀)/cos θ₀ − 1]. */
    @ParameterizedTest
    @CsvSource({"scots-pine, 12, 150, 100, 1.061, 143.53", "red-pine, 10, 100, 60, 0.780, 95.56"})
    void cupAndWidthAgreeWithTheClosedForm(
            String species, double moisture, double w, double d, double cup, double width) {
        double t = 20;
        Seasoned bark = Seasoned.of(board(species, w, t, 30, new Pith(w / 2, t - d)), moisture);
        assertThat(bark.cup(FACE_1).orElseThrow()).isCloseTo(cup, within(0.001));

        Seasoned heart = Seasoned.of(board(species, w, t, 30, new Pith(w / 2, -d)), moisture);
        assertThat(heart.cup(FACE_2).orElseThrow()).isCloseTo(-cup, within(0.001));

        Seasoned middle = Seasoned.of(board(species, w, t, 30, new Pith(w / 2, t / 2 - d)), moisture);
        assertThat(middle.width().orElseThrow()).isCloseTo(width, within(0.005));
        double radial = 1 - SpeciesTable.byId(species).orElseThrow().radial() / 100 * (1 - moisture / 30);
        assertThat(middle.thickness().orElseThrow()).isCloseTo(t * radial, within(1e-9));
    }

    /** The short form for a narrow board far from the pith: (S_T−S_R)·w²/4d. */
    @Test
    void narrowBoardFarFromThePithFollowsTheShortForm() {
        double d = 400;
        Seasoned dry = Seasoned.of(board("scots-pine", 20, 10, 30, new Pith(10, 10 - d)), 15);
        double difference = (7.7 - 4.0) / 100 / 2;
        assertThat(dry.cup(FACE_1).orElseThrow()).isCloseTo(difference * 400 / (4 * d), within(1e-4));
    }

    /** COST Action E53, distortion of sawn timber: drying hollows the side away from the pith. */
    @ParameterizedTest
    @CsvSource({"-40, 8, FACE_1", "58, 8, FACE_2", "-40, 22, FACE_2", "58, 22, FACE_1"})
    void dryingHollowsTheBarkSideAndWettingTheHeartSide(double pithZ, double moisture, Surface hollow) {
        Seasoned seasoned = Seasoned.of(board("scots-pine", 120, 18, 16, new Pith(55, pithZ)), moisture);
        assertThat(seasoned.cup(hollow).orElseThrow()).isGreaterThan(0.1);
        assertThat(seasoned.cup(hollow.opposite()).orElseThrow()).isLessThan(-0.1);
    }

    @Test
    void nothingMovesAtTheMoistureOfPlaningOrAboveThirtyPercent() {
        Board board = board("scots-pine", 120, 18, 16, new Pith(55, -40));
        assertThat(Seasoned.now(board).cup(FACE_1).orElseThrow()).isCloseTo(0, within(1e-12));
        assertThat(Seasoned.now(board).width().orElseThrow()).isCloseTo(120, within(1e-12));
        Board green = board("scots-pine", 120, 18, 35, new Pith(55, -40));
        assertThat(Seasoned.of(green, 31).cup(FACE_2).orElseThrow()).isCloseTo(0, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"60, 9, true", "0, 0, true", "120, 18, true", "60, 18.01, false", "-0.01, 9, false"})
    void boxedHeartHasNoMap(double y, double z, boolean boxed) {
        Seasoned seasoned = Seasoned.of(board("scots-pine", 120, 18, 16, new Pith(y, z)), 8);
        assertThat(seasoned.boxedHeart()).isEqualTo(boxed);
        assertThat(seasoned.cup(FACE_1).isEmpty()).isEqualTo(boxed);
        assertThat(seasoned.cup(FACE_1, 10, 20).isEmpty()).isEqualTo(boxed);
        assertThat(seasoned.width().isEmpty()).isEqualTo(boxed);
        assertThat(seasoned.thickness().isEmpty()).isEqualTo(boxed);
    }

    @Test
    void sheetStuffStaysAsItIs() {
        Seasoned sheet = Seasoned.of(Boards.sheet(new Size(600, 300, 12)), 5);
        assertThat(sheet.boxedHeart()).isFalse();
        assertThat(sheet.cup(FACE_1)).hasValue(0);
        assertThat(sheet.width()).hasValue(300);
        assertThat(sheet.thickness()).hasValue(12);
        assertThat(sheet.moisture()).isEqualTo(5);
    }

    @Test
    void cupOverAPartIsOfItsOwnStraightEdge() {
        Board board = board("american-beech", 140, 20, 18, new Pith(50, -30));
        Seasoned dry = Seasoned.of(board, 7);
        double whole = dry.cup(FACE_1).orElseThrow();
        assertThat(dry.cup(FACE_1, 0, 140)).hasValue(whole);
        assertThat(dry.cup(FACE_1, 140, 0)).as("either order").hasValue(whole);
        assertThat(dry.cup(FACE_1, -5, 200)).as("beyond the face").hasValue(whole);
        assertThat(dry.cup(FACE_1, 30, 30)).hasValue(0);
        assertThat(dry.cup(FACE_1, 30, 100).orElseThrow()).isBetween(0.0, whole);
        assertThat(dry.cup(END_1)).hasValue(0);
    }

    /** Against the definition: the deepest of many points below the line between the ends. */
    @Test
    void cupIsTheDeepestGapOfManyPoints() {
        Random random = new Random(11);
        for (int round = 0; round < 200; round++) {
            double w = 40 + 200 * random.nextDouble();
            double t = 10 + 40 * random.nextDouble();
            boolean above = random.nextBoolean();
            double z = above ? t + 2 + 80 * random.nextDouble() : -2 - 80 * random.nextDouble();
            Board board =
                    board("american-beech", w, t, 6 + 20 * random.nextDouble(), new Pith(w * random.nextDouble(), z));
            Seasoned seasoned = Seasoned.of(board, 5 + 20 * random.nextDouble());
            double a = w * random.nextDouble();
            double b = w * random.nextDouble();
            for (Surface face : new Surface[] {FACE_1, FACE_2}) {
                assertThat(seasoned.cup(face, a, b).orElseThrow())
                        .as("%s of %s from %s to %s", face, board.facts(), a, b)
                        .isCloseTo(
                                sampled(seasoned, face == FACE_1 ? t : 0, face.sign(), Math.min(a, b), Math.max(a, b)),
                                within(1e-3));
            }
        }
    }

    private static double sampled(Seasoned seasoned, double z, int sign, double from, double to) {
        Vector2d start = seasoned.moved(from, z);
        Vector2d chord = seasoned.moved(to, z).sub(start, new Vector2d()).normalize();
        double deepest = 0;
        for (int i = 0; i <= 2000; i++) {
            Vector2d at = seasoned.moved(from + (to - from) * i / 2000, z).sub(start);
            double below = -sign * (chord.x * at.y - chord.y * at.x);
            if (Math.abs(below) > Math.abs(deepest)) deepest = below;
        }
        return deepest;
    }

    @Test
    void mapStretchesRadiallyAndTangentiallyAndKeepsTheDirectionOfTheMiddle() {
        Board board = board("scots-pine", 120, 18, 20, new Pith(20, -40));
        Seasoned dry = Seasoned.of(board, 8);
        double a = Moisture.ratio(4.0, 20, 8);
        double b = Moisture.ratio(7.7, 20, 8);
        Vector2d pith = new Vector2d(20, -40);
        Vector2d middle = new Vector2d(60, 9).sub(pith);
        assertThat(dry.moved(60, 9).sub(pith).distance(middle.mul(a, new Vector2d())))
                .isLessThan(1e-9);

        Vector2d corner = new Vector2d(120, 18).sub(pith);
        Vector2d moved = dry.moved(120, 18).sub(pith);
        assertThat(moved.length()).isCloseTo(a * corner.length(), within(1e-9));
        assertThat(middle.angle(moved)).isCloseTo(b / a * middle.angle(corner), within(1e-9));
    }

    @Test
    void mirroredBoardCupsAlike() {
        Seasoned one = Seasoned.of(board("red-pine", 110, 22, 18, new Pith(30, -25)), 9);
        Seasoned mirrored = Seasoned.of(board("red-pine", 110, 22, 18, new Pith(80, 47)), 9);
        assertThat(one.cup(FACE_1).orElseThrow()).isCloseTo(mirrored.cup(FACE_2).orElseThrow(), within(1e-7));
        assertThat(one.cup(EDGE_1).orElseThrow()).isCloseTo(mirrored.cup(EDGE_2).orElseThrow(), within(1e-7));
        assertThat(one.cup(FACE_1, 10, 50).orElseThrow())
                .isCloseTo(mirrored.cup(FACE_2, 60, 100).orElseThrow(), within(1e-7));
    }

    @Test
    void squareStockShowsOnItsEdgesWhatAFaceWouldShow() {
        Seasoned upright = Seasoned.of(board("scots-pine", 40, 40, 18, new Pith(20, -30)), 8);
        Seasoned lying = Seasoned.of(board("scots-pine", 40, 40, 18, new Pith(-30, 20)), 8);
        assertThat(lying.cup(EDGE_2).orElseThrow())
                .isPositive()
                .isCloseTo(upright.cup(FACE_1).orElseThrow(), within(1e-9));
        assertThat(lying.cup(EDGE_1).orElseThrow())
                .isCloseTo(upright.cup(FACE_2).orElseThrow(), within(1e-9));
    }

    @Test
    void barkSideLooksAwayFromThePith() {
        assertThat(Seasoned.barkSide(board("scots-pine", 120, 18, 16, new Pith(50, -1))))
                .hasValue(FACE_1);
        assertThat(Seasoned.barkSide(board("scots-pine", 120, 18, 16, new Pith(50, 19))))
                .hasValue(FACE_2);
        assertThat(Seasoned.barkSide(board("scots-pine", 120, 18, 16, new Pith(-50, 9))))
                .isEmpty();
        assertThat(Seasoned.barkSide(Boards.sheet(new Size(600, 300, 12)))).isEmpty();
    }
}
