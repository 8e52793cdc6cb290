package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.marktwice.bench.Action;
import org.marktwice.rulebook.Finding.Phrase;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.rulebook.MarkSheet.Entry;
import org.marktwice.scenario.Scenario;

/** Hints about what is not as it should be yet: where to look, then what to check, then what the rule says. */
public final class Hints {
    private static final String FILE = "hints.properties";

    private Hints() {}

    /**
     * A hint to be given.
     *
     * @param grade 1 to {@link Action.Hint#GRADES}
     * @param words a sentence or two
     */
    public record Given(Finding finding, int grade, String words) {
        /** The hint as it goes into the journal. */
        public Action.Hint at(double t) {
            Subject about = finding.subject();
            return new Action.Hint(t, finding.rule(), about.board(), about.part(), about.joint(), grade);
        }
    }

    /**
     * The next hint for whoever has this board in hand: about what is wrong there first, then elsewhere, then about what is
     * still open; a grade more each time that it is asked for. Empty where all that can be judged is sound.
     */
    public static Optional<Given> next(Situation situation, String board) {
        List<Entry> all = new ArrayList<>(RuleBook.judge(situation).entries().stream()
                .filter(e -> e.finding().verdict() != Verdict.SOUND)
                .sorted(pressing(board))
                .toList());
        Optional<Entry> fresh = all.stream()
                .filter(e -> used(situation, e.finding()) < Action.Hint.GRADES)
                .findFirst();
        return fresh.or(() -> all.stream().findFirst()).map(e -> given(situation, e.finding()));
    }

    private static Comparator<Entry> pressing(String board) {
        return Comparator.<Entry>comparingInt(e -> e.finding().verdict() == Verdict.OPEN ? 1 : 0)
                .thenComparingInt(e -> nearness(e.finding().subject(), board))
                .thenComparingInt(e -> e.rule().stage().ordinal())
                .thenComparingDouble(e -> -e.lost());
    }

    private static int nearness(Subject subject, String board) {
        if (board.equals(subject.board())) return 0;
        if (subject.board() != null) return 1;
        return subject.part() != null ? 2 : 3;
    }

    private static Given given(Situation situation, Finding finding) {
        int grade = Math.min(used(situation, finding) + 1, Action.Hint.GRADES);
        return new Given(finding, grade, words(finding, grade, situation.scenario()));
    }

    /** The highest grade that was given about this; 0 where none was. */
    private static int used(Situation situation, Finding finding) {
        Subject about = finding.subject();
        return situation.bench().hints().stream()
                .filter(h -> h.rule().equals(finding.rule())
                        && Objects.equals(h.board(), about.board())
                        && Objects.equals(h.part(), about.part())
                        && Objects.equals(h.joint(), about.joint()))
                .mapToInt(Action.Hint::grade)
                .max()
                .orElse(0);
    }

    /** A hint's grade in words: {@code where to look}. */
    public static String grade(int grade) {
        return switch (grade) {
            case 1 -> "where to look";
            case 2 -> "what to check";
            default -> "what the rule says";
        };
    }

    private static String words(Finding finding, int grade, Scenario scenario) {
        Words words = new Words(scenario.drawing(), finding.subject().part());
        Texts.RuleTexts texts = Texts.of(finding.rule());
        Phrase phrase = switch (grade) {
            case 1 -> where(finding);
            case 2 -> Found.phrase("check", "title", texts.title(), "instead", texts.instead());
            default -> Found.phrase("rule", "says", Texts.says(finding, scenario), "why", texts.why());
        };
        String template = Texts.shared(FILE).get(phrase.key());
        if (template == null) throw new IllegalArgumentException("no text " + phrase.key() + " in " + FILE);
        return Template.fill(template, phrase.values(), words);
    }

    private static Phrase where(Finding finding) {
        Subject about = finding.subject();
        Finding.Evidence shows = finding.evidence();
        if (about.board() == null) {
            return about.part() == null ? Phrase.of("where.job") : Found.phrase("where.part", "part", about.part());
        }
        if (!shows.knots().isEmpty() && !shows.surfaces().isEmpty()) {
            return Found.phrase(
                    "where.knots", "knots", shows.knots(), "surfaces", shows.surfaces(), "board", about.board());
        }
        if (about.joint() != null) {
            return Found.phrase("where.joint", "joint", about.joint(), "board", about.board());
        }
        return shows.surfaces().isEmpty()
                ? Found.phrase("where.board", "board", about.board())
                : Found.phrase("where.surfaces", "surfaces", shows.surfaces(), "board", about.board());
    }
}
