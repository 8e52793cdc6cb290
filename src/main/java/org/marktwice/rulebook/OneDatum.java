package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.marktwice.bench.Action.Datum;
import org.marktwice.fit.SetOut;
import org.marktwice.rulebook.SetBoard.Squared;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Surface;

/**
 * Along each part all distances start at one squared end. Chained ones add up their errors of reading. What is struck from
 * a mate, or measured within one joint from its other shoulder, chains nothing.
 */
final class OneDatum implements Rule {
    /** A steel rule is read to half a millimetre. */
    private static final double READING = 0.5;

    @Override
    public String id() {
        return "one-datum";
    }

    @Override
    public Stage stage() {
        return Stage.SETTING_OUT;
    }

    @Override
    public double worth() {
        return 1;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        return SetBoard.judge(situation, this, "says.open", b -> List.of(finding(b)));
    }

    private Finding finding(SetBoard board) {
        List<Squared> measured =
                board.squared().stream().filter(s -> isMeasured(s)).toList();
        if (measured.isEmpty()) return board.found(this).open("says.open-lines", "board", board.id());
        Optional<Squared> longest = measured.stream().max(Comparator.comparingInt(s -> links(board, s)));
        int links = longest.map(s -> links(board, s)).orElse(1);
        if (links > 1) return chained(board, longest.orElseThrow(), links);
        Set<Surface> ends = ends(board, measured);
        Found found =
                board.found(this).at(measured.get(measured.size() - 1).line().step());
        if (ends.size() > 1) {
            double spare = board.placing().surplus();
            return found.measured(ends.size(), "count", 1)
                    .instead(
                            "better.one-end",
                            "board",
                            board.id(),
                            "end",
                            ends.iterator().next())
                    .wrong("says.wrong-ends", "board", board.id(), "ends", List.copyOf(ends), "spare", spare);
        }
        return found.measured(1, "count", 1)
                .sound("says.sound", "board", board.id(), "end", ends.iterator().next());
    }

    private Finding chained(SetBoard board, Squared last, int links) {
        Object[] values = {
            "board",
            board.id(),
            "links",
            links,
            "reading",
            READING,
            "worst",
            links * READING,
            "likely",
            Math.sqrt(links) * READING,
            "end",
            board.end(last.action())
        };
        return board.found(this)
                .at(last.line().step())
                .measured(links, "count", 1)
                .showing(last.line().on())
                .showing(board.middle(last.line()))
                .instead("better.end", values)
                .wrong("says.wrong-chained", values);
    }

    /** Whether a distance was read off the rule for it. */
    private static boolean isMeasured(Squared s) {
        return s.action().mate() == null && !s.isCarriedOn();
    }

    /** From how many readings in a row the place of a line comes. */
    private static int links(SetBoard board, Squared s) {
        if (!(s.action().from() instanceof Datum.Step step)) return 1;
        Optional<Squared> earlier = board.squared().stream()
                .filter(e -> e.line().step() == step.step())
                .findFirst();
        // the line at which the board is cut to length is where lengths begin
        if (earlier.isEmpty() || isEnd(board, earlier.get())) return 1;
        int before = links(board, earlier.get());
        return s.isCarriedOn() || s.action().mate() != null || sameJoint(board, s, earlier.get()) ? before : before + 1;
    }

    private static boolean isEnd(SetBoard board, Squared s) {
        return board.out().marked().stream().anyMatch(m -> m.side().isEnd() && has(m, s));
    }

    private static boolean has(SetOut.Marked marked, Squared s) {
        return marked.round().stream().anyMatch(l -> l.step() == s.line().step());
    }

    private static boolean sameJoint(SetBoard board, Squared one, Squared other) {
        return board.joints().stream()
                .anyMatch(j -> board.out().marked(j).stream().anyMatch(m -> has(m, one))
                        && board.out().marked(j).stream().anyMatch(m -> has(m, other)));
    }

    /** The ends that distances start at; the line at which an end is cut off counts as that end. */
    private static Set<Surface> ends(SetBoard board, List<Squared> measured) {
        List<Squared> inside = new ArrayList<>(measured);
        inside.removeIf(s -> isEnd(board, s));
        Set<Surface> ends = new LinkedHashSet<>();
        for (Squared s : inside.isEmpty() ? measured : inside) ends.add(board.end(s.action()));
        return ends;
    }
}
