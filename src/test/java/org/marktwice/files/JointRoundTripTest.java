package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.Fixtures.SHELF;
import static org.marktwice.Fixtures.UPRIGHT_LEFT;
import static org.marktwice.Fixtures.UPRIGHT_RIGHT;
import static org.marktwice.Fixtures.timber;

import com.networknt.schema.InputFormat;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.scenario.Scenario;

/** Every kind of joint with all its fields is written, keeps to the schema, and is read back the same. */
class JointRoundTripTest {
    static Stream<Joint> inBoxes() {
        return Stream.of(
                new Joint.ThroughHousing("j", "upright-left", "shelf"),
                new Joint.StoppedHousing("j", "upright-left", "shelf", Direction.FRONT, 10.5));
    }

    static Stream<Joint> inFrames() {
        return Stream.of(
                new Joint.Halving("j", "stile", "rail", Direction.BACK),
                new Joint.Bridle("j", "stile", "rail"),
                new Joint.MortiseTenon("j", "stile", "rail", new Joint.Tenon(8, 26, null), null),
                new Joint.MortiseTenon("j", "stile", "rail", new Joint.Tenon(8, 26, 12.5), new Joint.Haunch(9)));
    }

    static Stream<Joint> touching() {
        return Stream.of(
                new Joint.Dowelled("j", "stile", "rail", new Joint.Dowels(2, 8, 37.5)),
                new Joint.Butt("j", "stile", "rail"));
    }

    @ParameterizedTest
    @MethodSource("inBoxes")
    void aHousingComesBackAsItWas(Joint joint) throws FileRefused {
        comesBack(
                Fixtures.drawing(
                        new Overall(500, 120, 300),
                        List.of(UPRIGHT_LEFT, UPRIGHT_RIGHT, SHELF),
                        joint,
                        new Joint.ThroughHousing("other", "upright-right", "shelf")),
                joint);
    }

    @ParameterizedTest
    @MethodSource("inFrames")
    void aJointOfAFrameComesBackAsItWas(Joint joint) throws FileRefused {
        comesBack(frame(0, 300, joint), joint);
    }

    @ParameterizedTest
    @MethodSource("touching")
    void aJointWithoutOverlapComesBackAsItWas(Joint joint) throws FileRefused {
        comesBack(frame(40, 340, joint), joint);
    }

    private static Drawing frame(double railFrom, double across, Joint joint) {
        // a tenon that isn't set in keeps clear of the stile's end
        boolean clear = joint instanceof Joint.MortiseTenon m && m.tenon().inset() == null;
        Part stile = timber("stile", "Stile")
                .size(200, 40, 24)
                .runs(JobAxis.HIGH, JobAxis.ACROSS)
                .marks(List.of(Direction.FRONT), List.of(Direction.RIGHT))
                .part();
        Part rail = timber("rail", "Rail")
                .size(300, 40, 24)
                .at(railFrom, 0, clear ? 80 : 0)
                .runs(JobAxis.ACROSS, JobAxis.HIGH)
                .marks(List.of(Direction.FRONT), List.of(Direction.TOP))
                .part();
        return Fixtures.drawing(new Overall(across, 24, 200), List.of(stile, rail), joint);
    }

    private static void comesBack(Drawing drawing, Joint joint) throws FileRefused {
        Scenario scenario =
                Fixtures.scenario("any", drawing, List.of(Fixtures.board("A").board()));
        byte[] bytes = ScenarioWriter.bytes(scenario);

        assertThat(SchemaTest.SCENARIO.validate(new String(bytes, StandardCharsets.UTF_8), InputFormat.JSON))
                .isEmpty();
        Scenario read = ScenarioFile.read("x", bytes);
        assertThat(read.drawing()).isEqualTo(drawing);
        assertThat(read.drawing().joints()).contains(joint);
    }
}
