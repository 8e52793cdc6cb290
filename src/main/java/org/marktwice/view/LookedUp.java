package org.marktwice.view;

import java.time.Clock;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.function.BooleanSupplier;
import javax.swing.SwingWorker;
import org.jspecify.annotations.Nullable;
import org.marktwice.files.FileRefused;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.quiz.QuizRoom;

/**
 * How a learner stands, looked up for the page of exercises away from the event thread: the first look at a full folder takes
 * a while, and every answer in a journal is judged anew.
 */
final class LookedUp {
    private final LearnerFolder folder;
    private final Exercises exercises;
    private final Clock clock;

    LookedUp(LearnerFolder folder, Exercises exercises, Clock clock) {
        this.folder = folder;
        this.exercises = exercises;
        this.clock = clock;
    }

    /**
     * Reads and marks the learner's attempts.
     *
     * @param wanted whether that page is still to be told, and of that learner
     */
    void standings(StartScreen page, String learner, BooleanSupplier wanted) {
        exercises.forgetStandings();
        List<Scenario> all = exercises.all();
        new SwingWorker<Void, Runnable>() {
            @Override
            protected @Nullable Void doInBackground() {
                for (Scenario scenario : all) {
                    LearnerFolder.Standing standing = folder.standing(scenario, learner);
                    publish(() -> exercises.stands(scenario, standing));
                }
                return null;
            }

            @Override
            protected void process(List<Runnable> known) {
                if (!wanted.getAsBoolean()) return;
                known.forEach(Runnable::run);
                page.refresh();
            }
        }.execute();
    }

    /** Counts what is due in the quiz. */
    void quiz(StartScreen page, String learner, BooleanSupplier wanted) {
        new SwingWorker<Integer, Void>() {
            @Override
            protected Integer doInBackground() throws FileRefused {
                return QuizRoom.due(learner, folder.quizJournal(learner), clock);
            }

            @Override
            protected void done() {
                if (!wanted.getAsBoolean()) return;
                try {
                    page.quizDue(get());
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                } catch (ExecutionException e) {
                    page.say(String.valueOf(
                            e.getCause() == null ? e.getMessage() : e.getCause().getMessage()));
                }
            }
        }.execute();
    }
}
