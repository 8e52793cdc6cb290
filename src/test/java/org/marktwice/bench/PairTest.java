package org.marktwice.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.marktwice.timber.Surface.EDGE_1;
import static org.marktwice.timber.Surface.EDGE_2;
import static org.marktwice.timber.Surface.END_1;
import static org.marktwice.timber.Surface.END_2;
import static org.marktwice.timber.Surface.FACE_1;
import static org.marktwice.timber.Surface.FACE_2;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action.Datum;
import org.marktwice.fit.TrueLine;
import org.marktwice.fit.TrueLines;
import org.marktwice.timber.Surface;

/** Two boards in the cramp: A is 312 long, C 304. */
class PairTest {
    private static Action.Cramp cramp(Surface on, Surface to, Surface level, Surface with) {
        return new Action.Cramp(1, "A", on, "C", to, level, with);
    }

    private static Action.Line line(String board, Surface on, Datum from, double at) {
        return new Action.Line(1, board, on, FACE_1, from, at, null, Marker.KNIFE);
    }

    private static Datum end(Surface end) {
        return new Datum.End(end);
    }

    private static Bench bench(Action... actions) {
        return Acts.bench(Fixtures.withAids(Fixtures.porchShelf()), actions);
    }

    private static List<TrueLine> lines(Bench bench, String board) {
        return TrueLines.of(bench, bench.board(board)).all();
    }

    /** Face sides together the pair comes out handed; laid face side to back it comes out as two of the same. */
    @ParameterizedTest(name = "{0} to {1}, {2} level with {3}: on {4} at {5}")
    @CsvSource({
        "FACE_1, FACE_1, END_1, END_2, EDGE_1, 204",
        "FACE_1, FACE_1, END_1, END_1, EDGE_2, 100",
        "FACE_1, FACE_2, END_1, END_1, EDGE_1, 100",
        "FACE_1, FACE_2, END_1, END_2, EDGE_2, 204",
        "FACE_2, FACE_2, END_1, END_2, EDGE_1, 204",
        "FACE_2, FACE_1, END_2, END_2, EDGE_1, 92",
    })
    void aLineOverAnEdgeComesOutOnBothBoards(
            Surface on, Surface to, Surface level, Surface with, Surface comesOut, double x) {
        Bench bench = bench(cramp(on, to, level, with), line("A", EDGE_1, end(END_1), 100));

        assertThat(lines(bench, "A")).extracting(TrueLine::meant).containsExactly(100.0);
        assertThat(lines(bench, "C")).extracting(TrueLine::on).containsExactly(comesOut);
        assertThat(lines(bench, "C")).extracting(TrueLine::meant).containsExactly(x);
        assertThat(lines(bench, "C")).extracting(TrueLine::reference).containsExactly(to);
    }

    @Test
    void itMakesNoOddsFromWhichOfTheTwoItIsStruck() {
        Action.Cramp cramp = cramp(FACE_1, FACE_1, END_1, END_2);
        Bench fromA = bench(cramp, line("A", EDGE_1, end(END_1), 100));
        Bench fromC = bench(cramp, line("C", EDGE_1, end(END_2), 100));

        assertThat(lines(fromC, "A")).isEqualTo(lines(fromA, "A"));
        assertThat(lines(fromC, "C")).isEqualTo(lines(fromA, "C"));
    }

    @Test
    void aDistanceFromALineOfThePairIsFromThatLineOnBoth() {
        Bench bench = bench(
                cramp(FACE_1, FACE_1, END_1, END_2),
                line("A", EDGE_1, end(END_1), 100),
                line("A", EDGE_1, new Datum.Step(2), 18));

        assertThat(((Action.Line) bench.board("C").struck().get(1).action()).from())
                .isEqualTo(new Datum.Step(2));
        assertThat(lines(bench, "C")).extracting(TrueLine::meant).containsExactly(204.0, 186.0);
    }

    /** From the end that isn't level the other board, 8 mm shorter, is measured from its level end all the same. */
    @Test
    void theLevelEndDecidesWhereABoardIsShorter() {
        Bench bench = bench(cramp(FACE_1, FACE_1, END_1, END_2), line("A", EDGE_1, end(END_2), 212));

        assertThat(lines(bench, "A")).extracting(TrueLine::meant).containsExactly(100.0);
        assertThat(lines(bench, "C")).extracting(TrueLine::meant).containsExactly(204.0);
    }

    @Test
    void whatMissesTheShorterBoardIsOnTheLongerOneAlone() {
        Bench bench = bench(cramp(FACE_1, FACE_1, END_1, END_2), line("A", EDGE_1, end(END_1), 308));

        assertThat(lines(bench, "A")).hasSize(1);
        assertThat(lines(bench, "C")).isEmpty();
    }

    @Test
    void aLineOnTheBackIsOnOneBoardOnlyAndTheFacesTogetherCannotBeReached() {
        Action.Cramp cramp = cramp(FACE_1, FACE_1, END_1, END_2);
        Action.Line back = new Action.Line(1, "A", FACE_2, EDGE_1, end(END_1), 100.0, null, Marker.KNIFE);
        Action.Line between = new Action.Line(1, "A", FACE_1, EDGE_1, end(END_1), 100.0, null, Marker.KNIFE);

        assertThat(lines(bench(cramp, back), "C")).isEmpty();
        assertThatThrownBy(() -> bench(cramp).after(between))
                .isInstanceOf(CannotDo.class)
                .hasMessage("Face 1 lies against board C: take the cramp off first");
    }

    @Test
    void pencilRubbedOutIsGoneFromBothAndUndoTakesTheCrampOff() throws CannotDo {
        Action.Line pencil = new Action.Line(1, "A", EDGE_1, FACE_1, end(END_1), 100.0, null, Marker.PENCIL);
        Bench rubbed = bench(cramp(FACE_1, FACE_1, END_1, END_2), pencil, new Action.RubOut(1, 2));
        assertThat(lines(rubbed, "A")).isEmpty();
        assertThat(lines(rubbed, "C")).isEmpty();

        Bench undone = bench(cramp(FACE_1, FACE_1, END_1, END_2), new Action.Undo(1));
        assertThat(undone.paired("A")).isEmpty();
        assertThat(undone.after(new Action.Redo(1)).paired("C")).isPresent();
    }

    @Test
    void takenApartEachBoardIsLinedAlone() {
        Bench bench = bench(
                cramp(FACE_1, FACE_1, END_1, END_2), new Action.Uncramp(1, "C"), line("A", EDGE_2, end(END_1), 100));

        assertThat(bench.paired("A")).isEmpty();
        assertThat(lines(bench, "C")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "A|FACE_1|A|FACE_1|END_1|END_2|Board A cannot be its own mate",
                "A|FACE_1|Q|FACE_1|END_1|END_2|Board Q is not on the rack",
                "A|EDGE_1|C|FACE_1|END_1|END_2|A pair is cramped face to face",
                "A|FACE_1|C|FACE_1|EDGE_1|END_2|A pair is made level at an end of each",
                "B|FACE_1|A|FACE_1|END_1|END_2|Board A lies in the cramp with board D already",
            })
    void whatCannotBeCramped(
            String board, Surface on, String mate, Surface to, Surface level, Surface with, String why) {
        Bench bench = bench(new Action.Cramp(1, "A", FACE_2, "D", FACE_2, END_1, END_2));
        Bench free = why.contains("already") ? bench : bench();

        assertThatThrownBy(() -> free.after(new Action.Cramp(1, board, on, mate, to, level, with)))
                .hasMessage(why);
        assertThatThrownBy(() -> bench().after(new Action.Uncramp(1, "A"))).hasMessage("Board A lies in no cramp");
    }
}
