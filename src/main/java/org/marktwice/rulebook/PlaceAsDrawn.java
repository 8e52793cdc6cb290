package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.fit.SetOut.Marked;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Surface;

/**
 * Each line squared across lies where the drawing puts it: within half the size tolerance sound, within it close. One
 * finding a joint of a board, and one for where it is cut to length, about the line that is farthest out. What is struck
 * from a mate is another rule's business.
 */
final class PlaceAsDrawn implements Rule {
    private static final double CLOSE = 0.5;

    /** A figure misread is out by this or that to within so much, millimetres. */
    private static final double MISREAD = 0.6;

    private static final double TEN = 10;

    @Override
    public String id() {
        return "place-as-drawn";
    }

    @Override
    public Stage stage() {
        return Stage.SETTING_OUT;
    }

    @Override
    public double worth() {
        return 3;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        return SetBoard.judge(situation, this, "says.open", this::findings);
    }

    private List<Finding> findings(SetBoard board) {
        List<Finding> findings = new ArrayList<>();
        for (String joint : board.joints()) {
            List<Marked> squared = board.out().marked(joint).stream()
                    .filter(m -> m.side().isSquared())
                    .toList();
            if (!squared.isEmpty()) findings.add(finding(board, joint, squared));
        }
        List<Marked> ends =
                board.out().marked().stream().filter(m -> m.side().isEnd()).toList();
        if (!ends.isEmpty()) findings.add(finding(board, null, ends));
        return findings;
    }

    private Finding finding(SetBoard board, @Nullable String joint, List<Marked> squared) {
        Found found = joint == null ? board.found(this) : board.found(this, joint);
        boolean open = squared.stream().anyMatch(m -> m.line() == null);
        Optional<Marked> worst = squared.stream()
                .filter(m -> m.line() != null && !isFromMate(board, m))
                .max(Comparator.comparingDouble(m -> Math.abs(m.off())));
        double tolerance = board.situation().practice().size();
        boolean wrong = worst.filter(m -> Math.abs(m.off()) > tolerance).isPresent();
        if (open && !wrong) {
            return joint == null
                    ? found.open("says.open-ends", "board", board.id())
                    : found.open("says.open-joint", "board", board.id(), "joint", joint);
        }
        if (worst.isEmpty()) return found.sound("says.sound-mate", "board", board.id());
        return finding(board, found, worst.get());
    }

    private static boolean isFromMate(SetBoard board, Marked marked) {
        return marked.struck()
                .filter(l -> board.action(l) instanceof Action.Line a && a.mate() != null)
                .isPresent();
    }

    private Finding finding(SetBoard board, Found found, Marked worst) {
        double off = Math.abs(worst.off());
        double tolerance = board.situation().practice().size();
        var line = worst.struck().orElseThrow();
        Reading reading = reading(board, worst);
        Object[] values = {
            "board", board.id(),
            "off", off,
            "limit", tolerance / 2,
            "tolerance", tolerance,
            "end", reading.end(),
            "wanted", reading.wanted(),
            "set", reading.set()
        };
        found.at(line.step())
                .measured(off, "mm", tolerance / 2)
                .showing(line.on())
                .showing(board.middle(line))
                .instead("better.place", values);
        if (off <= tolerance / 2) return found.sound("says.sound", values);
        if (off <= tolerance) return found.close(CLOSE, "says.close", values);
        if (Math.abs(off - TEN) <= MISREAD) return found.wrong("says.wrong-ten", values);
        if (swapped(reading.set(), reading.wanted())) return found.wrong("says.wrong-swapped", values);
        return found.wrong("says.wrong", values);
    }

    /** Where the line lies from the end it was measured from, and where it should. */
    private record Reading(Surface end, double set, double wanted) {}

    private static Reading reading(SetBoard board, Marked marked) {
        var line = marked.struck().orElseThrow();
        Surface end = board.action(line) instanceof Action.Line a ? board.end(a) : Surface.END_1;
        double from = end == Surface.END_1 ? 0 : board.board().size().length();
        // a board that is cut to length is measured from there
        double cut = board.out().marked().stream()
                .filter(m -> m.side().isEnd() && m.side().waste() == end.sign() && m.line() != null && m != marked)
                .mapToDouble(m -> m.side().at())
                .findFirst()
                .orElse(from);
        return new Reading(
                end, Math.abs(line.measured() - cut), Math.abs(marked.side().at() - cut));
    }

    /** Whether the two figures have the same digits, two neighbours of them exchanged. */
    private static boolean swapped(double one, double other) {
        String a = String.valueOf(Math.round(one));
        String b = String.valueOf(Math.round(other));
        if (a.length() != b.length() || a.equals(b)) return false;
        for (int i = 0; i + 1 < a.length(); i++) {
            String exchanged = a.substring(0, i) + a.charAt(i + 1) + a.charAt(i) + a.substring(i + 2);
            if (exchanged.equals(b)) return true;
        }
        return false;
    }
}
