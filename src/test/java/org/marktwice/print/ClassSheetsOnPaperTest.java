package org.marktwice.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.classroom.BulkMarking;
import org.marktwice.classroom.Exercise;
import org.marktwice.classroom.ExerciseSet;
import org.marktwice.classroom.Marker;
import org.marktwice.classroom.RackAllotment;
import org.marktwice.classroom.Results;
import org.marktwice.classroom.Reteach;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RackFile;
import org.marktwice.scenario.Scenario;

/** Labels for the rack and the page of what to teach again, as they come out on paper. */
class ClassSheetsOnPaperTest {
    private static final Path SHELF = Path.of("scenarios", "porch-shelf.scenario.json");
    private static final Path RACK = Path.of("src", "test", "resources", "files", "class.rack.json");

    private static String text(List<Page> pages) throws IOException {
        try (PDDocument document = Loader.loadPDF(Pdf.of(pages, "x"))) {
            return new PDFTextStripper().getText(document);
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyBoardThatIsUsedHasALabelWithWhoseItIsAndHowItLies(Paper paper) throws FileRefused, IOException {
        Scenario job = Exercise.read(SHELF);
        RackAllotment allotment = RackAllotment.of(job, RackFile.read(RACK), 1);

        List<Page> pages = LabelSheet.of(allotment, List.of("AB"), paper);

        assertThat(pages).hasSize(1);
        assertThat(text(pages))
                .contains("Left upright", "Right upright", "Shelf", "R1", "R2", "R3", "Porch shelf · AB")
                .containsPattern("Face side on face [12], face edge on edge [12]")
                .containsPattern("End 1 (up|down); ");
    }

    @Test
    void moreLabelsThanFitGoOnTheNextPage() throws FileRefused {
        Scenario job = Exercise.read(SHELF);
        RackFile rack = RackFile.read(RACK);
        RackAllotment one = RackAllotment.of(job, rack, 1);
        List<String> names = new ArrayList<>();
        List<ModelAnswer> jobs = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            names.add("P" + i);
            jobs.add(one.jobs().get(0));
        }
        RackAllotment ten = new RackAllotment(one.scenario(), one.rack(), jobs, List.of(), List.of(), List.of());

        assertThat(LabelSheet.of(ten, names, Paper.A4)).hasSize(3);
    }

    @ParameterizedTest
    @EnumSource
    void whatToTeachAgainIsOnePage(Paper paper) throws Exception {
        ExerciseSet set = ExerciseSet.of(Exercise.read(SHELF));
        Results.Collector collector = new Results.Collector(set);
        BulkMarking.of(Path.of("scenarios", "attempts"))
                .run(new Marker(set, false), 2, collector, BulkMarking.Progress.NONE);
        Results results = collector.results(Results.Counting.LAST);
        Reteach reteach = Reteach.of(results);

        List<Page> pages = ReteachSheet.of(results, reteach, paper);

        assertThat(pages).hasSize(1);
        String text = text(pages);
        for (Reteach.Point point : reteach.points().subList(0, 3))
            assertThat(text).contains(point.texts().title());
        assertThat(text).contains("who", "instead", "P04", "2 learners");
    }
}
