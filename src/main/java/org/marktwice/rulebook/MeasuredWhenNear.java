package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Action.Measure;
import org.marktwice.bench.BoardState.Done;
import org.marktwice.drawing.Placing;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

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
                situation.near(lying.placing()).stream()
                        .filter(n -> Math.abs(n.clearance() - n.margin()) <= NEAR)
                        .map(n -> finding(lying, n))
                        .forEach(findings::add);
            }
            if (place.isOpen() && place.hasKnotsNearCuts(situation)) findings.add(place.open(this, "says.open"));
        }
        return findings;
    }

    private Finding finding(Place.Lying lying, Nearness near) {
        Optional<Integer> measured = lying.state().measurements().stream()
                .filter(m -> tells(m.action(), lying.placing(), near))
                .map(Done::step)
                .findFirst();
        Object[] values = {
            "board", lying.board(),
            "joint", near.cut().joint(),
            "knot", near.knot().id(),
            "clearance", near.clearance(),
            "margin", near.margin()
        };
        Found found = Found.by(this, lying.subject(near.cut().joint()))
                .at(measured.orElse(lying.step()))
                .measured(near.clearance(), "mm", near.margin())
                .showing(Shows.knotAndCut(lying.placing(), near))
                .instead("better.measure", values);
        if (measured.isEmpty()) return found.wrong("says.wrong", values);
        return measured.get() < lying.step()
                ? found.sound("says.sound", values)
                : found.close(LATE_CREDIT, "says.late", values);
    }

    /** Whether a measurement tells how far this knot is from this cut. */
    private static boolean tells(Measure measure, Placing lies, Nearness near) {
        return tells(measure.from(), measure.to(), lies, near) || tells(measure.to(), measure.from(), lies, near);
    }

    private static boolean tells(SurfacePoint onKnot, SurfacePoint onPlace, Placing lies, Nearness near) {
        return atKnot(onKnot, lies.board(), near.knot().id())
                && (atEnd(onPlace, lies.board()) || near.cut().boxes().stream().anyMatch(b -> atCut(onPlace, lies, b)));
    }

    private static boolean atKnot(SurfacePoint point, Board board, String knot) {
        return board.traces(point.surface()).stream()
                .filter(t -> t.knot().equals(knot))
                .anyMatch(t -> Outlines.distance(point, t.outline()) <= READING);
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
