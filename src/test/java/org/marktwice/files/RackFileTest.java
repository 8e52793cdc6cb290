package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.timber.Board;
import org.marktwice.timber.MeasuredBoard;
import org.marktwice.timber.MeasuredBoard.Measured;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Showing;
import org.marktwice.timber.Surface;

/** What is on the rack, as JSON and as a table. */
class RackFileTest {
    private static final String JSON = "class.rack.json";
    private static final String TABLE = "class.rack.csv";

    private static RackFile sample(String name) throws FileRefused {
        return RackFile.read(name, Samples.bytes(name));
    }

    @Test
    void boardsKnotsAndTheRingAreRead() throws FileRefused {
        List<MeasuredBoard> boards = sample(JSON).boards();

        assertThat(boards).extracting(b -> b.bare().id()).containsExactly("R1", "R2", "R3");
        assertThat(boards.get(0).knots())
                .containsExactly(new Measured(
                        "k1",
                        List.of(
                                new Showing(Surface.FACE_1, 150, 70, 18, 15, false),
                                new Showing(Surface.FACE_2, 152, 67, 11, 10, false))));
        assertThat(boards.get(1).knots().get(0).shows().get(0).dead()).isTrue();
        // through (0, 4), (65, 9) and (130, 5)
        Pith pith = Objects.requireNonNull(boards.get(1).bare().pith());
        assertThat(pith.distance(0, 4)).isCloseTo(pith.distance(130, 5), within(1e-3));
        assertThat(pith.distance(65, 9)).isCloseTo(pith.distance(130, 5), within(1e-3));
        Board.Facts third = boards.get(2).bare();
        assertThat(third.moisture()).isEqualTo(10);
        assertThat(third.planedAt()).isEqualTo(14);
        assertThat(third.pith()).isNull();
        assertThat(third.dressed()).containsExactlyInAnyOrder(Surface.FACE_1, Surface.EDGE_1);
    }

    @Test
    void theTableSaysTheSame() throws FileRefused {
        List<MeasuredBoard> json = sample(JSON).boards();
        List<MeasuredBoard> table = sample(TABLE).boards();

        assertThat(table.subList(0, 2)).isEqualTo(json.subList(0, 2));
        assertThat(table.get(2).bare().size()).isEqualTo(json.get(2).bare().size());
        assertThat(table.get(2).bare().species()).isEqualTo(json.get(2).bare().species());
    }

    @Test
    void whatIsWrittenKeepsToTheSchemaAndIsReadBackTheSame() throws FileRefused {
        RackFile rack = sample(JSON);

        byte[] bytes = rack.bytes();

        assertThat(SchemaTest.RACK.validate(
                        new String(bytes, java.nio.charset.StandardCharsets.UTF_8), InputFormat.JSON))
                .isEmpty();
        assertThat(SchemaTest.RACK.validate(Samples.text(JSON), InputFormat.JSON))
                .isEmpty();
        RackFile again = RackFile.read("x.rack.json", bytes);
        assertThat(again).isEqualTo(rack);
        assertThat(again.bytes()).isEqualTo(bytes);
    }

    @Test
    void semicolonsAndDecimalCommasAreTakenToo() throws FileRefused {
        String table = Samples.text(TABLE).replace("; ", "/").replace(',', ';').replace("/", " ; ");
        String european = table.replace("150;70;18;15", "150,0;70,0;18;15")
                .replaceAll("\"?0 4 ; 65 9 ; 130 5\"?", "\"0 4; 65 9; 130 5\"");

        assertThat(RackFile.read("x.csv", Samples.utf8(european))).isEqualTo(sample(TABLE));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            board,species,         | boards,species,            | x.csv:1: unknown column "boards": did you mean "board"?
            130,18,12,60           | 130,wide,12,60             | x.csv:2: thickness: expected a number above 0 up to 100000, found "wide"
            R1,,,,,,               | R1,,331,,,,                | x.csv:3: length: another size than in the first line of board R1
            ,k1,face-2,            | ,k1,face-9,                | x.csv:3: on: expected face-1, face-2, edge-1, edge-2, end-1 or end-2, found "face-9"
            ,k1,face-2,            | ,k1,face-1,                | x.csv:3: on: knot k1 shows on face-1 twice
            152,67,11              | 152,5,67,11                | x.csv:3: more cells than in the first line: 17 instead of 16 (a comma within a cell needs quotes round the cell)
            12,60,-40,             | 12,,,                      | x.csv:2: pith-y: a board with knots needs its pith, or three points of a ring, in its first line
            13,yes                 | 13,perhaps                 | x.csv:4: dead: expected yes or no, found "perhaps"
            0 4; 65 9              | 0 4; 65                    | x.csv:4: ring: expected three points or more of one ring that bends, such as "0 4; 50 9; 100 5", found "65"
            100,40,14              | 100,400,14                 | x.csv:4: u: the middle lies off face-1, which is 310 by 130 mm
            norway-spruce          | spruce                     | x.csv:5: species: expected scots-pine, norway-spruce, red-pine, eastern-white-pine, ponderosa-pine, lodgepole-pine, sitka-spruce, douglas-fir, sugar-maple, american-beech, white-ash, black-cherry, yellow-poplar or black-walnut, found "spruce"
            """)
    void aTableThatIsWrongIsRefusedInOneLine(String text, String spoilt, String told) {
        String table = Samples.text(TABLE);
        assertThat(table).contains(text);
        byte[] bytes = Samples.utf8(table.replaceFirst(java.util.regex.Pattern.quote(text), spoilt));

        assertThatThrownBy(() -> RackFile.read("x.csv", bytes))
                .isInstanceOf(FileRefused.class)
                .hasMessage(told);
    }

    @Test
    void aLineIsCountedThoughOthersAreEmpty() {
        String table =
                "board,species,length,width,thickness\n\nR1,scots-pine,330,130,18\n,,,,\nR2,scots-pine,abc,130,18\n";

        assertThatThrownBy(() -> RackFile.read("x.csv", Samples.utf8(table)))
                .hasMessage("x.csv:5: length: expected a number above 0 up to 100000, found \"abc\"");
    }

    @Test
    void aDecimalCommaIsNotTakenForTheNextCellThoughTheLastIsEmpty() {
        String table = "board,species,length,width,thickness,moisture\nR1,scots-pine,330,5,130,18,\n";

        assertThatThrownBy(() -> RackFile.read("x.csv", Samples.utf8(table)))
                .hasMessageContaining("x.csv:2: more cells than in the first line: 7 instead of 6");
    }

    @ParameterizedTest
    @CsvSource({"';', ';'", "tab, '\t'"})
    void semicolonsAndTabsWillDoAndThenDecimalCommasWill(String what, String delimiter) throws FileRefused {
        String table = Samples.text(TABLE).replace("0 4; 65 9; 130 5", "a ring").replace("330", "330.5");
        byte[] bytes =
                Samples.utf8(table.replace(",", delimiter).replace('.', ',').replace("a ring", "\"0 4; 65 9; 130 5\""));

        assertThat(RackFile.read("x.csv", bytes).boards())
                .as(what)
                .extracting(b -> b.bare().size().length())
                .containsExactly(330.5, 310.0, 500.0);
    }
}
