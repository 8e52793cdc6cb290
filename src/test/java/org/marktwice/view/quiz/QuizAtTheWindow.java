package org.marktwice.view.quiz;

import java.awt.Point;
import java.nio.file.Path;
import java.util.Objects;
import org.marktwice.quiz.Offer;
import org.marktwice.quiz.Question;
import org.marktwice.view.Screen;

/** Looks into the quiz's screens, for those who sit before the window. */
public final class QuizAtTheWindow {
    private QuizAtTheWindow() {}

    public static Question question(Screen screen) {
        return ((QuizScreen) screen).sitting().question().orElseThrow();
    }

    public static Point place(Screen screen, Offer.Place place) {
        return Objects.requireNonNull(((QuizScreen) screen).picture())
                .pointOf(place)
                .orElseThrow();
    }

    /** Answers the question rightly, or wrongly. */
    public static void answer(Screen screen, boolean rightly) {
        ((QuizScreen) screen).give(rightly);
    }

    public static void progress(Screen screen) {
        screen.deed(QuizCommands.PROGRESS)
                .actionPerformed(
                        new java.awt.event.ActionEvent(screen, java.awt.event.ActionEvent.ACTION_PERFORMED, ""));
    }

    public static void saveSheet(Screen screen, Path file) {
        ((ProgressScreen) screen).paper().saveTo(file);
    }

    public static void save(Screen screen, Path file) {
        ((ProgressScreen) screen).saveTo(file);
    }
}
