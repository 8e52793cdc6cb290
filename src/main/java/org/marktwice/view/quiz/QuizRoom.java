package org.marktwice.view.quiz;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.marktwice.files.FileRefused;
import org.marktwice.files.QuizFile;
import org.marktwice.files.QuizJournal;
import org.marktwice.picture.FigureCache;
import org.marktwice.quiz.Kind;
import org.marktwice.quiz.Learning;
import org.marktwice.quiz.Progress;
import org.marktwice.quiz.Spacing;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Screen;

/** What leads from screen to screen in the quiz of one learner. */
public final class QuizRoom implements ProgressScreen.Host {
    /** What the quiz asks of the window. */
    public interface Host {
        void show(Screen screen);

        void notice(String words);

        /** Goes to an exercise on the start page. */
        void exercise(Scenario scenario);
    }

    private final Host host;
    private final String learner;
    private final Path journal;
    private final Clock clock;
    private final FigureCache figures;
    private final Supplier<List<Scenario>> exercises;
    private final boolean movement;
    private Learning learning;
    private @Nullable QuizScreen left;

    private QuizRoom(
            Host host,
            String learner,
            Path journal,
            Clock clock,
            FigureCache figures,
            Supplier<List<Scenario>> exercises,
            boolean movement,
            Learning learning) {
        this.host = host;
        this.learner = learner;
        this.journal = journal;
        this.clock = clock;
        this.figures = figures;
        this.exercises = exercises;
        this.movement = movement;
        this.learning = learning;
    }

    /**
     * @param journal the learner's own; there need not be one yet
     * @throws FileRefused where there is one and it can't be read
     */
    public static QuizRoom open(
            Host host,
            String learner,
            Path journal,
            Clock clock,
            FigureCache figures,
            Supplier<List<Scenario>> exercises,
            boolean movement)
            throws FileRefused {
        Learning learning = learnt(learner, journal);
        return new QuizRoom(host, learner, journal, clock, figures, exercises, movement, learning);
    }

    /** What a journal tells; a new beginning where there is none. */
    private static Learning learnt(String learner, Path journal) throws FileRefused {
        if (!Files.exists(journal)) return Learning.begin(learner, Spacing.WEEKLY);
        return Learning.of(QuizFile.read(journal), Spacing.WEEKLY);
    }

    /** How many questions are due today. Takes a moment where the journal is long: not to be asked on the event thread. */
    public static int due(String learner, Path journal, Clock clock) throws FileRefused {
        return learnt(learner, journal).due(LocalDate.now(clock)).size();
    }

    /** Asks what is due; where nothing is, shows how far the learner is. */
    public void enter() {
        List<Kind> due = learning.due(today());
        if (due.isEmpty()) progress();
        else sit(due);
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }

    private void sit(List<Kind> kinds) {
        Sitting sitting = new Sitting(
                learning, kinds, this::keep, () -> OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS));
        QuizScreen screen = new QuizScreen(sitting, figures, movement, this::progress, this::end);
        left = screen;
        host.show(screen);
    }

    private void keep(QuizFile.Answer answer) throws FileRefused {
        learning = learning.after(answer);
        QuizJournal.append(journal, learner, answer);
    }

    private void end() {
        QuizScreen done = left;
        left = null;
        progress();
        if (done != null) {
            Sitting sitting = done.sitting();
            host.notice(sitting.right() + " of " + sitting.of() + " right. " + farewell());
        }
    }

    private String farewell() {
        int more = learning.due(today()).size();
        return more == 0 ? "That is all for today." : "More is due, when you like.";
    }

    private void progress() {
        host.show(new ProgressScreen(
                this,
                learner,
                Progress.of(learning, today()),
                learning.due(today()).size(),
                exercises.get(),
                left != null));
    }

    @Override
    public void practise() {
        QuizScreen going = left;
        if (going != null) {
            host.show(going);
            return;
        }
        List<Kind> due = learning.due(today());
        sit(due.isEmpty() ? learning.more(Learning.A_SITTING) : due);
    }

    @Override
    public void back() {
        QuizScreen going = left;
        if (going != null) host.show(going);
    }

    @Override
    public void exercise(Scenario scenario) {
        host.exercise(scenario);
    }

    @Override
    public long proposedSeed() {
        return learning.answers() + 1L;
    }

    @Override
    public Path journal() {
        return journal;
    }
}
