package org.marktwice.quiz;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The kinds of questions: each is one idea of the trade, practised and spaced by itself. They stand in the order in which
 * they are first met.
 */
public enum Kind {
    MARK_TAIL("What the marks point at", "marks-share-arris"),
    PROPER_PAIR("A proper pair of marks", "marks-share-arris", "one-pair-of-marks"),
    BARK_SIDE("Bark side and heart side", "heart-side-as-set"),
    READ_RULE("Reading the rule", "place-as-drawn", "measured-when-near"),
    END_DOWN("Where a marked board's ends look", "marks-as-drawn"),
    STOCK_BEARS("What stock and fence bear on", "stock-on-reference"),
    PART_OF_DRAWING("From the board to the drawing", "every-part-named", "board-fits-part"),
    KNOT_FOULS("Knots and joints", "knot-clear-of-joint"),
    HOLLOW("How a board hollows", "cup-within-limit", "heart-side-as-set"),
    SET_GAUGE("The gauge's setting", "depth-as-set"),
    WHICH_TURN("Turning a knot clear", "best-turn", "knot-clear-of-joint"),
    HANDED_PAIR("Left and right", "handed-pair"),
    CHAINED("Chained measurements", "one-datum"),
    FIND_SLIP("Finding the slip", "place-as-drawn", "stock-on-reference", "depth-as-set"),
    WALKED_ROUND("The square walked round", "lines-meet"),
    TRUE_OR_FALSE("Rules of thumb put to the test", "knot-clear-of-joint", "cup-within-limit", "one-datum");

    private final String idea;
    private final List<String> rules;

    Kind(String idea, String... rules) {
        this.idea = idea;
        this.rules = List.of(rules);
    }

    /** In files. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What it practises, in a few words. */
    public String idea() {
        return idea;
    }

    /** The rules, by their ids, that it practises; the first is the one it is counted under. */
    public List<String> rules() {
        return rules;
    }

    public static Optional<Kind> of(String id) {
        return Stream.of(values()).filter(k -> k.id().equals(id)).findFirst();
    }
}
