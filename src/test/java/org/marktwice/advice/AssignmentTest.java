package org.marktwice.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.jgrapht.alg.matching.MaximumWeightBipartiteMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.advice.Assignment.Worth;

class AssignmentTest {
    private static final Optional<Worth> NO = Optional.empty();

    private static Optional<Worth> clear(double mm) {
        return Optional.of(Worth.of(true, mm));
    }

    private static Optional<Worth> near(double mm) {
        return Optional.of(Worth.of(false, mm));
    }

    @Test
    void nothingToAssign() {
        assertThat(Assignment.best(List.of())).isEmpty();
        assertThat(Assignment.best(List.of(List.of(), List.of()))).containsExactly(-1, -1);
        assertThat(Assignment.best(List.of(List.of(NO), List.of(NO)))).containsExactly(-1, -1);
    }

    @Test
    void supplyingOneMoreRowGoesBeforeEverythingElse() {
        // row 1 can only have column 0; giving that to row 0 would be clear with all the room there is
        assertThat(Assignment.best(List.of(List.of(clear(25), near(0)), List.of(near(0), NO))))
                .containsExactly(1, 0);
    }

    @Test
    void oneMoreThatIsClearGoesBeforeTheLeastClearance() {
        assertThat(Assignment.best(List.of(List.of(clear(1), near(24)), List.of(near(24), near(1)))))
                .containsExactly(0, 1);
    }

    @Test
    void theLeastClearanceGoesBeforeTheSum() {
        assertThat(Assignment.best(List.of(List.of(clear(25), clear(12)), List.of(clear(12), clear(11)))))
                .containsExactly(1, 0);
    }

    @Test
    void theSumDecidesWhereTheLeastIsTheSame() {
        assertThat(Assignment.best(List.of(
                        List.of(clear(12), clear(20), NO),
                        List.of(clear(20), clear(13), NO),
                        List.of(NO, NO, clear(12)))))
                .containsExactly(1, 0, 2);
    }

    @Test
    void ofEqualSetsTheOneInOrderIsTaken() {
        List<Optional<Worth>> row = List.of(clear(25), clear(25), clear(25), clear(25));
        assertThat(Assignment.best(List.of(row, row, row))).containsExactly(0, 1, 2);
    }

    @ParameterizedTest(name = "{0} rows, {1} columns, {2} values")
    @CsvSource({
        "1,1,2",
        "2,2,2",
        "2,5,3",
        "3,3,3",
        "4,4,2",
        "5,2,4",
        "4,6,30",
        "5,5,3",
        "5,5,20000",
        "6,6,4",
        "6,6,25000",
        "6,7,5"
    })
    void isAsGoodAsTheBestOfAllAssignments(int rows, int columns, int values) {
        for (int seed = 0; seed < 150; seed++) {
            Random random = new Random(seed * 31L + rows);
            List<List<Optional<Worth>>> table = random(random, rows, columns, values);
            int[] found = Assignment.best(table);

            assertThat(Arrays.stream(found).filter(c -> c >= 0).distinct().count())
                    .isEqualTo(Arrays.stream(found).filter(c -> c >= 0).count());
            assertThat(Score.of(table, found))
                    .as("seed %d: %s", seed, table)
                    .isEqualTo(bestOf(table, new int[rows], 0, new HashSet<>()));
        }
    }

    @Test
    void aBestSetHiddenInALargeTableIsFound() {
        Random random = new Random(3);
        List<Integer> hidden = new ArrayList<>();
        for (int row = 0; row < 150; row++) hidden.add(row);
        Collections.shuffle(hidden, random);
        List<List<Optional<Worth>>> table = new ArrayList<>();
        for (int row = 0; row < 150; row++) {
            List<Optional<Worth>> line = new ArrayList<>();
            for (int column = 0; column < 150; column++) {
                int base = hidden.get(row) == column ? 15_000 : 4_999;
                line.add(Optional.of(new Worth(true, base + random.nextInt(10_000))));
            }
            table.add(line);
        }
        assertThat(Assignment.best(table))
                .containsExactly(hidden.stream().mapToInt(c -> c).toArray());
    }

    @Test
    void theSumOfALargeTableAgreesWithAnotherMethod() {
        // row 0 can only have the entry that is worth 0, so that the least clearance is 0 and the sum alone decides
        Random random = new Random(4);
        List<List<Optional<Worth>>> table = new ArrayList<>();
        var graph = new SimpleWeightedGraph<String, DefaultWeightedEdge>(DefaultWeightedEdge.class);
        for (int i = 0; i < 90; i++) {
            graph.addVertex("row " + i);
            graph.addVertex("column " + i);
        }
        for (int row = 0; row < 90; row++) {
            List<Optional<Worth>> line = new ArrayList<>();
            for (int column = 0; column < 90; column++) {
                boolean there = row == 0 || column == 0 ? row == column : true;
                long microns = row == 0 ? 0 : 1 + random.nextInt(25_000);
                line.add(there ? Optional.of(new Worth(true, microns)) : NO);
                if (there) graph.setEdgeWeight(graph.addEdge("row " + row, "column " + column), microns);
            }
            table.add(line);
        }
        Set<String> rows =
                graph.vertexSet().stream().filter(v -> v.startsWith("row")).collect(Collectors.toSet());
        Set<String> columns =
                graph.vertexSet().stream().filter(v -> !v.startsWith("row")).collect(Collectors.toSet());
        double other = new MaximumWeightBipartiteMatching<>(graph, rows, columns)
                .getMatching()
                .getWeight();

        assertThat(Score.of(table, Assignment.best(table))).isEqualTo(new Score(90, 90, 0, Math.round(other)));
    }

    @Test
    void aWorthLiesWithinTheCap() {
        assertThatThrownBy(() -> Worth.of(true, 25.001)).hasMessageContaining("25001");
        assertThatThrownBy(() -> new Worth(true, -1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<List<Optional<Worth>>> random(Random random, int rows, int columns, int values) {
        List<List<Optional<Worth>>> table = new ArrayList<>();
        double holes = random.nextDouble() * 0.7;
        double clear = random.nextDouble();
        for (int row = 0; row < rows; row++) {
            List<Optional<Worth>> line = new ArrayList<>();
            for (int column = 0; column < columns; column++) {
                long microns = Math.min(25_000, random.nextInt(values) * (25_000L / Math.max(1, values - 1)));
                boolean there = random.nextDouble() >= holes;
                line.add(there ? Optional.of(new Worth(random.nextDouble() < clear, microns)) : NO);
            }
            table.add(line);
        }
        return table;
    }

    /** Every assignment there is, in turn. */
    private static Score bestOf(List<List<Optional<Worth>>> table, int[] columnOf, int row, Set<Integer> taken) {
        if (row == columnOf.length) return Score.of(table, columnOf);
        columnOf[row] = -1;
        Score best = bestOf(table, columnOf, row + 1, taken);
        for (int column = 0; column < table.get(row).size(); column++) {
            if (table.get(row).get(column).isEmpty() || !taken.add(column)) continue;
            columnOf[row] = column;
            Score score = bestOf(table, columnOf, row + 1, taken);
            if (score.compareTo(best) > 0) best = score;
            taken.remove(column);
        }
        return best;
    }

    private record Score(int supplied, int clear, long least, long sum) implements Comparable<Score> {
        static Score of(List<List<Optional<Worth>>> table, int[] columnOf) {
            int supplied = 0;
            int clear = 0;
            long least = 25_000;
            long sum = 0;
            for (int row = 0; row < columnOf.length; row++) {
                if (columnOf[row] < 0) continue;
                Worth worth = table.get(row).get(columnOf[row]).orElseThrow();
                supplied++;
                if (worth.clear()) clear++;
                least = Math.min(least, worth.microns());
                sum += worth.microns();
            }
            return new Score(supplied, clear, least, sum);
        }

        @Override
        public int compareTo(Score other) {
            if (supplied != other.supplied) return Integer.compare(supplied, other.supplied);
            if (clear != other.clear) return Integer.compare(clear, other.clear);
            if (least != other.least) return Long.compare(least, other.least);
            return Long.compare(sum, other.sum);
        }
    }
}
