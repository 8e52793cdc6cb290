package org.marktwice.view.quiz;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Place;

/** What can be done in the quiz. */
public final class QuizCommands {
    static final Command ANSWER = new Command(
            "answer", Place.QUIZ, "Answer or go on", "ENTER", "Give the answer that is chosen, or go on to the next");
    static final Command DOWN =
            new Command("offer-down", Place.QUIZ, "Next answer", "DOWN", "Choose the answer after it");
    static final Command UP = new Command("offer-up", Place.QUIZ, "Answer before", "UP", "Choose the answer before it");
    static final Command SURE =
            new Command("sure", Place.QUIZ, "I am sure", "F2", "Say beforehand that you are sure; it costs nothing");
    static final Command UNSURE = new Command(
            "unsure", Place.QUIZ, "I am not sure", "F3", "Say beforehand that you are not sure; it costs nothing");
    static final Command PROGRESS = new Command(
            "progress", Place.QUIZ, "How far I am", "F4", "Show what is firm, what is shaky and what is due");

    /** An answer by its letter. */
    static final List<Command> LETTERS = IntStream.range(0, 6)
            .mapToObj(i -> {
                String letter = String.valueOf((char) ('A' + i));
                return new Command(
                        "choose-" + letter, Place.QUIZ, "Answer " + letter, letter, "Choose answer " + letter);
            })
            .toList();

    static final Command SAVE = new Command(
            "save-quiz", Place.PROGRESS, "Save for the teacher …", "menu S", "Save your answers as a file to hand on");
    static final Command PRINT = new Command(
            "print-quiz",
            Place.PROGRESS,
            "Save a sheet for paper …",
            "menu P",
            "Save a quiz as pages to print, its answers on pages of their own");
    static final Command MORE = new Command(
            "more-quiz", Place.PROGRESS, "Practise", "ENTER", "Take the quiz: what is due, or what is shakiest");
    static final Command BACK =
            new Command("quiz-back", Place.PROGRESS, "Back to the quiz", "ESCAPE", "Go back to the quiz");

    public static final List<Command> ALL = Stream.concat(
                    Stream.of(ANSWER, DOWN, UP, SURE, UNSURE, PROGRESS, SAVE, PRINT, MORE, BACK), LETTERS.stream())
            .toList();

    private QuizCommands() {}
}
