package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * The name is written clear of cuts and of what is trimmed off. Until the board is turned this is decided only where every
 * turn that is left, with any trim, comes to the same.
 */
final class NameSurvives implements Rule {
    /** Trims tried while the board is not turned, millimetres apart. */
    private static final double TRIM_STEP = 10;

    @Override
    public String id() {
        return "name-survives";
    }

    @Override
    public Stage stage() {
        return Stage.NAMES;
    }

    @Override
    public double worth() {
        return 0.5;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        List<Finding> findings = new ArrayList<>();
        for (Workpiece w : Workpiece.all(situation)) {
            Part part = w.part();
            BoardState.Named name = w.state().name();
            if (part != null && name != null) findings.add(judge(w, part, name));
        }
        Workpiece.missing(situation).forEach(p -> findings.add(Found.missing(this, p, "says.no-board")));
        return findings;
    }

    private Finding judge(Workpiece w, Part part, BoardState.Named name) {
        Found found =
                Found.by(this, w).at(name.step()).showing(name.at().surface()).showing(name.at());
        Optional<Laid> laid = w.laid();
        if (laid.isPresent()) {
            return judge(found.at(decidedAt(w, name)), w, part, name.at(), laid.get());
        }
        List<Placing> left = left(w, part);
        List<Footprint.Loss> losses = left.stream()
                .map(p -> Footprint.of(w.board(), name.at()).nearest(Footprint.Lost.from(p)))
                .toList();
        Object[] all = {
            "board", w.board().id(), "part", part.id(), "on", name.at().surface()
        };
        if (losses.isEmpty()) return found.open("says.open", all);
        if (losses.stream().allMatch(Footprint.Loss::isClear)) return found.sound("says.any-turn", all);
        if (!losses.stream().allMatch(Footprint.Loss::takesMiddle)) return found.open("says.open", all);
        instead(found, w, left);
        return found.wrong("says.no-turn", all);
    }

    private static Finding judge(Found found, Workpiece w, Part part, SurfacePoint at, Laid laid) {
        Footprint.Loss loss = Footprint.of(w.board(), at).nearest(laid.lost());
        found.measured(loss.gap(), "mm", 0);
        Object[] all = {"board", w.board().id(), "part", part.id(), "on", at.surface(), "joint", loss.joint()};
        if (loss.isClear()) return found.sound("says.sound", all);
        instead(found, w, List.of(laid.placing()));
        boolean cut = !loss.joint().isEmpty();
        if (loss.takesMiddle()) return found.wrong(cut ? "says.in-cut" : "says.on-waste", all);
        return found.close(0.5, cut ? "says.touches-cut" : "says.touches-waste", all);
    }

    private static int decidedAt(Workpiece w, BoardState.Named name) {
        return Math.max(
                name.step(), w.state().turned().map(BoardState.Turned::step).orElse(0));
    }

    /** How the board may yet lie, as drawn and with the marks that it carries. */
    private static List<Placing> left(Workpiece w, Part part) {
        Board board = w.board();
        double surplus = board.size().length() - part.size().length();
        if (surplus < 0) return List.of();
        Predicate<Turn> suitsMarks =
                turn -> w.faceSide().stream().allMatch(m -> part.faceSide().contains(turn.of(m.on())))
                        && w.faceEdge().stream().allMatch(m -> part.faceEdge().contains(turn.of(m.on())));
        List<Placing> left = new ArrayList<>();
        for (Turn turn : w.situation().turns(board, part)) {
            if (part.takesMarks() && !suitsMarks.test(turn)) continue;
            for (double off = 0; off < surplus; off += TRIM_STEP) left.add(placing(w, part, turn, off));
            left.add(placing(w, part, turn, surplus));
        }
        return left;
    }

    private static Placing placing(Workpiece w, Part part, Turn turn, double offEnd1) {
        return new Placing(w.situation().scenario().drawing(), part, w.board(), turn, new Trim(Surface.END_1, offEnd1));
    }

    /** The clearest place on the board, where there is one. */
    private static void instead(Found found, Workpiece w, List<Placing> placings) {
        Footprint.clearest(w.board(), placings)
                .ifPresent(p -> found.instead("better.place", "on", p.surface(), "x", p.u()));
    }
}
