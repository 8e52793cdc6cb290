package org.marktwice.advice;

import static org.marktwice.timber.Figures.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.Option.Nearest;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Practice.CupRatio;
import org.marktwice.scenario.Practice.KnotMargin;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.KnotBody;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Surface;

/** What a board could be used as: every turn and trim that the drawing and the dressed surfaces allow. */
public final class Options {
    private Options() {}

    /** Whether the board is of the part's stuff, has its width and thickness, and is long enough. */
    public static boolean hasSize(Board board, Part part) {
        return board.isSheet() == (part.stuff() == PartStuff.SHEET)
                && Board.sameSize(board.size().width(), part.size().width())
                && Board.sameSize(board.size().thickness(), part.size().thickness())
                && board.size().length() >= part.size().length();
    }

    /** Why a board can't serve a part at all: stuff, width or thickness, length, cup; empty where it can. */
    public static Optional<String> unfit(Scenario scenario, Board board, Part part) {
        if (board.isSheet() != (part.stuff() == PartStuff.SHEET)) {
            return why(
                    "Board %s is %s, %s is made of %s",
                    board.id(), stuff(board.isSheet()), part.name(), stuff(!board.isSheet()));
        }
        if (!Board.sameSize(board.size().width(), part.size().width())) {
            return why(
                    "Board %s is %s mm wide, %s %s mm",
                    board.id(),
                    mm(board.size().width()),
                    part.name(),
                    mm(part.size().width()));
        }
        if (!Board.sameSize(board.size().thickness(), part.size().thickness())) {
            return why(
                    "Board %s is %s mm thick, %s %s mm",
                    board.id(),
                    mm(board.size().thickness()),
                    part.name(),
                    mm(part.size().thickness()));
        }
        if (board.size().length() < part.size().length()) {
            return why(
                    "Board %s is %s mm long, %s %s mm",
                    board.id(),
                    mm(board.size().length()),
                    part.name(),
                    mm(part.size().length()));
        }
        return cupped(scenario.practice().cupRatio(), board);
    }

    private static String stuff(boolean sheet) {
        return sheet ? "sheet stuff" : "timber";
    }

    /**
     * Cup is the gap under a straight-edge laid across the hollow face; the rounded one stands out a little farther. No cup
     * can be computed for a boxed heart, so such a board is not refused for it: expect a check, and look.
     */
    private static Optional<String> cupped(CupRatio ratio, Board board) {
        if (board.isSheet()) return Optional.empty();
        Seasoned now = Seasoned.now(board);
        double width = board.size().width();
        double cup = Math.max(
                now.cup(Surface.FACE_1).orElse(0), now.cup(Surface.FACE_2).orElse(0));
        double limit = ratio.poorLimit(width);
        if (cup <= limit) return Optional.empty();
        return why(
                "Board %s is cupped by %s mm over %s mm, more than 1 in %s (%s mm)",
                board.id(), mm(cup), mm(width), mm(ratio.poor()), mm(limit));
    }

    private static Optional<String> why(String format, Object... figures) {
        return Optional.of(String.format(Locale.ROOT, format, figures));
    }

    /** The turns in which the part's marks can look as drawn and stand on dressed surfaces; all of them for a part without marks. */
    public static List<Turn> turns(Board board, Part part) {
        return Turn.allowed(board, part);
    }

    /** A placing judged. */
    public static Option judge(Scenario scenario, Placing placing) {
        KnotMargin margin = scenario.practice().knotMargin();
        List<Cut> cuts = placing.cuts();
        List<Nearest> all = new ArrayList<>();
        for (KnotBody body : placing.board().bodies()) {
            if (body.isEmpty()) continue;
            for (Cut cut : cuts) {
                double clearance = clearance(body, cut, Double.POSITIVE_INFINITY);
                all.add(new Nearest(body.knot().id(), cut.joint(), clearance, margin.of(body.knot())));
            }
        }
        return Option.of(placing, all);
    }

    private static double clearance(KnotBody body, Cut cut, double cap) {
        double least = cap;
        for (Box box : cut.boxes()) least = Math.min(least, body.clearance(box, least));
        return least;
    }

    /** The best trim (1 mm steps) of this turn; of equals, the one that takes least off end-1. */
    public static Option best(Scenario scenario, Board board, Part part, Turn turn) {
        return judge(scenario, bestTrim(scenario, board, part, turn).placing());
    }

    /** The best turn and trim; empty where the board can't serve the part or no turn is allowed. */
    public static Optional<Option> best(Scenario scenario, Board board, Part part) {
        return bestTurn(scenario, board, part).map(s -> judge(scenario, s.placing()));
    }

    /** The best turn and trim with no more than the figures to compare them by. */
    static Optional<Sifted> bestTurn(Scenario scenario, Board board, Part part) {
        if (unfit(scenario, board, part).isPresent()) return Optional.empty();
        Sifted best = null;
        for (Turn turn : turns(board, part)) {
            Sifted found = bestTrim(scenario, board, part, turn);
            if (best == null || found.betterThan(best)) best = found;
        }
        return Optional.ofNullable(best);
    }

    private static Sifted bestTrim(Scenario scenario, Board board, Part part, Turn turn) {
        Sifted best = null;
        for (double off : trims(board.size().length() - part.size().length())) {
            Placing placing = new Placing(scenario.drawing(), part, board, turn, new Trim(Surface.END_1, off));
            Sifted better = sift(scenario.practice().knotMargin(), placing, best);
            if (better != null) best = better;
        }
        return Objects.requireNonNull(best);
    }

    /** What can come off end-1: 0, 1, 2 … mm, and the whole surplus. A board that is too short loses nothing. */
    private static List<Double> trims(double surplus) {
        List<Double> trims = new ArrayList<>();
        for (int off = 0; off < surplus; off++) trims.add((double) off);
        trims.add(Math.max(0, surplus));
        return trims;
    }

    /** A placing with the two figures that decide between placings; the same as {@link Option}'s. */
    record Sifted(Placing placing, boolean clear, double clearance) {
        boolean betterThan(Sifted other) {
            if (clear != other.clear) return clear;
            return clearance > other.clearance;
        }
    }

    /**
     * As {@link #judge}, but without following any distance beyond what can still matter.
     *
     * @param than null where anything is better
     * @return null where it is no better than that
     */
    private static @Nullable Sifted sift(KnotMargin margin, Placing placing, @Nullable Sifted than) {
        List<Cut> cuts = placing.cuts();
        Sifted left = new Sifted(placing, true, Option.CAP);
        for (KnotBody body : placing.board().bodies()) {
            double keep = margin.of(body.knot());
            for (Cut cut : cuts) {
                double clearance = clearance(body, cut, Math.max(left.clearance, keep));
                if (clearance >= keep && clearance >= left.clearance) continue;
                left = new Sifted(placing, left.clear && clearance >= keep, Math.min(left.clearance, clearance));
                if (than != null && !left.betterThan(than)) return null;
            }
        }
        return than == null || left.betterThan(than) ? left : null;
    }
}
