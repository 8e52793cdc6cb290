package org.marktwice.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.timber.Board;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Sawmill;
import org.marktwice.timber.SawnBoard;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.Stuff;
import org.marktwice.timber.Surface;

/**
 * Fills the rack from {@link Stock}: a board for each timber part that can serve it clear, some to spare, and a piece for
 * each part of sheet, lettered in an order that doesn't tell what is meant for what. Each thickness comes from one log, or
 * from several one after another.
 *
 * <p>A board is chosen among those that its log has left so that the share of its wrong turns comes near to the
 * difficulty; what one board misses, the next makes up for. A spare board may be wrong in every turn. All have their dead
 * knots away from ends and arrises, and no more cup than is clear, so that whichever boards are best for the joints
 * can be marked in full.
 *
 * <p>Only sizes, turns and strict arithmetic decide, so that the same seed fills the same rack on every machine.
 */
public final class Rack {
    /** A board without a knot teaches less, and is taken only where the others miss the difficulty by this much more. */
    private static final double NO_KNOT = 0.06;
    /** Of the cup that is still clear a board for a part may have this share. */
    private static final double CUP_SHARE = 0.8;
    /** Spare boards are wrong more often than the others by this factor. */
    private static final double SPARE = 1.25;

    private final Stock stock;
    private final Drawing drawing;
    private final Practice practice;
    private final Chance chance;
    private final Blanks blanks;
    private final List<Wanted> wanted;
    private final List<String> letters;
    private final Map<Double, Sawmill> mills = new HashMap<>();
    /** How much easier than asked for the boards before have come out. */
    private double owed;

    private Rack(Stock stock, Drawing drawing, Practice practice) {
        this.stock = stock;
        this.drawing = drawing;
        this.practice = practice;
        chance = Chance.of(stock.seed());
        blanks = new Blanks(stock, chance.split());
        wanted = wanted(stock, drawing, chance);
        long sheets = drawing.parts().stream()
                .filter(p -> p.stuff() == PartStuff.SHEET)
                .count();
        letters = letters(wanted.size() + (int) sheets, chance);
    }

    /** Why there is no timber for a part; empty where there is. */
    public static Optional<String> refusal(Drawing drawing) {
        Size most = Sawmill.LARGEST;
        return timber(drawing)
                .filter(p -> p.size().length() + Blanks.MOST_TO_SPARE > most.length()
                        || p.size().width() > most.width()
                        || p.size().thickness() > most.thickness())
                .findFirst()
                .map(p -> String.format(
                        Locale.ROOT,
                        "no log gives a board for part \"%s\": at most %.0f × %.0f × %.0f mm",
                        p.id(),
                        most.length() - Blanks.MOST_TO_SPARE,
                        most.width(),
                        most.thickness()));
    }

    /** The boards, by their letters. */
    public static List<Board> fill(Stock stock, Drawing drawing, Practice practice) {
        Rack rack = new Rack(stock, drawing, practice);
        List<Part> sheets = drawing.parts().stream()
                .filter(p -> p.stuff() == PartStuff.SHEET)
                .toList();
        List<Board> boards = new ArrayList<>();
        rack.saw().forEach(sawn -> boards.add(sawn.board()));
        for (Part part : sheets) boards.add(sheet(part, rack.letters.get(boards.size())));
        boards.sort(Comparator.comparing((Board b) -> b.id().length()).thenComparing(Board::id));
        return List.copyOf(boards);
    }

    /** The timber boards alone, with where in their logs they come from: in the order of the parts, the spare ones last. */
    static List<SawnBoard> sawn(Stock stock, Drawing drawing, Practice practice) {
        return new Rack(stock, drawing, practice).saw();
    }

    private List<SawnBoard> saw() {
        List<SawnBoard> boards = new ArrayList<>();
        for (Wanted one : wanted) boards.add(saw(one, letters.get(boards.size())));
        return boards;
    }

    private static Stream<Part> timber(Drawing drawing) {
        return drawing.parts().stream().filter(p -> p.stuff() != PartStuff.SHEET);
    }

    /** A part to find a board for; a spare board is of a size that some part has. */
    private record Wanted(Part part, boolean spare) {}

    private static List<Wanted> wanted(Stock stock, Drawing drawing, Chance chance) {
        List<Part> parts = timber(drawing).toList();
        List<Wanted> all = new ArrayList<>();
        for (Part part : parts) all.add(new Wanted(part, false));
        for (int i = 0; i < stock.spare() && !parts.isEmpty(); i++) {
            all.add(new Wanted(parts.get(chance.whole(0, parts.size() - 1)), true));
        }
        return all;
    }

    /** A, B, C … AA, AB …, shuffled. */
    private static List<String> letters(int count, Chance chance) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String last = String.valueOf((char) ('A' + i % 26));
            all.add(i < 26 ? last : (char) ('A' + i / 26 - 1) + last);
        }
        for (int i = count - 1; i > 0; i--) Collections.swap(all, i, chance.whole(0, i));
        return all;
    }

    private SawnBoard saw(Wanted one, String letter) {
        Part part = one.part();
        double hard = stock.difficulty();
        double target = Math.max(0, Math.min(1, one.spare() ? hard * SPARE : hard + owed));
        Board.Facts blank = blanks.facts(part, letter);
        SawnBoard.Lie lie = SawnBoard.Lie.values()[chance.whole(0, 3)];
        SawnBoard sawn = mill(part).saw(blank, lie, board -> cost(board, one, target));
        if (!one.spare()) {
            double came = WrongTurns.share(drawing, practice, sawn.board(), part);
            owed = Math.max(-1, Math.min(1, owed + hard - came));
        }
        return sawn;
    }

    private double cost(Board board, Wanted one, double target) {
        if (isCupped(board) || !WrongTurns.isSound(practice, board, one.part())) return Double.POSITIVE_INFINITY;
        double share = WrongTurns.share(drawing, practice, board, one.part());
        if (!one.spare() && share == 1) return Double.POSITIVE_INFINITY;
        return StrictMath.abs(share - target) + (board.knots().isEmpty() ? NO_KNOT : 0);
    }

    /** By the short formula, taken at the board's nearest point to the pith: it reads high, and can be had exactly. */
    private boolean isCupped(Board board) {
        Board.Facts facts = board.facts();
        double differs = (stock.species().tangential() - stock.species().radial()) / 100;
        double dried = StrictMath.abs(facts.planedAt() - facts.moisture()) / 30;
        double width = facts.size().width();
        double cup = differs * dried * width * width / (4 * Blanks.nearest(board));
        return cup > CUP_SHARE * practice.cupRatio().clearLimit(width);
    }

    private Sawmill mill(Part part) {
        double thickness = part.size().thickness();
        return mills.computeIfAbsent(thickness, t -> {
            double widest = timber(drawing)
                    .filter(p -> p.size().thickness() == t)
                    .mapToDouble(p -> p.size().width())
                    .max()
                    .orElse(0);
            return new Sawmill(stock.species(), t, widest, stock.difficulty(), chance.split());
        });
    }

    private static Board sheet(Part part, String letter) {
        return Board.of(new Board.Facts(
                letter,
                Stuff.SHEET,
                null,
                part.size(),
                0,
                0,
                Set.of(Surface.FACE_1, Surface.FACE_2),
                null,
                0,
                List.of(),
                Shape.TRUE,
                0));
    }
}
