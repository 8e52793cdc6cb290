package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3d;
import org.marktwice.drawing.Pair;
import org.marktwice.fit.SetOut.Marked;
import org.marktwice.fit.TrueLine;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.scenario.Stage;

/**
 * Opposite parts carry the same distances from the same end, within half a millimetre. One finding a pair, about the line
 * that differs most.
 */
final class PairAlike implements Rule {
    private static final double LIMIT = 0.5;
    private static final double CLOSE = 0.5;
    private static final double SAME = 0.02;

    /** The same line on both, and how far it lies from the low end of its part as drawn. */
    private record Like(TrueLine one, TrueLine other, double at, double otherAt) {
        double apart() {
            return Math.abs(at - otherAt);
        }
    }

    @Override
    public String id() {
        return "pair-alike";
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
        List<Finding> findings = new ArrayList<>();
        for (Pair pair : situation.scenario().drawing().pairs()) {
            boolean cut = !situation.scenario().drawing().cuts(pair.one()).isEmpty();
            Optional<SetBoard> one = board(situation, pair.one().id());
            Optional<SetBoard> other = board(situation, pair.other().id());
            if (one.isPresent() && other.isPresent()) {
                if (!squared(one.get()).isEmpty()) findings.add(finding(pair, one.get(), other.get()));
            } else if (cut && !waits(situation, pair)) {
                findings.add(open(pair));
            }
        }
        return findings;
    }

    private static boolean waits(Situation situation, Pair pair) {
        return FitFindings.waits(situation, pair.one().id())
                || FitFindings.waits(situation, pair.other().id());
    }

    private Finding open(Pair pair) {
        return Found.by(this, Subject.part(pair.one().id()))
                .open("says.open", "one", pair.one().id(), "other", pair.other().id());
    }

    private static Optional<SetBoard> board(Situation situation, String part) {
        return SetBoard.all(situation).stream()
                .filter(b -> b.part().id().equals(part))
                .findFirst();
    }

    private Finding finding(Pair pair, SetBoard one, SetBoard other) {
        List<Like> likes = likes(pair, one, other);
        List<Marked> wanted = squared(one);
        if (likes.size() < wanted.size() || likes.isEmpty()) {
            Optional<Like> worst = likes.stream().filter(l -> l.apart() > LIMIT).findFirst();
            if (worst.isEmpty()) return open(pair);
        }
        Like worst = likes.get(0);
        for (Like like : likes) worst = like.apart() > worst.apart() ? like : worst;
        Object[] values = {
            "one", one.id(),
            "other", other.id(),
            "at", worst.at(),
            "otherAt", worst.otherAt(),
            "apart", worst.apart()
        };
        Found found = other.found(this)
                .at(Math.max(worst.one().step(), worst.other().step()))
                .measured(worst.apart(), "mm", LIMIT)
                .showing(worst.other().on())
                .showing(other.middle(worst.other()))
                .instead("better.together", values);
        if (worst.apart() <= LIMIT) return found.sound("says.sound", values);
        return worst.apart() <= 2 * LIMIT
                ? found.close(CLOSE, "says.close", values)
                : found.wrong("says.wrong", values);
    }

    private static List<Marked> squared(SetBoard board) {
        return board.out().marked().stream()
                .filter(m -> m.side().isSquared() && !m.side().isEnd())
                .toList();
    }

    private static List<Like> likes(Pair pair, SetBoard one, SetBoard other) {
        List<Like> likes = new ArrayList<>();
        for (Marked m : squared(one)) {
            for (Marked n : squared(other)) {
                boolean same = Math.abs(drawn(pair, one, m, false) - drawn(pair, other, n, true)) <= SAME
                        && towards(one, m) == (pair.across() == other.part().length() ? -1 : 1) * towards(other, n);
                if (!same || m.line() == null || n.line() == null) continue;
                likes.add(new Like(
                        m.struck().orElseThrow(),
                        n.struck().orElseThrow(),
                        from(pair, one, m.struck().orElseThrow().measured(), false),
                        from(pair, other, n.struck().orElseThrow().measured(), true)));
                break;
            }
        }
        return likes;
    }

    private static double drawn(Pair pair, SetBoard board, Marked m, boolean mirrored) {
        return from(pair, board, m.side().at(), mirrored);
    }

    /** Which way along the job the waste lies. */
    private static int towards(SetBoard board, Marked m) {
        return m.side().waste() * board.placing().turn().along(0).sign();
    }

    /** From the low end of the part as drawn; from its high end for the second of a pair that is mirrored along its length. */
    private static double from(Pair pair, SetBoard board, double x, boolean second) {
        int axis = board.part().length().ordinal();
        double at = board.placing().toJob(new Vector3d(x, 0, 0)).get(axis);
        boolean mirrored = second && pair.across() == board.part().length();
        return mirrored
                ? board.part().box().max(axis) - at
                : at - board.part().box().min(axis);
    }
}
