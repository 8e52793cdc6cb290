package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.rulebook.Finding.Phrase;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.scenario.Stage;

/**
 * The whole placing against the model answer, in its order: most parts supplied, most clear, greatest least clearance,
 * greatest sum. As good is sound; as many supplied and clear but nearer to the knots is close; fewer is wrong. One finding,
 * open while a part waits for a board that may still be laid in it.
 *
 * <p>A part that even the model answer can't supply clear may be left without: "none clears" is an answer, and the boards
 * laid are then compared with the clear ones of the model answer.
 */
final class BestSet implements Rule {
    /** Clearances that differ by no more are as good as each other, millimetres; a sum may differ by as much for each part. */
    private static final double AS_GOOD = 0.5;

    @Override
    public String id() {
        return "best-set";
    }

    @Override
    public Stage stage() {
        return Stage.TURNS;
    }

    @Override
    public double worth() {
        return 2;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        ModelAnswer model = situation.modelAnswer();
        if (model.supplied() == 0) return List.of();
        List<Place> places = Place.all(situation);
        Optional<Place> waits = places.stream().filter(Place::isOpen).findFirst();
        if (waits.isPresent()) return List.of(open(waits.get(), places));
        List<Laid> chosen = chosen(situation, places);
        return situation.asTheyLie(this, chosen, () -> List.of(finding(chosen, model)));
    }

    private Finding finding(List<Laid> laid, ModelAnswer model) {
        ModelAnswer chosen = new ModelAnswer(laid.stream().map(Laid::judged).toList());
        boolean refusedRightly = chosen.supplied() < model.supplied() && chosen.clear() == chosen.supplied();
        return finding(chosen, refusedRightly ? clearOnly(model) : model);
    }

    private Finding open(Place waits, List<Place> places) {
        long waiting = places.stream().filter(Place::isOpen).count();
        return Found.by(this, Subject.JOB)
                .open(
                        waiting == 1 ? "says.open-one" : "says.open",
                        "part",
                        waits.part().id(),
                        "waiting",
                        (int) waiting);
    }

    /** What the learner laid in the parts, where it fits there. */
    private static List<Laid> chosen(Situation situation, List<Place> places) {
        List<Laid> chosen = new ArrayList<>();
        for (Place place : places) {
            place.lying().stream()
                    .map(Place.Lying::laid)
                    .filter(l -> situation.fits(l.placing().board(), l.placing().part()))
                    .findFirst()
                    .ifPresent(chosen::add);
        }
        return chosen;
    }

    private static ModelAnswer clearOnly(ModelAnswer model) {
        return new ModelAnswer(model.placings().stream().filter(Option::clear).toList());
    }

    /** The first difference in the model answer's order decides. */
    private Finding finding(ModelAnswer chosen, ModelAnswer best) {
        Object[] gains = gains(chosen, best).toArray();
        Found found = Found.by(this, Subject.JOB);
        Optional<Phrase> better = instead(chosen, best);
        better.ifPresent(b -> found.instead(() -> b));
        if (chosen.supplied() < best.supplied()) {
            return found.measured(chosen.supplied(), "count", best.supplied()).wrong("says.wrong-supplied", gains);
        }
        if (chosen.clear() < best.clear()) {
            return found.measured(chosen.clear(), "count", best.clear()).wrong("says.wrong-clear", gains);
        }
        found.measured(chosen.least(), "mm", best.least());
        double credit = Math.min(share(chosen.least(), best.least()), share(chosen.sum(), best.sum()));
        if (chosen.least() < best.least() - AS_GOOD) return found.close(credit, "says.close-least", gains);
        boolean sameLeast = chosen.least() <= best.least() + AS_GOOD;
        if (sameLeast && chosen.sum() < best.sum() - AS_GOOD * best.supplied()) {
            return found.measured(chosen.sum(), "mm", best.sum()).close(credit, "says.close-sum", gains);
        }
        return found.sound("says.sound", gains);
    }

    private static double share(double value, double of) {
        return of > 0 ? Math.min(1, value / of) : 1;
    }

    private static List<Object> gains(ModelAnswer chosen, ModelAnswer best) {
        List<Object> gains = new ArrayList<>(List.of("supplied", chosen.supplied(), "bestSupplied", best.supplied()));
        gains.addAll(List.of("clear", chosen.clear(), "bestClear", best.clear()));
        gains.addAll(List.of("least", chosen.least(), "bestLeast", best.least()));
        gains.addAll(List.of("sum", chosen.sum(), "bestSum", best.sum()));
        return gains;
    }

    /** The boards that should change places, in the fewest words: two swapped, one replaced, one turned, or a new order. */
    private static Optional<Phrase> instead(ModelAnswer chosen, ModelAnswer best) {
        List<Option> moved = best.placings().stream()
                .filter(o -> !sameBoard(chosen.of(o.placing().part()), o))
                .toList();
        List<Object> values = gains(chosen, best);
        if (moved.isEmpty()) return better(chosen, best, values);
        Option first = moved.get(0);
        values.addAll(List.of(Remedy.values(first)));
        Optional<Option> there = chosen.of(first.placing().part());
        there.ifPresent(
                o -> values.addAll(List.of("displaced", o.placing().board().id())));
        if (moved.size() == 2 && swapped(chosen, moved)) {
            return Optional.of(Found.phrase("better.swap", values.toArray()));
        }
        values.addAll(List.of("others", moved.size() - 1));
        if (moved.size() > 1) return Optional.of(Found.phrase("better.rearrange", values.toArray()));
        return Optional.of(Found.phrase(there.isPresent() ? "better.replace" : "better.supply", values.toArray()));
    }

    private static boolean sameBoard(Optional<Option> chosen, Option best) {
        return chosen.filter(c -> c.placing().board().equals(best.placing().board()))
                .isPresent();
    }

    private static boolean swapped(ModelAnswer chosen, List<Option> moved) {
        return sameBoard(chosen.of(moved.get(1).placing().part()), moved.get(0))
                && sameBoard(chosen.of(moved.get(0).placing().part()), moved.get(1));
    }

    /** The same boards in the same parts: the one that gains most by being turned or slid. */
    private static Optional<Phrase> better(ModelAnswer chosen, ModelAnswer best, List<Object> values) {
        return best.placings().stream()
                .max(Comparator.comparingDouble(o -> gain(chosen, o)))
                .map(most -> {
                    values.addAll(List.of(Remedy.values(most)));
                    values.addAll(List.of("gain", gain(chosen, most)));
                    return Found.phrase("better.turn", values.toArray());
                });
    }

    private static double gain(ModelAnswer chosen, Option best) {
        return best.clearance()
                - chosen.of(best.placing().part()).map(Option::clearance).orElse(0.0);
    }
}
