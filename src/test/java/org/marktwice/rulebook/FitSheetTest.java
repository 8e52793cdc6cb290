package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.bench.Bench;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.rulebook.FitSheet.Kind;
import org.marktwice.rulebook.FitSheet.Line;
import org.marktwice.scenario.Scenario;

/** Judged by the drawing's own, the dry fit says what the rules say. */
class FitSheetTest {
    private static final Path FOLDER = Path.of("scenarios");

    static List<Path> attempts() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER.resolve("attempts"))) {
            return files.filter(f -> f.toString().endsWith(".attempt.jsonl"))
                    .sorted()
                    .toList();
        }
    }

    private static Bench bench(Path attempt) throws FileRefused {
        String id = attempt.getFileName().toString().replaceAll("-(perfect|flawed)\\.attempt\\.jsonl", "");
        Scenario scenario = ScenarioFile.read(FOLDER.resolve(id + ".scenario.json"));
        return AttemptFile.open(attempt, scenario).bench();
    }

    @ParameterizedTest
    @MethodSource("attempts")
    void verdictsAreThoseOfTheRules(Path attempt) throws FileRefused {
        Situation situation = Situation.of(bench(attempt));
        FitLimits limits = FitLimits.of(situation.practice());
        FitSheet sheet = FitSheet.of(situation.bench(), situation.dryFit(), limits);

        for (Line joint : sheet.lines(Kind.JOINT)) {
            List<Verdict> rules = new ArrayList<>();
            of(new GoesTogether(), situation, joint.id()).ifPresent(rules::add);
            of(new Gaps(), situation, joint.id()).ifPresent(rules::add);
            if (rules.isEmpty()) continue;
            assertThat(joint.verdict()).as(joint.title()).isEqualTo(worst(rules));
        }
        if (sheet.fit().isWhole() && !sheet.lines(Kind.JOINT).isEmpty()) {
            assertThat(sheet.lines(Kind.SIZE))
                    .extracting(Line::verdict)
                    .isEqualTo(new OverallSizes()
                            .judge(situation).stream().map(Finding::verdict).toList());
            assertThat(sheet.lines(Kind.DIAGONAL))
                    .extracting(Line::verdict)
                    .isEqualTo(new Squareness()
                            .judge(situation).stream().map(Finding::verdict).toList());
        }
        assertThat(sheet.goesTogether())
                .isEqualTo(
                        sheet.fit().isWhole() && sheet.lines().stream().noneMatch(l -> l.verdict() == Verdict.WRONG));
    }

    private static Optional<Verdict> of(Rule rule, Situation situation, String joint) {
        return rule.judge(situation).stream()
                .filter(f -> joint.equals(f.subject().joint()))
                .map(Finding::verdict)
                .findFirst();
    }

    private static Verdict worst(List<Verdict> all) {
        for (Verdict v : List.of(Verdict.WRONG, Verdict.OPEN, Verdict.CLOSE)) if (all.contains(v)) return v;
        return Verdict.SOUND;
    }

    /** Whatever is still open is either missing by name, or there is nothing missing and the job is whole. */
    @ParameterizedTest
    @MethodSource("attempts")
    void whatIsMissingIsSaidExactlyWhenTheJobIsNotWhole(Path attempt) throws FileRefused {
        Bench bench = bench(attempt);
        Situation situation = Situation.of(bench);
        FitSheet sheet = FitSheet.of(bench, situation.dryFit(), FitLimits.of(situation.practice()));

        boolean wrongSide =
                sheet.lines(Kind.JOINT).stream().anyMatch(l -> l.figure().equals("on the wrong side"));
        assertThat(sheet.missing().isEmpty()).isEqualTo(sheet.fit().isWhole() || wrongSide);
        assertThat(sheet.missing()).allMatch(m -> m.endsWith("."));
    }
}
