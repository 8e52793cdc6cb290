package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SpeciesTableTest {
    @Test
    void everyRowIsRead() {
        assertThat(SpeciesTable.all()).hasSize(14);
        assertThat(SpeciesTable.byId("scots-pine"))
                .hasValueSatisfying(
                        s -> assertThat(List.of(s.radial(), s.tangential())).containsExactly(4.0, 7.7));
        assertThat(SpeciesTable.byId("ebony-of-nowhere")).isEmpty();
    }

    @Test
    void everySpeciesHasItsOwnIdASourceAndMovesMoreTangentially() {
        assertThat(SpeciesTable.all()).extracting(Species::id).doesNotHaveDuplicates();
        assertThat(SpeciesTable.all()).allSatisfy(s -> {
            assertThat(s.source()).isNotBlank();
            assertThat(s.name()).isNotBlank();
            assertThat(s.tangential()).isGreaterThan(s.radial());
        });
    }

    static List<CSVRecord> coefficients() throws IOException {
        try (Reader in = new InputStreamReader(
                Objects.requireNonNull(SpeciesTable.class.getResourceAsStream("species.csv")),
                StandardCharsets.UTF_8)) {
            return CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get().parse(in).stream()
                    .filter(row -> !row.get("change_radial").isBlank())
                    .toList();
        }
    }

    @Test
    void twelveSpeciesHavePublishedCoefficients() throws IOException {
        assertThat(coefficients()).hasSize(12);
    }

    /** Wood Handbook Table 13-5, by the rule (from memory) that makes it follow from Table 4-3. */
    @ParameterizedTest
    @MethodSource("coefficients")
    void coefficientsFollowFromShrinkage(CSVRecord row) {
        Species species = SpeciesTable.byId(row.get("id")).orElseThrow();
        assertThat(Moisture.changeCoefficient(species.radial()))
                .isCloseTo(Double.parseDouble(row.get("change_radial")), within(6e-6));
        assertThat(Moisture.changeCoefficient(species.tangential()))
                .isCloseTo(Double.parseDouble(row.get("change_tangential")), within(6e-6));
    }
}
