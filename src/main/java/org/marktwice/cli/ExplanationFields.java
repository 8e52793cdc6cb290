package org.marktwice.cli;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.Explanation;
import org.marktwice.advice.Explanation.Use;
import org.marktwice.advice.Explanation.Way;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.advice.Shortage;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Board;

/** An explanation as fields of a JSON answer. */
final class ExplanationFields {
    private ExplanationFields() {}

    static Map<String, @Nullable Object> nextBest(ModelAnswer next) {
        return Fields.with("supplied", next.supplied())
                .and("clear", next.clear())
                .and("least", next.least())
                .and("sum", next.sum())
                .and(
                        "placings",
                        next.placings().stream()
                                .map(o -> Fields.with(
                                                "board", o.placing().board().id())
                                        .and("part", o.placing().part().id())
                                        .map())
                                .toList())
                .map();
    }

    static Map<String, @Nullable Object> shortage(Shortage shortage) {
        return Fields.with("parts", shortage.parts().stream().map(Part::id).toList())
                .and("boards", shortage.boards().stream().map(Board::id).toList())
                .and("clear", shortage.clear())
                .map();
    }

    static Map<String, @Nullable Object> board(Explanation explanation, Board board) {
        List<Map<String, @Nullable Object>> uses =
                explanation.uses(board).stream().map(ExplanationFields::use).toList();
        return Fields.with("board", board.id()).and("uses", uses).map();
    }

    private static Map<String, @Nullable Object> use(Use use) {
        return Fields.with("part", use.part().id())
                .maybe("unfit", use.unfit().orElse(null))
                .and("turns", use.ways().stream().map(ExplanationFields::way).toList())
                .map();
    }

    private static Map<String, @Nullable Object> way(Way way) {
        Option option = way.option();
        return Fields.with("facing", Fields.facing(option.placing()))
                .and("trim", trim(option.placing()))
                .and("allowed", way.allowed())
                .and("clearance", option.clearance())
                .and("clear", option.clear())
                .maybe(
                        "nearest",
                        option.nearest().map(ExplanationFields::nearest).orElse(null))
                .and("chosen", way.chosen())
                .map();
    }

    private static Map<String, @Nullable Object> nearest(Option.Nearest nearest) {
        return Fields.with("knot", nearest.knot())
                .and("joint", nearest.joint())
                .and("clearance", nearest.clearance())
                .and("margin", nearest.margin())
                .map();
    }

    static Map<String, @Nullable Object> trim(Placing placing) {
        return Fields.with("end", placing.trim().end().id())
                .and("mm", placing.trim().mm())
                .map();
    }
}
