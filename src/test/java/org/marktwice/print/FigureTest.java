package org.marktwice.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Scales are those of ISO 5455:1979, table of clause 5: 1, 2 and 5 and their tens, up and down, and no others. */
class FigureTest {
    private static final List<String> RECOMMENDED = List.of(
            "20 : 1", "10 : 1", "5 : 1", "2 : 1", "1 : 1", "1 : 2", "1 : 5", "1 : 10", "1 : 20", "1 : 50", "1 : 100");

    @Test
    void everyScaleOfASheetIsARecommendedOne() {
        List<String> all =
                Arrays.stream(Figure.scales()).mapToObj(Figure::scaleText).toList();
        assertThat(RECOMMENDED).containsSubsequence(all).contains("1 : 1");
    }

    @Test
    void whateverRoomThereIsTheScaleIsARecommendedOneAndNoLargerThanTheRoom() {
        DoubleStream.iterate(0.012, room -> room * 1.07).limit(110).forEach(room -> {
            double detail = Figure.detailScale(room);
            assertThat(RECOMMENDED).contains(Figure.detailText(detail));
            assertThat(detail).isLessThanOrEqualTo(room);
            double reduction = Figure.scale(Paper.points(room));
            assertThat(RECOMMENDED).contains(Figure.scaleText(reduction));
            assertThat(1 / reduction).isLessThanOrEqualTo(room + 1e-12);
        });
    }
}
