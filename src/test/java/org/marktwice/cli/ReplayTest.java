package org.marktwice.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.cli.Ran.marktwice;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReplayTest {
    private static final Path SCENARIO = Path.of("scenarios", "porch-shelf.scenario.json");
    private static final Path ATTEMPT = Path.of("scenarios", "attempts", "porch-shelf-flawed.attempt.jsonl");
    private static final Path OTHERS = Path.of("scenarios", "attempts", "peg-rail-flawed.attempt.jsonl");

    @TempDir
    Path folder;

    @Test
    void aNameInHtmlGetsAPageToStepThrough() throws IOException {
        Path file = folder.resolve("shelf.html");
        Ran ran = marktwice("replay", SCENARIO, ATTEMPT, "--out", file);
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).isEqualTo(file + ": 31 steps\n");
        assertThat(Files.readString(file)).startsWith("<!DOCTYPE html>").contains("P04", "id=\"step-31\"");
    }

    @Test
    void aNameInPdfGetsTheMarkSheet() throws IOException {
        Path file = folder.resolve("shelf.pdf");
        Ran ran = marktwice("replay", SCENARIO, ATTEMPT, "--out", file, "--paper", "letter", "--json");
        JsonNode marked = marktwice("mark", SCENARIO, ATTEMPT, "--json").json();
        assertThat(ran.code()).isZero();
        assertThat(ran.json().get("marks").asDouble())
                .isEqualTo(marked.get("marks").asDouble());
        assertThat(ran.json().get("outOf").asDouble())
                .isEqualTo(marked.get("outOf").asDouble());
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertThat(ran.json().get("pages").asInt()).isEqualTo(document.getNumberOfPages());
            assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(612);
            assertThat(new PDFTextStripper().getText(document))
                    .contains("P04: 12.08 of 20 marks", "Hints used", "Estimates", "practice in force", "Knots");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "shelf.doc, 'expected a name that ends in .html, .pdf, .svg or .png'",
        "shelf, 'expected a name that ends in .html, .pdf, .svg or .png'",
        "nowhere/shelf.html, it can't be saved",
        "nowhere/shelf.pdf, it can't be saved"
    })
    void whatCannotBeWrittenIsSaidInOneLine(String name, String reason) {
        Ran ran = marktwice("replay", SCENARIO, ATTEMPT, "--out", folder.resolve(name));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(reason).hasLineCount(1);
        assertThat(folder.resolve(name)).doesNotExist();
    }

    @Test
    void wrongUseIsSaidInOneLine() {
        for (Ran ran : new Ran[] {
            marktwice("replay", SCENARIO, ATTEMPT),
            marktwice("replay", SCENARIO, "--out", folder.resolve("a.html")),
            marktwice("replay", SCENARIO, ATTEMPT, "--out", folder.resolve("a.pdf"), "--paper", "a3"),
            marktwice("replay", SCENARIO, ATTEMPT, "--out", folder.resolve("a.html"), "--speed", "2"),
            marktwice("replay", SCENARIO, folder.resolve("none.jsonl"), "--out", folder.resolve("a.html"))
        }) {
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err()).hasLineCount(1);
            assertThat(ran.out()).isEmpty();
        }
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void anOldFileStaysWholeWhereTheNewOneCannotBeMade() throws IOException {
        Path file = folder.resolve("kept.html");
        Files.writeString(file, "as it was");
        Ran ran = marktwice("replay", SCENARIO, OTHERS, "--out", file);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("this is an attempt at \"peg-rail\"").hasLineCount(1);
        assertThat(file).hasContent("as it was");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(file);
        }
        assertThat(marktwice("replay", SCENARIO, ATTEMPT, "--out", file).code()).isZero();
        assertThat(Files.readString(file)).startsWith("<!DOCTYPE html>");
    }
}
