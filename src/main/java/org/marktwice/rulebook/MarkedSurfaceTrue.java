package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.marktwice.bench.Mark;
import org.marktwice.rulebook.TruenessLimits.Reading;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/**
 * The marked surfaces are planed, and true within limits: the face side flat along and across and out of wind, the face
 * edge straight and square to it. The limits for cup are the workshop's; the others are {@link TruenessLimits}.
 */
final class MarkedSurfaceTrue implements Rule {

    @Override
    public String id() {
        return "marked-surface-true";
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
        Board board = w.board();
        Found found = Found.by(this, w).at(w.markedAt());
        for (Mark mark : marks(w)) {
            if (board.isDressed(mark.on())) continue;
            found.at(mark.step()).showing(mark.on());
            return instead(found, w, mark).wrong("says.as-sawn", "on", mark.on(), "board", board.id());
        }
        Optional<Reading> worst = readings(w).stream().max(Comparator.comparingDouble(Reading::share));
        worst.ifPresent(r -> found.measured(r.value(), r.unit(), r.limit()).showing(r.on()));
        if (worst.isPresent() && !worst.get().isNear()) {
            return outOfTrue(found, w, worst.get()).wrong(says(worst.get()), values(worst.get(), board));
        }
        if (w.faceSide().isEmpty() || w.faceEdge().isEmpty()) return found.open("says.open", "board", board.id());
        Surface side = w.faceSide().get().on();
        Surface edge = w.faceEdge().get().on();
        found.showing(side, edge);
        return worst.filter(r -> !r.isTrue())
                .map(r -> outOfTrue(found, w, r).close(0.5, says(r), values(r, board)))
                .orElseGet(() -> found.sound(
                        "says.sound", "marked", Stream.of(side, edge).distinct().toList(), "board", board.id()));
    }

    private static List<Mark> marks(Workpiece w) {
        return Stream.of(w.faceSide(), w.faceEdge()).flatMap(Optional::stream).toList();
    }

    private static List<Reading> readings(Workpiece w) {
        List<Reading> readings = new ArrayList<>();
        w.faceSide().ifPresent(side -> {
            readings.addAll(side(w, side.on()));
            w.faceEdge().ifPresent(edge -> readings.addAll(w.situation().readings(w.board(), edge.on(), side.on())));
        });
        return readings;
    }

    private static List<Reading> side(Workpiece w, Surface side) {
        return w.situation().readings(w.board(), side);
    }

    private static String says(Reading r) {
        return switch (r.what()) {
            case "along" -> "says.along";
            case "across" -> "says.across";
            case "wind" -> "says.wind";
            default -> "says.square";
        };
    }

    private static Object[] values(Reading r, Board board) {
        return new Object[] {"on", r.on(), "value", r.value(), "limit", r.limit(), "poor", r.poor(), "board", board.id()
        };
    }

    private static Found outOfTrue(Found found, Workpiece w, Reading worst) {
        Mark mark =
                marks(w).stream().filter(m -> m.on() == worst.on()).findFirst().orElseThrow();
        return instead(found, w, mark);
    }

    /** Another surface that is planed and true, where this board has one. */
    private static Found instead(Found found, Workpiece w, Mark mark) {
        Board board = w.board();
        boolean isSide = mark.kind() == Mark.Kind.FACE_SIDE;
        List<Surface> others = Stream.of(Surface.values())
                .filter(s -> s != mark.on() && board.isDressed(s))
                .filter(s -> isSide ? board.isBroad(s) : board.isNarrow(s))
                .filter(s -> (isSide ? side(w, s) : edge(w, s)).stream().allMatch(Reading::isTrue))
                .toList();
        return others.isEmpty()
                ? found.instead("better.plane", "on", mark.on(), "board", board.id())
                : found.instead("better.other", "others", others.get(0), "board", board.id());
    }

    private static List<Reading> edge(Workpiece w, Surface edge) {
        return w.faceSide()
                .map(side -> w.situation().readings(w.board(), edge, side.on()))
                .orElse(List.of());
    }
}
