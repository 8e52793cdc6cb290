package org.marktwice.view.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Turn;
import org.marktwice.picture.Lie;
import org.marktwice.timber.Board;
import org.marktwice.timber.GradedKnot;
import org.marktwice.timber.JoineryClass;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Size;
import org.marktwice.timber.Species;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.timber.Trace;

/** The trade's words for what is seen and pointed at on the bench. */
public final class Words {
    private Words() {}

    /** {@code knot 2}: knots are counted in the order the board has them. */
    static String knot(Board board, String knotId) {
        List<Knot> knots = board.knots();
        for (int i = 0; i < knots.size(); i++) {
            if (knots.get(i).id().equals(knotId)) return "knot " + (i + 1);
        }
        return "knot";
    }

    /** The surface's arrises and ends in words, at u = 0, u = its extent, v = 0 and v = its extent. */
    static String[] arrisNames(Surface surface) {
        return new String[] {
            arris(surface, Surface.on(surface.uAxis(), -1)),
            arris(surface, Surface.on(surface.uAxis(), +1)),
            arris(surface, Surface.on(surface.vAxis(), -1)),
            arris(surface, Surface.on(surface.vAxis(), +1))
        };
    }

    static String arris(Surface one, Surface other) {
        if (other.isEnd()) return other.spoken();
        if (one.isEnd()) return one.spoken() + " at " + other.spoken();
        return "arris of " + one.spoken() + " and " + other.spoken();
    }

    /** {@code 312 × 120 × 18}. */
    public static String size(Size size) {
        return Reading.number(size.length()) + " × " + Reading.number(size.width()) + " × "
                + Reading.number(size.thickness());
    }

    /** {@code face 1, planed, bark side}. */
    static String surface(BoardState state, Surface surface) {
        Board board = state.board();
        List<String> words = new ArrayList<>();
        words.add(surface.spoken());
        for (Mark mark : state.marks()) {
            if (mark.on() == surface) words.add("marked as " + mark.kind().spoken());
        }
        if (surface.isEnd()) {
            words.add(board.isDressed(surface) ? "squared" : "as sawn");
        } else {
            words.add(board.isDressed(surface) ? "planed" : "as sawn");
        }
        if (surface.isFace()) {
            Seasoned.barkSide(board).ifPresent(bark -> words.add(bark == surface ? "bark side" : "heart side"));
        }
        if (board.isSheet()) words.add("sheet stuff");
        return String.join(", ", words);
    }

    /** {@code knot 1, face 1: 16 mm along the grain, 15.5 mm across, live round face knot}. */
    static String trace(Board board, Trace trace) {
        String along = trace.surface().isEnd() ? " one way, " : " along the grain, ";
        return knot(board, trace.knot()) + ", " + trace.surface().spoken() + ": "
                + Reading.mm(Reading.toHalf(trace.length())) + along + Reading.mm(Reading.toHalf(trace.width()))
                + " across, " + GradedKnot.of(board, trace).spoken();
    }

    /** The board's long surfaces by their joinery class: {@code Scots pine · EN 942: face 1 J20, edge 1 J10 …}. */
    static String grades(Board board) {
        String made = board.species().map(Species::name).orElse("Sheet stuff");
        if (board.isSheet()) return made;
        return made + " · EN 942: "
                + Surface.LONG.stream()
                        .map(s -> s.spoken() + " " + grade(board, s))
                        .collect(Collectors.joining(", "));
    }

    private static String grade(Board board, Surface surface) {
        double largest = JoineryClass.largestKnot(board, surface);
        if (largest == 0) return "no knot";
        return JoineryClass.of(board, surface).map(Enum::name).orElse("below J50") + " (knot "
                + Reading.mm(Reading.toHalf(largest)) + ")";
    }

    /** What lies at a point of a surface, as the trade would name it. */
    static String pointed(BoardState state, Aim aim) {
        SurfacePoint at = aim.at();
        Optional<Trace> trace = traceAt(state.board(), at);
        if (trace.isPresent()) return trace(state.board(), trace.get());
        String snap = aim.snap().to() == Snap.To.ARRIS ? aim.snap().what() + " · " : "";
        return snap + surface(state, at.surface());
    }

    /** The knot whose trace holds the point; the smallest where several do. */
    static Optional<Trace> traceAt(Board board, SurfacePoint at) {
        return board.traces(at.surface()).stream()
                .filter(t -> holds(t.outline(), at))
                .min((a, b) -> Double.compare(a.area(), b.area()));
    }

    /** Whether a convex counter-clockwise outline holds the point. */
    private static boolean holds(List<SurfacePoint> outline, SurfacePoint at) {
        for (int i = 0; i < outline.size(); i++) {
            SurfacePoint a = outline.get(i);
            SurfacePoint b = outline.get((i + 1) % outline.size());
            double turn = (b.u() - a.u()) * (at.v() - a.v()) - (b.v() - a.v()) * (at.u() - a.u());
            if (turn < 0) return false;
        }
        return outline.size() > 2;
    }

    /** {@code to the left}, {@code to the front}, {@code up}. */
    static String looks(Direction direction) {
        return switch (direction) {
            case TOP -> "up";
            case BOTTOM -> "down";
            default -> "to the " + direction.id();
        };
    }

    /** {@code at the left}, {@code at the bottom}. */
    static String lies(Direction direction) {
        return "at the " + direction.id();
    }

    /** How a board lies on the bench: {@code face 1 up, edge 1 in front, end 1 at the left}. */
    static String lying(BoardState state, Lie lie) {
        return called(state, lie.up()) + " up, " + called(state, lie.near()) + " in front, "
                + lie.left().spoken() + " at the left";
    }

    /**
     * How a board lies in the job: {@code as the right upright: face side to the left, face edge to the front, so end 1 is
     * at the bottom}.
     *
     * @param consequence whether the end that follows is told, which the learner may have to think out
     */
    static String turned(BoardState state, Part part, Turn turn, boolean consequence) {
        Surface side = state.faceSide().map(Mark::on).filter(s -> !s.isEnd()).orElse(Surface.FACE_1);
        Surface edge = state.faceEdge()
                .map(Mark::on)
                .filter(s -> !s.isEnd() && s.adjoins(side))
                .orElse(side.isFace() ? Surface.EDGE_1 : Surface.FACE_1);
        String way = "as the " + lower(part.name()) + ": " + called(state, side) + " " + looks(turn.of(side)) + ", "
                + called(state, edge) + " " + looks(turn.of(edge));
        return consequence ? way + ", so end 1 is " + lies(turn.of(Surface.END_1)) : way;
    }

    /** The surface by its mark where it has one, else by its number. */
    static String called(BoardState state, Surface surface) {
        return state.marks().stream()
                .filter(m -> m.on() == surface)
                .findFirst()
                .map(m -> m.kind().spoken())
                .orElse(surface.spoken());
    }

    static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    static String lower(String words) {
        return words.isEmpty() ? words : Character.toLowerCase(words.charAt(0)) + words.substring(1);
    }
}
