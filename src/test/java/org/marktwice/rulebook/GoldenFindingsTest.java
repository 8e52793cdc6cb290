package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What learners read, rule by rule, held word by word. See {@link GoldenFindings} for how to write the file anew. */
class GoldenFindingsTest {
    private static Map<String, String> now = Map.of();
    private static Map<String, String> golden = Map.of();

    @BeforeAll
    static void read() throws IOException {
        now = GoldenFindings.all();
        golden = split(Files.readString(GoldenFindings.FILE));
    }

    private static Map<String, String> split(String file) {
        Map<String, String> parts = new LinkedHashMap<>();
        for (String part : file.split("(?m)^(?=== )")) {
            if (!part.isBlank()) parts.put(part.substring(3, part.indexOf(':')), part.strip());
        }
        return parts;
    }

    static Stream<String> rules() {
        return RuleBook.rules().stream().map(Rule::id);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void readsAsItDid(String rule) {
        assertThat(now.getOrDefault(rule, "").strip()).as(rule).isEqualTo(golden.get(rule));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void isMetSoundAndWrong(String rule) {
        assertThat(golden.get(rule)).as(rule).contains("\nsound", "\nwrong", "Better: ", "Why: ", "Source: ");
    }

    @Test
    void everyTextOfTheFileBelongsToARule() {
        assertThat(golden.keySet()).containsExactlyElementsOf(rules().toList());
    }
}
