package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;

/**
 * In the turn chosen, face side and face edge look where the drawing wants them. Where the scenario doesn't ask for turns
 * a board that isn't turned has nothing to judge: any two marks on adjoining surfaces can still be turned as drawn.
 */
final class MarksAsDrawn implements Rule {
    @Override
    public String id() {
        return "marks-as-drawn";
    }

    @Override
    public Stage stage() {
        return Stage.FACES;
    }

    @Override
    public double worth() {
        return 2;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        boolean turnsAsked = situation.asks(Stage.TURNS);
        List<Finding> findings = new ArrayList<>();
        for (Workpiece w : Workpiece.toBeMarked(situation)) {
            Part part = w.part();
            if (part == null || !(turnsAsked || w.state().turned().isPresent())) continue;
            findings.add(w.asMarked(this, piece -> judge(piece, part)));
        }
        if (turnsAsked) {
            Workpiece.missingMarked(situation).forEach(p -> findings.add(Found.missing(this, p, "says.no-board")));
        }
        return findings;
    }

    private Finding judge(Workpiece w, Part part) {
        String board = w.board().id();
        Found found = Found.by(this, w);
        if (w.faceSide().isEmpty() || w.faceEdge().isEmpty()) {
            return found.at(w.markedAt()).open("says.not-marked", "board", board, "part", part.id());
        }
        if (w.placing().isEmpty()) {
            return found.at(w.markedAt()).open("says.not-turned", "board", board, "part", part.id());
        }
        Mark side = w.faceSide().get();
        Mark edge = w.faceEdge().get();
        Turn turn = w.placing().get().turn();
        boolean sideRight = part.faceSide().contains(turn.of(side.on()));
        boolean edgeRight = part.faceEdge().contains(turn.of(edge.on()));
        Object[] all = {
            "board", board,
            "part", part.id(),
            "side", side.on(),
            "edge", edge.on(),
            "sideLooks", turn.of(side.on()),
            "edgeLooks", turn.of(edge.on()),
            "sideShould", part.faceSide(),
            "edgeShould", part.faceEdge(),
        };
        found.at(decidedAt(w)).showing(side.on(), edge.on()).showing(w.placeOf(side), w.placeOf(edge));
        if (sideRight && edgeRight) return found.sound("says.sound", all);
        instead(found, w, part, side, edge, turn);
        if (edgeRight) return found.wrong("says.side", all);
        return sideRight ? found.wrong("says.edge", all) : found.wrong("says.both", all);
    }

    private static int decidedAt(Workpiece w) {
        Integer marked = w.markedAt();
        int turned = w.state().turned().map(t -> t.step()).orElse(0);
        return Math.max(marked == null ? 0 : marked, turned);
    }

    /**
     * Turn it to suit the marks, unless that brings a knot nearer to a cut than the turn chosen: then move the marks. Where
     * they would come onto sawn surfaces, begin afresh from the best turn.
     */
    private static void instead(Found found, Workpiece w, Part part, Mark side, Mark edge, Turn chosen) {
        Board board = w.board();
        Situation situation = w.situation();
        Direction sideShould = part.faceSide().get(0);
        Direction edgeShould = part.faceEdge().get(0);
        Optional<Turn> suits =
                Turn.facing(side.on(), sideShould, edge.on(), edgeShould).filter(t -> t.isIn(part, board.isSquare()));
        boolean nearer = suits.isPresent()
                && situation.fits(board, part)
                && situation.best(board, part, chosen).betterThan(situation.best(board, part, suits.get()));
        if (suits.isPresent() && !nearer) {
            Direction low = Direction.on(part.length().ordinal(), -1);
            found.insteadTurn(
                    w.best(suits.get()),
                    "better.turn",
                    "better.turn-clear",
                    "better.turn-near",
                    "side",
                    side.on(),
                    "sideShould",
                    sideShould,
                    "edge",
                    edge.on(),
                    "edgeShould",
                    edgeShould,
                    "end",
                    suits.get().looking(low),
                    "place",
                    low);
        } else if (planed(board, part, chosen)) {
            found.instead(nearer ? "better.mark" : "better.move", marks(part, chosen));
        } else {
            situation
                    .best(board, part)
                    .map(o -> o.placing().turn())
                    .filter(t -> planed(board, part, t))
                    .ifPresent(t -> found.instead("better.afresh", marks(part, t)));
        }
    }

    private static boolean planed(Board board, Part part, Turn turn) {
        return board.isDressed(turn.looking(part.faceSide().get(0)))
                && board.isDressed(turn.looking(part.faceEdge().get(0)));
    }

    private static Object[] marks(Part part, Turn turn) {
        Direction side = part.faceSide().get(0);
        Direction edge = part.faceEdge().get(0);
        return new Object[] {
            "side", turn.looking(side), "edge", turn.looking(edge), "sideShould", side, "edgeShould", edge
        };
    }
}
