package org.marktwice.bench;

import java.util.Optional;
import org.marktwice.bench.Action.Datum;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/**
 * Two boards as they lie in the cramp, seen from one of them. Faces that look alike, laid together, turn the other board over
 * end for end or edge for edge: so it comes out handed.
 *
 * @param here the board that it is seen from, and {@code there} the other
 * @param touches the surface of {@code here} that lies against {@code touched} of the other
 * @param level the end of {@code here} that is level with {@code with} of the other
 */
public record Pairing(String here, Surface touches, String there, Surface touched, Surface level, Surface with) {

    static Pairing of(Action.Cramp cramp) {
        return new Pairing(cramp.board(), cramp.on(), cramp.mate(), cramp.to(), cramp.level(), cramp.with());
    }

    Pairing fromTheOther() {
        return new Pairing(there, touched, here, touches, with, level);
    }

    /** The other board's surface that lies in one plane with a surface of this one, or looks the same way. */
    public Surface like(Surface surface) {
        if (surface.axis() == touches.axis()) {
            return surface == touches ? touched.opposite() : touched;
        }
        if (surface.isEnd()) return surface == level ? with : with.opposite();
        boolean endForEnd = level != with;
        boolean turnedOver = touches == touched;
        // A board that is turned is never mirrored: an even number of its axes change their way.
        return endForEnd == turnedOver ? surface : surface.opposite();
    }

    /** Whether a line on this surface runs on over the other board. */
    public boolean carries(Surface on) {
        return !on.isEnd() && on.axis() != touches.axis();
    }

    /**
     * The line as it comes out on the other board.
     *
     * @param x where it lies on this one, along the grain
     * @param again whether the line that it was measured from lies on the other board too
     * @return empty where it misses the other board
     */
    Optional<Action.Line> on(Action.Line line, Board one, Board other, double x, boolean again) {
        if (!carries(line.on())) return Optional.empty();
        double fromLevel = level == Surface.END_1 ? x : one.size().length() - x;
        if (fromLevel < 0 || fromLevel > other.size().length()) return Optional.empty();
        Datum from = line.from();
        if (from instanceof Datum.Step && again) return Optional.of(there(line, from, line.at(), line.mate()));
        if (from instanceof Datum.End end && end.end() == level) {
            return Optional.of(there(line, new Datum.End(with), line.at(), line.mate()));
        }
        return Optional.of(there(line, new Datum.End(with), fromLevel, null));
    }

    private Action.Line there(
            Action.Line line,
            Datum from,
            @org.jspecify.annotations.Nullable Double at,
            @org.jspecify.annotations.Nullable String mate) {
        return new Action.Line(line.t(), there, like(line.on()), touched, from, at, mate, line.with());
    }
}
