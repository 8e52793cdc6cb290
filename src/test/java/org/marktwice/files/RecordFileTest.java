package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.files.RecordFile.Row;

/** What the finished jobs measured, as JSON and as a table. */
class RecordFileTest {
    private static final String JSON = "class.record.json";

    private static RecordFile sample() throws FileRefused {
        return RecordFile.read(JSON, Samples.bytes(JSON));
    }

    @Test
    void whatIsWrittenKeepsToTheSchemaAndIsReadBackTheSame() throws FileRefused {
        RecordFile record = sample();
        assertThat(record.rows())
                .containsExactly(
                        new Row("P01", Map.of("across", 522.4, "gap-left-housing", 0.2)),
                        new Row("P02", Map.of("diagonal-1-a", 600.0, "diagonal-1-b", 603.0)));
        assertThat(record.tolerance()).isEqualTo("strict");
        assertThat(record.gap()).hasValue(0.8);

        byte[] bytes = record.bytes();

        assertThat(SchemaTest.RECORD.validate(new String(bytes, StandardCharsets.UTF_8), InputFormat.JSON))
                .isEmpty();
        assertThat(RecordFile.read("x.record.json", bytes)).isEqualTo(record);
    }

    @Test
    void asATableTheMeasurementsComeBack() throws FileRefused {
        RecordFile record = sample().with("=P03", "deep", OptionalDouble.of(130.25));
        List<String> columns = List.of("across", "deep", "gap-left-housing", "diagonal-1-a", "diagonal-1-b");

        byte[] table = record.csv(columns);

        assertThat(new String(table, StandardCharsets.UTF_8))
                .isEqualToIgnoringNewLines("learner,across,deep,gap-left-housing,diagonal-1-a,diagonal-1-b\n"
                        + "P01,522.4,,0.2,,\nP02,,,,600,603\n'=P03,,130.25,,,\n");
        assertThat(RecordFile.read("x.csv", table).rows()).isEqualTo(record.rows());
    }

    @Test
    void entriesArePutInAndTakenOutOneByOne() {
        RecordFile record = RecordFile.blank("porch-shelf", List.of("AB", "CD"))
                .with("CD", "across", OptionalDouble.of(520))
                .with("CD", "across", OptionalDouble.of(521))
                .with("AB", "deep", OptionalDouble.of(130))
                .with("AB", "deep", OptionalDouble.empty())
                .with("EF", "high", OptionalDouble.of(310));

        assertThat(record.rows())
                .containsExactly(
                        new Row("AB", Map.of()),
                        new Row("CD", Map.of("across", 521.0)),
                        new Row("EF", Map.of("high", 310.0)));
        assertThat(record.without("CD").rows()).extracting(Row::learner).containsExactly("AB", "EF");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            name,across/AB,1          | x.csv:1: expected a head whose first column is "learner"
            learner,across/AB,wide    | x.csv:2: across: expected a number from 0 to 100000, found "wide"
            learner,across/AB,1,5     | x.csv:2: more cells than in the first line: 3 instead of 2 (a comma within a cell needs quotes round the cell)
            learner;across/AB;1,5     |
            learner,across,across/AB,1,2 | x.csv:1: two columns are called "across"
            learner,across/"AB/",1//CD,wide | x.csv:5: across: expected a number from 0 to 100000, found "wide"
            learner,across/AB,1/"CD,2/EF,3 | x.csv:3: expected a table (CSV): a quote is opened here and not closed, or not doubled within a cell
            learner,across/AB,1/ab,   | x.csv:3: the learner "ab" is there twice
            """)
    void aTableIsTakenOrRefusedInOneLine(String table, @Nullable String told) throws FileRefused {
        byte[] bytes = Samples.utf8(table.replace('/', '\n'));
        if (told == null) assertThat(RecordFile.read("x.csv", bytes).rows()).hasSize(1);
        else
            assertThatThrownBy(() -> RecordFile.read("x.csv", bytes))
                    .isInstanceOf(FileRefused.class)
                    .hasMessage(told);
    }
}
