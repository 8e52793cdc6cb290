package org.marktwice.quiz;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.marktwice.files.QuizFile;
import org.marktwice.timber.Chance;

/**
 * What a learner has learnt so far: a fold over the answers, in the order in which they were given. Immutable.
 *
 * <p>Between two answers so many days have passed as their dates say; where a clock was set back, none. So setting it back
 * loses nothing that was learnt, and setting it right again makes nothing due for a year. What was missed is not counted: an
 * idea that is long overdue is due once, and stands as it stood.
 */
public final class Learning {
    /** Five minutes' worth. */
    public static final int A_SITTING = 8;
    /** So many ideas are met for the first time in one day. */
    public static final int NEW_A_DAY = 3;

    private final String learner;
    private final Spacing spacing;
    private final Map<Kind, Standing> standings;
    private final int answers;
    private final long day;
    private final @Nullable LocalDate date;
    /** How many ideas were first met on the last day. */
    private final int met;
    /** How many answers were given on the last day. */
    private final int given;

    private Learning(
            String learner,
            Spacing spacing,
            Map<Kind, Standing> standings,
            int answers,
            long day,
            @Nullable LocalDate date,
            int met,
            int given) {
        this.learner = learner;
        this.spacing = spacing;
        this.standings = standings;
        this.answers = answers;
        this.day = day;
        this.date = date;
        this.met = met;
        this.given = given;
    }

    /** @param learner whoever it is: others get other boards */
    public static Learning begin(String learner, Spacing spacing) {
        return new Learning(learner, spacing, Map.of(), 0, 0, null, 0, 0);
    }

    /** What a journal tells. Answers to kinds of questions that this program doesn't know are passed over. */
    public static Learning of(QuizFile journal, Spacing spacing) {
        Learning learning = begin(journal.learner(), spacing);
        for (QuizFile.Answer answer : journal.answers()) learning = learning.after(answer);
        return learning;
    }

    /** After one more answer, judged by making the question anew. */
    public Learning after(QuizFile.Answer answer) {
        LocalDate on = answer.at().toLocalDate();
        Kind kind = Kind.of(answer.kind()).orElse(null);
        if (kind == null || answer.level() > Quiz.HARDEST) {
            return new Learning(learner, spacing, standings, answers + 1, day, date, met, given);
        }
        boolean right = Quiz.question(kind, answer.level(), answer.seed())
                .answers()
                .hear(answer.said())
                .filter(Answers.Heard::right)
                .isPresent();
        return after(on, kind, right, !answer.sure().orElse(true));
    }

    /** After one more answer that is judged already. @param unsure whether the learner said so beforehand */
    Learning after(LocalDate on, Kind kind, boolean right, boolean unsure) {
        long now = day + passed(on);
        Standing before = standing(kind);
        Map<Kind, Standing> next = new EnumMap<>(Kind.class);
        next.putAll(standings);
        next.put(kind, before.after(now, right, unsure, spacing));
        boolean sameDay = now == day;
        int metToday = (sameDay ? met : 0) + (before.last() == Standing.Last.NEVER ? 1 : 0);
        return new Learning(learner, spacing, next, answers + 1, now, on, metToday, (sameDay ? given : 0) + 1);
    }

    /** Days since the last answer, by the dates; none where the clock was set back. */
    private long passed(LocalDate on) {
        return date == null ? 0 : Math.max(0, ChronoUnit.DAYS.between(date, on));
    }

    /** The learner's own day: a clock that stands before the last answer was set back, and is taken for the day after. */
    private long today(LocalDate today) {
        return date != null && today.isBefore(date) ? day + 1 : day + passed(today);
    }

    public String learner() {
        return learner;
    }

    public int answers() {
        return answers;
    }

    public Standing standing(Kind kind) {
        return standings.getOrDefault(kind, Standing.NEW);
    }

    public Standing.Word word(Kind kind) {
        return standing(kind).word(spacing);
    }

    /** Whether an idea that was met is due. */
    public boolean isDue(Kind kind, LocalDate today) {
        return standings.containsKey(kind) && standing(kind).isDue(today(today));
    }

    /**
     * What to do today: the ideas that are due, the longest overdue first, then a few new ones in their order. No more than
     * a sitting holds, with what was done today already; what is left over waits.
     */
    public List<Kind> due(LocalDate today) {
        boolean sameDay = today(today) == day;
        List<Kind> due = new ArrayList<>(Stream.of(Kind.values())
                .filter(k -> isDue(k, today))
                .sorted(Comparator.comparingLong(k -> standing(k).dueOn()))
                .toList());
        Stream.of(Kind.values())
                .filter(k -> !standings.containsKey(k))
                .limit(Math.max(0, NEW_A_DAY - (sameDay ? met : 0)))
                .forEach(due::add);
        int left = Math.max(0, A_SITTING - (sameDay ? given : 0));
        return List.copyOf(due.subList(0, Math.min(due.size(), left)));
    }

    /** Days until an idea is due; 0 where it is. */
    public long daysUntil(Kind kind, LocalDate today) {
        return Math.max(0, standing(kind).dueOn() - today(today));
    }

    /** What to practise when nothing is due, or more is wanted: the shakiest first, then what is due soonest, then what is new. */
    public List<Kind> more(int questions) {
        return Stream.of(Kind.values())
                .sorted(Comparator.<Kind>comparingInt(
                                k -> standings.containsKey(k) ? standing(k).step() : Integer.MAX_VALUE)
                        .thenComparingLong(k -> standing(k).dueOn()))
                .limit(questions)
                .toList();
    }

    /** The next question about an idea: boards that this learner has never seen. */
    public Question question(Kind kind) {
        long own = 1_000_003L * learner.hashCode() + answers;
        long seed = Chance.of(own).split().bits() >>> 16;
        return Quiz.question(kind, standing(kind).level(), seed);
    }
}
