package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.advice.Option;
import org.marktwice.advice.Options;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Reason;
import org.marktwice.drawing.Part;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;

/**
 * A board is set aside when, and only when, no allowed turn serves any part still to be supplied, and for the right reason.
 * A turn serves when it is clear; a part is still to be supplied while no other board that fits it carries its name. Right, but for a
 * reason that doesn't hold, is close. A board that serves nowhere and is laid in the job all the same is wrong. While
 * another free board may still supply the part that a refused one would have served, the refusal is open: it was perhaps
 * not needed. A spare that is left on the rack is no fault.
 */
final class RefusalJustified implements Rule {
    private static final double WRONG_REASON_CREDIT = 0.5;

    @Override
    public String id() {
        return "refusal-justified";
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
        for (BoardState state : situation.bench().boards()) {
            state.setAside().ifPresent(a -> findings.add(refused(situation, state.board(), a)));
        }
        for (Place place : Place.all(situation)) {
            for (Place.Lying lying : place.lying()) used(situation, lying).ifPresent(findings::add);
        }
        return findings;
    }

    private Finding refused(Situation situation, Board board, BoardState.Aside aside) {
        List<Part> wanting = wanting(situation);
        List<Option> serves = serves(situation, board, wanting);
        if (serves.isEmpty()) return unserving(situation, board, aside, wanting);
        Option best = situation
                .modelAnswer()
                .of(board)
                .filter(o -> o.clear() && wanting.contains(o.placing().part()))
                .orElse(serves.get(0));
        Found found = Found.by(this, Subject.board(board.id())).at(aside.step());
        boolean undecided = serves.stream()
                .allMatch(o -> freeBoardServes(situation, o.placing().part()));
        return undecided
                ? found.open("says.open", Remedy.values(best))
                : found.instead("better.use", Remedy.values(best)).wrong("says.wrong-usable", Remedy.values(best));
    }

    /**
     * Parts whose name no board on the bench carries that fits them; where the scenario asks for no names, those in which
     * no such board lies yet. A board that doesn't fit supplies nothing.
     */
    private static List<Part> wanting(Situation situation) {
        boolean byName = situation.asks(Stage.NAMES);
        return Place.all(situation).stream()
                .filter(place -> place.lying().stream()
                        .noneMatch(l -> situation.fits(l.placing().board(), place.part())))
                .map(Place::part)
                .filter(part -> !byName
                        || situation.bench().namedAs(part).stream().noneMatch(b -> situation.fits(b.board(), part)))
                .toList();
    }

    /** The clear ways to use the board in these parts, the best first. */
    private static List<Option> serves(Situation situation, Board board, List<Part> parts) {
        return parts.stream()
                .flatMap(p -> situation.best(board, p).stream())
                .filter(Option::clear)
                .sorted((a, b) -> Double.compare(b.clearance(), a.clearance()))
                .toList();
    }

    private static boolean freeBoardServes(Situation situation, Part part) {
        return situation.bench().boards().stream()
                .filter(b -> b.named().isEmpty() && b.setAside().isEmpty())
                .anyMatch(b ->
                        situation.best(b.board(), part).filter(Option::clear).isPresent());
    }

    private Finding unserving(Situation situation, Board board, BoardState.Aside aside, List<Part> wanting) {
        Reason given = aside.because();
        Reason right = reason(situation, board, wanting);
        boolean holds = given == right || holds(situation, board, given, wanting);
        Object[] values = {"board", board.id(), "given", given, "right", right};
        Found found = Found.by(this, Subject.board(board.id()))
                .at(aside.step())
                .showing(evidence(board, right))
                .instead("better.reason", values);
        if (holds) return found.sound("says.sound", values);
        List<Option> clear =
                serves(situation, board, situation.scenario().drawing().parts());
        return clear.isEmpty()
                ? found.close(WRONG_REASON_CREDIT, "says.close", values)
                : found.close(WRONG_REASON_CREDIT, "says.close-clear", Remedy.values(clear.get(0), "given", given));
    }

    private static Evidence evidence(Board board, Reason reason) {
        if (reason != Reason.KNOT_IN_EVERY_TURN) return Evidence.NONE;
        List<String> knots = board.bodies().stream()
                .filter(b -> !b.isEmpty())
                .map(b -> b.knot().id())
                .toList();
        return new Evidence(List.of(), List.of(), knots);
    }

    /** The reason that tells most about a board that serves nowhere it is wanted. */
    private static Reason reason(Situation situation, Board board, List<Part> wanting) {
        List<Part> all = situation.scenario().drawing().parts();
        if (all.stream().noneMatch(p -> Options.hasSize(board, p))) return Reason.WRONG_SIZE;
        if (wanting.stream().noneMatch(p -> Options.hasSize(board, p))) return Reason.NOT_NEEDED;
        return cupped(situation, board, wanting) && !barred(situation, board, wanting)
                ? Reason.CUPPED
                : Reason.KNOT_IN_EVERY_TURN;
    }

    /**
     * Whether a reason is true of the board, against the parts still wanting or against all: what was true when the board
     * was refused stays true when its parts are supplied by others.
     */
    private static boolean holds(Situation situation, Board board, Reason reason, List<Part> wanting) {
        List<Part> all = situation.scenario().drawing().parts();
        boolean unwanted = wanting.stream().noneMatch(p -> Options.hasSize(board, p));
        return switch (reason) {
            case NOT_NEEDED -> unwanted && (wanting.isEmpty() || all.stream().anyMatch(p -> Options.hasSize(board, p)));
            case WRONG_SIZE ->
                (unwanted && !wanting.isEmpty()) || all.stream().noneMatch(p -> Options.hasSize(board, p));
            case CUPPED -> cupped(situation, board, all);
            case KNOT_IN_EVERY_TURN -> barred(situation, board, wanting) || barred(situation, board, all);
        };
    }

    private static boolean cupped(Situation situation, Board board, List<Part> parts) {
        return parts.stream().anyMatch(p -> Options.hasSize(board, p) && !situation.fits(board, p));
    }

    /** Whether it fits some of these parts, and in each of them every turn brings a knot too near. */
    private static boolean barred(Situation situation, Board board, List<Part> parts) {
        return parts.stream().anyMatch(p -> situation.fits(board, p))
                && serves(situation, board, parts).isEmpty();
    }

    /** A board laid in the job that serves in no part of it. */
    private Optional<Finding> used(Situation situation, Place.Lying lying) {
        Board board = lying.state().board();
        List<Part> parts = situation.scenario().drawing().parts();
        if (!serves(situation, board, parts).isEmpty()) return Optional.empty();
        Reason right = reason(situation, board, parts);
        Object[] values = {"board", board.id(), "part", lying.placing().part().id(), "right", right};
        return Optional.of(Found.by(this, lying.subject())
                .at(lying.step())
                .showing(evidence(board, right))
                .instead("better.set-aside", values)
                .wrong("says.wrong-hopeless", values));
    }
}
