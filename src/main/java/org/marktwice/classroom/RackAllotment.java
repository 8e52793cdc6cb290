package org.marktwice.classroom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.advice.Options;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.drawing.Placing;
import org.marktwice.files.RackFile;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.KnotBody;
import org.marktwice.timber.KnotFit;
import org.marktwice.timber.MeasuredBoard;
import org.marktwice.timber.MeasuredBoard.Fitted;
import org.marktwice.timber.Size;

/**
 * The real boards of a rack given out to the parts of a job that is made several times: an exact optimum over all jobs
 * together (see {@link ModelAnswer}), on the knots' bodies as they were found from the measurements.
 *
 * @param scenario the job, with the rack's boards
 * @param rack the boards with what was found of their knots, in the rack's order
 * @param jobs one answer a job
 * @param checks where a measurement decides: to be measured again at the bench before anything is cut
 * @param leftOver the boards that no job takes, with the reason where they serve no part
 * @param toBuy what is missing for all jobs to have all parts, and clear
 */
public record RackAllotment(
        Scenario scenario,
        List<Fitted> rack,
        List<ModelAnswer> jobs,
        List<Check> checks,
        List<LeftOver> leftOver,
        List<Purchase> toBuy) {
    /** No class makes more at once. */
    public static final int MOST = 100;

    /** Nearer to its margin than so many standard deviations, a clearance is not sure. */
    private static final double DEVIATIONS = 2;

    public RackAllotment {
        rack = List.copyOf(rack);
        jobs = List.copyOf(jobs);
        checks = List.copyOf(checks);
        leftOver = List.copyOf(leftOver);
        toBuy = List.copyOf(toBuy);
    }

    /**
     * A knot of which the measurements leave open whether it keeps its margin.
     *
     * @param job from 0
     * @param clearance from the nearest cut, as found, millimetres
     */
    public record Check(int job, Option option, KnotFit fit, double clearance, double margin) {}

    /** @param why it serves no part at all; empty where it could serve one */
    public record LeftOver(Board board, Optional<String> why) {}

    /**
     * Boards to buy, free of knots near the joints.
     *
     * @param length at least, millimetres
     * @param parts for which, by name
     * @param instead of these boards, which serve the parts but are not clear; empty where nothing serves them
     */
    public record Purchase(PartStuff stuff, Size size, int count, List<String> parts, List<String> instead) {}

    /** @param times how many jobs are made */
    public static RackAllotment of(Scenario exercise, RackFile file, int times) {
        if (times < 1 || times > MOST) throw new IllegalArgumentException("from 1 to " + MOST + " jobs");
        List<Fitted> rack =
                file.boards().parallelStream().map(MeasuredBoard::fitted).toList();
        Scenario scenario = with(exercise, rack.stream().map(Fitted::board).toList());
        List<ModelAnswer> jobs = ModelAnswer.of(scenario, times);
        return new RackAllotment(
                scenario, rack, jobs, checks(scenario, rack, jobs), leftOver(scenario, jobs), toBuy(scenario, jobs));
    }

    private static Scenario with(Scenario exercise, List<Board> boards) {
        return new Scenario(
                exercise.id(),
                exercise.title(),
                exercise.level(),
                exercise.brief(),
                exercise.stages(),
                exercise.practice(),
                exercise.drawing(),
                boards,
                "");
    }

    private static List<Check> checks(Scenario scenario, List<Fitted> rack, List<ModelAnswer> jobs) {
        Map<String, Fitted> byId = new HashMap<>();
        for (Fitted one : rack) byId.put(one.board().id(), one);
        List<Check> checks = new ArrayList<>();
        for (int job = 0; job < jobs.size(); job++) {
            for (Option option : jobs.get(job).placings()) {
                Fitted fitted = byId.get(option.placing().board().id());
                if (fitted == null) continue;
                for (KnotFit fit : fitted.fits()) {
                    Check check = check(scenario, job, option, fit);
                    if (!isSure(check)) checks.add(check);
                }
            }
        }
        return checks;
    }

    private static boolean isSure(Check check) {
        if (!check.fit().onOneBranch()) return false;
        return Math.abs(check.clearance() - check.margin())
                > DEVIATIONS * check.fit().spread();
    }

    private static Check check(Scenario scenario, int job, Option option, KnotFit fit) {
        double clearance = Double.POSITIVE_INFINITY;
        Placing placing = option.placing();
        for (KnotBody body : placing.board().bodies()) {
            if (!body.knot().equals(fit.knot())) continue;
            for (Cut cut : placing.cuts()) {
                for (Box box : cut.boxes()) clearance = Math.min(clearance, body.clearance(box));
            }
        }
        return new Check(
                job, option, fit, clearance, scenario.practice().knotMargin().of(fit.knot()));
    }

    private static List<LeftOver> leftOver(Scenario scenario, List<ModelAnswer> jobs) {
        return scenario.boards().stream()
                .filter(b -> jobs.stream().allMatch(j -> j.of(b).isEmpty()))
                .map(b -> new LeftOver(b, servesNothing(scenario, b)))
                .toList();
    }

    /** Why it serves no part, told by the part that it comes nearest to in size. */
    private static Optional<String> servesNothing(Scenario scenario, Board board) {
        List<Part> parts = scenario.drawing().parts();
        boolean serves =
                parts.stream().anyMatch(p -> Options.best(scenario, board, p).isPresent());
        if (serves) return Optional.empty();
        return parts.stream()
                .min(Comparator.comparingDouble(p -> apart(board.size(), p.size())))
                .flatMap(p -> Options.unfit(scenario, board, p));
    }

    private static double apart(Size one, Size other) {
        return Math.abs(one.width() - other.width())
                + Math.abs(one.thickness() - other.thickness())
                + Math.max(0, other.length() - one.length());
    }

    /** A board to be bought for a part, and the board that it would replace. */
    private record Want(Part part, Optional<String> instead) {
        PartStuff stuff() {
            return part.stuff() == PartStuff.SHEET ? PartStuff.SHEET : PartStuff.TIMBER;
        }
    }

    private record Kind(PartStuff stuff, Size size, boolean replaces) {}

    private static List<Purchase> toBuy(Scenario scenario, List<ModelAnswer> jobs) {
        List<Want> wants = new ArrayList<>();
        for (ModelAnswer job : jobs) {
            for (Part part : scenario.drawing().parts()) {
                Optional<Option> option = job.of(part);
                if (option.isPresent() && option.get().clear()) continue;
                wants.add(new Want(part, option.map(o -> o.placing().board().id())));
            }
        }
        Map<Kind, List<Want>> kinds = wants.stream()
                .collect(Collectors.groupingBy(
                        w -> new Kind(w.stuff(), w.part().size(), w.instead().isPresent()),
                        LinkedHashMap::new,
                        Collectors.toList()));
        List<Purchase> toBuy = new ArrayList<>();
        kinds.forEach((kind, some) -> toBuy.add(new Purchase(
                kind.stuff(),
                kind.size(),
                some.size(),
                some.stream().map(w -> w.part().name()).distinct().toList(),
                some.stream().flatMap(w -> w.instead().stream()).toList())));
        toBuy.sort(Comparator.comparing((Purchase p) -> !p.instead().isEmpty()));
        return toBuy;
    }

    public int parts() {
        return jobs.size() * scenario.drawing().parts().size();
    }

    public int supplied() {
        return jobs.stream().mapToInt(ModelAnswer::supplied).sum();
    }

    public int clear() {
        return jobs.stream().mapToInt(ModelAnswer::clear).sum();
    }
}
