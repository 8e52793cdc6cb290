package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.marktwice.bench.Action;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Pair;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Turn;
import org.marktwice.rulebook.Slipping.Marked;
import org.marktwice.timber.Surface;

/** Slips by which a part comes out as its own mirror image, or is not marked as the drawing wants it. */
final class HandSlips {
    private HandSlips() {}

    /** One of a pair marked like its mate, or turned end for end like it. */
    static List<Slipped> twoLefts(Slipping s) {
        List<Slipped> all = new ArrayList<>();
        for (Pair pair : s.situation().scenario().drawing().pairs()) {
            if (!HandedPair.isHanded(pair)) continue;
            Optional<Marked> one = lying(s, pair.one());
            Optional<Marked> other = lying(s, pair.other());
            if (one.isEmpty() || other.isEmpty()) continue;
            all.addAll(twoLefts(s, one.get(), other.get()));
            all.addAll(twoLefts(s, other.get(), one.get()));
        }
        return all;
    }

    private static List<Slipped> twoLefts(Slipping s, Marked m, Marked mate) {
        if (drawnEitherWay(m)) return List.of();
        return Stream.of(markedInside(s, m), endForEnd(s, m))
                .map(r -> s.made(Slip.TWO_LEFTS, m.board(), new HandedPair(), r, mate.board()))
                .toList();
    }

    private static Optional<Marked> lying(Slipping s, Part part) {
        return s.lying().stream().filter(m -> part.equals(m.piece().part())).findFirst();
    }

    /** Whether the drawing lets the face side look the opposite way as well. */
    private static boolean drawnEitherWay(Marked m) {
        Direction looks = m.placing().turn().of(m.side().on());
        return m.placing().part().faceSide().contains(looks.opposite());
    }

    private static Rewriting markedInside(Slipping s, Marked m) {
        return s.moved(m, otherFace(m));
    }

    private static UnaryOperator<Surface> otherFace(Marked m) {
        return on -> on == m.side().on() ? on.opposite() : on;
    }

    /** Turned about the axis of its face edge: the face side then looks the other way, the face edge as before. */
    private static Rewriting endForEnd(Slipping s, Marked m) {
        Turn now = m.placing().turn();
        Turn other = Turn.facing(
                        m.side().on(),
                        now.of(m.side().on()).opposite(),
                        m.edge().on(),
                        now.of(m.edge().on()))
                .orElseThrow();
        return turned(s, m, other.named());
    }

    private static Rewriting turned(Slipping s, Marked m, Map<Surface, Direction> facing) {
        return new Rewriting(s.good())
                .changing(a -> a instanceof Action.Turning t && t.board().equals(m.board())
                        ? new Action.Turning(t.t(), t.board(), facing, t.trim())
                        : a);
    }

    /** The face side marked on the face that looks away from where the drawing wants it; of a pair, on both boards. */
    static List<Slipped> notAsDrawn(Slipping s) {
        List<Slipped> all = new ArrayList<>();
        for (Marked m : s.lying()) {
            if (drawnEitherWay(m)) continue;
            Optional<Marked> mate = mate(s, m);
            Rewriting moved = markedInside(s, m);
            mate.filter(x -> !drawnEitherWay(x))
                    .ifPresent(x -> moved.changing(a -> Slipping.moved(a, x, otherFace(x))));
            String[] others = mate.stream().map(Marked::board).toArray(String[]::new);
            all.add(s.made(Slip.FACE_SIDES_NOT_AS_DRAWN, m.board(), new MarksAsDrawn(), moved, others));
        }
        return all;
    }

    private static Optional<Marked> mate(Slipping s, Marked m) {
        Part part = m.placing().part();
        return s.situation().scenario().drawing().pairs().stream()
                .filter(p -> p.one().equals(part) || p.other().equals(part))
                .flatMap(p -> lying(s, p.one().equals(part) ? p.other() : p.one()).stream())
                .findFirst();
    }
}
