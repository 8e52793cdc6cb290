package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.files.TypedRack.Line;
import org.marktwice.files.TypedRack.OnRack;
import org.marktwice.files.TypedRack.Trouble;

/** A rack that is being typed: what is whole of it, what isn't and why, and what is kept of it. */
class TypedRackTest {
    private static final Path TABLE = Path.of("src", "test", "resources", "files", "class.rack.csv");
    private static final Path JSON = Path.of("src", "test", "resources", "files", "class.rack.json");

    private static TypedRack typed(String table) throws FileRefused {
        String head = "board,species,length,width,thickness,pith-y,pith-z,knot,on,u,v,along,across,dead\n";
        return TypedRack.table("x.csv", (head + table.replace(" | ", "\n")).getBytes(StandardCharsets.UTF_8));
    }

    private static List<OnRack> boards(TypedRack rack) {
        List<OnRack> all = new ArrayList<>();
        rack.byBoard().forEach((id, at) -> all.add(rack.board(id, at)));
        return all;
    }

    private static final String WHOLE = "R1,scots-pine,330,130,18,60,-40,k1,face-1,150,70,18,15,";

    @Test
    void whatIsWholeIsWhatTheCommandLineReads() throws FileRefused {
        for (Path file : List.of(TABLE, JSON)) {
            TypedRack rack = TypedRack.read(file);
            assertThat(boards(rack))
                    .extracting(b -> b.measured().orElseThrow())
                    .isEqualTo(RackFile.read(file).boards());
        }
    }

    @Test
    void whatIsSavedIsReadBackTheSame() throws FileRefused {
        for (Path file : List.of(TABLE, JSON)) {
            TypedRack rack = TypedRack.read(file);
            assertThat(TypedRack.table("x.csv", rack.csv())).isEqualTo(rack);
            assertThat(RackFile.read("x.csv", rack.csv())).isEqualTo(RackFile.read(file));
        }
    }

    @Test
    void whatIsHalfTypedIsKeptAsItIs() throws FileRefused {
        TypedRack half = typed("R1,pine,a hand,,,,,,,,,,, | ,,,,,,,k1,=here,,,,,");
        assertThat(TypedRack.table("x.csv", half.csv())).isEqualTo(half);
        assertThat(half.lines().get(1).at(RackColumn.ON)).isEqualTo("=here");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "R1,scots-pine,330,,18,,,,,,,,,;                                  0; WIDTH;     true;  its width is to come",
                "R1,scots-pine,330,a hand,18,,,,,,,,,;                            0; WIDTH;     false; expected a number",
                "R1,pine,330,130,18,,,,,,,,,;                                     0; SPECIES;   false; expected scots-pine",
                "R1,scots-pine,330,130,18,,,k1,face-1,150,70,18,15,;              0; PITH_Y;    true;  its pith",
                "R1,scots-pine,330,130,18,60,-40,k1,,,,,,;                        0; ON;        true;  the surface",
                "R1,scots-pine,330,130,18,60,-40,k1,face-1,150,,18,15,;           0; V;         true;  the middle",
                "R1,scots-pine,330,130,18,60,-40,k1,face-1,150,131,18,15,;        0; U;         false; the middle lies off face-1",
                "R1,scots-pine,330,130,18,60,-40,,,,,,, | ,,,,,,,k1,face-1,,,,,;  1; U;         true;  the middle",
                "R1,scots-pine,330,130,18,,,,,,,,, | ,,,,,,,k1,face-1,9,9,9,9,;   0; PITH_Y;    true;  its pith",
                "R1,scots-pine,330,130,18,60,-40,,,,,,, | ,,331,,,,,,,,,,,;       1; LENGTH;    false; another size",
                "R1,scots-pine,330,130,18,60,-40,,,,,,, | ,,,,,61,,,,,,,,;        1; PITH_Y;    false; another pith-y"
            })
    void whatKeepsABoardFromBeingWholeIsNamedAtItsCell(
            String lines, int line, RackColumn column, boolean missing, String says) throws FileRefused {
        OnRack board = boards(typed(lines)).get(0);
        Trouble trouble = board.trouble().orElseThrow();
        assertThat(trouble.line()).isEqualTo(line);
        assertThat(trouble.column()).isEqualTo(column);
        assertThat(trouble.missing()).isEqualTo(missing);
        assertThat(trouble.says()).startsWith(says);
        assertThat(board.measured()).isEmpty();
    }

    @Test
    void oneBoardsTroubleLeavesTheOthersWhole() throws FileRefused {
        List<OnRack> boards = boards(typed("R1,scots-pine,330,,18,,,,,,,,, | " + WHOLE.replace("R1", "R2")));
        assertThat(boards).extracting(b -> b.measured().isPresent()).containsExactly(false, true);
    }

    @Test
    void whatALineSaidOfItsBoardGoesOnToTheNextWhenItIsTakenOut() throws FileRefused {
        TypedRack rack = typed(WHOLE + " | ,,,,,,,k2,face-2,40,50,10,9,yes");
        TypedRack without = rack.without(0);
        assertThat(without.lines()).singleElement().satisfies(l -> {
            assertThat(l.at(RackColumn.BOARD)).isEqualTo("R1");
            assertThat(l.at(RackColumn.PITH_Z)).isEqualTo("-40");
            assertThat(l.at(RackColumn.KNOT)).isEqualTo("k2");
        });
        assertThat(boards(without).get(0).measured()).isPresent();
        assertThat(rack.without(1).lines()).isEqualTo(rack.lines().subList(0, 1));
    }

    @Test
    void aLineBelowTheLastIsPutThereWithEmptyOnesBetween() {
        TypedRack rack = TypedRack.BLANK.with(2, new Line(Map.of(RackColumn.BOARD, "R1")));
        assertThat(rack.lines()).hasSize(3);
        assertThat(rack.byBoard()).isEqualTo(Map.of("R1", List.of(2)));
        assertThat(rack.boardOf(1)).isEmpty();
    }

    @Test
    void sawnSurfacesAndTheMoistureOfPlaningAreOfTheTableToo() throws FileRefused {
        String table = "board,species,length,width,thickness,moisture,planed-at,sawn\n"
                + "R1,scots-pine,330,130,18,11,13,edge-2 end-1\n";
        var bare = RackFile.read("x.csv", table.getBytes(StandardCharsets.UTF_8))
                .boards()
                .get(0)
                .bare();
        assertThat(bare.planedAt()).isEqualTo(13);
        assertThat(bare.dressed())
                .extracting(s -> s.id())
                .containsExactlyInAnyOrder("face-1", "face-2", "edge-1", "end-2");
        assertThat(TypedRack.of(new RackFile(RackFile.read("x.csv", table.getBytes(StandardCharsets.UTF_8))
                                .boards()))
                        .lines()
                        .get(0)
                        .at(RackColumn.SAWN))
                .isEqualTo("edge-2 end-1");
    }

    @ParameterizedTest
    @CsvSource({
        "ON, f1, face-1",
        "ON, edge 2, edge-2",
        "ON, N2, end-2",
        "ON, over there, over there",
        "SPECIES, scots, scots-pine",
        "SPECIES, zz, zz",
        "U, '12,5', 12.5",
        "U, 12.50, 12.5",
        "U, -3, -3",
        "U, a hand, a hand",
        "DEAD, Y, yes",
        "DEAD, live, no",
        "SAWN, e2 n1, edge-2 end-1",
        "SAWN, 'edge 2, end 1', edge-2 end-1",
        "PITH_Z, ' -40 ', -40"
    })
    void whatIsTypedShortlyIsPutAsTheTableHasIt(RackColumn column, String typed, String tidied) {
        assertThat(column.tidied(typed)).isEqualTo(tidied);
    }

    @Test
    void theHeadOfTheTableIsTheColumnsInTheirOrder() {
        String head = new String(TypedRack.BLANK.csv(), StandardCharsets.UTF_8).strip();
        assertThat(head.split(",")).hasSize(RackColumn.values().length).startsWith("board", "species");
        assertThat(Optional.of(head)).get().asString().endsWith("dead");
    }
}
