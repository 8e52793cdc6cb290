package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A line's number is the one that an editor shows, whatever stands before it. */
class TablesTest {
    private static final String TABLE = "a,b|||\"one|two\",x|,,|c,\"\"\"\"|\" |\",|d";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void cellsOverSeveralLinesAndEmptyLinesAreCounted(String end) throws FileRefused {
        byte[] bytes = Samples.utf8(TABLE.replace("|", end));

        assertThat(Tables.read("x.csv", bytes))
                .extracting(l -> l.number() + "–" + l.last() + " " + l.cell(0).replaceAll("\\R", "/"))
                .containsExactly("1–1 a", "4–5 one/two", "7–7 c", "10–10 d");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void aTableWithoutSomeLinesIsTheSameInTheOthers(String end) throws FileRefused, IOException {
        Path file = folder.resolve("x.csv");
        Files.write(file, Samples.utf8("\uFEFF" + TABLE.replace("|", end)));

        byte[] left = Tables.without(file, l -> l.number() == 4 || l.number() == 10);

        String expected = "\uFEFFa,b|||,,|c,\"\"\"\"|\" |\",|";
        assertThat(new String(left, java.nio.charset.StandardCharsets.UTF_8)).isEqualTo(expected.replace("|", end));
    }

    /** Without the mark a spreadsheet takes the file for one in the machine's old code page, and shows other letters. */
    @Test
    void aTableWithLettersBeyondAsciiBeginsWithAByteOrderMarkAndAPlainOneDoesNot() {
        assertThat(Tables.csv(List.of(List.of("learner"), List.of("Zo\u00eb"))))
                .isEqualTo(Samples.utf8("\uFEFFlearner\r\nZo\u00eb\r\n"));
        List<Object> head = List.of("learner", "mm");
        List<Object> figures = List.of("P01", 1.5);
        assertThat(Tables.csv(List.of(head, figures))).isEqualTo(Samples.utf8("learner,mm\r\nP01,1.5\r\n"));
    }

    @Test
    void recordsAndRacksWithSuchLettersAreReadBack() throws FileRefused, IOException {
        RecordFile record = RecordFile.blank("porch-shelf", List.of("\u05d3\u05e0\u05d4", "Zo\u00eb"))
                .with("Zo\u00eb", "across", OptionalDouble.of(520));
        byte[] table = record.csv(List.of("across"));
        assertThat(Bytes.bomLength(table)).isEqualTo(3);
        assertThat(RecordFile.read("x.csv", table).rows()).isEqualTo(record.rows());

        TypedRack rack = TypedRack.BLANK.with(0, TypedRack.Line.EMPTY.with(RackColumn.BOARD, "\u05d0 1"));
        assertThat(Bytes.bomLength(rack.csv())).isEqualTo(3);
        Path file = Files.write(folder.resolve("rack.csv"), rack.csv());
        assertThat(TypedRack.read(file).boardOf(0)).isEqualTo("\u05d0 1");
    }

    @Test
    void aCellPastTheLinesEndIsEmpty() throws FileRefused {
        assertThat(Tables.read("x.csv", Samples.utf8("a, b\n")).get(0).cell(1)).isEqualTo("b");
        assertThat(Tables.read("x.csv", Samples.utf8("a, b\n")).get(0).cell(2)).isEmpty();
    }
}
