package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.advice.Option;
import org.marktwice.advice.Options;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.rulebook.Finding.Phrase;
import org.marktwice.scenario.Practice.HeartSide;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Box;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Surface;

/**
 * The heart side looks away from the middle of the assembled job, or towards it, as the scenario sets. A part that lies
 * across the middle has neither, and a board both of whose faces look alike at the pith has no heart side: nothing to
 * judge for these, nor where the scenario leaves it open.
 */
final class HeartSideAsSet implements Rule {
    @Override
    public String id() {
        return "heart-side-as-set";
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
        HeartSide set = situation.practice().heartSide();
        if (set == HeartSide.ANY) return List.of();
        List<Finding> findings = new ArrayList<>();
        for (Place place : Place.all(situation)) {
            for (Place.Lying lying : place.lying()) {
                findings.addAll(situation.asItLies(
                        this, lying, () -> judge(situation, lying, set).stream().toList()));
            }
            if (place.isOpen() && canBeJudged(situation, place)) findings.add(place.open(this, "says.open"));
        }
        return findings;
    }

    private static boolean canBeJudged(Situation situation, Place place) {
        Part part = place.part();
        return inward(situation.scenario().drawing(), part, part.thickness().ordinal())
                        .isPresent()
                && place.mightBe().stream()
                        .anyMatch(b -> Seasoned.barkSide(b.board()).isPresent());
    }

    private Optional<Finding> judge(Situation situation, Place.Lying lying, HeartSide set) {
        Placing lies = lying.placing();
        Optional<Surface> heart = Seasoned.barkSide(lies.board()).map(Surface::opposite);
        if (heart.isEmpty()) return Optional.empty();
        Direction looks = lies.turn().of(heart.get());
        return wanted(situation, lies.part(), set, looks.axis())
                .map(wanted -> finding(situation, lying, heart.get(), wanted));
    }

    /** Where the heart side should look on this axis; empty where the part lies across the middle. */
    static Optional<Direction> wanted(Situation situation, Part part, HeartSide set, int axis) {
        return inward(situation.scenario().drawing(), part, axis)
                .map(in -> set == HeartSide.TOWARDS ? in : in.opposite());
    }

    private Finding finding(Situation situation, Place.Lying lying, Surface heart, Direction wanted) {
        boolean away = situation.practice().heartSide() == HeartSide.AWAY;
        Direction looks = lying.placing().turn().of(heart);
        Object[] values = {"board", lying.board(), "heart", heart, "looks", looks, "wanted", wanted};
        Found found = Found.by(this, lying.subject())
                .at(lying.step())
                .showing(heart)
                .instead(() -> instead(situation, lying, heart, wanted));
        return looks == wanted
                ? found.sound(away ? "says.sound-away" : "says.sound-towards", values)
                : found.wrong(away ? "says.wrong-away" : "says.wrong-towards", values);
    }

    /** The best of the turns that the drawing allows and that show the heart side where it should look. */
    private static Phrase instead(Situation situation, Place.Lying lying, Surface heart, Direction wanted) {
        Placing lies = lying.placing();
        return Options.turns(lies.board(), lies.part()).stream()
                .filter(t -> t.of(heart) == wanted)
                .filter(t -> situation.fits(lies.board(), lies.part()))
                .map(t -> situation.best(lies.board(), lies.part(), t))
                .reduce((a, b) -> b.betterThan(a) ? b : a)
                .map(best -> best.clear() ? Remedy.turn(lies, best) : notClear(best))
                .orElseGet(() -> Found.phrase("better.another-board", "board", lying.board()));
    }

    private static Phrase notClear(Option best) {
        return Found.phrase("better.not-clear", Remedy.valuesToKnot(best));
    }

    /** The direction on a job axis from the part to the middle of the job; empty where the part reaches across the middle. */
    private static Optional<Direction> inward(Drawing drawing, Part part, int axis) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Part p : drawing.parts()) {
            low = Math.min(low, p.box().min(axis));
            high = Math.max(high, p.box().max(axis));
        }
        double middle = (low + high) / 2;
        Box box = part.box();
        if (box.max(axis) <= middle) return Optional.of(Direction.on(axis, +1));
        if (box.min(axis) >= middle) return Optional.of(Direction.on(axis, -1));
        return Optional.empty();
    }
}
