package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
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
import org.junit.jupiter.params.provider.CsvSource;

class ClimateTest {
    private static double settled(double fahrenheit, double humidity) {
        return new Climate(Climate.ofFahrenheit(fahrenheit), humidity).settledMoisture();
    }

    /** Wood Handbook Table 4-2, 152 entries; see {@code published/SOURCES.md}. */
    @Test
    void everyEntryOfTheTableIsMet() throws IOException {
        List<CSVRecord> rows = table();
        assertThat(rows).hasSize(152);
        assertThat(rows)
                .allSatisfy(row -> assertThat(settled(number(row, 0), number(row, 1)))
                        .as("%s °F, %s %%", row.get(0), row.get(1))
                        .isCloseTo(number(row, 2), within(0.06)));
    }

    private static double number(CSVRecord row, int column) {
        return Double.parseDouble(row.get(column));
    }

    private static List<CSVRecord> table() throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader in = new InputStreamReader(
                Objects.requireNonNull(ClimateTest.class.getResourceAsStream("/published/emc-table-4-2.csv")),
                StandardCharsets.UTF_8)) {
            return format.parse(in).getRecords();
        }
    }

    /** Wood Handbook, worked with eq. 4-5. */
    @ParameterizedTest
    @CsvSource({"65, 60, 11.1", "65, 30, 6.2"})
    void roomsOfTheHandbook(double fahrenheit, double humidity, double percent) {
        assertThat(settled(fahrenheit, humidity)).isCloseTo(percent, within(0.06));
    }

    @Test
    void timberDriesWithTheAirAndGainsWithIt() {
        for (double celsius = 0; celsius <= 60; celsius += 5) {
            assertThat(new Climate(celsius, 0).settledMoisture()).isZero();
            for (int humidity = 1; humidity <= 100; humidity++) {
                assertThat(new Climate(celsius, humidity).settledMoisture())
                        .as("%s °C, %d %%", celsius, humidity)
                        .isGreaterThan(new Climate(celsius, humidity - 1).settledMoisture())
                        .isLessThan(Moisture.FIBRE_SATURATION);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"-1.2, 50", "60.1, 50", "NaN, 50", "20, -1", "20, 100.1", "20, NaN"})
    void whatIsNoRoomIsRefused(double celsius, double humidity) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Climate(celsius, humidity));
    }

    @ParameterizedTest
    @CsvSource({"30, -1.1111", "32, 0", "70, 21.1111", "140, 60"})
    void fahrenheit(double fahrenheit, double celsius) {
        assertThat(Climate.ofFahrenheit(fahrenheit)).isCloseTo(celsius, within(1e-4));
    }
}
