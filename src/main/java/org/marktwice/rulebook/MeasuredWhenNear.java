package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.bench.Action.Measure;
import org.marktwice.bench.BoardState.Done;
import org.marktwice.drawing.Placing;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.Trace;

/**
 * Where a knot's clearance from a cut is within 10 mm of its margin, the eye can't tell whether it is kept: the distance
 * was measured before the board was turned for good. A measurement counts when one end lies on the knot's trace and the
 * other at the place of the cut, or at the end of the board from which that place is set off. Measured only afterwards is
 * close: the turn may be right, but it was not decided by the rule.
 *
 * <p>That an end counts within {@value #READING} mm of where it belongs, and half the credit for a late measurement, are
 * design choices.
 */
final class MeasuredWhenNear implements Rule {
    /** A clearance this near to its margin is to be measured, millimetres. */
    private static final double NEAR = 10;

    /** How far off a knot's outline or a line an end of a measurement may be put, millimetres. */
    private static final double READING = 3;

    private static final double LATE_CREDIT = 0.5;

    @Override
    public String id() {
        return "measured-when-near";
    }

    @Override
    public Stage stage() {
        return Stage.TURNS;
    }

    @Override
    public double worth() {
        return 1;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        List<Finding> findings = new ArrayList<>();
        for (Place place : Place.all(situation)) {
            for (Place.Lying lying : place.lying()) {
                for (Nearness near : lying.laid().near()) {
                    if (Math.abs(near.clearance() - near.margin()) > NEAR) continue;
                    int measured = measured(lying, near);
                    When when = measured == 0 ? When.NEVER : measured < lying.step() ? When.BEFORE : When.LATE;
                    Told told = new Told(near.cut().joint(), near.knot().id(), when);
                    situation.asItLies(this, lying, told, () -> List.of(finding(lying, near, when))).stream()
                            .map(f -> f.at(measured == 0 ? lying.step() : measured))
                            .forEach(findings::add);
                }
            }
            if (place.isOpen() && place.hasKnotsNearCuts(situation)) findings.add(place.open(this, "says.open"));
        }
        return findings;
    }

    /** When the distance was measured: not at all, before the board was turned for good, or only afterwards. */
    private enum When {
        NEVER,
        BEFORE,
        LATE
    }

    /** What a finding follows from, besides how the board lies. */
    private record Told(String joint, String knot, When when) {}

    /** The step that measured it first; 0 where none did. */
    private static int measured(Place.Lying lying, Nearness near) {
        for (Done<Measure> m : lying.state().measurements()) {
            if (tells(m.action(), lying.placing(), near)) return m.step();
        }
        return 0;
    }

    private Finding finding(Place.Lying lying, Nearness near, When when) {
        Object[] values = {
            "board", lying.board(),
            "joint", near.cut().joint(),
            "knot", near.knot().id(),
            "clearance", near.clearance(),
            "margin", near.margin()
        };
        Found found = Found.by(this, lying.subject(near.cut().joint()))
                .measured(near.clearance(), "mm", near.margin())
                .showing(Shows.knotAndCut(lying.placing(), near))
                .instead("better.measure", values);
        return switch (when) {
            case NEVER -> found.wrong("says.wrong", values);
            case BEFORE -> found.sound("says.sound", values);
            case LATE -> found.close(LATE_CREDIT, "says.late", values);
        };
    }

    /** Whether a measurement tells how far this knot is from this cut. */
    private static boolean tells(Measure measure, Placing lies, Nearness near) {
        return tells(measure.from(), measure.to(), lies, near) || tells(measure.to(), measure.from(), lies, near);
    }

    private static boolean tells(SurfacePoint onKnot, SurfacePoint onPlace, Placing lies, Nearness near) {
        return (atEnd(onPlace, lies.board()) || near.cut().boxes().stream().anyMatch(b -> atCut(onPlace, lies, b)))
                && atKnot(onKnot, lies.board(), near.knot().id());
    }

    private static boolean atKnot(SurfacePoint point, Board board, String knot) {
        for (Trace t : board.traces()) {
            boolean here = t.surface() == point.surface() && t.knot().equals(knot);
            if (here && Outlines.distance(point, t.outline()) <= READING) return true;
        }
        return false;
    }

    private static boolean atEnd(SurfacePoint point, Board board) {
        if (point.surface().isEnd()) return true;
        return point.u() <= READING || point.u() >= board.size().length() - READING;
    }

    /**
     * Whether the point is at the place of the cut: between its lines across the grain, or, where it runs along most of
     * the part, between its lines along the grain.
     */
    private static boolean atCut(SurfacePoint point, Placing lies, Box cut) {
        Surface on = point.surface();
        boolean along = cut.extent(0) > lies.part().size().length() / 2;
        int axis = on.isEnd() ? on.uAxis() : along ? on.vAxis() : 0;
        double at = axis == on.uAxis() ? point.u() : point.v();
        return at >= cut.min(axis) - READING && at <= cut.max(axis) + READING;
    }
}
