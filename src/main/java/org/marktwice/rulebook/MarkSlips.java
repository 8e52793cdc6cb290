package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.rulebook.Slipping.Marked;
import org.marktwice.rulebook.TruenessLimits.Reading;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/** Slips with the face marks of one board. */
final class MarkSlips {
    private MarkSlips() {}

    /** The face edge marked on the other face: the two marks share no arris. */
    static List<Slipped> apart(Slipping s) {
        return s.marked().stream()
                .map(m -> s.made(
                        Slip.MARKS_WITHOUT_SHARED_ARRIS,
                        m.board(),
                        new MarksShareArris(),
                        edgeMark(
                                s,
                                m,
                                e -> new Action.FaceEdge(
                                        e.t(),
                                        e.board(),
                                        m.side().on().opposite(),
                                        m.edge().on()))))
                .toList();
    }

    /** The tail of the one or the point of the other run to the wrong arris. */
    static List<Slipped> astray(Slipping s) {
        List<Slipped> all = new ArrayList<>();
        for (Marked m : s.marked()) {
            Rewriting tail = sideMark(
                    s,
                    m,
                    a -> new Action.FaceSide(
                            a.t(), a.board(), a.on(), a.towards().opposite()));
            Rewriting point = edgeMark(
                    s,
                    m,
                    a -> new Action.FaceEdge(
                            a.t(), a.board(), a.on(), a.towards().opposite()));
            all.add(s.made(Slip.MARK_TO_WRONG_ARRIS, m.board(), new MarksShareArris(), tail));
            all.add(s.made(Slip.MARK_TO_WRONG_ARRIS, m.board(), new MarksShareArris(), point));
        }
        return all;
    }

    private static Rewriting sideMark(Slipping s, Marked m, UnaryOperator<Action.FaceSide> by) {
        return new Rewriting(s.good())
                .changing(a -> a instanceof Action.FaceSide f && f.board().equals(m.board()) ? by.apply(f) : a);
    }

    private static Rewriting edgeMark(Slipping s, Marked m, UnaryOperator<Action.FaceEdge> by) {
        return new Rewriting(s.good())
                .changing(a -> a instanceof Action.FaceEdge f && f.board().equals(m.board()) ? by.apply(f) : a);
    }

    /** Marked without being proved, or on a surface that nobody planed, or on one that is not true. */
    static List<Slipped> unsound(Slipping s) {
        List<Slipped> all = new ArrayList<>();
        for (Marked m : s.marked()) {
            Rewriting unproved = new Rewriting(s.good())
                    .without(a -> a instanceof Action.Test t && t.board().equals(m.board()));
            all.add(s.made(Slip.UNSOUND_SURFACE_MARKED, m.board(), new ProvedBeforeMarked(), unproved));
            for (Surface marked : List.of(m.side().on(), m.edge().on())) {
                Surface other = marked.opposite();
                if (m.piece().board().isDressed(other) && isTrue(s, m, marked)) continue;
                Rewriting there = s.moved(m, on -> on == marked ? other : on);
                all.add(s.made(Slip.UNSOUND_SURFACE_MARKED, m.board(), new MarkedSurfaceTrue(), there));
            }
        }
        return all;
    }

    /** Whether the surface opposite to a marked one would do as well as far as it is true. */
    private static boolean isTrue(Slipping s, Marked m, Surface marked) {
        Board board = m.piece().board();
        Surface side = m.side().on() == marked ? marked.opposite() : m.side().on();
        Surface edge = m.edge().on() == marked ? marked.opposite() : m.edge().on();
        TruenessLimits limits = TruenessLimits.DEFAULT;
        return Stream.concat(
                        limits.ofSide(board, side, s.situation().practice().cupRatio()).stream(),
                        limits.ofEdge(board, edge, side).stream())
                .allMatch(Reading::isTrue);
    }

    /** A third surface marked as well. */
    static List<Slipped> third(Slipping s) {
        List<Slipped> all = new ArrayList<>();
        for (Marked m : s.marked()) {
            Surface side = m.side().on();
            Surface edge = m.edge().on();
            List<BoardWork.Step> thirds = List.of(
                    t -> new Action.FaceEdge(t, m.board(), edge.opposite(), side),
                    t -> new Action.FaceSide(t, m.board(), side.opposite(), edge));
            for (BoardWork.Step more : thirds) {
                Rewriting with = new Rewriting(s.good())
                        .after(a -> isMark(a) && Rewriting.on(m.board()).test(a), List.of(more));
                all.add(s.made(Slip.THIRD_SURFACE_MARKED, m.board(), new OnePairOfMarks(), with));
            }
        }
        return all;
    }

    private static boolean isMark(Action a) {
        return a instanceof Action.FaceSide || a instanceof Action.FaceEdge;
    }

    /** Marks on what takes none. */
    static List<Slipped> unwanted(Slipping s) {
        if (!s.situation().asks(Stage.FACES)) return List.of();
        return s.situation().bench().boards().stream()
                .filter(b -> takesNone(s, b))
                .map(b -> {
                    String board = b.board().id();
                    List<BoardWork.Step> marks = List.of(
                            t -> new Action.FaceSide(t, board, Surface.FACE_1, Surface.EDGE_1),
                            t -> new Action.FaceEdge(t, board, Surface.EDGE_1, Surface.FACE_1));
                    Rewriting with = new Rewriting(s.good()).after(Rewriting.on(board), marks);
                    return s.made(Slip.MARKS_ON_SHEET_OR_SHAPED, board, new OnePairOfMarks(), with);
                })
                .toList();
    }

    private static boolean takesNone(Slipping s, BoardState state) {
        boolean shaped =
                s.situation().partOf(state).filter(p -> !p.takesMarks()).isPresent();
        return state.setAside().isEmpty() && (state.board().isSheet() || shaped);
    }
}
