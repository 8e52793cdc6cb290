package org.marktwice.view.bench;

import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.scenario.Stage;

/** How far the work has got, counted, not judged. */
public final class Progress {
    private Progress() {}

    /** So many done of so many. */
    public record Count(int done, int of) {
        public boolean isFull() {
            return done >= of;
        }

        @Override
        public String toString() {
            return done + " of " + of;
        }
    }

    /** How far a stage has got; empty for a stage that is not worked at this bench. */
    public static Optional<Count> of(Bench bench, Stage stage) {
        List<Part> parts = bench.scenario().drawing().parts();
        return switch (stage) {
            case FACES -> {
                int wanted = (int) parts.stream().filter(Part::takesMarks).count();
                int marked = (int) bench.boards().stream()
                        .filter(b -> b.setAside().isEmpty() && bothMarks(b))
                        .count();
                yield Optional.of(new Count(Math.min(wanted, marked), wanted));
            }
            case NAMES -> {
                int named = (int)
                        parts.stream().filter(p -> !bench.namedAs(p).isEmpty()).count();
                yield Optional.of(new Count(named, parts.size()));
            }
            case TURNS -> {
                int settled = (int) parts.stream()
                        .filter(p -> bench.namedAs(p).stream()
                                .anyMatch(b -> bench.placing(b).isPresent()))
                        .count();
                yield Optional.of(new Count(settled, parts.size()));
            }
            case SETTING_OUT -> Optional.of(shaded(bench));
            case FIT -> Optional.empty();
        };
    }

    /** Cuts whose waste is shaded on the board that the part is named on. Holes are bored, and shade nothing. */
    private static Count shaded(Bench bench) {
        int of = 0;
        int done = 0;
        for (Part part : bench.scenario().drawing().parts()) {
            for (Cut cut : bench.scenario().drawing().cuts(part)) {
                if (bench.scenario().drawing().joint(cut.joint()).orElseThrow() instanceof Joint.Dowelled) continue;
                of++;
                if (bench.namedAs(part).stream().anyMatch(b -> isShaded(b, cut.joint()))) done++;
            }
        }
        return new Count(done, of);
    }

    private static boolean isShaded(BoardState state, String joint) {
        return state.struck().stream()
                .anyMatch(d -> d.action() instanceof Action.Waste w && w.joint().equals(joint));
    }

    static boolean bothMarks(BoardState state) {
        return state.faceSide().isPresent() && state.faceEdge().isPresent();
    }

    /** The first of the scenario's stages that is not full; the last one where all are. */
    public static Optional<Stage> current(Bench bench) {
        List<Stage> stages = bench.scenario().stages();
        Optional<Stage> open = stages.stream()
                .filter(s -> of(bench, s).map(c -> !c.isFull()).orElse(false))
                .findFirst();
        return open.isPresent() || stages.isEmpty() ? open : Optional.of(stages.get(stages.size() - 1));
    }

    /** {@code both marks made}, {@code face side marked}, {@code no marks yet}. */
    static String marks(BoardState state) {
        if (state.board().isSheet() && state.marks().isEmpty()) return "takes no marks";
        if (state.marks().size() > 2) return state.marks().size() + " marks";
        boolean side = state.faceSide().isPresent();
        boolean edge = state.faceEdge().isPresent();
        if (side && edge) return "both marks made";
        if (state.marks().size() == 2) return "two like marks";
        if (side) return "face side marked";
        return edge ? "face edge marked" : "no marks yet";
    }
}
