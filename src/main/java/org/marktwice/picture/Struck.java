package org.marktwice.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Marker;
import org.marktwice.fit.TrueLine;
import org.marktwice.fit.TrueLines;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** Something struck on a board, at the place where it really lies. */
public sealed interface Struck {
    /** How wide a chisel's cut is drawn, millimetres. */
    double CHISELLED = 0.5;

    /** The action that made it. */
    int step();

    Surface on();

    /** A straight line across or along a surface. */
    record Line(int step, SurfacePoint from, SurfacePoint to, Marker with) implements Struck {
        @Override
        public Surface on() {
            return from.surface();
        }
    }

    /** Waste shaded on a surface, within an outline of at least three points. */
    record Waste(int step, List<SurfacePoint> outline) implements Struck {
        public Waste {
            outline = List.copyOf(outline);
        }

        @Override
        public Surface on() {
            return outline.get(0).surface();
        }
    }

    /** Where a line was cut. @param wide the kerf, millimetres */
    record Kerf(int step, SurfacePoint from, SurfacePoint to, double wide) implements Struck {
        @Override
        public Surface on() {
            return from.surface();
        }
    }

    /** All that is on a board, oldest first. */
    static List<Struck> on(Bench bench, BoardState state) {
        List<Struck> out = new ArrayList<>();
        TrueLines lines = TrueLines.of(bench, state);
        WasteOutline outlines = new WasteOutline(state.board(), bench.placing(state));
        for (BoardState.Done<? extends Action.OnBoard> done : state.struck()) {
            if (done.action() instanceof Action.Waste waste) {
                Optional<TrueLine> one = lines.at(waste.between());
                Optional<TrueLine> other = lines.at(waste.and());
                if (one.isEmpty() || other.isEmpty()) continue;
                out.add(new Waste(done.step(), outlines.of(waste.joint(), one.get(), other.get())));
            } else if (done.action() instanceof Action.Cut cut) {
                lines.at(cut.step()).ifPresent(l -> out.add(kerf(done.step(), cut, l, state.board(), outlines)));
            } else {
                lines.at(done.step()).ifPresent(l -> out.add(line(l, state.board(), marker(done.action()))));
            }
        }
        return List.copyOf(out);
    }

    private static Kerf kerf(int step, Action.Cut cut, TrueLine line, Board board, WasteOutline outlines) {
        double wide = Math.max(CHISELLED, cut.with().kerf());
        int towards = outlines.wasteSide(line);
        double off = switch (cut.side()) {
            case WASTE -> towards * wide / 2;
            case LINE -> 0;
            case KEPT -> -towards * wide / 2;
        };
        TrueLine beside = new TrueLine(
                step, line.on(), line.axis(), line.low() + off, line.high() + off, line.meant(), line.reference());
        Line lies = line(beside, board, Marker.KNIFE);
        return new Kerf(step, lies.from(), lies.to(), wide);
    }

    /** The spur of a gauge scratches a line in, as a knife does. */
    private static Marker marker(Action action) {
        if (action instanceof Action.Line line) return line.with();
        return action instanceof Action.Bevel bevel ? bevel.with() : Marker.KNIFE;
    }

    /** A line as it runs from one side of its surface to the other. */
    static Line line(TrueLine line, Board board, Marker with) {
        Surface on = line.on();
        boolean overU = line.axis() == on.uAxis();
        SurfacePoint from = overU ? new SurfacePoint(on, line.low(), 0) : new SurfacePoint(on, 0, line.low());
        SurfacePoint to = overU
                ? new SurfacePoint(on, line.high(), board.vExtent(on))
                : new SurfacePoint(on, board.uExtent(on), line.high());
        return new Line(line.step(), from, to, with);
    }
}
