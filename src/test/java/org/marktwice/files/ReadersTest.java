package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.bench.Action;
import org.marktwice.bench.Marker;
import org.marktwice.bench.Reason;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.drawing.Trim;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** What whole files say comes out as the values it should. */
class ReadersTest {
    private static final double NO_END = Double.POSITIVE_INFINITY;

    @Test
    void aScenarioHasWhatItsFileSays() {
        Scenario scenario = Samples.scenario();

        assertThat(scenario.id()).isEqualTo("porch-shelf");
        assertThat(scenario.title()).isEqualTo("Porch shelf");
        assertThat(scenario.level()).isEqualTo(2);
        assertThat(scenario.brief()).isEqualTo("Two uprights, one shelf in through housings.");
        assertThat(scenario.stages()).containsExactly(Stage.FACES, Stage.NAMES, Stage.TURNS);
        assertThat(scenario.practice().worth()).isEqualTo(Map.of("knot-clear-of-joint", 3.0));
        assertThat(scenario.practice().aids()).containsExactly(Practice.Aid.UNDO);
        assertThat(scenario.drawing().parts()).hasSize(3);
        assertThat(scenario.drawing().part("upright-right"))
                .contains(new Part(
                        "upright-right",
                        "Right upright",
                        PartStuff.TIMBER,
                        new Size(300, 120, 18),
                        new Vector3d(482, 0, 0),
                        JobAxis.HIGH,
                        JobAxis.DEEP,
                        List.of(Direction.LEFT),
                        List.of(Direction.FRONT)));
        assertThat(scenario.drawing().joint("left-housing"))
                .contains(new Joint.ThroughHousing("left-housing", "upright-left", "shelf"));
        assertThat(scenario.boards()).extracting(Board::id).containsExactly("A", "B", "C", "S");
    }

    @Test
    void aBoardHasWhatItsFileSays() {
        Board.Facts a = Samples.scenario().board("A").orElseThrow().facts();

        assertThat(a.species()).isNotNull().extracting(s -> s.id()).isEqualTo("scots-pine");
        assertThat(a.size()).isEqualTo(new Size(312, 120, 18));
        assertThat(a.planedAt()).isEqualTo(16);
        assertThat(a.moisture()).isEqualTo(11);
        assertThat(a.dressed()).isEqualTo(Set.of(Surface.FACE_1, Surface.FACE_2, Surface.EDGE_1));
        assertThat(a.pith()).isEqualTo(new Pith(52, -40));
        assertThat(a.ringWidth()).isEqualTo(2.4);
        assertThat(a.knots()).containsExactly(new Knot("k1", 71, 84, 72, 5.5, 8, 60, NO_END));
        assertThat(a.shape()).isEqualTo(new Shape(0, 0, 0, 0.6, 0, Map.of(Surface.EDGE_2, 0.5)));
    }

    @Test
    void whatABoardDoesNotSayHasItsDefault() {
        Scenario scenario = Samples.scenario();
        Board.Facts c = scenario.board("C").orElseThrow().facts();
        Board.Facts sheet = scenario.board("S").orElseThrow().facts();

        assertThat(c.dressed()).isEqualTo(EnumSet.allOf(Surface.class));
        assertThat(c.knots()).isEmpty();
        assertThat(c.shape()).isEqualTo(Shape.TRUE);
        assertThat(sheet.species()).isNull();
        assertThat(sheet.pith()).isNull();
        assertThat(scenario.board("B").orElseThrow().knots())
                .containsExactly(new Knot("k1", 190, -95, 80, 5.5, 6, NO_END, 70));
    }

    @Test
    void aPracticeKeyThatIsNotGivenHasItsDefault() throws FileRefused {
        String text = Samples.text(Samples.SCENARIO);
        int from = text.indexOf("\"practice\"");
        String without = text.substring(0, from) + text.substring(text.indexOf("\"drawing\""));
        assertThat(ScenarioFile.read("x", Samples.utf8(without)).practice()).isEqualTo(Practice.DEFAULT);
        String some = text.substring(0, from) + "\"practice\": {\"heartSide\": \"away\", \"knotMargin\": {\"mm\": 4}}, "
                + text.substring(text.indexOf("\"drawing\""));
        Practice practice = ScenarioFile.read("x", Samples.utf8(some)).practice();
        assertThat(practice.heartSide()).isEqualTo(Practice.HeartSide.AWAY);
        assertThat(practice.knotMargin()).isEqualTo(new Practice.KnotMargin(4, 1));
        assertThat(practice.gap()).isEqualTo(Practice.DEFAULT.gap());
    }

    @Test
    void theFigureOfABoardFollowsFromItsNameAlone() {
        Scenario once = Samples.scenario();
        Scenario again = Samples.scenario();
        assertThat(once.boards()).isEqualTo(again.boards());
        assertThat(once.boards()).extracting(b -> b.facts().seed()).doesNotHaveDuplicates();
        // FNV-1a, 64 bits: "a" gives af63dc4c8601ec8c (the published test vectors of its authors, from memory)
        assertThat(BoardReader.seed("a")).isEqualTo(0xaf63dc4c8601ec8cL);
    }

    @Test
    void theDigestIsThatOfTheBytes() throws FileRefused {
        // printf '%s' abc | sha256sum; FIPS 180-4's own example
        assertThat(Bytes.digest(Samples.utf8("abc")))
                .isEqualTo("sha256:ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        byte[] bytes = Samples.bytes(Samples.SCENARIO);
        assertThat(ScenarioFile.read("x", bytes).digest()).isEqualTo(Bytes.digest(bytes));
    }

    @Test
    void anAttemptHasEveryKindOfAction() throws FileRefused {
        AttemptFile file = AttemptFile.read("x", Samples.bytes(Samples.EVERY_ACTION));

        assertThat(file.attempt().learner()).isEqualTo("P07");
        assertThat(file.attempt().started()).isEqualTo("2026-01-12T09:30:00Z");
        assertThat(file.notices()).isEmpty();
        assertThat(file.attempt().actions())
                .extracting(Action::getClass)
                .extracting(Class::getSimpleName)
                .containsExactly(
                        "Measure",
                        "Test",
                        "FaceSide",
                        "FaceEdge",
                        "Name",
                        "Turning",
                        "Turning",
                        "Line",
                        "Gauge",
                        "Line",
                        "Waste",
                        "SetAside",
                        "RubOut",
                        "Undo",
                        "Redo",
                        "Estimate",
                        "HandIn");
        assertThat(file.attempt().actions())
                .contains(
                        new Action.Measure(
                                4.1,
                                "A",
                                new SurfacePoint(Surface.FACE_1, 0, 60),
                                new SurfacePoint(Surface.FACE_1, 71, 60)),
                        new Action.Name(21, "A", "upright-left", new SurfacePoint(Surface.FACE_1, 150, 60)),
                        new Action.Turning(
                                25.5,
                                "A",
                                Map.of(Surface.FACE_1, Direction.RIGHT, Surface.EDGE_1, Direction.FRONT),
                                new Trim(Surface.END_1, 6)),
                        new Action.Line(
                                40,
                                "A",
                                Surface.FACE_1,
                                Surface.EDGE_1,
                                new Action.Datum.End(Surface.END_2),
                                86.0,
                                null,
                                Marker.KNIFE),
                        new Action.Line(
                                48,
                                "A",
                                Surface.FACE_1,
                                Surface.EDGE_1,
                                new Action.Datum.Step(8),
                                null,
                                "C",
                                Marker.PENCIL),
                        new Action.Waste(52, "A", "left-housing", 8, 10),
                        new Action.SetAside(55, "S", Reason.KNOT_IN_EVERY_TURN),
                        new Action.Estimate(59, Set.of("best-set")));
    }

    @Test
    void anAttemptIsFoldedOnItsScenario() throws FileRefused {
        AttemptFile.Opened opened = AttemptFile.open("x", Samples.bytes(Samples.ATTEMPT), Samples.scenario());
        assertThat(opened.bench().handedIn()).isTrue();
        assertThat(opened.bench().steps()).isEqualTo(14);
        assertThat(opened.bench().board("S").setAside()).isPresent();
    }

    @Test
    void anAttemptForThisVeryFileIsTaken() throws FileRefused {
        Scenario scenario = Samples.scenario();
        String text = Samples.text(Samples.ATTEMPT)
                .replace("\"learner\"", "\"digest\":\"" + scenario.digest() + "\",\"learner\"");
        assertThat(AttemptFile.open("x", Samples.utf8(text), scenario)
                        .file()
                        .attempt()
                        .digest())
                .isEqualTo(scenario.digest());
    }

    @Test
    void aBoardFileHasItsCuts() throws FileRefused {
        BoardFile file = BoardFile.read("x", Samples.bytes(Samples.BOARD));
        assertThat(file.board().knots()).hasSize(2);
        assertThat(file.cuts())
                .containsExactly(
                        new Cut("c1", List.of(Box.of(22.1, 0, 12, 40.1, 120, 18))),
                        new Cut("c2", List.of(Box.of(56.7, 48, 12, 74.7, 120, 18))));
    }

    /** A slip of a digit would otherwise pass for a cut that every knot keeps clear of. */
    @Test
    void aCutBesideTheBoardIsRefused() {
        String text = Samples.text(Samples.BOARD).replace("22.1", "2201").replace("40.1", "4001");

        assertThatThrownBy(() -> BoardFile.read("x", Samples.utf8(text)))
                .hasMessageEndingWith("$.cuts[0]: cut c1 lies wholly outside board R1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2", "999999", "99999999999999999999"})
    void aNewerFormatIsKnownAsSuch(String number) {
        String text = Samples.text(Samples.SCENARIO).replace("marktwice-scenario/1", "marktwice-scenario/" + number);

        assertThatThrownBy(() -> ScenarioFile.read("x", Samples.utf8(text)))
                .hasMessageEndingWith(
                        "$.format: this file is of a newer Marktwice: format " + number + ", this one reads 1");
    }

    /** The independent implementation's boards are all readable. */
    @Test
    void theReferenceBoardsAreTaken() throws IOException, FileRefused {
        ObjectMapper mapper = new ObjectMapper();
        try (InputStream in = ReadersTest.class.getResourceAsStream("/published/reference-cases.json")) {
            JsonNode cases = mapper.readTree(in).get("cases");
            assertThat(cases).hasSize(10);
            for (JsonNode one : cases) {
                JsonNode board = one.get("board");
                BoardFile read = BoardFile.read("x", mapper.writeValueAsBytes(board));
                assertThat(read.board().size().length())
                        .isCloseTo(board.get("size").get("length").asDouble(), within(0.0));
                assertThat(read.cuts()).hasSize(board.get("cuts").size());
            }
        }
    }
}
