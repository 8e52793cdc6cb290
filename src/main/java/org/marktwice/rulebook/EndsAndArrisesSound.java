package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Placing;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Arris;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Knot;
import org.marktwice.timber.KnotBody;
import org.marktwice.timber.Surface;

/**
 * No dead knot, which may fall out, lies within its margin of a finished end, or across the arris that the face side and
 * the face edge share, on which every tool will bear. Only the dead part of a knot counts, and only where it is not
 * trimmed off whole. One finding a board, about the worst of its dead knots; a board without any has none.
 */
final class EndsAndArrisesSound implements Rule {
    @Override
    public String id() {
        return "ends-and-arrises-sound";
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
                Optional<Arris> marked = markedArris(lying.state());
                findings.addAll(situation.asItLies(
                        this,
                        lying,
                        marked.map(a -> List.of(a.one(), a.other())),
                        () -> judge(situation, lying, marked).stream().toList()));
            }
            if (place.mightBe().stream().anyMatch(b -> !dead(b.board()).isEmpty())) {
                findings.add(place.open(this, "says.open"));
            }
        }
        return findings;
    }

    /** The dead parts of a board's knots. */
    private static List<KnotBody> dead(Board board) {
        return board.bodies().stream()
                .map(KnotBody::deadPart)
                .filter(b -> !b.isEmpty())
                .toList();
    }

    private Optional<Finding> judge(Situation situation, Place.Lying lying, Optional<Arris> marked) {
        Box finished = lying.placing().partInBoard();
        List<KnotBody> inPart = dead(lying.state().board()).stream()
                .filter(b -> b.clearance(finished) <= Keeps.TOLERANCE)
                .toList();
        if (inPart.isEmpty()) return Optional.empty();
        return acrossArris(lying, marked, inPart).or(() -> nearestEnd(situation, lying, inPart));
    }

    private Optional<Finding> acrossArris(Place.Lying lying, Optional<Arris> marked, List<KnotBody> dead) {
        if (marked.isEmpty()) return Optional.empty();
        Box line = line(lying.placing(), marked.get());
        return dead.stream()
                .filter(b -> b.clearance(line) <= Keeps.TOLERANCE)
                .findFirst()
                .map(b -> Found.by(this, lying.subject())
                        .at(lying.step())
                        .measured(0, "mm", 0)
                        .showing(Shows.knotAndPlace(
                                lying.state().board(), b.knot().id(), line))
                        .instead("better.arris", "board", lying.board())
                        .wrong(
                                "says.wrong-arris",
                                "board",
                                lying.board(),
                                "knot",
                                b.knot().id(),
                                "one",
                                marked.get().one(),
                                "other",
                                marked.get().other()));
    }

    /** The arris that the two marks share; empty until there is one of each, on adjoining surfaces. */
    private static Optional<Arris> markedArris(BoardState state) {
        Optional<Surface> side = state.faceSide().map(Mark::on);
        Optional<Surface> edge = state.faceEdge().map(Mark::on);
        if (side.isEmpty() || edge.isEmpty() || !side.get().adjoins(edge.get())) return Optional.empty();
        return Optional.of(new Arris(side.get(), edge.get()));
    }

    /** The arris of the finished part, as a box without width. */
    private static Box line(Placing lies, Arris arris) {
        Box line = lies.partInBoard();
        for (Surface s : List.of(arris.one(), arris.other())) {
            double at = s.sign() > 0 ? lies.board().size().along(s.axis()) : 0;
            line = line.with(s.axis(), at, at);
        }
        return line;
    }

    private record AtEnd(Knot knot, Surface end, Box plane, double clearance, double margin) {
        double share() {
            return margin > 0 ? clearance / margin : Double.MAX_VALUE;
        }
    }

    private Optional<Finding> nearestEnd(Situation situation, Place.Lying lying, List<KnotBody> dead) {
        List<AtEnd> all = new ArrayList<>();
        for (KnotBody body : dead) {
            double margin = situation.practice().knotMargin().of(body.knot());
            for (Surface end : List.of(Surface.END_1, Surface.END_2)) {
                Box plane = plane(lying.placing(), end);
                all.add(new AtEnd(body.knot(), end, plane, body.clearance(plane), margin));
            }
        }
        return all.stream().min(Comparator.comparingDouble(AtEnd::share)).map(at -> finding(lying, at));
    }

    /** The finished end, as a box without thickness. */
    private static Box plane(Placing lies, Surface end) {
        Box part = lies.partInBoard();
        double at = end.sign() > 0 ? part.max(0) : part.min(0);
        return lies.board().size().box().with(0, at, at);
    }

    private Finding finding(Place.Lying lying, AtEnd at) {
        Keeps keeps = Keeps.of(at.clearance(), at.margin());
        Object[] values = {
            "board", lying.board(),
            "knot", at.knot().id(),
            "end", at.end(),
            "clearance", at.clearance(),
            "margin", at.margin()
        };
        Found found = Found.by(this, lying.subject())
                .at(lying.step())
                .measured(at.clearance(), "mm", at.margin())
                .showing(Shows.knotAndPlace(lying.state().board(), at.knot().id(), at.plane()));
        double needed = at.margin() - at.clearance();
        if (lying.placing().off(at.end()) >= needed) {
            found.instead("better.slide", "board", lying.board(), "end", at.end(), "needed", needed);
        } else {
            found.instead(
                    "better.end", "board", lying.board(), "knot", at.knot().id());
        }
        return switch (keeps.verdict()) {
            case SOUND -> found.sound("says.sound", values);
            case CLOSE -> found.close(keeps.credit(), "says.close", values);
            default -> found.wrong(at.clearance() < Shows.NOTHING ? "says.wrong-at" : "says.wrong", values);
        };
    }
}
