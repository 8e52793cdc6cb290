package org.marktwice.view.bench;

import java.util.Comparator;
import java.util.Optional;
import org.marktwice.bench.Action;
import org.marktwice.rulebook.Finding;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Texts;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Session;

/** What a learner is told while working, as early as the scenario's guidance lets. */
final class Guidance {
    private Guidance() {}

    /** What the last action decided, the worst of it; empty where it decided nothing, or the learner is told at hand-in only. */
    static Optional<Callout> after(Session session, SurfacePoint where) {
        Practice.Guidance guidance = session.scenario().practice().guidance();
        int step = session.bench().steps();
        Action last = session.bench().action(step);
        boolean told = switch (guidance) {
            case EACH_STEP -> true;
            case EACH_PART -> last instanceof Action.Turning || last instanceof Action.SetAside;
            default -> false;
        };
        if (!told || !(last instanceof Action.OnBoard onBoard)) return Optional.empty();
        boolean wholePart = guidance == Practice.Guidance.EACH_PART;
        return RuleBook.judge(session.situation()).entries().stream()
                .filter(e -> e.finding().verdict() != Verdict.OPEN)
                .filter(e -> wholePart
                        ? onBoard.board().equals(e.finding().subject().board())
                        : Integer.valueOf(step).equals(e.finding().step()))
                .max(Comparator.comparing((MarkSheet.Entry e) -> e.finding().verdict() != Verdict.SOUND)
                        .thenComparingDouble(MarkSheet.Entry::lost)
                        .thenComparingDouble(MarkSheet.Entry::worth))
                .map(e -> callout(e.finding(), session, where));
    }

    private static Callout callout(Finding finding, Session session, SurfacePoint where) {
        String says = Texts.says(finding, session.scenario());
        String instead = finding.verdict() == Verdict.SOUND ? "" : Texts.instead(finding, session.scenario());
        return new Callout(where, Note.Tone.of(finding.verdict()), says, instead);
    }
}
