package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RackColumn;
import org.marktwice.files.RackFile;
import org.marktwice.files.TypedRack;
import org.marktwice.files.TypedRack.Line;
import org.marktwice.files.TypedRack.OnRack;
import org.marktwice.files.TypedRack.Trouble;
import org.marktwice.timber.KnotFit;
import org.marktwice.timber.MeasuredBoard;
import org.marktwice.timber.MeasuredBoard.Fitted;
import org.marktwice.timber.Pith;

/** The rack as it is typed, step by step, and what was found of the boards that are whole. It knows no component. */
final class RackModel {
    private final Steps<TypedRack> steps = new Steps<>(TypedRack.BLANK);
    private List<OnRack> boards = List.of();
    private TypedRack readOf = TypedRack.BLANK;
    /** By the lines of a board: a board that is as it was isn't read and fitted again. */
    private Map<List<Line>, OnRack> known = new HashMap<>();

    private final Map<MeasuredBoard, Fitted> fitted = new HashMap<>();

    Steps<TypedRack> steps() {
        return steps;
    }

    TypedRack rack() {
        return steps.now();
    }

    /** Every board that was begun, in the rack's order. */
    List<OnRack> boards() {
        TypedRack now = rack();
        if (now.equals(readOf)) return boards;
        Map<List<Line>, OnRack> next = new HashMap<>();
        List<OnRack> all = new ArrayList<>();
        now.byBoard().forEach((id, at) -> {
            // which board it is may stand in a line above
            List<Line> lines = at.stream()
                    .map(i -> now.lines().get(i).with(RackColumn.BOARD, id))
                    .toList();
            OnRack before = known.get(lines);
            OnRack board = before != null && before.lines().equals(at) ? before : now.board(id, at);
            next.put(lines, board);
            all.add(board);
        });
        known = next;
        boards = List.copyOf(all);
        readOf = now;
        fitted.keySet()
                .retainAll(all.stream().flatMap(b -> b.measured().stream()).collect(Collectors.toSet()));
        return boards;
    }

    /** The board of a line; empty where nothing of one was typed. */
    Optional<OnRack> at(int line) {
        String id = rack().boardOf(line);
        return boards().stream()
                .filter(b -> b.lines().contains(line) || b.id().equals(id) && !id.isEmpty())
                .findFirst();
    }

    /** A whole board with its knots' bodies found. */
    Optional<Fitted> fitted(OnRack board) {
        return board.measured().map(m -> fitted.computeIfAbsent(m, MeasuredBoard::fitted));
    }

    /** What can be seen of a board: all of it, or while it isn't whole what is left without the places that aren't. */
    Optional<Fitted> seen(OnRack board) {
        if (board.measured().isPresent()) return fitted(board);
        TypedRack rack = rack();
        OnRack left = board;
        while (left.trouble().isPresent() && !left.lines().isEmpty()) {
            Trouble trouble = left.trouble().get();
            boolean pith = trouble.column() == RackColumn.PITH_Y || trouble.column() == RackColumn.PITH_Z;
            if (trouble.column().isOfTheBoard() && !pith) return Optional.empty();
            for (int i : pith ? board.lines() : List.of(trouble.line()))
                rack = rack.with(i, bare(rack.lines().get(i)));
            List<Integer> at = new ArrayList<>(left.lines());
            List<Line> lines = rack.lines();
            at.removeIf(i -> lines.get(i).cells().isEmpty());
            if (at.isEmpty()) return Optional.empty();
            left = rack.board(board.id(), at);
        }
        return left.measured().map(MeasuredBoard::fitted);
    }

    /** Without what it says of a knot, and with no pith where that isn't whole. */
    private static Line bare(Line line) {
        Line out = line;
        for (RackColumn column : RackColumn.values()) if (!column.isOfTheBoard()) out = out.with(column, "");
        boolean half = line.at(RackColumn.PITH_Y).isEmpty()
                != line.at(RackColumn.PITH_Z).isEmpty();
        return half ? out.with(RackColumn.PITH_Y, "").with(RackColumn.PITH_Z, "") : out;
    }

    Optional<Trouble> trouble(int line, RackColumn column) {
        return boards().stream()
                .flatMap(b -> b.trouble().stream())
                .filter(t -> t.line() == line && t.column() == column)
                .findFirst();
    }

    List<OnRack> notWhole() {
        return boards().stream().filter(b -> b.trouble().isPresent()).toList();
    }

    /** What is whole of it; empty where nothing is. */
    Optional<RackFile> whole() {
        List<MeasuredBoard> all =
                boards().stream().flatMap(b -> b.measured().stream()).toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(new RackFile(all));
    }

    /** How far it is, in one line. */
    String standing() {
        int all = boards().size();
        if (all == 0) return "Nothing is typed yet";
        String boardsWord = all == 1 ? "1 board" : all + " boards";
        List<OnRack> open = notWhole();
        if (open.isEmpty()) return "✓ " + boardsWord + (all == 1 ? ", whole" : ", all whole");
        Trouble first = open.get(0).trouble().orElseThrow();
        return "○ " + boardsWord + ", " + open.size() + " not whole: " + says(open.get(0), first);
    }

    private static String says(OnRack board, Trouble trouble) {
        return (board.id().isEmpty() ? "line " + (trouble.line() + 1) : board.id()) + ", " + trouble.says();
    }

    /** What was found of a board's knots, one line a knot; or what it still lacks. */
    List<String> found(OnRack board) {
        if (board.trouble().isPresent()) {
            Trouble t = board.trouble().get();
            return List.of((t.missing() ? "○ " : "× ")
                    + (t.missing() ? t.says() : t.column().id() + ": " + t.says()));
        }
        List<KnotFit> fits = fitted(board).map(Fitted::fits).orElse(List.of());
        if (fits.isEmpty()) return List.of("✓ no knots");
        return fits.stream().map(RackModel::words).toList();
    }

    private static String words(KnotFit fit) {
        String give = ", " + fit.mayBeOut();
        String more = fit.surfaces() == 1 ? "; a second surface would tell more" : "";
        String off =
                String.format(Locale.ROOT, ": the readings are %.1f mm off any one branch; measure again", fit.worst());
        return switch (fit.sureness()) {
            case SURE -> "✓ knot " + fit.knot().id() + ": sure" + give;
            case FAIR -> "~ knot " + fit.knot().id() + ": fair" + give + more;
            case DOUBTFUL -> "× knot " + fit.knot().id() + ": doubtful" + (fit.onOneBranch() ? give + more : off);
        };
    }

    // Typing

    void type(int line, RackColumn column, String typed) {
        TypedRack now = rack();
        Line before = line < now.lines().size() ? now.lines().get(line) : Line.EMPTY;
        String text = column.tidied(typed);
        if (!text.equals(before.at(column))) steps.edit(now.with(line, before.with(column, text)));
    }

    /** A board more, after the one of this line, with what boards of one rack mostly share. @return its line */
    int newBoard(int line) {
        int at = after(line);
        Line next = Line.EMPTY.with(RackColumn.BOARD, freeBoard());
        Optional<OnRack> above = at(Math.min(line, rack().lines().size() - 1));
        if (above.isPresent()) {
            Line first = rack().lines().get(above.get().first());
            for (RackColumn same :
                    List.of(RackColumn.SPECIES, RackColumn.WIDTH, RackColumn.THICKNESS, RackColumn.MOISTURE)) {
                next = next.with(same, first.at(same));
            }
        }
        steps.edit(rack().plus(at, next));
        return at;
    }

    /** A place more where a knot of this line's board shows: another knot, or the same knot's other surface. */
    int newShowing(int line, boolean sameKnot) {
        Optional<OnRack> board = at(line);
        if (board.isEmpty()) return line;
        Line now = rack().lines().get(Math.min(line, rack().lines().size() - 1));
        String knot = sameKnot && !now.at(RackColumn.KNOT).isEmpty() ? now.at(RackColumn.KNOT) : freeKnot(board.get());
        int first = board.get().first();
        // a board's first line has room for a knot of its own
        if (rack().lines().get(first).at(RackColumn.KNOT).isEmpty() && line == first) {
            steps.edit(rack().with(first, rack().lines().get(first).with(RackColumn.KNOT, knot)));
            return first;
        }
        int at = sameKnot ? line + 1 : after(line);
        steps.edit(rack().plus(at, Line.EMPTY.with(RackColumn.KNOT, knot)));
        return at;
    }

    void remove(int line) {
        if (line < rack().lines().size()) steps.edit(rack().without(line));
    }

    /** The pith dragged, or let go; what stood there of a ring is gone with it. */
    void pith(OnRack board, Pith pith, boolean settled) {
        Line first = rack().lines().get(board.first());
        TypedRack next = rack().with(
                        board.first(),
                        first.with(RackColumn.RING, "")
                                .with(RackColumn.PITH_Y, NumberField.spoken(pith.y()))
                                .with(RackColumn.PITH_Z, NumberField.spoken(pith.z())));
        if (settled) steps.edit(next);
        else steps.attempt(next);
    }

    /** The line after the last of a line's board. */
    private int after(int line) {
        return at(line).map(b -> b.lines().get(b.lines().size() - 1) + 1)
                .orElse(Math.min(line, rack().lines().size()));
    }

    private String freeBoard() {
        Set<String> taken = boards().stream().map(OnRack::id).collect(Collectors.toSet());
        String last =
                boards().isEmpty() ? "" : boards().get(boards().size() - 1).id();
        String letters = last.replaceAll("\\d+$", "");
        if (letters.isEmpty() || letters.length() > 10) letters = "R";
        int number = 1;
        while (taken.contains(letters + number)) number++;
        return letters + number;
    }

    private String freeKnot(OnRack board) {
        Set<String> taken = board.lines().stream()
                .map(i -> rack().lines().get(i).at(RackColumn.KNOT))
                .collect(Collectors.toSet());
        int number = 1;
        while (taken.contains("k" + number)) number++;
        return "k" + number;
    }

    // Files

    /** Begins with this rack. */
    void begin(TypedRack read) {
        steps.amend(read);
        steps.saved();
    }

    /** Puts another rack in the place of this; that too is undone. */
    void open(TypedRack read) {
        steps.edit(read);
        steps.saved();
    }

    /** @throws FileRefused where it is to be JSON, and isn't whole */
    static byte[] bytes(TypedRack rack, String name) throws FileRefused {
        byte[] table = rack.csv();
        if (!name.toLowerCase(Locale.ROOT).endsWith(".json")) return table;
        return RackFile.read(name + " as a table.csv", table).bytes();
    }
}
