package org.marktwice.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.classroom.ClassList;
import org.marktwice.classroom.JobRecord;
import org.marktwice.classroom.JobRecord.Beside;
import org.marktwice.classroom.JobRecord.Pair;
import org.marktwice.classroom.Measure;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RecordFile;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Scenario;

/** The record of finished jobs on paper: a blank for the bench, and what was measured with its bands. */
class RecordSheetsTest {
    private static Scenario scenario(String id) throws FileRefused {
        return ScenarioFile.read(Path.of("scenarios", id + ".scenario.json"));
    }

    /** The porch shelf is 520 × 130 × 310; sizes within ± 1 mm, gaps within 1 mm. */
    private static RecordFile measured() {
        return RecordFile.blank("porch-shelf", List.of("P01", "P02"))
                .with("P01", "across", OptionalDouble.of(520.4))
                .with("P01", "high", OptionalDouble.of(308.7))
                .with("P01", "diagonal-1-a", OptionalDouble.of(601))
                .with("P01", "diagonal-1-b", OptionalDouble.of(600.2));
    }

    private static String text(List<Page> pages) {
        return PdfRead.of(Pdf.of(pages, "x")).all();
    }

    @ParameterizedTest
    @EnumSource
    void theBlankHasEveryMeasureWithItsSizeAndItsBands(Paper paper) throws FileRefused {
        Scenario shelf = scenario("porch-shelf");
        String text = text(Sheets.of(shelf, Set.of(SheetKind.RECORD), paper));

        for (Measure measure : Measure.of(shelf.drawing())) assertThat(text).contains(measure.title());
        assertThat(text)
                .contains("record sheet", "name", "class", "date", "measured", "out by")
                .contains("Overall across 520 519.5 – 520.5 519 – 521")
                .contains("Shelf from the bottom end 90 89.5 – 90.5 89 – 91")
                .contains("none to 0.5 to 1");
    }

    /** The picture makes room: a page with nothing but the foot would be printed for each learner. */
    @ParameterizedTest
    @CsvSource({"pot-stand, 1", "candle-sconce, 1", "seed-box, 1", "wall-cupboard, 2"})
    void whatIsALittleMoreThanAPageIsPutOnOne(String id, int pages) throws FileRefused {
        List<Page> sheet = Sheets.of(scenario(id), Set.of(SheetKind.RECORD), Paper.A4);

        assertThat(sheet).hasSize(pages);
        assertThat(text(sheet)).contains("Measure the finished job", "The job", "what to do otherwise next time");
    }

    @Test
    void whatWasMeasuredStandsWithWhatItIsOutByAndThePracticeMarks() throws FileRefused {
        RecordFile file = measured();
        JobRecord record = JobRecord.of(scenario("porch-shelf"), file, "x");
        Beside beside =
                new Beside(List.of(new Pair("P01", 0.82, 2 / 3.0)), OptionalDouble.empty(), List.of(), List.of("P02"));
        List<Page> pages = RecordSheets.each(record, file, beside, Paper.A4);
        PdfRead read = PdfRead.of(Pdf.of(pages, "x"));

        String first = read.texts().get(0);
        assertThat(first)
                .contains("P01", "Overall across 520 519.5 – 520.5 519 – 521 520.4 +0.4")
                .contains("308.7 −1.3", "to 0.5 to 1 +0.8")
                .contains("1 good, 1 fair, 1 poor: job 50 of 100. Practice 82 of 100.");
        assertThat(pages).hasSize(2);
        assertThat(read.texts().get(1)).contains("P02", "job of 100").doesNotContain("Practice 82");
    }

    @ParameterizedTest
    @ValueSource(strings = {"porch-shelf", "wall-cupboard", "peg-rail"})
    void theClassIsOneTableOfEveryLearnerAndMeasure(String id) throws FileRefused {
        Scenario scenario = scenario(id);
        List<String> learners = ClassList.numbered(24).learners();
        RecordFile file = RecordFile.blank(id, learners);
        JobRecord record = JobRecord.of(scenario, file, "x");
        PdfRead read = PdfRead.of(Pdf.of(RecordSheets.table(record, file, null, Paper.LETTER), "x"));

        int measures = record.measures().size();
        assertThat(read.texts()).hasSize((measures + 9) / 10);
        for (String text : read.texts()) assertThat(text).contains(learners);
    }

    @Test
    void theTableOfWhatWasMeasuredSaysWhatTheClassIsOutBy() throws FileRefused {
        RecordFile file = measured().with("P02", "across", OptionalDouble.of(521.2));
        JobRecord record = JobRecord.of(scenario("porch-shelf"), file, "x");
        Beside beside =
                new Beside(List.of(new Pair("P01", 0.82, 2 / 3.0)), OptionalDouble.empty(), List.of(), List.of("P02"));

        assertThat(text(RecordSheets.table(record, file, beside, Paper.A4)))
                .contains("520.4", "521.2", "+0.8", "1 · 0 · 1", "50", "82")
                .contains("Too few, or too much alike, to tell whether practice paid.");
    }
}
