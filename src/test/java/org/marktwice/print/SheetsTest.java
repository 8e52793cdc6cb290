package org.marktwice.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.Fixtures;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.classroom.ExerciseSet;
import org.marktwice.classroom.Marked;
import org.marktwice.classroom.Marker;
import org.marktwice.drawing.Part;
import org.marktwice.files.ScenarioFile;
import org.marktwice.rulebook.Cautions;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.PracticeWords;
import org.marktwice.rulebook.Rule;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Texts;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

class SheetsTest {
    private static final Path SCENARIOS = Path.of("scenarios");

    private static Scenario scenario(String id) throws Exception {
        return ScenarioFile.read(SCENARIOS.resolve(id + ".scenario.json"));
    }

    private static PdfRead printed(Scenario scenario, SheetKind kind, Paper paper) {
        return PdfRead.of(Pdf.of(Sheets.of(scenario, Set.of(kind), paper), scenario.title()));
    }

    /** With the wood itself; all exercises on plain wood are {@link EverySheetTest}'s. */
    static List<Arguments> everySheet() {
        List<Arguments> all = new ArrayList<>();
        for (String id : List.of("porch-shelf")) {
            for (SheetKind kind : SheetKind.values()) {
                for (Paper paper : Paper.values()) all.add(Arguments.of(id, kind, paper));
            }
        }
        return all;
    }

    /** The border leaves 20 mm for filing and 10 on the other sides, as ISO 5457 has it. */
    @ParameterizedTest(name = "{0} {1} on {2}")
    @MethodSource("everySheet")
    void everyPageIsOfThePaperAndKeepsWithinTheBorder(String id, SheetKind kind, Paper paper) throws Exception {
        PdfRead read = printed(scenario(id), kind, paper);

        for (int i = 0; i < read.texts().size(); i++) {
            boolean landscape =
                    read.sizes().get(i).getWidth() > read.sizes().get(i).getHeight();
            assertThat((double) read.sizes().get(i).getWidth()).isCloseTo(paper.width(landscape), within(0.01));
            assertThat((double) read.sizes().get(i).getHeight()).isCloseTo(paper.height(landscape), within(0.01));
            Rectangle2D frame = new Rectangle2D.Double(
                    20 * 72 / 25.4,
                    10 * 72 / 25.4,
                    paper.width(landscape) - 30 * 72 / 25.4,
                    paper.height(landscape) - 20 * 72 / 25.4);
            assertThat(read.places().get(i)).isNotEmpty();
            assertThat(outside(frame, List.of(read.places().get(i)))).isEmpty();
            assertThat(read.texts().get(i))
                    .contains(kind.spoken(), (i + 1) + " of " + read.texts().size());
        }
    }

    private static List<Rectangle2D> outside(Rectangle2D frame, List<List<Rectangle2D>> pages) {
        return pages.stream()
                .flatMap(List::stream)
                .filter(l -> !frame.contains(l))
                .toList();
    }

    /** Nothing is written over anything else: no two letters share more than a sliver. */
    @ParameterizedTest(name = "{0} {1} on {2}")
    @MethodSource("everySheet")
    void noLetterLiesOnAnother(String id, SheetKind kind, Paper paper) throws Exception {
        for (List<Rectangle2D> letters : printed(scenario(id), kind, paper).places()) {
            for (int i = 0; i < letters.size(); i++) {
                for (int j = i + 1; j < letters.size(); j++) {
                    Rectangle2D both = letters.get(i).createIntersection(letters.get(j));
                    boolean apart = both.getWidth() < 1.2 || both.getHeight() < 1.2;
                    assertThat(apart)
                            .as("%s and %s", letters.get(i), letters.get(j))
                            .isTrue();
                }
            }
        }
    }

    @Test
    void theDrawingHasItsOverallSizesAndItsScale() throws Exception {
        String text =
                printed(scenario("porch-shelf"), SheetKind.DRAWING, Paper.A4).all();

        assertThat(text).contains("Porch shelf", "working drawing", "520", "130", "310", "90", "1 : 5", "1 of 1");
        // the joint beside it, larger: 6 deep of 18
        assertThat(text).contains("A through housing 1 : 2 Left upright, Shelf; and 1 more alike 6 18");
    }

    @Test
    void thePartsListNamesEveryPartAndEveryBoard() throws Exception {
        Scenario scenario = scenario("porch-shelf");
        String text = printed(scenario, SheetKind.PARTS, Paper.A4).all();

        for (Part part : scenario.drawing().parts()) assertThat(text).contains(part.name() + " timber");
        for (Board board : scenario.boards()) assertThat(text).contains(board.id() + " Scots pine");
        assertThat(text).contains("through housing Left upright Shelf");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void theWorksheetHoldsEveryBoardAndNoAnswer(Paper paper) throws Exception {
        Scenario scenario = scenario("porch-shelf");
        String text = printed(scenario, SheetKind.WORKSHEET, paper).all();

        for (Board board : scenario.boards()) assertThat(text).contains("Board " + board.id() + " ");
        assertThat(text)
                .contains("name", "class", "date", "What to do", "1 mm measured on a board here is 5 mm of wood");
        for (Part part : scenario.drawing().parts()) assertThat(text).doesNotContain(part.name());
        assertThat(text).doesNotContain("looks left", "looks right", "nearest:", "mm from");
    }

    @Test
    void theAnswerSheetHasTheModelAnswersClearances() throws Exception {
        Scenario scenario = scenario("porch-shelf");
        String text = printed(scenario, SheetKind.ANSWERS, Paper.A4).all();

        for (Option option : ModelAnswer.of(scenario).placings()) {
            String part = option.placing().part().name();
            assertThat(text).contains(part + " " + option.placing().board().id() + " face ");
            // the side that is marked looks where the drawing wants it, in the turn that solve gives
            Surface side = option.placing()
                    .turn()
                    .looking(option.placing().part().faceSide().get(0));
            assertThat(text)
                    .contains("Face side: " + side.spoken() + " looks "
                            + option.placing().part().faceSide().get(0).id());
            assertThat(text).contains("Board " + option.placing().board().id() + " · " + part);
            option.nearest()
                    .ifPresent(n -> assertThat(text).contains(Figure.tenth(n.clearance()) + " mm from the joint with"));
        }
        assertThat(text).contains("set aside: knot in every turn", "Every part can be supplied");
    }

    @Test
    void theRuleBookHasEveryRuleInFull() throws Exception {
        String text =
                printed(scenario("porch-shelf"), SheetKind.RULES, Paper.A4).all();

        for (Rule rule : RuleBook.rules()) {
            Texts.RuleTexts texts = Texts.of(rule.id());
            assertThat(text).contains(texts.title());
            assertThat(text.replace(" why ", " ")).contains(lastWords(texts.why()));
            assertThat(text).contains(lastWords(texts.instead()));
        }
    }

    private static String lastWords(String text) {
        String[] words = text.strip().split("\\s+");
        return words[words.length - 1];
    }

    @Test
    void theCautionsAreAllThere() throws Exception {
        String text = printed(scenario("porch-shelf"), SheetKind.CAUTIONS, Paper.LETTER)
                .all();

        for (String caution : Cautions.ALL) assertThat(text).contains(caution.split("[,.:;]")[0]);
        assertThat(text).contains("A loose knot can fly out", "The rules of this workshop");
    }

    @Test
    void sheetsOfSeveralKindsAreNumberedThroughInTheirOwnOrder() throws Exception {
        Scenario scenario = scenario("porch-shelf");
        List<Page> pages = Sheets.of(scenario, List.of(SheetKind.CAUTIONS, SheetKind.DRAWING), Paper.A4);
        PdfRead read = PdfRead.of(Pdf.of(pages, "x"));

        assertThat(read.texts()).hasSize(2);
        assertThat(read.texts().get(0)).contains("working drawing").contains("1 of 2");
        assertThat(read.texts().get(1)).contains("cautions").contains("2 of 2");
    }

    @Test
    void aJobThatCantBeSolvedHasAnAnswerSheetToo() {
        Scenario none = Fixtures.withBoards(Fixtures.porchShelf(), List.of());
        String text = PdfRead.of(
                        Pdf.of(Sheets.of(none, EnumSet.of(SheetKind.ANSWERS, SheetKind.WORKSHEET), Paper.A4), "x"))
                .all();

        assertThat(text).contains("Left upright – no board serves");
    }

    @Test
    void aMarkSheetForEachAttemptSaysWhatWasFound() throws Exception {
        Scenario scenario = scenario("porch-shelf");
        Marker marker = new Marker(ExerciseSet.of(scenario), false);
        List<Marked> marked = new ArrayList<>();
        for (String name : List.of("porch-shelf-flawed", "porch-shelf-perfect")) {
            marked.add(marker.mark(SCENARIOS.resolve("attempts/" + name + ".attempt.jsonl"), name));
        }
        marked.add(marker.mark(SCENARIOS.resolve("porch-shelf.scenario.json"), "not an attempt"));
        PdfRead read = PdfRead.of(Pdf.of(Sheets.marks(marked, Paper.A4), "Mark sheets"));

        String all = read.all();
        for (Marked one : marked.subList(0, 2)) {
            MarkSheet sheet = one.sheet().orElseThrow();
            assertThat(all)
                    .contains(one.learner() + ": " + Figure.number(sheet.marks()) + " of "
                            + Figure.number(sheet.outOf()) + " marks");
            for (MarkSheet.Entry entry : sheet.entries()) {
                assertThat(all).contains(Texts.of(entry.finding().rule()).title());
                if (entry.finding().verdict() == Verdict.SOUND) continue;
                assertThat(all).contains(lastWords(Texts.says(entry.finding(), scenario)));
            }
        }
        assertThat(read.texts().get(0)).contains("P04").contains("1 of 3");
        assertThat(all).contains("Estimates", "Hints used", "The workshop’s practice in force");
        for (PracticeWords.Setting set : PracticeWords.all(scenario.practice()))
            assertThat(all).contains(set.value());
        assertThat(outside(TitleBlock.frame(Paper.A4, false), read.places())).isEmpty();
    }

    @Test
    void noAttemptsMakeNoSheets() {
        assertThat(Sheets.marks(List.of(), Paper.A4)).isEmpty();
    }
}
