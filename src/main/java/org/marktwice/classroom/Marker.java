package org.marktwice.classroom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.classroom.ExerciseSet.Place;
import org.marktwice.classroom.Marked.State;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.files.FoundFile;
import org.marktwice.files.KnownLines;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Situation;
import org.marktwice.scenario.Scenario;

/**
 * Marks files one by one, whatever they are; never throws for what a file holds. What follows from a scenario alone is
 * computed once for all its attempts. Safe for several threads.
 */
public final class Marker {
    /** Fewer actions than this are the same by chance, and say nothing. */
    private static final int TELLING = 4;

    private final ExerciseSet set;
    private final boolean evenIfChanged;
    private final KnownLines lines = new KnownLines();
    private final Map<Scenario, Situation> starts = new IdentityHashMap<>();

    /** @param evenIfChanged whether attempts at an earlier version of a scenario are marked on the present one */
    public Marker(ExerciseSet set, boolean evenIfChanged) {
        this.set = set;
        this.evenIfChanged = evenIfChanged;
        for (Scenario scenario : set.scenarios()) starts.put(scenario, Situation.of(Bench.of(scenario)));
    }

    /** @param name what the answer calls the file */
    public Marked mark(Path file, String name) {
        try {
            BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
            if (found.isDirectory()) return Marked.not(name, State.UNREADABLE, "a folder behind a link; not entered");
            if (!found.isRegularFile()) return Marked.not(name, State.NOT_AN_ATTEMPT, "not an ordinary file");
            return mark(FoundFile.read(file, name, found), name);
        } catch (IOException e) {
            return unread(file, name);
        } catch (FileRefused e) {
            return Marked.not(name, State.UNREADABLE, reason(e));
        } catch (RuntimeException | StackOverflowError e) {
            return Marked.not(name, State.UNREADABLE, "a fault in the program, please report it: " + e);
        }
    }

    /** A file that isn't to be looked at: its reader says why. */
    private Marked unread(Path file, String name) {
        try {
            return mark(FoundFile.read(file, name), name);
        } catch (FileRefused e) {
            return Marked.not(name, State.UNREADABLE, reason(e));
        }
    }

    private Marked mark(FoundFile found, String name) throws FileRefused {
        if (!found.meansToBeAnAttempt()) {
            return Marked.not(name, State.NOT_AN_ATTEMPT, "its first line is no attempt's header");
        }
        AttemptFile file;
        try {
            file = Exercise.checked(found.attempt(lines));
        } catch (FileRefused e) {
            Marked bare = Marked.not(name, State.UNREADABLE, reason(e));
            return found.header()
                    .map(a -> Marked.not(name, State.UNREADABLE, reason(e), a, ""))
                    .orElse(bare);
        }
        Attempt attempt = file.attempt();
        String journal = journal(attempt.actions());
        Place place = set.placeOf(attempt);
        if (place instanceof Place.At at) return marked(file, at.scenario(), journal);
        if (place instanceof Place.Elsewhere elsewhere) {
            return Marked.not(name, State.WRONG_SCENARIO, elsewhere.why(), attempt, journal);
        }
        Place.Changed changed = (Place.Changed) place;
        return evenIfChanged
                ? onThePresentOne(file, changed, journal)
                : Marked.not(name, State.CHANGED_SCENARIO, changed.why(), attempt, journal);
    }

    private Marked marked(AttemptFile file, Scenario scenario, String journal) {
        Attempt attempt = file.attempt();
        AttemptFile.Opened opened;
        try {
            opened = file.on(start(scenario).bench());
        } catch (FileRefused e) {
            return Marked.not(file.name(), State.UNREADABLE, reason(e), attempt, journal);
        }
        State state = file.torn() ? State.TORN : opened.bench().handedIn() ? State.WHOLE : State.UNFINISHED;
        String reason = switch (state) {
            case TORN -> "its last line was cut off and is left out; every line before it counts";
            case UNFINISHED -> "not handed in; marked as far as it goes";
            default -> "";
        };
        return answer(file, state, reason, opened, journal);
    }

    private Marked onThePresentOne(AttemptFile file, Place.Changed changed, String journal) {
        Attempt a = file.attempt();
        Attempt bare = new Attempt(a.scenario(), "", a.learner(), a.started(), a.actions());
        AttemptFile without = new AttemptFile(file.name(), bare, file.lines(), file.torn(), file.notices());
        try {
            String reason = changed.why() + "; marked on the present one, as asked";
            return answer(
                    file,
                    State.CHANGED_SCENARIO,
                    reason,
                    without.on(start(changed.now()).bench()),
                    journal);
        } catch (FileRefused e) {
            String reason = changed.why() + "; on the present one it can't be done: " + reason(e);
            return Marked.not(file.name(), State.CHANGED_SCENARIO, reason, a, journal);
        }
    }

    private Marked answer(AttemptFile file, State state, String reason, AttemptFile.Opened opened, String journal) {
        Scenario scenario = opened.bench().scenario();
        MarkSheet sheet = RuleBook.judge(start(scenario).at(opened.bench()));
        return new Marked(
                file.name(),
                state,
                reason,
                Optional.of(file.attempt()),
                Optional.of(scenario),
                Optional.of(sheet),
                journal,
                set.madeFor(scenario),
                "");
    }

    /**
     * What was done and when, whoever did it, however the lines are laid out: all of the actions' own hashes, mixed two
     * ways into 128 bits. Good for one run of the program only.
     */
    private static String journal(List<Action> actions) {
        if (actions.size() < TELLING) return "";
        long one = 0;
        long other = 0;
        for (Action action : actions) {
            long hash = action.hashCode() * 0x9E3779B97F4A7C15L;
            one = Long.rotateLeft(one ^ hash, 23) * 0xD6E8FEB86659FD93L;
            other = (other + hash) * 0xFF51AFD7ED558CCDL;
        }
        return Long.toHexString(one) + "-" + Long.toHexString(other) + "-" + actions.size();
    }

    private Situation start(Scenario scenario) {
        Situation start = starts.get(scenario);
        if (start == null) throw new IllegalArgumentException("not a scenario of this set: " + scenario.id());
        return start;
    }

    /** Without the file's name, which stands beside it. */
    private static String reason(FileRefused e) {
        StringBuilder reason = new StringBuilder();
        if (e.line() > 0) reason.append("line ").append(e.line()).append(": ");
        if (!e.path().isEmpty() && !e.path().equals("$"))
            reason.append(e.path()).append(": ");
        return reason.append(e.reason()).toString();
    }
}
