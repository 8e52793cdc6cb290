package org.marktwice.view;

import java.util.List;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Place;

/** What can be done whichever screen is showing. */
public final class WindowCommands {
    public static final Command EXERCISES = new Command(
            "exercises", Place.WINDOW, "Exercises", "menu E", "Leave this and show the exercises; your work is kept");
    public static final Command QUIZ =
            new Command("quiz", Place.WINDOW, "Quiz", "menu U", "Answer what is due in the quiz");
    public static final Command DESK =
            new Command("desk", Place.WINDOW, "Teacher's desk", "menu T", "Set exercises, hand them out, mark them");
    public static final Command OPEN =
            new Command("open", Place.WINDOW, "Open scenario file …", "menu O", "Open an exercise from a file");
    public static final Command CLOSE =
            new Command("close", Place.WINDOW, "Close", "menu Q", "Close the window; your work is kept");
    public static final Command THEME =
            new Command("theme", Place.WINDOW, "Light or dark", "menu D", "Change between light and dark");
    public static final Command LARGER =
            new Command("larger", Place.WINDOW, "Larger text", "menu EQUALS", "Make everything larger");
    public static final Command SMALLER =
            new Command("smaller", Place.WINDOW, "Smaller text", "menu MINUS", "Make everything smaller");
    public static final Command MOVEMENT = new Command(
            "movement", Place.WINDOW, "Movement on or off", "", "Show boards turning, or turn them at once");
    public static final Command KEYS =
            new Command("keys", Place.WINDOW, "Keys", "F1", "Show every command and its key; ? does too");
    public static final Command CAUTIONS =
            new Command("cautions", Place.WINDOW, "At the real bench", "", "Show the cautions for real work");

    public static final Command PRACTICE = new Command(
            "practice",
            Place.WINDOW,
            "The workshop's practice",
            "F12",
            "Show by what the work is judged here: every setting, what is usual, where authorities differ");

    public static final List<Command> ALL =
            List.of(EXERCISES, QUIZ, DESK, OPEN, CLOSE, THEME, LARGER, SMALLER, MOVEMENT, PRACTICE, KEYS, CAUTIONS);

    private WindowCommands() {}
}
