package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.bench.Mark;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Surface;

/** The face side and the face edge lie on adjoining surfaces, and both point at the arris that these share. */
final class MarksShareArris implements Rule {
    @Override
    public String id() {
        return "marks-share-arris";
    }

    @Override
    public Stage stage() {
        return Stage.FACES;
    }

    @Override
    public double worth() {
        return 1;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        List<Finding> findings = new ArrayList<>();
        Workpiece.toBeMarked(situation).forEach(w -> findings.add(w.asMarked(this, this::judge)));
        Workpiece.missingMarked(situation).forEach(p -> findings.add(Found.missing(this, p, "says.no-board")));
        return findings;
    }

    private Finding judge(Workpiece w) {
        String board = w.board().id();
        Found found = Found.by(this, w).at(w.markedAt());
        if (w.faceSide().isEmpty() || w.faceEdge().isEmpty()) return found.open("says.open", "board", board);
        Mark side = w.faceSide().get();
        Mark edge = w.faceEdge().get();
        found.showing(side.on(), edge.on()).showing(w.placeOf(side), w.placeOf(edge));
        if (!side.on().adjoins(edge.on())) return apart(found, w, side, edge);
        boolean tail = side.towards() == edge.on();
        boolean point = edge.towards() == side.on();
        Object[] all = {
            "board", board, "side", side.on(), "edge", edge.on(), "tail", side.towards(), "point", edge.towards()
        };
        if (tail && point) return found.sound("says.sound", all);
        found.instead("better.point", all);
        if (tail) return found.wrong("says.point", all);
        return point ? found.wrong("says.tail", all) : found.wrong("says.both", all);
    }

    private static Finding apart(Found found, Workpiece w, Mark side, Mark edge) {
        List<Surface> adjoining = adjoining(w, side.on());
        found.instead("better.apart", "side", side.on(), "edges", adjoining);
        String board = w.board().id();
        return side.on() == edge.on()
                ? found.wrong("says.same", "board", board, "on", side.on())
                : found.wrong("says.opposite", "board", board, "side", side.on(), "edge", edge.on());
    }

    /** The surfaces where a face edge would share an arris with this face side; the planed ones where there are any. */
    private static List<Surface> adjoining(Workpiece w, Surface side) {
        List<Surface> all = List.of(Surface.values()).stream()
                .filter(s -> !s.isEnd() && s.adjoins(side))
                .toList();
        List<Surface> planed = all.stream().filter(w.board()::isDressed).toList();
        return planed.isEmpty() ? all : planed;
    }
}
