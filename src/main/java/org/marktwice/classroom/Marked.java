package org.marktwice.classroom;

import java.util.Locale;
import java.util.Optional;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.LearnerName;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.scenario.Scenario;

/**
 * What became of one file of a folder of attempts.
 *
 * @param file its path below the folder, with {@code /}
 * @param reason why the state isn't {@link State#WHOLE}; empty where it is
 * @param attempt who did what; empty where the file couldn't be read as an attempt
 * @param scenario the one that it was marked on; empty where it was not marked
 * @param sheet the marks, computed from the actions; empty where it was not marked
 * @param journal the same for the same actions at the same times, within one run; empty where they are too few to tell anything
 * @param madeFor the learner for whom that scenario was made, where it is one of a class set; else empty
 * @param sameAs the first file, by name, with the very same actions at the very same times; empty where there is none
 */
public record Marked(
        String file,
        State state,
        String reason,
        Optional<Attempt> attempt,
        Optional<Scenario> scenario,
        Optional<MarkSheet> sheet,
        String journal,
        String madeFor,
        String sameAs) {

    /** A file is in one state only, the first of these that applies from the bottom up. */
    public enum State {
        /** Handed in and marked. */
        WHOLE,
        /** Marked as far as it goes; it was not handed in. */
        UNFINISHED,
        /** Marked; its last line was cut off and is left out. */
        TORN,
        /** Made on this scenario before it was changed. */
        CHANGED_SCENARIO,
        WRONG_SCENARIO,
        /** It means to be an attempt, but can't be read, or holds an action that can't be done. */
        UNREADABLE,
        NOT_AN_ATTEMPT;

        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** As a sentence has it. */
        public String spoken() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    static Marked not(String file, State state, String reason) {
        return new Marked(file, state, reason, Optional.empty(), Optional.empty(), Optional.empty(), "", "", "");
    }

    static Marked not(String file, State state, String reason, Attempt attempt, String journal) {
        return new Marked(
                file, state, reason, Optional.of(attempt), Optional.empty(), Optional.empty(), journal, "", "");
    }

    Marked sameAs(String other) {
        return new Marked(file, state, reason, attempt, scenario, sheet, journal, madeFor, other);
    }

    /** Whether it was made on the boards of another learner of the class set, however the names are typed. */
    public boolean onAnothersBoards() {
        return !madeFor.isEmpty() && !LearnerName.key(madeFor).equals(LearnerName.key(learner()));
    }

    /** Empty where the file couldn't be read as an attempt. */
    public String learner() {
        return attempt.map(Attempt::learner).orElse("");
    }
}
