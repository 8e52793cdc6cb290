package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Direction;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.rulebook.Outcome.JointOut;
import org.marktwice.rulebook.Outcome.PartOut;
import org.marktwice.rulebook.Outcome.Shown;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;

/** The job as it would come out agrees with what the rules find by other means. */
class OutcomeTest {
    private static final Path FOLDER = Path.of("scenarios");

    static List<String> shipped() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<String> ids = files.map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(".scenario.json"))
                    .map(f -> f.replace(".scenario.json", ""))
                    .sorted()
                    .toList();
            assertThat(ids).hasSizeGreaterThan(20);
            return ids;
        }
    }

    private static Situation situation(String id, String kind) throws FileRefused {
        Scenario scenario = ScenarioFile.read(FOLDER.resolve(id + ".scenario.json"));
        Path attempt = FOLDER.resolve("attempts").resolve(id + "-" + kind + ".attempt.jsonl");
        return Situation.of(AttemptFile.open(attempt, scenario).bench());
    }

    private static List<Finding> findings(Situation situation, String rule) {
        return RuleBook.judge(situation).entries().stream()
                .filter(e -> e.rule().id().equals(rule))
                .map(MarkSheet.Entry::finding)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void perfectWorkGoesTogether(String id) throws FileRefused {
        Situation done = situation(id, "perfect");
        Outcome outcome = Outcome.of(done);
        Set<String> waits = Set.copyOf(done.scenario().drawing().parts().stream()
                .filter(p -> done.bench().namedAs(p).isEmpty())
                .map(p -> p.id())
                .toList());
        assertThat(outcome.parts())
                .allSatisfy(p -> assertThat(p.lies() || waits.contains(p.part().id()))
                        .as(p.part().id())
                        .isTrue());
        assertThat(outcome.joints()).allSatisfy(j -> {
            assertThat(j.astray()).as(j.joint().id()).isEmpty();
            if (j.verdict() != Verdict.OPEN) assertThat(j.verdict()).isEqualTo(Verdict.SOUND);
            if (j.fit() == null) assertThat(j.clash()).isEmpty();
        });
    }

    /** Where marks are as drawn, each knot is as near to the joint as the rule measures it. */
    @ParameterizedTest
    @MethodSource("shipped")
    void knotsAreAsNearAsTheRuleFindsThem(String id) throws FileRefused {
        for (String kind : List.of("perfect", "flawed")) {
            Situation done = situation(id, kind);
            Outcome outcome = Outcome.of(done);
            for (Finding found : findings(done, "knot-clear-of-joint")) {
                Finding.Measured measured = found.measured();
                String named = found.subject().part();
                if (measured == null || named == null) continue;
                PartOut part = outcome.part(named);
                BoardState board = part.state();
                if (board == null || !board.board().id().equals(found.subject().board())) continue;
                if (part.basis() == Outcome.Basis.LINES || isAstray(outcome, part)) continue;
                assertThat(part.pressing(String.valueOf(found.subject().joint())))
                        .as(found.toString())
                        .hasValueSatisfying(n -> assertThat(n.clearance()).isEqualTo(measured.value()));
            }
        }
    }

    private static boolean isAstray(Outcome outcome, PartOut part) {
        return outcome.joints().stream()
                .flatMap(j -> j.astray().stream())
                .anyMatch(a -> a.part().equals(part.part()));
    }

    /** Two lefts whose joint comes on the wrong side are seen, and nobody's work is called astray whose marks are as drawn. */
    @ParameterizedTest
    @MethodSource("shipped")
    void whatIsAstrayIsMarkedOtherwiseThanDrawn(String id) throws FileRefused {
        Situation done = situation(id, "flawed");
        Outcome outcome = Outcome.of(done);
        for (Finding found : findings(done, "handed-pair")) {
            if (!found.says().key().equals("says.alike-joint")) continue;
            Object joint = found.says().values().get("joint");
            String part = String.valueOf(found.subject().part());
            if (outcome.part(part).basis() == Outcome.Basis.LINES) continue;
            assertThat(outcome.joints())
                    .filteredOn(j -> j.joint().id().equals(joint))
                    .flatExtracting(JointOut::astray)
                    .isNotEmpty();
        }
        List<String> drawn = findings(done, "marks-as-drawn").stream()
                .filter(f -> f.verdict() == Verdict.SOUND)
                .map(f -> String.valueOf(f.subject().part()))
                .toList();
        assertThat(outcome.joints().stream().flatMap(j -> j.astray().stream()))
                .filteredOn(a -> outcome.part(a.part().id()).basis() == Outcome.Basis.MARKS)
                .extracting(a -> a.part().id())
                .noneMatch(drawn::contains);
    }

    @Test
    void twoLeftsOpenOutsideAndTheShelfMeetsSolidWood() throws FileRefused {
        Outcome outcome = Outcome.of(situation("porch-shelf", "flawed"));
        JointOut right = joint(outcome, "right-housing");
        assertThat(right.verdict()).isEqualTo(Verdict.WRONG);
        assertThat(right.astray()).singleElement().satisfies(a -> {
            assertThat(a.part().id()).isEqualTo("upright-right");
            assertThat(a.opens()).isEqualTo(Direction.RIGHT);
            assertThat(a.wanted()).isEqualTo(Direction.LEFT);
        });
        assertThat(right.depth()).isEqualTo(6);
        assertThat(joint(outcome, "left-housing").verdict()).isEqualTo(Verdict.SOUND);
    }

    private static JointOut joint(Outcome outcome, String id) {
        return outcome.joints().stream()
                .filter(j -> j.joint().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void beforeAnythingIsDoneEveryJointWaits() throws FileRefused {
        Scenario scenario = ScenarioFile.read(FOLDER.resolve("porch-shelf.scenario.json"));
        Situation fresh = Situation.of(Bench.of(scenario));
        Outcome outcome = Outcome.of(fresh);
        assertThat(outcome.parts()).noneMatch(PartOut::lies);
        assertThat(outcome.joints()).extracting(JointOut::verdict).containsOnly(Verdict.OPEN);
        assertThat(OutcomeWords.lines(fresh, outcome, Shown.TOLD))
                .extracting(OutcomeWords.Line::says)
                .contains("Waits for the Left upright and the Shelf.", "No board yet.");
        assertThat(OutcomeWords.sum(outcome, Shown.TOLD)).isEqualTo("0 of 3 parts stand, 0 of 2 joints go together.");
    }

    @ParameterizedTest
    @CsvSource({
        "EACH_STEP, false, TOLD",
        "EACH_PART, false, TOLD",
        "AT_HAND_IN, false, NOTHING",
        "AT_HAND_IN, true, SEEN",
        "EXAMINATION, true, NOTHING"
    })
    void asMuchIsShownAsTheGuidanceLets(Practice.Guidance guidance, boolean preview, Shown shown) throws FileRefused {
        Scenario set = ScenarioFile.read(FOLDER.resolve("porch-shelf.scenario.json"));
        Set<Practice.Aid> aids = preview ? Set.of(Practice.Aid.TURN_PREVIEW) : Set.of(Practice.Aid.CUT_GHOST);
        Situations asked = Situations.of(set).practice(p -> p.with(guidance).withAids(aids));
        assertThat(Outcome.shown(asked.situation().bench())).isEqualTo(shown);
    }

    @Test
    void whatIsOnlySeenTellsOfNoVerdict() throws FileRefused {
        Situation done = situation("porch-shelf", "flawed");
        assertThat(OutcomeWords.lines(done, Outcome.of(done), Shown.SEEN))
                .hasSize(3)
                .allSatisfy(l -> assertThat(l.verdict()).isNull())
                .extracting(OutcomeWords.Line::says)
                .containsExactly(
                        "Board C: face side to the right, face edge to the front.",
                        "Board B: face side to the right, face edge to the front.",
                        "Board D: face side up, face edge to the front.");
        assertThat(OutcomeWords.lines(done, Outcome.of(done), Shown.NOTHING)).isEmpty();
    }

    @Test
    void itReadsAsATeacherWouldSayIt() throws FileRefused {
        Situation done = situation("porch-shelf", "flawed");
        assertThat(OutcomeWords.lines(done, Outcome.of(done), Shown.TOLD))
                .extracting(l -> l.verdict() + " " + l.title() + " — " + l.says())
                .contains(
                        "WRONG Housing: Right upright and Shelf — Set out from its marks, the Right upright is cut on the"
                                + " right; the drawing has the cut on the left. The Shelf meets solid wood there, 6 mm deep.",
                        "WRONG Right upright — Board B: face side to the right, face edge to the front. Drawn: face side to"
                                + " the left.");
    }
}
