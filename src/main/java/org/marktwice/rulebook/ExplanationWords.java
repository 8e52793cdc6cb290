package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.advice.Explanation;
import org.marktwice.advice.Explanation.Use;
import org.marktwice.advice.Explanation.Way;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.advice.Shortage;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/** The words of an {@link Explanation}: why the model answer is the best, and a board's table of parts and turns. */
public final class ExplanationWords {
    private static final String FILE = "explanation.properties";
    /** Clearances that differ by less read alike, millimetres. */
    private static final double ALIKE = 0.05;

    private final Explanation explanation;

    public ExplanationWords(Explanation explanation) {
        this.explanation = explanation;
    }

    /**
     * A row of a board's table.
     *
     * @param turn how it lies; empty where it can't be that part at all
     * @param off what comes off at the end that loses more; empty where nothing does
     * @param result the clearance, or why it won't do
     * @param clear whether all knots are clear and the turn is allowed
     */
    public record Row(Part part, String turn, String off, String result, boolean clear, boolean chosen) {}

    /** Why this set is best, what the next best would lose, and what proves that no more can be had; a sentence or two each. */
    public List<String> why() {
        List<String> said = new ArrayList<>();
        said.add(supplied());
        tightest().ifPresent(said::add);
        explanation.shortages().forEach(s -> said.add(shortage(s)));
        if (explanation.answer().supplied() > 0) nextBest().ifPresent(said::add);
        return List.copyOf(said);
    }

    private String supplied() {
        ModelAnswer answer = explanation.answer();
        int parts = explanation.scenario().drawing().parts().size();
        String key =
                answer.supplied() < parts ? "not-all-supplied" : answer.clear() < parts ? "not-all-clear" : "all-clear";
        return say(key, "supplied", answer.supplied(), "clear", answer.clear(), "parts", parts);
    }

    private Optional<String> tightest() {
        ModelAnswer answer = explanation.answer();
        if (answer.supplied() == 0) return Optional.empty();
        if (answer.least() >= Option.CAP) return Optional.of(say("roomy"));
        return answer.placings().stream()
                .reduce((a, b) -> b.clearance() < a.clearance() ? b : a)
                .flatMap(o -> o.nearest().map(n -> sayOf("least", o.placing().part(), values(o))));
    }

    private static Object[] values(Option option) {
        Placing lies = option.placing();
        List<Object> values = new ArrayList<>(List.of(
                "board", lies.board().id(),
                "part", lies.part().id(),
                "clearance", option.clearance()));
        option.nearest()
                .ifPresent(n -> values.addAll(List.of(
                        "knot", n.knot(), "joint", n.joint(), "margin", n.margin(), "clearance", n.clearance())));
        return values.toArray();
    }

    private String shortage(Shortage s) {
        String key = s.clear() ? "shortage.clear" : "shortage.fit";
        return say(
                s.boards().isEmpty() ? key + "-none" : key,
                "parts",
                s.parts().stream().map(Part::id).toList(),
                "boards",
                s.boards().stream().map(Board::id).toList(),
                "n",
                s.boards().size(),
                "m",
                s.parts().size());
    }

    private Optional<String> nextBest() {
        return explanation.nextBest().map(next -> {
            ModelAnswer best = explanation.answer();
            List<String> changes = changes(best, next);
            if (changes.isEmpty()) return say("next.none");
            Object[] figures = {
                "changes", changes,
                "least", next.least(),
                "bestLeast", best.least(),
                "sum", next.sum(),
                "bestSum", best.sum(),
                "n", Math.max(best.supplied() - next.supplied(), best.clear() - next.clear())
            };
            if (next.supplied() < best.supplied()) return say("next.supplied", figures);
            if (next.clear() < best.clear()) return say("next.clear", figures);
            if (next.least() < best.least() - ALIKE) return say("next.least", figures);
            return say(next.sum() < best.sum() - ALIKE ? "next.sum" : "next.equal", figures);
        });
    }

    /** What is laid elsewhere, and what is not laid any more. */
    private List<String> changes(ModelAnswer best, ModelAnswer next) {
        List<String> changes = new ArrayList<>();
        for (Option o : next.placings()) {
            Placing to = o.placing();
            boolean same = best.of(to.part())
                    .filter(was -> was.placing().board().equals(to.board()))
                    .isPresent();
            if (!same)
                changes.add(say(
                        "change.lay",
                        "board",
                        to.board().id(),
                        "part",
                        to.part().id()));
        }
        for (Option o : best.placings()) {
            Board board = o.placing().board();
            if (next.of(board).isEmpty()) changes.add(say("change.leave", "board", board.id()));
        }
        return changes;
    }

    /** The table of a board: every part, every turn. */
    public List<Row> table(Board board) {
        List<Row> rows = new ArrayList<>();
        for (Use use : explanation.uses(board)) {
            use.unfit().ifPresent(why -> rows.add(new Row(use.part(), "", "", why + ".", false, false)));
            use.ways().forEach(way -> rows.add(row(use.part(), way)));
        }
        return List.copyOf(rows);
    }

    private Row row(Part part, Way way) {
        Placing lies = way.option().placing();
        String turn = say(
                "row.facing",
                "one",
                Surface.FACE_1,
                "oneLooks",
                lies.turn().of(Surface.FACE_1),
                "other",
                Surface.EDGE_1,
                "otherLooks",
                lies.turn().of(Surface.EDGE_1));
        Surface end = lies.off(Surface.END_1) > lies.off(Surface.END_2) ? Surface.END_1 : Surface.END_2;
        String off = lies.off(end) < ALIKE ? "" : say("row.off", "off", lies.off(end), "end", end);
        boolean clear = way.allowed() && way.option().clear();
        return new Row(part, turn, off, result(part, way), clear, way.chosen());
    }

    private String result(Part part, Way way) {
        if (!way.allowed()) return say("row.barred");
        String key =
                way.option().nearest().isEmpty() ? "row.free" : way.option().clear() ? "row.clear" : "row.not-clear";
        String said = sayOf(key, part, values(way.option()));
        return way.chosen() ? said + " · " + say("row.chosen") : said;
    }

    private String say(String key, Object... values) {
        return fill(key, new Words(explanation.scenario().drawing(), null), values);
    }

    /** A sentence about a part: a joint is told by the other part. */
    private String sayOf(String key, Part part, Object... values) {
        return fill(key, new Words(explanation.scenario().drawing(), part.id()), values);
    }

    private static String fill(String key, Words words, Object... values) {
        String text = Texts.shared(FILE).get(key);
        if (text == null) throw new IllegalArgumentException("no text " + key + " in " + FILE);
        String filled = Template.fill(text, Found.phrase(key, values).values(), words);
        // a fragment that is set into a sentence or a table begins small
        return key.startsWith("change.") || key.startsWith("row.") ? small(filled) : filled;
    }

    private static String small(String text) {
        return Character.toLowerCase(text.charAt(0)) + text.substring(1);
    }
}
