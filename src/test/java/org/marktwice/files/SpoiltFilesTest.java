package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.scenario.Scenario;

/** However a file is spoilt, it is read or refused in one line; nothing else ever comes out of a reader. */
class SpoiltFilesTest {
    private static final int TIMES = 400;
    private static final String[] ODD = {
        "-1",
        "0",
        "1e308",
        "-1e-320",
        "1e999",
        "null",
        "true",
        "[]",
        "{}",
        "\"\"",
        "\"face-1\"",
        "99999",
        "0.0001",
        "\"x\":1,",
        "\u0000",
        "\uFEFF",
        "\"\\u001b\"",
        "}",
        "]",
        ",",
        "\n"
    };

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void isReadOrRefusedInOneLine(long seed) {
        Random random = new Random(seed);
        Scenario scenario = Samples.scenario();
        int refused = 0;
        for (int i = 0; i < TIMES; i++) {
            if (isRefused(() -> ScenarioFile.read("x", spoilt(Samples.SCENARIO, random)))) refused++;
            if (isRefused(() -> BoardFile.read("x", spoilt(Samples.BOARD, random)))) refused++;
            if (isRefused(() -> AttemptFile.open("x", spoilt(Samples.ATTEMPT, random), scenario))) refused++;
        }
        assertThat(refused).as("most of them").isGreaterThan(TIMES);
    }

    private static boolean isRefused(SchemaTest.Reading reading) {
        try {
            reading.read();
            return false;
        } catch (FileRefused e) {
            assertThat(e.getMessage())
                    .startsWith("x:")
                    .doesNotContainPattern("\\p{Cntrl}")
                    .hasSizeLessThan(600);
            return true;
        }
    }

    /** One to three changes: bytes changed, a value put in another's place, a stretch left out or doubled. */
    private static byte[] spoilt(String name, Random random) {
        String text = Samples.text(name);
        for (int change = random.nextInt(3); change >= 0; change--) {
            int at = random.nextInt(text.length());
            int to = Math.min(text.length(), at + 1 + random.nextInt(30));
            text = switch (random.nextInt(5)) {
                case 0 -> text.substring(0, at) + (char) random.nextInt(256) + text.substring(at + 1);
                case 1 -> text.substring(0, at) + text.substring(to);
                case 2 -> text.substring(0, to) + text.substring(at);
                default -> withOtherValue(text, at, ODD[random.nextInt(ODD.length)]);
            };
        }
        return Samples.utf8(text);
    }

    /** The number or word nearest after {@code at} replaced. */
    private static String withOtherValue(String text, int at, String odd) {
        int from = text.indexOf(':', at);
        if (from < 0) return text;
        int to = from + 1;
        while (to < text.length() && ",}]\n".indexOf(text.charAt(to)) < 0) to++;
        return text.substring(0, from + 1) + odd + text.substring(to);
    }
}
