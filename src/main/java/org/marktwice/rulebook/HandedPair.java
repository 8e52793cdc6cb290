package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Pair;
import org.marktwice.drawing.Turn;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Surface;

/**
 * Opposite parts are mirror images as marked and turned. Marks alone have no hand: either end may come to the bottom, so
 * a pair is judged once both are marked and turned. A pair whose marks the drawing itself doesn't mirror is not judged,
 * and where it leaves a choice, two boards that each lie as drawn are a pair. A part that waits for a better rack leaves
 * nothing to compare, and that is sound.
 */
final class HandedPair implements Rule {
    @Override
    public String id() {
        return "handed-pair";
    }

    @Override
    public Stage stage() {
        return Stage.NAMES;
    }

    @Override
    public double worth() {
        return 2;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        List<Finding> findings = new ArrayList<>();
        for (Pair pair : situation.scenario().drawing().pairs()) {
            if (!isHanded(pair)) continue;
            Optional<HandedBoard> one = HandedBoard.of(situation, pair.one());
            Optional<HandedBoard> other = HandedBoard.of(situation, pair.other());
            if (one.isPresent() && other.isPresent()) {
                findings.add(judge(pair, one.get(), other.get()));
            } else if (situation.asks(Stage.TURNS)) {
                findings.add(waits(situation, pair) ? waiting(pair) : open(pair));
            }
        }
        return findings;
    }

    private Finding waiting(Pair pair) {
        return Found.by(this, Subject.part(pair.one().id()))
                .sound(
                        "says.waits",
                        "one",
                        pair.one().id(),
                        "other",
                        pair.other().id());
    }

    /** While no board clears one of the two there is nothing to compare. */
    private static boolean waits(Situation situation, Pair pair) {
        return Workpiece.waits(situation, pair.one()) || Workpiece.waits(situation, pair.other());
    }

    private Finding open(Pair pair) {
        return Found.by(this, Subject.part(pair.one().id()))
                .open("says.open", "one", pair.one().id(), "other", pair.other().id());
    }

    /** Whether the drawing lets the marks of one be the mirror image of the marks of the other. */
    static boolean isHanded(Pair pair) {
        return pair.one().takesMarks()
                && pair.other().takesMarks()
                && pair.one().faceSide().stream()
                        .anyMatch(d -> pair.other().faceSide().contains(HandedBoard.mirror(d, pair)))
                && pair.one().faceEdge().stream()
                        .anyMatch(d -> pair.other().faceEdge().contains(HandedBoard.mirror(d, pair)));
    }

    private Finding judge(Pair pair, HandedBoard one, HandedBoard other) {
        boolean mirrored = HandedBoard.mirror(one.sideLooks(), pair) == other.sideLooks()
                && HandedBoard.mirror(one.edgeLooks(), pair) == other.edgeLooks();
        boolean otherIsOut = one.asDrawn() || !other.asDrawn() && other.decidedAt() >= one.decidedAt();
        HandedBoard out = otherIsOut ? other : one;
        HandedBoard mate = otherIsOut ? one : other;
        Found found = Found.by(this, out.piece())
                .at(Math.max(one.decidedAt(), other.decidedAt()))
                .showing(out.faceSide().on(), out.faceEdge().on())
                .showing(out.piece().placeOf(out.faceSide()), out.piece().placeOf(out.faceEdge()));
        Object[] all = {
            "board", out.board(),
            "part", out.part().id(),
            "mate", mate.board(),
            "matePart", mate.part().id(),
            "looks", out.sideLooks(),
            "edgeLooks", out.edgeLooks(),
            "sidesLook", distinct(mate.sideLooks(), out.sideLooks()),
            "edgesLook", distinct(mate.edgeLooks(), out.edgeLooks()),
            "end", out.turn().looking(out.low()),
            "mateEnd", mate.turn().looking(out.low()),
            "place", out.low()
        };
        if (mirrored) return found.sound("says.sound", all);
        if (one.asDrawn() && other.asDrawn()) return found.sound("says.as-drawn", all);
        instead(found, pair, out, mate);
        boolean alike = pair.across() == out.part().length() ? out.hand() != mate.hand() : out.hand() == mate.hand();
        if (!alike) return found.wrong("says.not-mirrored", all);
        return out.slip(pair, mate)
                .map(s -> found.wrong("says.alike-joint", with(all, s)))
                .orElseGet(() -> found.wrong("says.alike", all));
    }

    private static List<Direction> distinct(Direction one, Direction other) {
        return one == other ? List.of(one) : List.of(one, other);
    }

    private static Object[] with(Object[] all, HandedBoard.Slip slip) {
        Object[] more = {"joint", slip.joint(), "opens", slip.opens(), "wanted", slip.wanted()};
        return Stream.of(all, more).flatMap(Stream::of).toArray();
    }

    private static void instead(Found found, Pair pair, HandedBoard out, HandedBoard mate) {
        Direction side = drawn(out.part().faceSide(), HandedBoard.mirror(mate.sideLooks(), pair));
        Direction edge = drawn(out.part().faceEdge(), HandedBoard.mirror(mate.edgeLooks(), pair));
        Surface marked = out.faceSide().on();
        Turn.facing(marked, side, out.faceEdge().on(), edge)
                .ifPresent(turn -> found.insteadTurn(
                        out.piece().best(turn),
                        "better.turn",
                        "better.turn-clear",
                        "better.turn-near",
                        "board",
                        out.board(),
                        "side",
                        marked,
                        "looks",
                        side,
                        "edge",
                        out.faceEdge().on(),
                        "edgeLooks",
                        edge,
                        "end",
                        turn.looking(out.low()),
                        "place",
                        out.low()));
    }

    private static Direction drawn(List<Direction> allowed, Direction wished) {
        return allowed.contains(wished) ? wished : allowed.get(0);
    }
}
