package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.marktwice.view.Calibration.Point;

class CalibrationTest {
    private static Point point(int day, double off, int foreseen, int missed, int held) {
        return new Point("2026-01-0" + day + "T09:30:00Z", "Shelf", List.of(off), foreseen, missed, held);
    }

    @Test
    void theLatestAreToldApartFromThoseBefore() {
        List<Point> points = IntStream.rangeClosed(1, 5)
                .mapToObj(d -> point(d, d <= 2 ? 12 : 3, 0, 0, 0))
                .toList();

        assertThat(new Calibration(points).words())
                .containsExactly("Clearances: 3.0 mm off on average; before that 12.0 mm.");
    }

    @Test
    void whatWasForeseenIsCounted() {
        assertThat(new Calibration(List.of(point(1, 4, 2, 1, 1))).words())
                .containsExactly(
                        "Clearances: 4.0 mm off on average.",
                        "Of 3 that lost marks you foresaw 2.",
                        "1 that you doubted was sound.");
        assertThat(Calibration.NONE.words()).isEmpty();
    }

    /** Nothing is kept but the attempts: the calibration of a folder is that of the attempts in it. */
    @Test
    void itIsComputedFromTheAttemptsInTheFolder(@TempDir Path home) throws Exception {
        var shelf = Samples.scenario("porch-shelf");
        String text = Files.readString(Samples.attemptFile("porch-shelf", "flawed"));
        String handIn =
                text.lines().filter(l -> l.contains("hand-in")).findFirst().orElseThrow();
        double t = Double.parseDouble(handIn.replaceAll(".*\"t\":([0-9.]+).*", "$1"));
        String estimate =
                "{\"t\":" + t + ",\"do\":\"estimate\",\"expects\":[],\"parts\":[\"shelf\",\"upright-left\"]}\n";
        Files.writeString(home.resolve("porch-shelf-P07-1.attempt.jsonl"), text.replace(handIn, estimate + handIn));
        Files.copy(
                Samples.attemptFile("porch-shelf", "perfect"),
                home.resolve("porch-shelf-P07-2.attempt.jsonl"),
                StandardCopyOption.REPLACE_EXISTING);

        Calibration found = new LearnerFolder(home).calibration(List.of(shelf), "P04");
        assertThat(found.points()).hasSize(1);
        assertThat(found.points().get(0).foreseen() + found.points().get(0).held())
                .isEqualTo(2);
        assertThat(new LearnerFolder(home).calibration(List.of(shelf), "P09").isEmpty())
                .isTrue();
    }
}
