package org.marktwice.feedback;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.marktwice.advice.Options;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.Trace;

/** What is to be seen on a board, for whoever doesn't see its picture. */
public final class BoardWords {
    private BoardWords() {}

    /** The board's size and knots, and all that lies on it. */
    public static String of(Bench bench, BoardState state) {
        List<String> said = new ArrayList<>(List.of(size(state.board()), knots(state.board())));
        said.add(marks(state.marks()));
        state.named()
                .ifPresent(n -> said.add("named “" + partName(bench, n.part()) + "” on "
                        + n.at().surface().spoken()));
        state.turned()
                .ifPresent(
                        t -> said.add("turned: " + ActionWords.facing(t.turn().named())));
        state.setAside().ifPresent(a -> said.add("set aside, " + a.because().spoken()));
        struck(state, said);
        return sentences(said);
    }

    /** The same of a board as the model answer has it. */
    public static String of(ModelBoard model) {
        BoardState state = model.picture().state();
        return sentences(List.of(
                size(state.board()), knots(state.board()), marks(state.marks()), model.words(), model.figure()));
    }

    /** What has become of a board so far, in one line. */
    public static String standing(Bench bench, BoardState state) {
        if (state.setAside().isPresent())
            return "Set aside, " + state.setAside().get().because().spoken();
        return Pictures.placed(bench, state).map(Pictures::placed).orElseGet(() -> named(bench, state));
    }

    private static String named(Bench bench, BoardState state) {
        if (state.named().isEmpty()) return state.turned().isEmpty() ? "Not named yet" : "Turned, but not named yet";
        String part = partName(bench, state.named().get().part());
        return part + (state.turned().isEmpty() ? ", not turned yet" : ", turned so that it doesn’t fit the part");
    }

    /** How far the nearest knot is from a joint as the board lies, with its unit; empty where there is nothing to tell. */
    public static String clearance(Bench bench, BoardState state) {
        return Pictures.placed(bench, state)
                .flatMap(p -> Options.judge(bench.scenario(), p).nearest())
                .map(n -> SheetModel.fixed(n.clearance(), 1) + " mm")
                .orElse("");
    }

    /** The same in words; empty where there is nothing to tell. */
    public static String nearest(Bench bench, BoardState state) {
        String clearance = clearance(bench, state);
        if (clearance.isEmpty()) return "";
        return clearance.equals("0.0 mm") ? "a knot runs into a joint" : "nearest knot " + clearance + " clear";
    }

    private static String sentences(List<String> said) {
        return said.stream()
                .map(s -> s.strip().replaceAll(" {2,}", " "))
                .filter(s -> !s.isEmpty())
                .map(s -> Character.toUpperCase(s.charAt(0)) + s.substring(1) + (s.endsWith(".") ? "" : "."))
                .collect(Collectors.joining(" "));
    }

    private static String size(Board board) {
        return SheetModel.number(board.size().length()) + " × "
                + SheetModel.number(board.size().width()) + " × "
                + SheetModel.number(board.size().thickness()) + " mm";
    }

    /** Every knot with the surfaces that it comes out on. */
    private static String knots(Board board) {
        Map<String, List<String>> on = new LinkedHashMap<>();
        for (Trace trace : board.traces()) {
            on.computeIfAbsent(trace.knot(), k -> new ArrayList<>())
                    .add(trace.surface().spoken());
        }
        if (on.isEmpty()) return "no knots";
        return on.entrySet().stream()
                .map(e -> SheetModel.knot(e.getKey()) + " on "
                        + and(e.getValue().stream().distinct().toList()))
                .collect(Collectors.joining("; "));
    }

    private static String marks(List<Mark> marks) {
        if (marks.isEmpty()) return "no face marks";
        return marks.stream()
                .map(m -> m.kind().spoken() + " marked on " + m.on().spoken() + ", pointing to "
                        + m.towards().spoken())
                .collect(Collectors.joining("; "));
    }

    private static void struck(BoardState state, List<String> said) {
        Map<Surface, Integer> lines = new LinkedHashMap<>();
        int waste = 0;
        int cuts = 0;
        for (BoardState.Done<? extends Action.OnBoard> done : state.struck()) {
            if (done.action() instanceof Action.Waste) waste++;
            else if (done.action() instanceof Action.Cut) cuts++;
            else Pictures.touched(done.action()).ifPresent(s -> lines.merge(s, 1, Integer::sum));
        }
        lines.forEach((surface, n) -> said.add((n == 1 ? "1 line" : n + " lines") + " on " + surface.spoken()));
        if (waste > 0) said.add(waste == 1 ? "waste shaded in 1 place" : "waste shaded in " + waste + " places");
        if (cuts > 0) said.add(cuts == 1 ? "1 line cut" : cuts + " lines cut");
    }

    private static String partName(Bench bench, String id) {
        return bench.scenario().drawing().part(id).map(Part::name).orElse(id);
    }

    /** {@code a, b and c}. */
    static String and(List<String> all) {
        int end = all.size() - 1;
        return end < 1 ? String.join("", all) : String.join(", ", all.subList(0, end)) + " and " + all.get(end);
    }
}
