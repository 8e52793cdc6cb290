package org.marktwice.print.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeoutException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.feedback.Replayed;

/** The page of a replay in a real browser; skipped where there is none on the machine. */
class ReplayInBrowserTest {
    private static final int END = 35;
    private static final int HOME = 36;
    private static final int LEFT = 37;
    private static final int UP = 38;
    private static final int RIGHT = 39;
    private static final int SPACE = 32;

    @TempDir
    static Path folder;

    private static Replayed replayed;
    private static Path page;
    private static Browser browser;

    @BeforeAll
    static void open() throws Exception {
        Optional<Path> program = Browser.installed();
        assumeTrue(program.isPresent(), "skipped: no Chromium on this machine, so the page is not opened in a browser");
        replayed = Sample.replayed("porch-shelf", "flawed");
        page = Sample.page(folder, replayed);
        browser = started(program.get());
    }

    private static Browser started(Path program) throws Exception {
        try {
            return Browser.open(program, folder.resolve("profile"));
        } catch (IOException | ExecutionException | TimeoutException e) {
            // half installed, perhaps: no fault of the page
            abort("skipped: " + program + " doesn't start on this machine: " + e.getMessage());
            throw e;
        }
    }

    @AfterAll
    static void close() throws Exception {
        if (browser != null) browser.close();
    }

    @BeforeEach
    void load() throws Exception {
        browser.window(1280, 800, 1);
        browser.light(false);
        browser.go("about:blank");
        browser.go(page.toUri().toString());
    }

    private static String said() throws Exception {
        return browser.text(".step.now h3");
    }

    private static int now() throws Exception {
        return browser.evaluate("[...document.querySelectorAll(\".step\")].findIndex(s => s.matches(\".now\"))")
                .asInt();
    }

    private static int last() {
        return replayed.steps().last();
    }

    @Test
    void itLoadsQuietlyAndFetchesNothing() throws Exception {
        browser.key("End", END, false);
        browser.click("#play");
        browser.click("#play");

        assertThat(browser.complaints()).isEmpty();
        assertThat(browser.requests()).isEmpty();
        assertThat(browser.evaluate("document.fonts.ready.then(() => [...document.fonts].map(f => f.status).join())")
                        .asText())
                .isEqualTo("loaded,loaded");
    }

    @Test
    void keysGoByStepAndByFinding() throws Exception {
        assertThat(said()).isEqualTo("Before the first step");
        browser.key("ArrowRight", RIGHT, false);
        browser.key("ArrowRight", RIGHT, false);
        assertThat(now()).isEqualTo(2);
        assertThat(browser.text("#told")).startsWith("Step 2 of " + last());
        browser.key("ArrowLeft", LEFT, false);
        assertThat(now()).isEqualTo(1);
        int first = replayed.steps().nextDeciding(1, true).orElseThrow();
        browser.key("ArrowRight", RIGHT, true);
        assertThat(now()).isEqualTo(first);
        int second = replayed.steps().nextDeciding(first, true).orElseThrow();
        browser.key("ArrowRight", RIGHT, true);
        assertThat(now()).isEqualTo(second);
        browser.key("ArrowLeft", LEFT, true);
        assertThat(now()).isEqualTo(first);

        browser.evaluate("document.getElementById(\"at\").focus()");
        browser.key("End", END, false);
        assertThat(now()).isEqualTo(last());
        assertThat(said()).isEqualTo("Handed in");
        browser.key("Home", HOME, false);
        assertThat(now()).isZero();
        browser.key("ArrowUp", UP, false);
        assertThat(browser.evaluate("document.getElementById(\"speed\").value").asText())
                .isEqualTo("2");
    }

    @Test
    void everyStepShowsTheBoardAsItWasThenAndTheModelAnswerBesideIt() throws Exception {
        List<String> drawings = new ArrayList<>();
        for (int step = 0; step <= last(); step++) {
            assertThat(now()).isEqualTo(step);
            String id = replayed.steps().boardAt(step);
            assertThat(browser.text(".step.now figure:nth-of-type(1) strong")).isEqualTo("The learner’s board " + id);
            assertThat(browser.text(".step.now figure:nth-of-type(2) strong"))
                    .isEqualTo("Model answer for board " + id);
            JsonNode sides = browser.evaluate("[...document.querySelectorAll(\".step.now svg.board\")].map(s =>"
                    + " { const r = s.getBoundingClientRect(); return [r.x, r.y, r.width, r.height]; })");
            assertThat(sides.size()).isEqualTo(2);
            assertThat(sides.get(0).get(1).asDouble())
                    .isEqualTo(sides.get(1).get(1).asDouble());
            assertThat(sides.get(1).get(0).asDouble())
                    .isGreaterThan(
                            sides.get(0).get(0).asDouble() + sides.get(0).get(2).asDouble() - 1);
            assertThat(sides.get(0).get(3).asDouble()).isGreaterThan(250);
            drawings.add(browser.evaluate("document.querySelector(\".step.now svg.board use\").getAttribute(\"href\")")
                    .asText());
            browser.key("ArrowRight", RIGHT, false);
        }
        assertThat(drawings.stream().distinct().count()).isGreaterThan(10);
    }

    @Test
    void theMouseGoesWhereItPoints() throws Exception {
        browser.click(".bar li:nth-child(6) a");
        assertThat(now()).isEqualTo(5);
        browser.click("#on");
        assertThat(now()).isEqualTo(6);
        browser.click("#back");
        browser.click("#last");
        assertThat(now()).isEqualTo(last());
        browser.click("#first");
        assertThat(now()).isZero();
        browser.click("#finding-on");
        assertThat(now()).isEqualTo(replayed.steps().nextDeciding(0, true).orElseThrow());
        browser.click(".finding.wrong a");
        int decided = Objects.requireNonNull(
                replayed.sheet().groups().get(0).lines().get(0).finding().step());
        browser.until("document.querySelector(\"#step-" + decided + "\").matches(\".now\")");
        assertThat(now()).isEqualTo(decided);
    }

    @Test
    void itPlaysToTheEndByItselfAtEightTimesTheSpeed() throws Exception {
        browser.evaluate("document.getElementById(\"speed\").value = 8");
        browser.evaluate("document.getElementById(\"at\").focus()");
        browser.key(" ", SPACE, false);
        assertThat(browser.text("#play")).isEqualTo("Pause");
        browser.until("document.querySelector(\".step:last-child\").matches(\".now\")");
        assertThat(browser.text("#play")).isEqualTo("Play");
        assertThat(now()).isEqualTo(last());
    }

    @ParameterizedTest
    @CsvSource({"1280, 800, false", "1280, 800, true", "390, 844, false", "390, 844, true"})
    void nobodyIsShutOut(int width, int height, boolean dark) throws Exception {
        browser.window(width, height, 1);
        browser.light(dark);
        browser.evaluate("document.querySelectorAll(\"details\").forEach(d => d.open = true)");
        browser.key("End", END, false);
        assertThat(violations()).isEmpty();
        for (int finding = 0; finding < 4; finding++) browser.key("ArrowLeft", LEFT, true);
        assertThat(violations()).isEmpty();
        assertThat(browser.evaluate("document.documentElement.scrollWidth <= innerWidth")
                        .asBoolean())
                .as("nothing is wider than the window")
                .isTrue();
    }

    @Test
    void theCheckObjectsWhereThereIsSomethingToObjectTo() throws Exception {
        browser.evaluate("document.documentElement.removeAttribute(\"lang\");"
                + " document.getElementById(\"at\").removeAttribute(\"aria-label\");"
                + " document.querySelector(\".place\").style.color = \"#bbb\"; document.body.append("
                + "Object.assign(document.createElement(\"p\"), {textContent: \"faint\", style: \"color:#ddd\"}))");
        assertThat(violations())
                .anyMatch(v -> v.startsWith("html-has-lang"))
                .anyMatch(v -> v.startsWith("label"))
                .anyMatch(v -> v.startsWith("color-contrast"));
    }

    @Test
    void whatSomebodyTypedIsShownAndNothingElseComesOfIt() throws Exception {
        String hostile = "</bdi></title><img src=x onerror=\"document.title=1\"><script>document.title=2</script>";
        Path theirs =
                Sample.page(Files.createDirectories(folder.resolve("typed")), Sample.by(hostile, "peg-rail", "flawed"));
        browser.go(theirs.toUri().toString());
        assertThat(browser.text("header p bdi")).isEqualTo(hostile);
        assertThat(browser.evaluate("document.title").asText()).endsWith(hostile);
        assertThat(browser.evaluate("document.images.length").asInt()).isZero();
        assertThat(browser.complaints()).isEmpty();
        assertThat(browser.requests()).isEmpty();
    }

    @Test
    void withoutScriptsItIsADocumentOfAllSteps() throws Exception {
        browser.scripts(false);
        browser.go("about:blank");
        browser.go(page.toUri().toString());
        try {
            String seen = new PDFTextStripper().getText(Loader.loadPDF(browser.pdf()));
            assertThat(seen).contains("Before the first step", "Step " + last() + " of " + last(), "Handed in");
        } finally {
            browser.scripts(true);
        }
        assertThat(browser.evaluate("[...document.querySelectorAll(\".step\")].every(s => s.offsetHeight > 40)"
                                + " && getComputedStyle(document.getElementById(\"controls\")).display === \"none\"")
                        .asBoolean())
                .isTrue();
        assertThat(violations()).isEmpty();
    }

    @Test
    void itPrintsTheMarkSheetFirstAndEveryStepInInkOnWhite() throws Exception {
        browser.light(true);
        byte[] pdf = browser.pdf();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text.indexOf("Mark sheet")).isLessThan(text.indexOf("Before the first step"));
            assertThat(text)
                    .contains(replayed.sheet().total(), "The workshop’s practice in force", "Handed in")
                    .doesNotContain("To the start", "Speed");
            assertThat(document.getNumberOfPages()).isBetween(4, 14);
        }
    }

    /** What an independent accessibility check objects to, in words. */
    private static List<String> violations() throws Exception {
        browser.evaluate(axe());
        JsonNode found = browser.evaluate(
                "axe.run(document, {resultTypes: [\"violations\"]}).then(r => r.violations.map("
                        + "v => v.id + \": \" + v.help + \" \" + v.nodes.map(n => n.target.join(\" \") + \" \" + n.failureSummary).join(\"; \")))");
        List<String> words = new ArrayList<>();
        found.forEach(v -> words.add(v.asText()));
        return words;
    }

    private static String axe() throws Exception {
        try (InputStream in = Objects.requireNonNull(ReplayInBrowserTest.class.getResourceAsStream("/axe.min.js"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
