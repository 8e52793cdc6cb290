package org.marktwice.rulebook;

import java.util.List;
import org.marktwice.scenario.Stage;

/**
 * One rule of the trade. It judges a situation into findings, from the board's geometry, the drawing and the actions; it
 * never reads another rule's result. Its texts lie in {@code texts/<id>.properties} beside the rule book.
 */
public interface Rule {
    /** Stable, in files and on sheets. */
    String id();

    Stage stage();

    /** Marks it is worth where the scenario doesn't say otherwise. */
    double worth();

    /** Whether it is asked at all: where the scenario asks for its stage. */
    default boolean isAsked(Situation situation) {
        return situation.asks(stage());
    }

    /** One finding a subject; none where there is nothing to judge, which is not a pass. */
    List<Finding> judge(Situation situation);
}
