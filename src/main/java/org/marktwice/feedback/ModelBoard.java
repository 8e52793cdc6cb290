package org.marktwice.feedback;

import java.util.Optional;
import org.marktwice.advice.Option;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Lie;
import org.marktwice.rulebook.Situation;

/**
 * One board in the model answer, set beside what the learner had done to it.
 *
 * @param words how it lies, or that it stays on the rack
 * @param figure its clearance; another board that does the learner's part better
 * @param learners the learner's own clearance; empty where there is none
 */
public record ModelBoard(BoardPicture picture, Lie lie, String words, String figure, String learners) {
    /** @param bench the learner's, at the moment that is looked at */
    public static ModelBoard of(Situation situation, Bench bench, String id) {
        BoardState state = bench.board(id);
        Optional<Option> option = situation.modelAnswer().of(state.board());
        BoardPicture picture =
                option.map(Pictures::model).orElseGet(() -> BoardPicture.of(BoardState.fresh(state.board()), null));
        String figure = option.map(Pictures::clearance).orElse("No part is made of it.") + elsewhere(situation, state);
        return new ModelBoard(
                picture,
                option.map(o -> Pictures.lie(o.placing())).orElse(Lie.FIRST),
                option.map(o -> Pictures.placed(o.placing())).orElse("Stays on the rack"),
                figure,
                BoardWords.clearance(bench, state));
    }

    /** Which board the model answer takes for the part that the learner made of this one, where it is another. */
    private static String elsewhere(Situation situation, BoardState state) {
        return state.named()
                .flatMap(n -> situation.scenario().drawing().part(n.part()))
                .flatMap(p -> situation.modelAnswer().of(p))
                .map(Option::placing)
                .filter(p -> !p.board().equals(state.board()))
                .map(p -> "   " + p.part().name() + ": board " + p.board().id() + ".")
                .orElse("");
    }
}
