package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Surface;

/**
 * One face side on a broad face and one face edge on an edge of each board to be set out; nothing on sheet stuff and on
 * what will be rounded. A board that rightly carries no mark is not praised for it: it has no finding.
 */
final class OnePairOfMarks implements Rule {
    @Override
    public String id() {
        return "one-pair-of-marks";
    }

    @Override
    public Stage stage() {
        return Stage.FACES;
    }

    @Override
    public double worth() {
        return 1;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        List<Finding> findings = new ArrayList<>();
        List<Workpiece> toBeMarked = Workpiece.toBeMarked(situation);
        toBeMarked.forEach(w -> findings.add(w.asMarked(this, this::judge)));
        for (BoardState board : situation.bench().boards()) {
            boolean wanted = board.marks().isEmpty() || toBeMarked.stream().anyMatch(w -> w.state() == board);
            if (!wanted) unwanted(situation, board, findings);
        }
        Workpiece.missingMarked(situation).forEach(p -> findings.add(Found.missing(this, p, "says.no-board")));
        return findings;
    }

    private Finding judge(Workpiece w) {
        List<Mark> sides = w.state().marks(Mark.Kind.FACE_SIDE).toList();
        List<Mark> edges = w.state().marks(Mark.Kind.FACE_EDGE).toList();
        String board = w.board().id();
        Found found = Found.by(this, w)
                .at(lastStep(w.state().marks()))
                .measured(w.state().marks().size(), "count", 2)
                .showing(surfaces(w.state().marks()));
        if (sides.size() > 1 || edges.size() > 1) {
            List<Mark> surplus = new ArrayList<>(sides.subList(Math.min(1, sides.size()), sides.size()));
            surplus.addAll(edges.subList(Math.min(1, edges.size()), edges.size()));
            return found.instead("better.rub-out", "surfaces", List.of(surfaces(surplus)), "n", surplus.size())
                    .wrong("says.too-many", "board", board, "sides", sides.size(), "edges", edges.size());
        }
        for (Mark side : sides) {
            if (w.board().isBroad(side.on())) continue;
            return found.instead("better.broad", "board", board)
                    .wrong("says.side-on-edge", "on", side.on(), "board", board);
        }
        for (Mark edge : edges) {
            if (w.board().isNarrow(edge.on())) continue;
            return found.instead("better.narrow", "board", board)
                    .wrong("says.edge-on-face", "on", edge.on(), "board", board);
        }
        if (sides.isEmpty() && edges.isEmpty()) return found.open("says.none", "board", board);
        if (sides.isEmpty()) return found.open("says.no-side", "board", board);
        if (edges.isEmpty()) return found.open("says.no-edge", "board", board);
        return found.sound(
                "says.sound",
                "board",
                board,
                "side",
                sides.get(0).on(),
                "edge",
                edges.get(0).on());
    }

    /** Marks on what takes none; a spare timber board may carry them. */
    private void unwanted(Situation situation, BoardState state, List<Finding> findings) {
        boolean shaped = situation.partOf(state).filter(p -> !p.takesMarks()).isPresent();
        if (!state.board().isSheet() && !shaped) return;
        String board = state.board().id();
        Found found = Found.by(this, subject(situation, state))
                .at(lastStep(state.marks()))
                .measured(state.marks().size(), "count", 0)
                .showing(surfaces(state.marks()))
                .instead("better.none", "n", state.marks().size(), "board", board);
        findings.add(
                state.board().isSheet()
                        ? found.wrong("says.on-sheet", "board", board)
                        : found.wrong(
                                "says.on-shaped",
                                "board",
                                board,
                                "part",
                                situation.partOf(state).orElseThrow().id()));
    }

    private static Subject subject(Situation situation, BoardState state) {
        return Subject.boardAs(
                state.board().id(), situation.partOf(state).map(p -> p.id()).orElse(null));
    }

    private static @Nullable Integer lastStep(List<Mark> marks) {
        return marks.stream().map(Mark::step).max(Integer::compare).orElse(null);
    }

    private static Surface[] surfaces(List<Mark> marks) {
        return marks.stream().map(Mark::on).toArray(Surface[]::new);
    }
}
