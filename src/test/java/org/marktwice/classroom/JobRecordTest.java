package org.marktwice.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.classroom.JobRecord.Band;
import org.marktwice.classroom.JobRecord.Beside;
import org.marktwice.classroom.JobRecord.Column;
import org.marktwice.classroom.JobRecord.Judged;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RecordFile;
import org.marktwice.files.RecordFile.Row;
import org.marktwice.scenario.Scenario;

/** Finished jobs against the drawing, and beside the practice marks. */
class JobRecordTest {
    private static final Scenario SHELF = Handed.shelf();

    private static RecordFile file(Row... rows) {
        return new RecordFile("porch-shelf", "", OptionalDouble.empty(), List.of(rows));
    }

    private static JobRecord record(RecordFile file) throws FileRefused {
        return JobRecord.of(SHELF, file, "record");
    }

    @Test
    void theDrawingSaysWhatThereIsToMeasure() {
        Map<String, Double> drawn = new LinkedHashMap<>();
        for (Measure measure : Measure.of(SHELF.drawing())) drawn.put(measure.id(), measure.drawn());

        double across = SHELF.drawing().overall().across();
        double high = SHELF.drawing().overall().high();
        double up = SHELF.drawing().part("shelf").orElseThrow().at().z();
        assertThat(drawn.keySet())
                .containsExactly(
                        "across",
                        "deep",
                        "high",
                        "place-shelf",
                        "diagonal-1-a",
                        "diagonal-1-b",
                        "gap-left-housing",
                        "gap-right-housing");
        assertThat(drawn).containsEntry("across", across).containsEntry("place-shelf", up);
        assertThat(drawn.get("diagonal-1-a")).isEqualTo(Math.hypot(across, high), within(1e-9));
        assertThat(drawn.get("diagonal-1-b")).isEqualTo(drawn.get("diagonal-1-a"));
    }

    @ParameterizedTest
    @CsvSource({
        "strict,        0.25, GOOD", "strict,        0.5, FAIR", "strict,        0.6, POOR",
        "standard,      0.5,  GOOD", "standard,      1,   FAIR", "standard,      1.1, POOR",
        "first-attempt, 1,    GOOD", "first-attempt, 2,   FAIR", "first-attempt, 2.1, POOR",
        "'',            -0.5, GOOD", "'',            -1,  FAIR", "'',           -1.2, POOR",
        // ISO 2768-1, table 1: coarse is 2 mm over 400 up to 1000 mm
        "iso-2768-c,    1,    GOOD", "iso-2768-c,    2,   FAIR", "iso-2768-c,    2.1, POOR"
    })
    void bandsFollowThePreset(String preset, double off, Band band) throws FileRefused {
        double drawn = SHELF.drawing().overall().across();
        RecordFile file = file(new Row("AB", Map.of("across", drawn + off))).judgedBy(preset, OptionalDouble.empty());

        Judged judged = record(file).jobs().get(0).judged().get(0);

        assertThat(judged.off()).isEqualTo(off, within(1e-9));
        assertThat(judged.band()).isEqualTo(band);
    }

    @Test
    void ofDiagonalsTheDifferenceCountsAndOneAloneSaysNothing() throws FileRefused {
        JobRecord record = record(file(
                new Row("AB", Map.of("diagonal-1-a", 700.0, "diagonal-1-b", 703.0)),
                new Row("CD", Map.of("diagonal-1-a", 700.0)),
                new Row("EF", Map.of("gap-left-housing", 0.4, "gap-right-housing", 0.9))));

        assertThat(record.jobs().get(0).judged())
                .extracting(Judged::id, Judged::off, Judged::band)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("diagonal-1", -3.0, Band.POOR));
        assertThat(record.jobs().get(1).judged()).isEmpty();
        assertThat(record.jobs().get(1).share()).isNaN();
        assertThat(record.jobs().get(2).judged()).extracting(Judged::band).containsExactly(Band.GOOD, Band.FAIR);
        assertThat(record.jobs().get(2).share()).isEqualTo(0.75);
    }

    @Test
    void aFaultOfAllShowsInTheMean() throws FileRefused {
        double up = SHELF.drawing().part("shelf").orElseThrow().at().z();
        JobRecord record = record(file(
                new Row("AB", Map.of("place-shelf", up + 2.0)),
                new Row("CD", Map.of("place-shelf", up + 3.0)),
                new Row("EF", Map.of("place-shelf", up + 2.5))));

        Column column = record.columns().get(0);

        assertThat(record.columns()).hasSize(1);
        assertThat(column.mean()).isEqualTo(2.5, within(1e-9));
        assertThat(column.deviation()).isEqualTo(0.5, within(1e-9));
        assertThat(column.poor()).isEqualTo(3);
    }

    @Test
    void practiceMarksStandBesideForWhoHasBoth() throws FileRefused {
        List<Row> rows = new ArrayList<>();
        Results.Collector practice = new Results.Collector(ExerciseSet.of(SHELF));
        double drawn = SHELF.drawing().overall().across();
        double[] off = {0, 0.2, 0.8, 1.5, 2.5, 0.1};
        for (int i = 0; i < off.length; i++) {
            rows.add(new Row("P" + i, Map.of("across", drawn + off[i], "gap-left-housing", off[i] / 2)));
            if (i < 5) practice.take(attempted("p" + i + " ", 5 - i));
        }
        practice.take(attempted("Z", 1));

        Beside beside = record(file(rows.toArray(Row[]::new))).beside(practice.results(Results.Counting.LAST));

        assertThat(beside.pairs()).extracting(JobRecord.Pair::learner).containsExactly("P0", "P1", "P2", "P3", "P4");
        assertThat(beside.correlation().orElseThrow()).isBetween(0.9, 1.0);
        assertThat(beside.onlyPractice()).containsExactly("Z");
        assertThat(beside.onlyBench()).containsExactly("P5");
    }

    @Test
    void fewPairsTellNothing() throws FileRefused {
        Results.Collector practice = new Results.Collector(ExerciseSet.of(SHELF));
        practice.take(attempted("A", 5));
        practice.take(attempted("B", 1));
        JobRecord record = record(
                file(new Row("A", Map.of("gap-left-housing", 0.0)), new Row("B", Map.of("gap-left-housing", 3.0))));

        assertThat(record.beside(practice.results(Results.Counting.LAST)).correlation())
                .isEmpty();
    }

    private static Attempted attempted(String learner, double marks) {
        return new Attempted(
                learner,
                Marked.State.WHOLE,
                learner,
                "2026-02-01T09:00:00Z",
                "porch-shelf",
                "",
                Map.of("handed-pair", new Attempted.Score(marks, 5)),
                List.of());
    }

    @Test
    void aRecordOfAnotherJobIsRefused() {
        assertThatThrownBy(() -> record(file(new Row("AB", Map.of("gap-middle", 1.0)))))
                .hasMessage("record: nothing on this job is called \"gap-middle\"; there are across, deep, high,"
                        + " place-shelf, diagonal-1-a, diagonal-1-b, gap-left-housing, gap-right-housing");
        assertThatThrownBy(() -> record(RecordFile.blank("peg-rail", List.of())))
                .hasMessage("record: this is a record of \"peg-rail\", not of \"porch-shelf\"");
        assertThatThrownBy(() -> record(file().judgedBy("loose", OptionalDouble.empty())))
                .hasMessageContaining("no tolerances called \"loose\"; there are strict, standard");
    }
}
