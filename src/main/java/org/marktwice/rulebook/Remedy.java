package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.advice.Option;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Turn;
import org.marktwice.rulebook.Finding.Phrase;
import org.marktwice.timber.Surface;

/**
 * What would be better for a board that lies badly, in the trade's order of remedies: slide it along, turn it, use another
 * board, use this one elsewhere, set it aside. Several rules end with one of these, so their words lie in one place,
 * {@code remedies.properties}.
 */
final class Remedy {
    /** What is trimmed off is told from here, millimetres: the model answer trims in whole millimetres. */
    private static final double WORTH_TELLING = 0.5;

    private Remedy() {}

    /** Whether a phrase's words lie with the remedies. */
    static boolean isOne(String key) {
        return key.startsWith("remedy.");
    }

    /** The remedy for a board that is not clear as it lies. */
    static Phrase of(Situation situation, Placing lies) {
        return betterTurn(situation, lies)
                .or(() -> otherBoard(situation, lies).map(o -> replace(lies, o)))
                .or(() -> otherPart(situation, lies))
                .orElseGet(() ->
                        Found.phrase("remedy.set-aside", "board", lies.board().id()));
    }

    /** The board's best turn in this part, where it is clear and better than how it lies. */
    private static Optional<Phrase> betterTurn(Situation situation, Placing lies) {
        return situation
                .best(lies.board(), lies.part())
                .filter(Option::clear)
                .filter(best -> best.betterThan(situation.judged(lies)))
                .map(best -> turn(lies, best));
    }

    /** How to get from a board as it lies to a better way, and what clearance that gives. */
    static Phrase turn(Placing lies, Option best) {
        Placing to = best.placing();
        return Found.phrase(
                trimmed(to) ? move(lies.turn(), to.turn()).trimmed : move(lies.turn(), to.turn()).key, values(best));
    }

    /** A way to lie: two surfaces and where they look, what comes off the end that loses more, and the clearance. */
    static Object[] values(Option option, Object... more) {
        Placing to = option.placing();
        Surface end = to.off(Surface.END_1) > to.off(Surface.END_2) ? Surface.END_1 : Surface.END_2;
        List<Object> values = new ArrayList<>(List.<Object>of(
                "board", to.board().id(),
                "part", to.part().id(),
                "one", Surface.FACE_1,
                "oneLooks", to.turn().of(Surface.FACE_1),
                "other", Surface.EDGE_1,
                "otherLooks", to.turn().of(Surface.EDGE_1)));
        values.addAll(List.of("end", end, "off", Math.max(0, to.off(end)), "clearance", clearance(option)));
        values.addAll(List.of(more));
        return values.toArray();
    }

    /** Uncapped, for a sentence. */
    private static double clearance(Option option) {
        return option.nearest().map(Option.Nearest::clearance).orElse(option.clearance());
    }

    /** The same with the knot and the joint that it comes nearest to, where there are such. */
    static Object[] valuesToKnot(Option option, Object... more) {
        List<Object> values = new ArrayList<>(List.of(more));
        option.nearest().ifPresent(n -> values.addAll(List.of("knot", n.knot(), "joint", n.joint())));
        return values(option, values.toArray());
    }

    private static boolean trimmed(Placing to) {
        return to.surplus() >= WORTH_TELLING;
    }

    /** The bench's name for what takes one turn into another. */
    private enum Move {
        SLIDE("remedy.slide", "remedy.slide"),
        END_FOR_END("remedy.end-for-end", "remedy.end-for-end-trimmed"),
        FACE_OVER("remedy.face-over", "remedy.face-over-trimmed"),
        BOTH("remedy.both", "remedy.both-trimmed"),
        QUARTER("remedy.quarter", "remedy.quarter-trimmed");

        private final String key;
        private final String trimmed;

        Move(String key, String trimmed) {
            this.key = key;
            this.trimmed = trimmed;
        }
    }

    private static Move move(Turn from, Turn to) {
        if (from.y().axis() != to.y().axis()) return Move.QUARTER;
        boolean sameEnds = from.x() == to.x();
        boolean sameFace = from.z() == to.z();
        if (sameEnds) return sameFace ? Move.SLIDE : Move.FACE_OVER;
        return sameFace ? Move.END_FOR_END : Move.BOTH;
    }

    /** Another board that the model answer lays in this part, clear. */
    static Optional<Option> otherBoard(Situation situation, Placing lies) {
        return situation
                .modelAnswer()
                .of(lies.part())
                .filter(Option::clear)
                .filter(o -> !o.placing().board().equals(lies.board()));
    }

    /** To lay that board there instead. */
    static Phrase replace(Placing lies, Option by) {
        return Found.phrase(
                by.nearest().isPresent() ? "remedy.other-board" : "remedy.other-board-free",
                values(by, "displaced", lies.board().id()));
    }

    private static Optional<Phrase> otherPart(Situation situation, Placing lies) {
        return situation
                .modelAnswer()
                .of(lies.board())
                .filter(Option::clear)
                .filter(o -> !o.placing().part().equals(lies.part()))
                .map(o -> Found.phrase(
                        o.nearest().isPresent() ? "remedy.other-part" : "remedy.other-part-free", values(o)));
    }
}
