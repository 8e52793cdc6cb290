package org.marktwice.print.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PathTextTest {
    @ParameterizedTest
    @CsvSource({
        "M10 20 L11 20 L11 21.5 Z, m10 20l1 0 0 1.5z",
        "M0 0 L-0.25 0.5 L-1 -1, m0 0l-.25 .5-.75-1.5",
        "M1 1 C2 2 3 3 4 4 Q5 5 6 6, m1 1c1 1 2 2 3 3q1 1 2 2",
        "M1 1 L2 1 Z M5 5 L6 5 Z, m1 1l1 0zm4 4l1 0z",
        "M0.004 0.006 L100.126 0.05, m0 .01l100.13 .04"
    })
    void placesAreToldFromTheOneBefore(String data, String shorter) {
        assertThat(PathText.shortened(data)).isEqualTo(shorter);
    }

    @Test
    void roundingNeverAddsUp() {
        StringBuilder data = new StringBuilder("M 0 0");
        for (int i = 1; i <= 999; i++) data.append(" L ").append(i * 0.3333).append(" 0");
        double x = 0;
        for (String step : PathText.shortened(data.toString()).substring(5).split(" 0 ?")) {
            x += Double.parseDouble(step.strip());
        }
        assertThat(x).isCloseTo(999 * 0.3333, org.assertj.core.data.Offset.offset(0.0051));
    }

    @Test
    void whatIsNoPathIsRefused() {
        assertThatThrownBy(() -> PathText.shortened("M 0 0 A 1 1")).isInstanceOf(IllegalArgumentException.class);
    }
}
