package org.marktwice.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 2768-1, general tolerances for linear sizes. */
class GeneralToleranceTest {
    /** {@code published/iso-2768-1-linear.csv}, a secondary copy of the standard's table 1. */
    @Test
    void theTableIsTheStandards() throws IOException {
        List<String> rows = published();
        assertThat(rows).hasSize(12);
        for (String row : rows) {
            String[] c = row.split(",", -1);
            GeneralTolerance of = Stream.of(GeneralTolerance.values())
                    .filter(g -> g.letter() == c[0].charAt(0))
                    .findFirst()
                    .orElseThrow();
            double over = Double.parseDouble(c[1]);
            double to = Double.parseDouble(c[2]);
            double plusMinus = Double.parseDouble(c[3]);
            assertThat(of.plusMinus(Math.nextUp(over))).as(row).isEqualTo(plusMinus);
            assertThat(of.plusMinus(to)).as(row).isEqualTo(plusMinus);
        }
    }

    private static List<String> published() throws IOException {
        try (InputStream in = Objects.requireNonNull(
                GeneralToleranceTest.class.getResourceAsStream("/published/iso-2768-1-linear.csv"))) {
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .skip(1)
                    .toList();
        }
    }

    /**
     * Rows for smaller and larger sizes: ISO 2768-1 (1989), table 1, as several public reference copies of it give them alike
     * (linear sizes from 0.5 to 4000 mm, classes f, m, c and v).
     */
    @ParameterizedTest
    @CsvSource({
        "FINE, 5, 0.05",
        "FINE, 20, 0.1",
        "FINE, 1500, 0.5",
        "MEDIUM, 2, 0.1",
        "MEDIUM, 18, 0.2",
        "MEDIUM, 1500, 1.2",
        "MEDIUM, 3000, 2",
        "COARSE, 5, 0.3",
        "COARSE, 18, 0.5",
        "COARSE, 1500, 3",
        "COARSE, 3000, 4",
        "VERY_COARSE, 5, 0.5",
        "VERY_COARSE, 18, 1",
        "VERY_COARSE, 1500, 6",
        "VERY_COARSE, 3000, 8"
    })
    void otherSizes(GeneralTolerance of, double size, double plusMinus) {
        assertThat(of.plusMinus(size)).isEqualTo(plusMinus);
    }
}
