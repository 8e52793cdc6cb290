package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.drawing.Cut;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Surface;

/**
 * Every knot keeps its margin from every cut of the part in which its board lies: kept is sound, from half the margin
 * close, less wrong. One finding a joint of a board, about the knot that has the least of its own margin left there, since
 * a big knot at 12 mm may be worse than a small one at 8.
 */
final class KnotClearOfJoint implements Rule {
    @Override
    public String id() {
        return "knot-clear-of-joint";
    }

    @Override
    public Stage stage() {
        return Stage.TURNS;
    }

    @Override
    public double worth() {
        return 3;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        List<Finding> findings = new ArrayList<>();
        for (Place place : Place.all(situation)) {
            List<Cut> cuts = situation.scenario().drawing().cuts(place.part());
            if (cuts.isEmpty()) continue;
            for (Place.Lying lying : place.lying()) {
                findings.addAll(situation.asItLies(this, lying, () -> judge(situation, lying, cuts)));
            }
            if (place.isOpen() && place.hasKnotsNearCuts(situation)) {
                findings.add(place.open(this, "says.open"));
            }
        }
        return findings;
    }

    private List<Finding> judge(Situation situation, Place.Lying lying, List<Cut> cuts) {
        return cuts.stream()
                .flatMap(cut -> judge(situation, lying, cut.joint()).stream())
                .toList();
    }

    private Optional<Finding> judge(Situation situation, Place.Lying lying, String joint) {
        return situation.near(lying.placing()).stream()
                .filter(n -> n.cut().joint().equals(joint))
                .min(Nearness.MOST_PRESSING)
                .map(n -> finding(situation, lying, n));
    }

    private Finding finding(Situation situation, Place.Lying lying, Nearness near) {
        Keeps keeps = Keeps.of(near.clearance(), near.margin());
        Object[] values = {
            "board", lying.board(),
            "joint", near.cut().joint(),
            "knot", near.knot().id(),
            "clearance", near.clearance(),
            "margin", near.margin()
        };
        Found found = Found.by(this, lying.subject(near.cut().joint()))
                .at(lying.step())
                .measured(near.clearance(), "mm", near.margin())
                .showing(Shows.knotAndCut(lying.placing(), near))
                .instead(() -> Remedy.of(situation, lying.placing()));
        return switch (keeps.verdict()) {
            case SOUND -> found.sound("says.sound", values);
            case CLOSE -> found.close(keeps.credit(), "says.close", values);
            default -> found.wrong(wrong(near, goesThrough(lying, near.knot().id())), values);
        };
    }

    private static String wrong(Nearness near, boolean through) {
        if (near.clearance() < Shows.NOTHING) return through ? "says.wrong-in-through" : "says.wrong-in";
        return through ? "says.wrong-through" : "says.wrong";
    }

    /** Whether the knot comes out on two opposite surfaces, so that turning the board over can't hide it. */
    private static boolean goesThrough(Place.Lying lying, String knot) {
        List<Surface> on = Shows.surfaces(lying.state().board(), knot);
        return on.stream().anyMatch(s -> on.contains(s.opposite()));
    }
}
