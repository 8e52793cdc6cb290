package org.marktwice.rulebook;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.marktwice.Fixtures;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.CutAt;
import org.marktwice.bench.Cutter;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Surface;

/** A small job set out as it should be, to be spoilt for a test. Its boards have no knots; a board is named by its part. */
final class SetJob {
    private final Scenario scenario;
    private final Attempt attempt;

    private SetJob(Scenario scenario, Attempt attempt) {
        this.scenario = scenario;
        this.attempt = attempt;
    }

    /** Boards of these, for the drawing; worked as a careful hand does, through all stages, handed in. */
    static SetJob of(Drawing drawing, Board... boards) {
        Scenario s = Fixtures.scenario("test", drawing, List.of(boards));
        Scenario all = new Scenario(
                s.id(),
                s.title(),
                s.level(),
                s.brief(),
                List.copyOf(EnumSet.allOf(Stage.class)),
                s.practice(),
                s.drawing(),
                s.boards(),
                "");
        return new SetJob(all, WorkedAttempt.of(all, "T", "2026-02-03T09:10:00Z"));
    }

    /** The porch shelf on true boards, dressed on face 1 and edge 1 only, all 6 mm longer. */
    static SetJob porchShelf() {
        return porchShelf(Shape.TRUE, 18);
    }

    /** @param uprights the shape of both uprights @param thick of the shelf, mm */
    static SetJob porchShelf(Shape uprights, double thick) {
        return of(
                Fixtures.porchShelfDrawing(),
                Fixtures.board("A")
                        .size(306, 120, 18)
                        .dressed(Surface.FACE_1, Surface.EDGE_1)
                        .shape(uprights)
                        .board(),
                Fixtures.board("B")
                        .size(306, 120, 18)
                        .dressed(Surface.FACE_1, Surface.EDGE_1)
                        .shape(uprights)
                        .board(),
                Fixtures.board("D")
                        .size(482, 120, thick)
                        .dressed(Surface.FACE_1, Surface.EDGE_1)
                        .board());
    }

    /** Two shelves between two uprights, 80 and 200 mm up, on true boards: each shelf is held in two places. */
    static SetJob twoShelves() {
        Part upper = Fixtures.timber("upper-shelf", "Upper shelf")
                .size(476, 120, 18)
                .at(12, 0, 200)
                .runs(JobAxis.ACROSS, JobAxis.DEEP)
                .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
                .part();
        Drawing drawing = Fixtures.drawing(
                new Overall(500, 120, 300),
                List.of(Fixtures.UPRIGHT_LEFT, Fixtures.UPRIGHT_RIGHT, Fixtures.SHELF, upper),
                new Joint.ThroughHousing("left-housing", "upright-left", "shelf"),
                new Joint.ThroughHousing("right-housing", "upright-right", "shelf"),
                new Joint.ThroughHousing("upper-left-housing", "upright-left", "upper-shelf"),
                new Joint.ThroughHousing("upper-right-housing", "upright-right", "upper-shelf"));
        return of(
                drawing,
                Fixtures.board("A").size(306, 120, 18).board(),
                Fixtures.board("B").size(306, 120, 18).board(),
                Fixtures.board("C").size(482, 120, 18).board(),
                Fixtures.board("D").size(482, 120, 18).board());
    }

    /** A taper of 2 mm: edge 2 is farther from edge 1 at end 2. */
    static Shape tapered() {
        return new Shape(0, 0, 0, 2, 0, Map.of());
    }

    /** In another workshop. */
    SetJob practice(UnaryOperator<Practice> by) {
        return new SetJob(Fixtures.withPractice(scenario, by.apply(scenario.practice())), attempt);
    }

    SetJob changing(UnaryOperator<Action> by) {
        return new SetJob(scenario, new Rewriting(attempt).changing(by).attempt());
    }

    /** Changes lines of a board only. */
    SetJob lines(String board, UnaryOperator<Action.Line> by) {
        return changing(a -> a instanceof Action.Line l && l.board().equals(board) ? by.apply(l) : a);
    }

    SetJob gauges(String board, UnaryOperator<Action.Gauge> by) {
        return changing(a -> a instanceof Action.Gauge g && g.board().equals(board) ? by.apply(g) : a);
    }

    SetJob without(Predicate<Action> which) {
        return new SetJob(scenario, new Rewriting(attempt).without(which).attempt());
    }

    /** Put in before the hand-in. */
    SetJob with(BoardWork.Step... steps) {
        return new SetJob(
                scenario,
                new Rewriting(attempt).after(a -> false, Arrays.asList(steps)).attempt());
    }

    SetJob notHandedIn() {
        return without(a -> a instanceof Action.HandIn);
    }

    /** Before anything was struck. */
    SetJob blank() {
        return without(a -> a instanceof Action.Line
                || a instanceof Action.Gauge
                || a instanceof Action.Waste
                || a instanceof Action.HandIn);
    }

    /** Before a board lay anywhere. */
    SetJob unturned() {
        return blank().without(a -> a instanceof Action.Turning);
    }

    /** The step of the n-th action of this kind, the first being 0. */
    int step(Predicate<Action> which, int n) {
        int found = 0;
        for (int i = 0; i < attempt.actions().size(); i++) {
            if (which.test(attempt.actions().get(i)) && found++ == n) return i + 1;
        }
        throw new AssertionError("there are but " + found);
    }

    /** Decides a cut before the hand-in. */
    SetJob cut(String board, int step, Cutter with, CutAt side) {
        return with(t -> new Action.Cut(t, board, step, with, side));
    }

    /** The n-th of a board's lines that were measured with the rule, the first being 0. */
    Action.Line measured(String board, int n) {
        return attempt.actions().stream()
                .filter(a -> a instanceof Action.Line l && l.board().equals(board) && l.at() != null && l.at() != 0)
                .map(a -> (Action.Line) a)
                .toList()
                .get(n);
    }

    static Action.Line at(Action.Line l, double at) {
        return new Action.Line(l.t(), l.board(), l.on(), l.square(), l.from(), at, null, l.with());
    }

    /** The distance of a line that was measured, mm. */
    static double at(Action.Line l) {
        return Objects.requireNonNull(l.at());
    }

    static String board(Finding finding) {
        return Objects.requireNonNull(finding.subject().board());
    }

    /** What a finding states, in its own unit. */
    static double figure(Finding finding) {
        return Objects.requireNonNull(finding.measured()).value();
    }

    static Action.Line square(Action.Line l, Surface stock) {
        return new Action.Line(l.t(), l.board(), l.on(), stock, l.from(), l.at(), l.mate(), l.with());
    }

    Scenario scenario() {
        return scenario;
    }

    Attempt attempt() {
        return attempt;
    }

    Situation situation() {
        try {
            return Situation.of(Bench.after(scenario, attempt));
        } catch (CannotDo e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    List<Finding> judgedBy(Rule rule) {
        return rule.judge(situation());
    }

    /** What a rule comes to, finding by finding; it has judged something. */
    List<Verdict> verdicts(Rule rule) {
        List<Verdict> found = judgedBy(rule).stream().map(Finding::verdict).toList();
        if (found.isEmpty()) throw new AssertionError(rule.id() + " judged nothing");
        return found;
    }

    /** The worst finding that names the board. */
    Finding about(String board, Rule rule) {
        return judgedBy(rule).stream()
                .filter(f -> board.equals(f.subject().board()))
                .max(Comparator.comparing(f -> f.verdict() == Verdict.OPEN ? Verdict.SOUND : f.verdict()))
                .orElseThrow(() -> new AssertionError("nothing about board " + board));
    }

    String told(Finding finding) {
        String better = Texts.instead(finding, scenario);
        return Texts.says(finding, scenario) + (better.isEmpty() ? "" : " → " + better);
    }
}
