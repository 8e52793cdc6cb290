package org.marktwice.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.cli.Ran.marktwice;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintTest {
    private static final Path SCENARIO = Path.of("scenarios", "porch-shelf.scenario.json");
    private static final Path ATTEMPTS = Path.of("scenarios", "attempts");

    @TempDir
    Path folder;

    private static int pages(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return document.getNumberOfPages();
        }
    }

    @Test
    void printWritesTheKindsThatAreNamed() throws IOException {
        Path file = folder.resolve("shelf.pdf");
        Ran ran = marktwice(
                "print",
                SCENARIO,
                "--out",
                file,
                "--sheet",
                "cautions",
                "--sheet",
                "drawing",
                "--paper",
                "letter",
                "--json");
        assertThat(ran.code()).isZero();
        assertThat(ran.json().get("sheets")).extracting(n -> n.asText()).containsExactly("drawing", "cautions");
        assertThat(ran.json().get("pages").asInt()).isEqualTo(pages(file)).isEqualTo(2);
        assertThat(ran.json().get("paper").asText()).isEqualTo("letter");
    }

    @Test
    void printWritesAllKindsWhereNoneIsNamed() throws IOException {
        Path file = folder.resolve("all.pdf");
        Ran ran = marktwice("print", SCENARIO, "--out", file);
        assertThat(ran.out()).isEqualTo(file + ": " + pages(file) + " pages\n");
        assertThat(pages(file)).isGreaterThan(6);
    }

    @ParameterizedTest
    @CsvSource({
        "shelf.pdf, --sheet=plans, 'expected drawing, parts, worksheet, answers, rules, cautions or record, found \"plans\"'",
        "shelf.pdf, --paper=a3, 'expected a4 or letter, found \"a3\"'",
        "shelf.doc, --paper=a4, 'expected a name that ends in .pdf, .svg or .png'",
        "nowhere/shelf.pdf, --sheet=cautions, it can't be saved"
    })
    void printSaysInOneLineWhyNot(String name, String option, String reason) {
        Ran ran = marktwice("print", SCENARIO, "--out", folder.resolve(name), option);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(reason).hasLineCount(1);
        assertThat(folder.resolve(name)).doesNotExist();
    }

    @Test
    void classSheetsWritesOneForEachAttemptAndListsTheRest() throws IOException {
        Path attempts = Files.createDirectory(folder.resolve("in"));
        for (String name : new String[] {"porch-shelf-flawed", "porch-shelf-perfect"}) {
            Files.copy(ATTEMPTS.resolve(name + ".attempt.jsonl"), attempts.resolve(name + ".jsonl"));
        }
        Files.writeString(attempts.resolve("notes.txt"), "not an attempt");
        Path file = folder.resolve("marks.pdf");
        Ran ran = marktwice("class", "sheets", SCENARIO, attempts, "--out", file);
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains(file + ": 2 mark sheets on " + pages(file) + " pages\n")
                .contains("notes.txt: not an attempt");
    }

    @Test
    void classSheetsOfNothingAreNone() throws IOException {
        Path attempts = Files.createDirectory(folder.resolve("in"));
        Path file = folder.resolve("marks.pdf");
        Ran ran = marktwice("class", "sheets", SCENARIO, attempts, "--out", file);
        assertThat(ran.code()).isEqualTo(1);
        assertThat(file).doesNotExist();
    }
}
