package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.marktwice.advice.Option;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.Trace;
import org.marktwice.timber.Trueness;

/**
 * Of the surfaces that the drawing and the planing leave, the face side is the better one by the workshop's setting.
 * A better surface counts only where the board can lie with it as drawn without bringing a knot nearer to a cut: a joint
 * without knots comes before a fine face.
 */
final class ChoiceOfSurface implements Rule {
    /** Departures this much apart are as good as each other, and this much apart nearly so; millimetres, a design choice. */
    private static final double AS_TRUE = 0.1;

    private static final double NEARLY_AS_TRUE = 0.3;
    /** The same for the diameter of a knot as large as all the knots of a surface together. */
    private static final double AS_CLEAN = 1;

    private static final double NEARLY_AS_CLEAN = 3;

    @Override
    public String id() {
        return "choice-of-surface";
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
        Optional<Mark> marked = w.faceSide().filter(m -> board.isBroad(m.on()));
        if (marked.isEmpty()) return Found.by(this, w).open("says.open", "board", board.id());
        Surface chosen = marked.get().on();
        return judge(w, chosen).at(marked.get().step());
    }

    private Finding judge(Workpiece w, Surface chosen) {
        Board board = w.board();
        Found found = Found.by(this, w).showing(chosen);
        List<Surface> left = left(w);
        if (left.isEmpty()) return found.sound("says.none-left", "board", board.id(), "on", chosen);
        if (left.contains(chosen) && left.size() == 1) {
            return found.sound("says.only", "board", board.id(), "on", chosen);
        }
        List<Surface> others = left.stream()
                .filter(s -> s != chosen && costsNoClearance(w, chosen, s))
                .toList();
        if (!left.contains(chosen) && !others.isEmpty()) {
            found.showing(others.get(0)).instead("better.other", "other", others.get(0));
            return found.wrong("says.not-left", "board", board.id(), "on", chosen);
        }
        return w.situation().practice().faceSide() == Practice.FaceSide.TRUEST_IN
                ? truest(found, w, chosen, others)
                : cleanest(found, w, chosen, others);
    }

    private static Finding truest(Found found, Workpiece w, Surface chosen, List<Surface> others) {
        Comparator<Surface> truer = Comparator.comparingDouble(s -> departure(w, s));
        Surface best = others.stream().min(truer).orElse(chosen);
        double is = departure(w, chosen);
        double could = Math.min(is, departure(w, best));
        Object[] all = {"board", w.board().id(), "on", chosen, "other", best, "is", is, "could", could};
        found.measured(is, "mm", could + AS_TRUE);
        if (is - could <= AS_TRUE) return found.sound("says.truest", all);
        found.showing(best).instead("better.truer", all);
        return is - could <= NEARLY_AS_TRUE
                ? found.close(0.5, "says.nearly-truest", all)
                : found.wrong("says.less-true", all);
    }

    private static double departure(Workpiece w, Surface surface) {
        return Trueness.departure(w.board(), surface);
    }

    private static Finding cleanest(Found found, Workpiece w, Surface chosen, List<Surface> others) {
        Comparator<Surface> cleaner = Comparator.comparingInt(
                        (Surface s) -> KnotsOn.of(w.board(), s).count())
                .thenComparingDouble(s -> KnotsOn.of(w.board(), s).together());
        Surface best =
                Stream.concat(Stream.of(chosen), others.stream()).min(cleaner).orElse(chosen);
        KnotsOn is = KnotsOn.of(w.board(), chosen);
        KnotsOn could = KnotsOn.of(w.board(), best);
        Object[] all = {
            "board", w.board().id(),
            "on", chosen,
            "other", best,
            "n", is.count(),
            "together", is.together(),
            "otherN", could.count(),
            "otherTogether", could.together()
        };
        if (is.count() == could.count()) found.measured(is.together(), "mm", could.together() + AS_CLEAN);
        else found.measured(is.count(), "count", could.count());
        found.showingKnots(w.board().traces(chosen).stream().map(Trace::knot).toList());
        if (is.count() < could.count() || is.isWithin(0, AS_CLEAN, could)) {
            return is.count() == 0 ? found.sound("says.clean", all) : found.sound("says.cleanest", all);
        }
        found.showing(best);
        if (could.count() == 0) found.instead("better.clean", all);
        else found.instead("better.cleaner", all);
        boolean near = is.isWithin(0, NEARLY_AS_CLEAN, could) || is.isWithin(1, AS_CLEAN, could);
        if (near) return found.close(0.5, "says.nearly-cleanest", all);
        return is.count() == could.count() ? found.wrong("says.larger", all) : found.wrong("says.less-clean", all);
    }

    /** The planed broad surfaces that can look as drawn while a planed edge does too. */
    private static List<Surface> left(Workpiece w) {
        Board board = w.board();
        return Stream.of(Surface.values())
                .filter(s -> board.isBroad(s) && board.isDressed(s))
                .filter(s -> w.part() == null || !turns(w, w.part(), s).isEmpty())
                .toList();
    }

    private static List<Turn> turns(Workpiece w, Part part, Surface side) {
        return w.situation().turns(w.board(), part).stream()
                .filter(t -> part.faceSide().contains(t.of(side)))
                .toList();
    }

    private static boolean costsNoClearance(Workpiece w, Surface chosen, Surface other) {
        Part part = w.part();
        Situation situation = w.situation();
        if (part == null || !situation.asks(Stage.TURNS) || !situation.fits(w.board(), part)) return true;
        Optional<Option> now = best(w, part, chosen);
        Optional<Option> then = best(w, part, other);
        return now.isEmpty() || then.isPresent() && !now.get().betterThan(then.get());
    }

    private static Optional<Option> best(Workpiece w, Part part, Surface side) {
        return turns(w, part, side).stream()
                .map(t -> w.situation().best(w.board(), part, t))
                .reduce((a, b) -> b.betterThan(a) ? b : a);
    }
}
