package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Placing;
import org.marktwice.files.ScenarioFile;
import org.marktwice.rulebook.WorkedAttempt;
import org.marktwice.scenario.Scenario;

/** On a board that is long enough the name of a worked attempt is written beside the face marks, not over them. */
class NamesBesideMarksTest {
    static List<Path> shipped() throws IOException {
        try (Stream<Path> all = Files.list(Path.of("scenarios"))) {
            return all.filter(f -> f.toString().endsWith(".scenario.json"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void noNameIsWrittenOverAMark(Path file) throws Exception {
        Scenario scenario = ScenarioFile.read(file);
        Bench bench = Bench.after(scenario, WorkedAttempt.of(scenario, "", ""));
        List<String> over = new ArrayList<>();
        for (BoardState state : bench.boards()) {
            if (state.named().isEmpty()) continue;
            var at = state.named().get().at();
            String name = scenario.drawing()
                    .part(state.named().get().part())
                    .orElseThrow()
                    .name();
            Rectangle2D written = Handwriting.written(name, SurfaceFrame.of(at.surface(), state.board()), at)
                    .getBounds2D();
            for (Mark mark : state.marks()) {
                if (mark.on() != at.surface()) continue;
                Rectangle2D marked =
                        FaceMarks.path(mark, state.marks(), state.board()).getBounds2D();
                if (marked.intersects(written) && roomForBoth(bench, state, Math.max(60, written.getWidth() + 8)))
                    over.add(name + " on " + state.board().id());
            }
        }
        assertThat(over).isEmpty();
    }

    /** Whether a stretch so wide is clear of cuts and of what the marks take in the middle of the board. */
    private static boolean roomForBoth(Bench bench, BoardState state, double wide) {
        Placing p = bench.placing(state).orElseThrow();
        double middle = state.board().size().length() / 2;
        for (double from = p.partInBoard().min(0) + 1;
                from + wide < p.partInBoard().max(0);
                from++) {
            double start = from;
            boolean clear = p.cuts().stream()
                    .flatMap(c -> c.boxes().stream())
                    .noneMatch(b -> b.min(0) < start + wide && b.max(0) > start);
            if (clear && (start + wide < middle - 27 || start > middle + 27)) return true;
        }
        return false;
    }
}
