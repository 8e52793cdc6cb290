package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.Reason;
import org.marktwice.bench.Tool;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Trim;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * A situation told step by step: a small job, its boards, and what was done. Each action is one step, numbered from 1.
 * The practice's worth is the rules' own.
 */
final class Situations {
    private Scenario scenario;
    private final List<Action> actions = new ArrayList<>();

    private Situations(Scenario scenario) {
        this.scenario = scenario;
    }

    static Situations of(Scenario scenario) {
        return new Situations(scenario);
    }

    /** A job with these boards, all three stages asked for. */
    static Situations of(Drawing drawing, Board... boards) {
        return of(Fixtures.scenario("test", drawing, List.of(boards)));
    }

    /** The porch shelf: two uprights and a shelf in housings, with these boards instead of its own. */
    static Situations porchShelf(Board... boards) {
        return of(Fixtures.porchShelfDrawing(), boards);
    }

    Situations asking(Stage... stages) {
        scenario = new Scenario(
                scenario.id(),
                scenario.title(),
                scenario.level(),
                scenario.brief(),
                List.of(stages),
                scenario.practice(),
                scenario.drawing(),
                scenario.boards(),
                "");
        return this;
    }

    Situations practice(Function<Practice, Practice> change) {
        scenario = Fixtures.withPractice(scenario, change.apply(scenario.practice()));
        return this;
    }

    Situations faceSide(Practice.FaceSide setting) {
        return practice(p -> new Practice(
                setting,
                p.heartSide(),
                p.knotMargin(),
                p.cupRatio(),
                p.size(),
                p.gap(),
                p.worth(),
                p.guidance(),
                p.aids()));
    }

    Situations does(Action... more) {
        actions.addAll(Arrays.asList(more));
        return this;
    }

    /** Both marks, pointing at each other: two steps. */
    Situations marks(String board, Surface side, Surface edge) {
        return side(board, side, edge).edge(board, edge, side);
    }

    Situations side(String board, Surface on, Surface towards) {
        return does(new Action.FaceSide(t(), board, on, towards));
    }

    Situations edge(String board, Surface on, Surface towards) {
        return does(new Action.FaceEdge(t(), board, on, towards));
    }

    /** Named in the middle of face 1. */
    Situations names(String board, String part) {
        Board named = scenario.board(board).orElseThrow();
        return names(
                board,
                part,
                new SurfacePoint(
                        Surface.FACE_1, named.size().length() / 2, named.size().width() / 2));
    }

    Situations names(String board, String part, SurfacePoint at) {
        return does(new Action.Name(t(), board, part, at));
    }

    Situations turns(String board, Surface one, Direction looks, Surface other, Direction otherLooks) {
        return turns(board, one, looks, other, otherLooks, null);
    }

    Situations turns(
            String board, Surface one, Direction looks, Surface other, Direction otherLooks, @Nullable Trim trim) {
        return does(new Action.Turning(t(), board, Map.of(one, looks, other, otherLooks), trim));
    }

    /** The straight-edge or the winding sticks over a whole surface, or the square on it. */
    Situations tests(String board, Tool with, Surface on) {
        return does(new Action.Test(t(), board, with, on, null));
    }

    /** The straight-edge across a surface at x. */
    Situations tests(String board, Tool with, Surface on, double x) {
        return does(new Action.Test(t(), board, with, on, x));
    }

    Situations measures(String board, SurfacePoint from, SurfacePoint to) {
        return does(new Action.Measure(t(), board, from, to));
    }

    Situations setsAside(String board, Reason because) {
        return does(new Action.SetAside(t(), board, because));
    }

    Situations rubsOut(int step) {
        return does(new Action.RubOut(t(), step));
    }

    Situations handsIn() {
        return does(new Action.HandIn(t()));
    }

    private double t() {
        return actions.size() + 1;
    }

    Situation situation() {
        Bench bench = Bench.of(scenario);
        for (Action action : actions) {
            try {
                bench = bench.after(action);
            } catch (CannotDo e) {
                throw new AssertionError("step " + (bench.steps() + 1) + ": " + e.getMessage(), e);
            }
        }
        return Situation.of(bench);
    }

    /** Every finding of a rule. */
    List<Finding> judgedBy(Rule rule) {
        return rule.judge(situation());
    }

    /** The one finding about a board. */
    Finding about(String board, Rule rule) {
        List<Finding> found = judgedBy(rule).stream()
                .filter(f -> board.equals(f.subject().board()))
                .toList();
        if (found.size() != 1) throw new AssertionError("findings about board " + board + ": " + found);
        return found.get(0);
    }

    /** The sentence of a finding about this situation, with what would have been better after an arrow. */
    String told(Finding finding) {
        String better = Texts.instead(finding, scenario);
        return Texts.says(finding, scenario) + (better.isEmpty() ? "" : " → " + better);
    }
}
