package org.marktwice.view.bench;

import java.util.List;
import java.util.Optional;
import org.marktwice.advice.Option;
import org.marktwice.advice.Options;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;

/**
 * How far a part has got.
 *
 * @param board the board that carries its name; empty where none does
 * @param sign what stands before it
 * @param says what is still to be done, or that it is settled
 */
record PartState(Part part, Optional<String> board, String sign, String says) {
    static List<PartState> of(Bench bench) {
        return bench.scenario().drawing().parts().stream()
                .map(p -> of(bench, p))
                .toList();
    }

    private static PartState of(Bench bench, Part part) {
        List<BoardState> named = bench.namedAs(part);
        if (named.isEmpty()) return new PartState(part, Optional.empty(), "○", "choose a board");
        Optional<String> board = Optional.of(named.get(0).board().id());
        if (named.size() > 1) {
            String all =
                    String.join(" and ", named.stream().map(b -> b.board().id()).toList());
            return new PartState(part, board, "!", "boards " + all + " both carry its name");
        }
        Optional<Placing> placing = bench.placing(named.get(0));
        if (placing.isPresent()) return settled(bench.scenario(), part, placing.get());
        boolean turned = named.get(0).turned().isPresent();
        return new PartState(part, board, "●", turned ? "it can't lie so: turn it" : "turn it in the job");
    }

    private static PartState settled(Scenario scenario, Part part, Placing placing) {
        Optional<String> board = Optional.of(placing.board().id());
        if (scenario.grants(Practice.Aid.CLEARANCE)) {
            Optional<Option.Nearest> near = Options.judge(scenario, placing).nearest();
            if (near.isPresent() && near.get().clearance() < near.get().margin()) {
                String knot = Words.knot(placing.board(), near.get().knot());
                String says = near.get().clearance() <= 0.05
                        ? knot + " meets the joint: turn it"
                        : knot + " is only " + Reading.mm(near.get().clearance()) + " clear";
                return new PartState(part, board, "●", says);
            }
        }
        return new PartState(part, board, "✓", "settled");
    }

    /** {@code Right upright · board A}. */
    String title() {
        return part.name() + board.map(b -> " · board " + b).orElse("");
    }
}
