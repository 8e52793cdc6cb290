package org.marktwice.cli;

import java.util.List;
import org.marktwice.quiz.Answers;
import org.marktwice.quiz.Offer;
import org.marktwice.quiz.Question;

/** A question in plain text. */
final class QuizText {
    private QuizText() {}

    /** What is given, what is asked, and what may be answered. */
    static void ask(Console console, String number, Question question) {
        console.line(Text.ends(number + "  " + question.kind().idea(), "level " + question.level()));
        String[] given = question.given().split("\n", 2);
        console.line(Text.wrapped("   ", given[0]));
        if (given.length > 1) console.line(given[1]);
        console.line("");
        console.line(Text.wrapped("   ", question.asks()));
        Answers answers = question.answers();
        if (answers.how() == Answers.How.FIGURE) {
            console.line("   (a number, in " + answers.unit() + ")");
        } else {
            List<Offer> offers = answers.offers();
            for (int i = 0; i < offers.size(); i++) {
                console.line(Text.wrapped(
                        "   " + Answers.letter(i) + "  ", offers.get(i).text()));
            }
        }
    }

    /** The right answer, and why; what was said stands before it. */
    static void reason(Console console, Question question) {
        console.line(Text.wrapped("   right  ", rightly(question)));
        console.line(Text.wrapped("   why    ", question.reason().text()));
    }

    /** The right answer as a sheet of answers has it. */
    static String rightly(Question question) {
        Answers answers = question.answers();
        String text = answers.rightOne().text();
        return answers.how() == Answers.How.FIGURE ? text : Answers.letter(answers.right()) + ": " + text;
    }
}
