package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

    @Test
    void aCellPastTheLinesEndIsEmpty() throws FileRefused {
        assertThat(Tables.read("x.csv", Samples.utf8("a, b\n")).get(0).cell(1)).isEqualTo("b");
        assertThat(Tables.read("x.csv", Samples.utf8("a, b\n")).get(0).cell(2)).isEmpty();
    }
}
