package org.marktwice.print.html;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.bench.Attempt;
import org.marktwice.feedback.Replayed;
import org.marktwice.feedback.SheetModel;
import org.marktwice.files.ScenarioFile;
import org.marktwice.rulebook.Cautions;
import org.marktwice.rulebook.PracticeWords;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Samples;

class ReplayPageTest {
    private static Replayed shelf;
    private static String page;

    @BeforeAll
    static void draw() throws Exception {
        shelf = Sample.replayed("porch-shelf", "flawed");
        page = new String(ReplayPage.of(shelf), UTF_8);
    }

    private static List<String> all(String pattern, String in) {
        List<String> found = new ArrayList<>();
        Matcher m = Pattern.compile(pattern).matcher(in);
        while (m.find()) found.add(m.group(1));
        return found;
    }

    @Test
    void theSameAttemptMakesTheSamePage() throws Exception {
        assertThat(new String(ReplayPage.of(Sample.replayed("porch-shelf", "flawed")), UTF_8))
                .isEqualTo(page);
    }

    @Test
    void nothingIsFetched() {
        assertThat(all("(?:href|src|action|data)=\"([^\"]*)\"", page))
                .isNotEmpty()
                .allMatch(to -> to.startsWith("#") || to.startsWith("data:image/"));
        assertThat(all("url\\(([^)]*)\\)", page)).allMatch(to -> to.startsWith("data:font/") || to.startsWith("#"));
        assertThat(page).doesNotContain("http:", "https:", "//www", "@import");
    }

    @Test
    void everyIdIsThereOnceAndEveryReferenceLeadsToOne() {
        List<String> ids = all("\\sid=\"([^\"]*)\"", page);
        assertThat(ids).doesNotHaveDuplicates();
        List<String> to = new ArrayList<>(all("href=\"#([^\"]*)\"", page));
        to.addAll(all("url\\(#([^)]*)\\)", page));
        to.addAll(all("aria-(?:labelledby|describedby)=\"([^\"]*)\"", page));
        assertThat(new HashSet<>(ids)).containsAll(to);
        assertThat(to).hasSizeGreaterThan(100);
    }

    @Test
    void everyStepAndFindingIsThereInWords() {
        assertThat(all("id=\"step-(\\d+)\"", page)).hasSize(shelf.steps().last() + 1);
        for (SheetModel.Group group : shelf.sheet().groups()) {
            assertThat(page).contains(Markup.escaped(group.title()));
            for (SheetModel.Line line : group.lines()) {
                assertThat(page).contains(Markup.escaped(line.says()));
                if (line.verdict() == Verdict.SOUND) continue;
                assertThat(page)
                        .contains(
                                Markup.escaped(line.why()),
                                Markup.escaped(line.instead()),
                                Markup.escaped(line.source()),
                                Markup.escaped(line.where()),
                                Markup.escaped(line.figure()));
            }
        }
        assertThat(page).contains(shelf.sheet().total());
    }

    @Test
    void settingsInForceAndCautionsStandOnIt() {
        for (PracticeWords.Setting set : PracticeWords.all(shelf.scenario().practice())) {
            assertThat(page).contains(Markup.escaped(set.name()), Markup.escaped(set.value()));
        }
        for (String caution : Cautions.ALL) assertThat(page).contains(Markup.escaped(caution));
    }

    @Test
    void itSaysInWhichLanguageItIsAndHowItIsBuilt() {
        assertThat(page).startsWith("<!DOCTYPE html>").contains("<html lang=\"en\">", "<header>", "<main>", "<footer>");
        int before = 0;
        for (String level : all("<h([1-6])[ >]", page)) {
            int now = Integer.parseInt(level);
            assertThat(now).isLessThanOrEqualTo(before + 1);
            before = now;
        }
        assertThat(all("<(svg) class=\"board\"[^>]*role=\"img\"[^>]*><title ", page))
                .hasSize(2 * (shelf.steps().last() + 1));
    }

    @Test
    void everyElementIsClosed() throws Exception {
        String xml = page.replace("<!DOCTYPE html>", "")
                .replaceAll("<((?:meta|input)\\b[^>]*[^/])>", "<$1/>")
                .replaceAll("<script>[\\s\\S]*</script>", "")
                .replace(" selected>", " selected=\"\">")
                .replace(" hidden>", " hidden=\"\">");
        XMLStreamReader reader = XMLInputFactory.newFactory().createXMLStreamReader(new StringReader(xml));
        int elements = 0;
        while (reader.hasNext()) if (reader.next() == XMLStreamConstants.START_ELEMENT) elements++;
        assertThat(elements).isGreaterThan(1000);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "</title></style></svg><iframe src=//example.org>",
                "' onload='alert(1)",
                "&lt;b&gt; & <!-- ]]>",
                "\u202Eevil\u0000\uD800\u0007"
            })
    void whatSomebodyTypedStaysText(String hostile) throws Exception {
        String theirs = new String(ReplayPage.of(Sample.by(hostile, "peg-rail", "flawed")), UTF_8);
        String usual = new String(ReplayPage.of(Sample.by("P07", "peg-rail", "flawed")), UTF_8);

        assertThat(theirs).contains("<bdi>" + Markup.escaped(hostile) + "</bdi>");
        assertThat(all("<(\\w+)", theirs)).isEqualTo(all("<(\\w+)", usual));
        assertThat(all("<[a-z][^<>]*\\s(on\\w+)=", theirs)).isEmpty();
        assertThat(theirs.chars()).doesNotContain(0, 7, 0xD800);
    }

    /** A title, and the name of a part, which stands in sentences, on a board and in what is said of drawings. */
    @Test
    void whatATeacherTypedStaysTextToo() throws Exception {
        String hostile = "<script>alert(1)</script>\"'&";
        String json = Files.readString(Path.of("scenarios", "peg-rail.scenario.json"));
        String usual = new String(ReplayPage.of(Sample.replayed("peg-rail", "flawed")), UTF_8);
        for (String key : List.of("title", "name")) {
            String typed = json.replaceAll("\"" + key + "\": *\"[^\"]*\"", "\"" + key + "\": \"T@\"")
                    .replace("T@", hostile.replace("\"", "\\\""));
            Scenario scenario = ScenarioFile.read("typed", typed.getBytes(UTF_8));
            Attempt attempt = Samples.attempt("peg-rail", "flawed").file().attempt();
            Attempt theirs = new Attempt(scenario.id(), "", "P07", attempt.started(), attempt.actions());
            String page = new String(ReplayPage.of(Replayed.of(scenario, theirs, List.of())), UTF_8);

            assertThat(page).as(key).contains(Markup.escaped(hostile));
            assertThat(all("<(script|img|iframe)", page)).isEqualTo(all("<(script|img|iframe)", usual));
        }
    }

    @Test
    void anEmptyNameIsSaidToBeNone() throws Exception {
        assertThat(new String(ReplayPage.of(Sample.by(" ", "peg-rail", "flawed")), UTF_8))
                .contains("no name given");
    }

    @ParameterizedTest
    @ValueSource(strings = {"wall-cupboard", "jar-shelf"})
    void aJobOfManyBoardsKeepsToThreeMegabytes(String exercise) throws Exception {
        assertThat(ReplayPage.of(Sample.replayed(exercise, "flawed"))).hasSizeLessThan(3_000_000);
    }
}
