package org.marktwice.view.bench;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.rulebook.Estimates;
import org.marktwice.rulebook.Finding;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Situation;
import org.marktwice.rulebook.Texts;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Session;

/** What a learner is told while working, as early as the scenario's guidance lets. */
final class Guidance {
    /**
     * @param callout the rule's title, to stand at the place
     * @param line all that there is to say
     */
    record Told(Callout callout, Note line) {}

    private record Subject(String rule, Finding.Subject of) {}

    private Guidance() {}

    /** What the last action decided, the worst of it first; empty where it decided nothing, or the learner is told at hand-in. */
    static Optional<Told> after(Session session, SurfacePoint where) {
        Practice.Guidance guidance = session.bench().guidance();
        Action last = session.bench().action(session.bench().steps());
        boolean settles = last instanceof Action.Turning || last instanceof Action.SetAside;
        boolean told = guidance == Practice.Guidance.EACH_STEP || (guidance == Practice.Guidance.EACH_PART && settles);
        if (!told || !(last instanceof Action.OnBoard onBoard)) return Optional.empty();
        List<MarkSheet.Entry> decided = guidance == Practice.Guidance.EACH_PART
                ? onBoard(session.situation(), onBoard.board())
                : changed(session);
        return decided.stream()
                .max(Comparator.comparing((MarkSheet.Entry e) -> e.finding().verdict() != Verdict.SOUND)
                        .thenComparingDouble(MarkSheet.Entry::lost)
                        .thenComparingDouble(MarkSheet.Entry::worth))
                .map(worst -> told(worst, decided, session, where));
    }

    private static List<MarkSheet.Entry> onBoard(Situation now, String board) {
        return RuleBook.judge(now).entries().stream()
                .filter(e -> e.finding().verdict() != Verdict.OPEN)
                .filter(e -> board.equals(e.finding().subject().board()))
                .toList();
    }

    /** The findings that the last action brought, or whose verdict it changed: what a step decides may rest on earlier ones. */
    private static List<MarkSheet.Entry> changed(Session session) {
        Map<Subject, Verdict> before = new HashMap<>();
        for (MarkSheet.Entry e : RuleBook.judge(before(session)).entries()) {
            before.put(subject(e), e.finding().verdict());
        }
        return RuleBook.judge(session.situation()).entries().stream()
                .filter(e -> e.finding().verdict() != Verdict.OPEN)
                .filter(e -> e.finding().verdict() != before.get(subject(e)))
                .toList();
    }

    private static Subject subject(MarkSheet.Entry entry) {
        return new Subject(entry.rule().id(), entry.finding().subject());
    }

    private static Situation before(Session session) {
        int steps = session.bench().steps();
        try {
            Bench earlier = Bench.after(session.scenario(), session.attempt().upTo(steps - 1));
            return session.situation().at(earlier);
        } catch (CannotDo e) {
            throw new IllegalStateException("a prefix of a log is a log", e);
        }
    }

    private static Told told(
            MarkSheet.Entry worst, List<MarkSheet.Entry> decided, Session session, SurfacePoint where) {
        Finding finding = worst.finding();
        Note.Tone tone = Note.Tone.of(finding.verdict());
        String title = Texts.of(finding.rule()).title();
        String line = Texts.says(finding, session.scenario());
        if (finding.verdict() != Verdict.SOUND) line += " " + Texts.instead(finding, session.scenario());
        String others = decided.stream()
                .filter(e -> !e.equals(worst) && e.finding().verdict() != Verdict.SOUND)
                .map(e -> Words.lower(Texts.of(e.rule().id()).title()))
                .distinct()
                .collect(Collectors.joining(", "));
        if (!others.isEmpty()) line += " See to these too: " + others + ".";
        line += Estimates.justAnswered(session.situation())
                .map(e -> String.format(
                        Locale.ROOT,
                        " You estimated %s, it is %s.",
                        Reading.mm(e.estimated()),
                        Reading.mm(e.computed())))
                .orElse("");
        String word = finding.verdict().id();
        return new Told(new Callout(where, tone, title, word), new Note(tone, line));
    }
}
