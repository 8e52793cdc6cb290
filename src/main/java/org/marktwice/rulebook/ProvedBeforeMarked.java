package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState.Done;
import org.marktwice.bench.Mark;
import org.marktwice.bench.Tool;
import org.marktwice.bench.ToolReading;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.Trueness;

/**
 * The surfaces were proved before they were marked: the face side with the straight-edge along and across and with the
 * winding sticks, the face edge with the try-square from the face side. A straight-edge tried at a position lies across the
 * board there; tried without one it lies along. What was tried after the mark was made comes too late, and a square whose
 * stock bore on another surface told nothing about the face side.
 */
final class ProvedBeforeMarked implements Rule {
    @Override
    public String id() {
        return "proved-before-marked";
    }

    @Override
    public Stage stage() {
        return Stage.FACES;
    }

    @Override
    public double worth() {
        return 0.5;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        List<Finding> findings = new ArrayList<>();
        Workpiece.toBeMarked(situation).forEach(w -> findings.add(judge(w)));
        Workpiece.missingMarked(situation).forEach(p -> findings.add(Found.missing(this, p, "says.no-board")));
        return findings;
    }

    private Finding judge(Workpiece w) {
        List<String> missing = new ArrayList<>();
        List<String> late = new ArrayList<>();
        w.faceSide().ifPresent(side -> {
            need(w, side, "along", t -> t.with() == Tool.STRAIGHT_EDGE && t.at() == null, missing, late);
            need(w, side, "across", t -> t.with() == Tool.STRAIGHT_EDGE && t.at() != null, missing, late);
            need(w, side, "wind", t -> t.with() == Tool.WINDING_STICKS, missing, late);
        });
        w.faceEdge().ifPresent(edge -> need(w, edge, "square", t -> squares(w, t), missing, late));
        String board = w.board().id();
        Found found = Found.by(this, w).at(w.markedAt()).measured(missing.size(), "count", 0);
        w.faceSide().ifPresent(m -> found.showing(m.on()));
        w.faceEdge().ifPresent(m -> found.showing(m.on()));
        boolean both = w.faceSide().isPresent() && w.faceEdge().isPresent();
        if (!both && missing.size() < 2) return found.open("says.open", "board", board);
        if (missing.isEmpty()) return found.sound("says.sound", "board", board);
        instead(found, w, missing.get(0));
        Object[] values = {"board", board, "trials", missing, "n", missing.size()};
        boolean allLate = late.containsAll(missing);
        if (missing.size() == 1) return found.close(0.5, allLate ? "says.late" : "says.missing", values);
        return found.wrong(allLate ? "says.late" : "says.missing", values);
    }

    private static boolean squares(Workpiece w, Action.Test test) {
        Surface from = test.from();
        return test.with() == Tool.TRY_SQUARE
                && (from == null || w.faceSide().map(side -> side.on() == from).orElse(true));
    }

    private static void need(
            Workpiece w,
            Mark mark,
            String trial,
            Predicate<Action.Test> wanted,
            List<String> missing,
            List<String> late) {
        boolean tried = false;
        for (Done<Action.Test> test : w.state().tests()) {
            if (test.action().on() != mark.on() || !wanted.test(test.action())) continue;
            if (test.step() < mark.step()) return;
            tried = true;
        }
        missing.add(trial);
        if (tried) late.add(trial);
    }

    /** What the first of the missing trials would have shown on this board. */
    private static void instead(Found found, Workpiece w, String trial) {
        Board board = w.board();
        Mark side = w.faceSide().orElse(null);
        Mark edge = w.faceEdge().orElse(null);
        if (trial.equals("square")) {
            if (edge == null || side == null || !edge.on().adjoins(side.on())) return;
            double off = Math.abs(Trueness.square(board, side.on(), edge.on()));
            double gap = Math.tan(Math.toRadians(off)) * ToolReading.blade(board, side.on(), edge.on());
            if (isSeen(gap)) found.instead("better.square", "on", edge.on(), "value", off);
            else found.instead("better.square-true", "on", edge.on());
        } else if (side != null && trial.equals("along")) {
            double gap = Trueness.along(board, side.on());
            if (isSeen(gap)) found.instead("better.along", "on", side.on(), "value", Math.abs(gap));
            else found.instead("better.along-true", "on", side.on());
        } else if (side != null && trial.equals("wind")) {
            double rise = Trueness.wind(board, side.on());
            if (isSeen(rise)) found.instead("better.wind", "on", side.on(), "value", Math.abs(rise));
            else found.instead("better.wind-true", "on", side.on());
        } else if (side != null) {
            OptionalDouble across =
                    Trueness.across(board, side.on(), board.size().length() / 2);
            if (across.isEmpty()) return;
            double gap = across.getAsDouble();
            if (isSeen(gap)) found.instead("better.across", "on", side.on(), "value", Math.abs(gap));
            else found.instead("better.across-true", "on", side.on());
        }
    }

    private static boolean isSeen(double gap) {
        return Math.abs(gap) >= ToolReading.NO_LIGHT;
    }
}
