package org.marktwice.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marktwice.timber.PublishedBoards.number;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The figures of an independent implementation, with the tolerances that its file states. */
class PublishedBoardsTest {
    static List<PublishedBoards.Case> boards() {
        return PublishedBoards.all();
    }

    @Test
    void tenBoardsAreThere() {
        assertThat(boards()).hasSize(10);
    }

    @ParameterizedTest
    @MethodSource("boards")
    void clearancesAgree(PublishedBoards.Case published) {
        JsonNode clearances = published.expect().path("clearances");
        assertThat(clearances).isNotEmpty();
        for (JsonNode expected : clearances) {
            KnotBody body = published.knot(expected.path("knot").asText());
            Box cut = published.cut(expected.path("cut").asText());
            assertThat(body.clearance(cut)).as("%s", expected).isCloseTo(number(expected, "mm"), within(0.05));
        }
    }

    @ParameterizedTest
    @MethodSource("boards")
    void tracesAgree(PublishedBoards.Case published) {
        JsonNode traces = published.expect().path("traces");
        // The smallest trace the file lists has 6.2 square millimetres; it leaves out those of less than 5.
        assertThat(published.board().traces().stream().filter(t -> t.area() > 5))
                .as("number of traces")
                .hasSize(traces.size());
        for (JsonNode expected : traces) {
            Surface surface = Surface.of(expected.path("surface").asText()).orElseThrow();
            Trace trace = published
                    .knot(expected.path("knot").asText())
                    .trace(surface)
                    .orElseThrow();
            double area = number(expected, "area");
            // The file gives areas to 0.1 square millimetre.
            assertThat(trace.area()).as("%s", expected).isCloseTo(area, within(0.02 * area + 0.05));
            assertThat(trace.length()).as("%s", expected).isCloseTo(number(expected, "length"), Offset.offset(0.5));
            assertThat(trace.width()).as("%s", expected).isCloseTo(number(expected, "width"), Offset.offset(0.5));
        }
    }

    @ParameterizedTest
    @MethodSource("boards")
    void cupAgreesAtBothMoistures(PublishedBoards.Case published) {
        JsonNode cups = published.expect().path("cup");
        assertThat(cups).hasSize(2);
        cups.fields().forEachRemaining(at -> {
            Seasoned seasoned = Seasoned.of(published.board(), Double.parseDouble(at.getKey()));
            for (Surface face : List.of(Surface.FACE_1, Surface.FACE_2)) {
                assertThat(seasoned.cup(face).orElseThrow())
                        .as("%s at %s %%", face, at.getKey())
                        .isCloseTo(number(at.getValue(), face.id()), within(0.005));
            }
        });
    }
}
