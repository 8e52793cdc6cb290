package org.marktwice.bench;

import java.util.Optional;
import java.util.OptionalDouble;
import org.marktwice.timber.Board;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.Trueness;

/**
 * What a tool reads where it was laid, as finely as one reads it at the bench: gaps to a tenth of a millimetre, as with
 * feelers; the rule to half a millimetre; the pith, from arcs carried on by eye, to five. (Common practice, no source.)
 */
public final class ToolReading {
    /** Light narrower than this isn't seen, millimetres. */
    public static final double NO_LIGHT = 0.05;

    /** The blade of a usual try-square, millimetres; on a narrower surface only that much of it counts. */
    public static final double BLADE = 150;

    private static final double FEELER = 0.1;
    private static final double RULE = 0.5;
    private static final double BY_EYE = 5;

    private ToolReading() {}

    /** What the rule reads between two points of one surface, millimetres. */
    public static double of(SurfacePoint from, SurfacePoint to) {
        return nearest(RULE, Math.hypot(to.u() - from.u(), to.v() - from.v()));
    }

    /**
     * In millimetres. Straight-edge: + hollow, − rounded. Winding sticks: the rise of the far corner. Try-square: the gap
     * over {@link #blade}, + at its heel, where the angle in the wood is above 90°, − at its toe. End grain: how far outside
     * the end the pith lies, 0 for a boxed heart. Empty where nothing can be read: a straight-edge across a boxed heart.
     */
    public static OptionalDouble of(BoardState state, Action.Test test) {
        Board board = state.board();
        return switch (test.with()) {
            case STRAIGHT_EDGE -> {
                Double at = test.at();
                yield at == null
                        ? OptionalDouble.of(feeler(Trueness.along(board, test.on())))
                        : feeler(Trueness.across(board, test.on(), at));
            }
            case WINDING_STICKS -> OptionalDouble.of(feeler(Trueness.wind(board, test.on())));
            case TRY_SQUARE -> {
                Surface stock = stock(state, test);
                double angle = Math.toRadians(Trueness.square(board, stock, test.on()));
                yield OptionalDouble.of(feeler(Math.tan(angle) * blade(board, stock, test.on())));
            }
            case END_GRAIN ->
                board.pith()
                        .map(pith -> OptionalDouble.of(nearest(BY_EYE, outside(board, pith))))
                        .orElse(OptionalDouble.empty());
        };
    }

    /** The test with what it reads on this board noted. */
    public static Action.Test noted(BoardState state, Action.Test test) {
        OptionalDouble reads = of(state, test);
        return new Action.Test(
                test.t(),
                test.board(),
                test.with(),
                test.on(),
                test.at(),
                test.from(),
                reads.isPresent() ? (Double) reads.getAsDouble() : null);
    }

    /** A length as the eye judges it. */
    public static double byEye(double mm) {
        return nearest(BY_EYE, mm);
    }

    private static OptionalDouble feeler(OptionalDouble mm) {
        return mm.isPresent() ? OptionalDouble.of(feeler(mm.getAsDouble())) : mm;
    }

    private static double feeler(double mm) {
        return Math.abs(mm) < NO_LIGHT ? 0 : nearest(FEELER, mm);
    }

    /** To the nearest, without a negative nought. */
    private static double nearest(double step, double mm) {
        double steps = Math.signum(mm) * Math.floor(Math.abs(mm) / step + 0.5);
        return step < 1 ? steps / Math.rint(1 / step) + 0.0 : steps * step + 0.0;
    }

    private static double outside(Board board, Pith pith) {
        double y = Math.max(0, Math.max(-pith.y(), pith.y() - board.size().width()));
        double z = Math.max(0, Math.max(-pith.z(), pith.z() - board.size().thickness()));
        return Math.hypot(y, z);
    }

    /** How much of the blade lies on the surface it tries, from the arris to its tip or to the far arris, millimetres. */
    public static double blade(Board board, Surface stock, Surface on) {
        return Math.min(BLADE, board.size().along(stock.axis()));
    }

    /** The surface that the stock bears on: the one said, else the face side where it adjoins, else face-1, or edge-1 for a face. */
    public static Surface stock(BoardState state, Action.Test test) {
        Surface said = test.from();
        return said != null ? said : usualStock(state, test.on());
    }

    public static Surface usualStock(BoardState state, Surface on) {
        Optional<Surface> faceSide = state.faceSide().map(Mark::on).filter(on::adjoins);
        return faceSide.orElse(on.isFace() ? Surface.EDGE_1 : Surface.FACE_1);
    }
}
