package org.marktwice.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.StreamSupport;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.marktwice.classroom.Attempted.Score;
import org.marktwice.classroom.Attempted.Slip;
import org.marktwice.classroom.Marked.State;
import org.marktwice.classroom.Results.Counting;
import org.marktwice.classroom.Results.Item;
import org.marktwice.classroom.Results.SlipCount;
import org.marktwice.files.Tables;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.Verdict;

/** A class's results, their tables in files, and what to teach again. */
class ResultsTest {
    private static final String DANA = "\u05d3\u05e0\u05d4";
    private static final String ZOE = "Zo\u00eb";
    private static final ExerciseSet SET = ExerciseSet.of(Handed.shelf());

    @TempDir
    Path folder;

    private static Attempted attempted(String learner, String started, double cleanHands, Slip... slips) {
        return new Attempted(
                learner + started + ".attempt.jsonl",
                State.WHOLE,
                learner,
                "2026-02-0" + started + "T09:00:00Z",
                "porch-shelf",
                "",
                Map.of(
                        "handed-pair", new Score(cleanHands, 2),
                        "knot-clear-of-joint", new Score(3 - slips.length, 3),
                        "name-survives", new Score(0.5, 0.5)),
                List.of(slips));
    }

    private static Slip slip(String rule, double lost) {
        return new Slip(rule, Verdict.WRONG, "says.wrong", "said of " + rule, lost);
    }

    private static Results of(Counting counting, Attempted... attempts) {
        Results.Collector collector = new Results.Collector(SET);
        for (Attempted one : attempts) collector.take(one);
        return collector.results(counting);
    }

    private static Results four() {
        return of(
                Counting.LAST,
                attempted("P01", "1", 2),
                attempted("P02", "1", 1, slip("handed-pair", 1)),
                attempted("P03", "1", 0, slip("handed-pair", 2), slip("knot-clear-of-joint", 1)),
                attempted("=P04", "1", 2, slip("knot-clear-of-joint", 3)));
    }

    @Test
    void ofSeveralAttemptsOneCountsAndAllAreKept() {
        Attempted[] tries = {
            attempted("P01", "3", 1), attempted(" p01", "1", 0), attempted("P01", "2", 2), attempted("P02", "1", 2)
        };

        Map<Counting, Double> marks = new TreeMap<>();
        for (Counting counting : Counting.values()) {
            Results results = of(counting, tries);
            assertThat(results.rows()).hasSize(2);
            assertThat(results.rows().get(0).tries()).isEqualTo(3);
            assertThat(results.attempts())
                    .extracting(Attempted::started)
                    .containsExactly(
                            "2026-02-01T09:00:00Z",
                            "2026-02-02T09:00:00Z",
                            "2026-02-03T09:00:00Z",
                            "2026-02-01T09:00:00Z");
            marks.put(
                    counting,
                    Objects.requireNonNull(results.rows().get(0).scores().get("handed-pair"))
                            .marks());
        }

        assertThat(marks)
                .containsEntry(Counting.LAST, 1.0)
                .containsEntry(Counting.BEST, 2.0)
                .containsEntry(Counting.FIRST, 0.0);
    }

    @Test
    void anAttemptThatWasHandedInMoreThanOnceCountsOnceAsFarAsItWent() throws IOException {
        String whole = Handed.by("P01", Handed.flawed(), 1);
        put("b.attempt.jsonl", whole);
        put("a (copy).attempt.jsonl", whole);
        put("z half.attempt.jsonl", whole.substring(0, whole.length() / 2));
        put("later.attempt.jsonl", Handed.by("P01", Handed.perfect(), 2));
        put("another.attempt.jsonl", Handed.by("P02", Handed.flawed(), 1));
        put("other actions.attempt.jsonl", Handed.by("P01", Handed.perfect(), 1));
        ExerciseSet set = ExerciseSet.of(Handed.shelf());
        Results.Collector collector = new Results.Collector(set);
        Handed.marked(folder, set, false).forEach(collector);

        Results results = collector.results(Counting.LAST);

        assertThat(results.repeats())
                .containsExactlyInAnyOrder(
                        new Results.Repeat("b.attempt.jsonl", "a (copy).attempt.jsonl"),
                        new Results.Repeat("z half.attempt.jsonl", "a (copy).attempt.jsonl"));
        assertThat(results.attempts())
                .extracting(Attempted::file)
                .containsExactlyInAnyOrder(
                        "a (copy).attempt.jsonl",
                        "other actions.attempt.jsonl",
                        "later.attempt.jsonl",
                        "another.attempt.jsonl");
        assertThat(results.rows()).extracting(Results.Row::tries).containsExactly(3, 1);
    }

    private void put(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    @Test
    void progressIsToldOfWhoTriedMoreThanOnceInTheOrderOfTheAttempts() {
        Results results = of(
                Counting.BEST,
                attempted("P01", "3", 2),
                attempted("p01 ", "1", 0),
                attempted("P02", "1", 2),
                attempted("P01", "2", 1));

        assertThat(results.progress())
                .containsExactly(new Results.Progress("p01 ", "porch-shelf", List.of(3.5 / 5.5, 4.5 / 5.5, 1.0)));
        assertThat(results.progress().get(0).gained()).isEqualTo(2 / 5.5, within(1e-12));
    }

    @Test
    void rowsAddUpAndRulesComeInTheRuleBooksOrder() {
        Results results = four();

        assertThat(results.rows()).extracting(Results.Row::learner).containsExactly("=P04", "P01", "P02", "P03");
        assertThat(results.rows()).extracting(r -> r.total().marks()).containsExactly(4.5, 5.5, 3.5, 1.5);
        assertThat(results.rules())
                .extracting(Item::id)
                .containsExactly("handed-pair", "name-survives", "knot-clear-of-joint");
        assertThat(results.rules().get(0).facility()).isEqualTo(5.0 / 8, within(1e-12));
        assertThat(results.rules().get(1).discrimination()).isEmpty();
        assertThat(results.exercises()).extracting(Item::title).containsExactly("Porch shelf");
        assertThat(results.reliability().rules()).isEqualTo(3);
        assertThat(results.distribution()).containsExactly(0, 0, 1, 0, 0, 0, 1, 0, 1, 1);
    }

    @Test
    void slipsAreRankedByHowManyMadeThemAndThenByWhatTheyCost() {
        List<SlipCount> slips = four().slips();

        assertThat(slips).extracting(SlipCount::rule).containsExactly("knot-clear-of-joint", "handed-pair");
        assertThat(slips.get(0).learners()).containsExactly("=P04", "P03");
        assertThat(slips.get(0).lost()).isEqualTo(4);
        assertThat(slips.get(0).of()).isEqualTo(4);
        assertThat(slips.get(1).example()).isEqualTo("P02: said of handed-pair");
    }

    @Test
    void aRuleThatHadNothingToJudgeForALearnerIsLeftOutForThatLearner() {
        Attempted without = new Attempted(
                "x",
                State.WHOLE,
                "P09",
                "2026-02-01T09:00:00Z",
                "porch-shelf",
                "",
                Map.of("handed-pair", new Score(1, 2)),
                List.of());

        Results results = of(Counting.LAST, without, attempted("P01", "1", 2), attempted("P02", "1", 0));

        assertThat(results.rules()).extracting(Item::learners).containsExactly(3, 2, 2);
        assertThat(results.reliability().rules()).isEqualTo(1);
        assertThat(results.reliability().alpha()).isEmpty();
    }

    @Test
    void marksOfAFolderAreThoseOfTheMarkSheets() throws Exception {
        Files.writeString(folder.resolve("a.jsonl"), Handed.by("P01", Handed.perfect(), 0));
        Files.writeString(folder.resolve("b.jsonl"), Handed.by("P02", Handed.flawed(), 0));
        Files.writeString(folder.resolve("c.jsonl"), "nothing");
        Results.Collector collector = new Results.Collector(SET);
        Handed.marked(folder, SET, false).forEach(collector);

        Results results = collector.results(Counting.LAST);

        MarkSheet flawed = Handed.judged(Handed.flawed().getBytes(StandardCharsets.UTF_8), Handed.shelf());
        Results.Row second = results.rows().get(1);
        assertThat(second.total().marks()).isEqualTo(flawed.marks(), within(1e-9));
        assertThat(second.total().outOf()).isEqualTo(flawed.outOf(), within(1e-9));
        assertThat(results.rows().get(0).total().lost()).isEqualTo(0, within(1e-9));
        assertThat(results.slips()).isNotEmpty().allMatch(s -> s.learners().equals(List.of("P02")));
        assertThat(results.leftOut()).extracting(Results.LeftOut::file).containsExactly("c.jsonl");
    }

    @Test
    void csvHasALineForEachLearnerAndNoFormulas() throws Exception {
        Path file = folder.resolve("results.csv");

        ResultsExport.write(four(), file);

        try (CSVParser parser = CSVParser.parse(
                Files.readString(file), CSVFormat.RFC4180.builder().setHeader().get())) {
            List<CSVRecord> lines = parser.getRecords();
            assertThat(lines).extracting(l -> l.get("learner")).containsExactly("'=P04", "P01", "P02", "P03");
            assertThat(Double.parseDouble(lines.get(3).get("marks"))).isEqualTo(1.5);
            assertThat(Double.parseDouble(lines.get(2).get("handed-pair"))).isEqualTo(1);
        }
    }

    @Test
    void aTableWithOtherLettersBeginsSoThatSpreadsheetsShowThem() throws Exception {
        Path file = folder.resolve("results.csv");

        ResultsExport.write(of(Counting.LAST, attempted(DANA, "1", 2), attempted(ZOE, "1", 1)), file);

        assertThat(Files.readString(file)).startsWith("\uFEFFlearner,");
        assertThat(Tables.read(file)).extracting(l -> l.cell(0)).containsExactly("learner", ZOE, DANA);
    }

    /** The workbook as another library reads it, which shares nothing with the one that writes it. */
    @Test
    void theWorkbookHasASheetForEachTableAndNumbersInIt() throws Exception {
        Path file = folder.resolve("results.xlsx");
        Results results = of(
                Counting.LAST,
                attempted("P02", "1", 1, slip("handed-pair", 1)),
                attempted(DANA, "1", 0, slip("handed-pair", 2), slip("knot-clear-of-joint", 1)),
                attempted("=P04", "1", 2, slip("knot-clear-of-joint", 3)));

        ResultsExport.write(results, file);

        try (XSSFWorkbook book = new XSSFWorkbook(file.toFile())) {
            assertThat(names(book)).containsExactly("Learners", "Rules", "Slips", "Attempts", "Not marked");
            Sheet learners = book.getSheet("Learners");
            assertThat(texts(learners.getRow(0)))
                    .startsWith("learner", "attempts", "marks", "out of", "share")
                    .contains("knot-clear-of-joint", "handed-pair");
            assertThat(column(learners, 0)).containsExactly("learner", "=P04", "P02", DANA);
            Row last = learners.getRow(3);
            assertThat(last.getCell(1).getNumericCellValue()).isEqualTo(1);
            assertThat(last.getCell(2).getNumericCellValue()).isEqualTo(1.5);
            assertThat(last.getCell(3).getNumericCellValue()).isEqualTo(5.5);
            assertThat(last.getCell(4).getNumericCellValue()).isEqualTo(1.5 / 5.5, within(1e-9));
            assertThat(new DataFormatter(Locale.ROOT).formatCellValue(last.getCell(4)))
                    .isEqualTo("27 %");
            assertThat(learners.getPaneInformation().isFreezePane()).isTrue();
            assertThat(column(book.getSheet("Slips"), 6)).contains("=P04, " + DANA);
            assertThat(book.getSheet("Attempts").getLastRowNum()).isEqualTo(3);
            for (Sheet sheet : book) {
                for (Row row : sheet)
                    row.forEach(c -> assertThat(c.getCellType()).isNotEqualTo(CellType.FORMULA));
            }
        }
    }

    private static List<String> names(XSSFWorkbook book) {
        return StreamSupport.stream(book.spliterator(), false)
                .map(Sheet::getSheetName)
                .toList();
    }

    private static List<String> texts(Row row) {
        return StreamSupport.stream(row.spliterator(), false)
                .map(Cell::getStringCellValue)
                .toList();
    }

    private static List<String> column(Sheet sheet, int column) {
        return StreamSupport.stream(sheet.spliterator(), false)
                .map(r -> r.getCell(column).getStringCellValue())
                .toList();
    }

    @Test
    void anotherKindOfFileIsRefused() {
        assertThatThrownBy(() -> ResultsExport.write(four(), folder.resolve("results.pdf")))
                .hasMessageContaining("expected a file *.csv or *.xlsx");
    }

    @Test
    void whatMostSlippedOnIsTaughtAgainFirst() {
        Reteach reteach = Reteach.of(four());

        assertThat(reteach.points())
                .extracting(Reteach.Point::rule)
                .containsExactly("knot-clear-of-joint", "handed-pair");
        assertThat(reteach.points().get(1).canShow()).containsExactly("P01", "=P04");
        assertThat(reteach.sure()).containsExactly("The name outlasts the cutting");
        assertThat(reteach.help()).containsExactly("P03");
    }

    @Test
    void aSlipOfOneInManyIsNoLesson() {
        Attempted[] class6 = new Attempted[6];
        for (int i = 0; i < 5; i++) class6[i] = attempted("P0" + i, "1", 2);
        class6[5] = attempted("P06", "1", 1, slip("handed-pair", 1));

        assertThat(Reteach.of(of(Counting.LAST, class6)).points()).isEmpty();
        assertThat(Reteach.of(of(Counting.LAST)).points()).isEmpty();
    }
}
