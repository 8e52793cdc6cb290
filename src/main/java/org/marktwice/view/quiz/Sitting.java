package org.marktwice.view.quiz;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.marktwice.files.FileRefused;
import org.marktwice.files.QuizFile;
import org.marktwice.quiz.Answers;
import org.marktwice.quiz.Kind;
import org.marktwice.quiz.Learning;
import org.marktwice.quiz.Question;

/** A quiz being taken: the questions one after another, each answered once. */
final class Sitting {
    /** Where answers are kept. */
    interface Sink {
        /** @throws FileRefused where the answer could not be saved; it counts in this sitting all the same */
        void keep(QuizFile.Answer answer) throws FileRefused;
    }

    private final List<Kind> kinds;
    private final Sink sink;
    private final Supplier<OffsetDateTime> now;
    private Learning learning;
    private int at;
    private int right;
    private @Nullable Question question;
    private Optional<Answers.Heard> heard = Optional.empty();
    private Optional<Boolean> sure = Optional.empty();
    private String trouble = "";

    Sitting(Learning learning, List<Kind> kinds, Sink sink, Supplier<OffsetDateTime> now) {
        this.learning = learning;
        this.kinds = List.copyOf(kinds);
        this.sink = sink;
        this.now = now;
        question = kinds.isEmpty() ? null : learning.question(kinds.get(0));
    }

    /** The question that is asked; empty where all have been. */
    Optional<Question> question() {
        return Optional.ofNullable(question);
    }

    /** 1 is the first. */
    int number() {
        return at + 1;
    }

    int of() {
        return kinds.size();
    }

    /** How many were right so far. */
    int right() {
        return right;
    }

    Learning learning() {
        return learning;
    }

    /** What was answered to the question; empty until it is. */
    Optional<Answers.Heard> heard() {
        return heard;
    }

    /** How sure the learner says they are; empty where they have not said. */
    Optional<Boolean> sure() {
        return sure;
    }

    /** Said before answering only; said again it is taken back. */
    void sure(boolean is) {
        if (heard.isEmpty()) sure = sure.equals(Optional.of(is)) ? Optional.empty() : Optional.of(is);
    }

    /** When the idea comes again, and what to make of the answer where it was not as sure, or surer, than it was right. */
    String remark() {
        Question asked = question;
        if (asked == null || heard.isEmpty()) return "";
        long days = learning.daysUntil(asked.kind(), now.get().toLocalDate());
        String when = days <= 1 ? "tomorrow" : "in " + days + " days";
        boolean right = heard.get().right();
        String first = !right && sure.equals(Optional.of(true))
                ? "You were sure: look at the picture once more. "
                : right && sure.equals(Optional.of(false)) ? "You were not sure, so you are asked sooner. " : "";
        return first + "This comes again " + when + ", with another board.";
    }

    /** Why the last answer could not be saved; empty where it was. */
    String trouble() {
        return trouble;
    }

    /** Whether it was an answer at all: a number, or the words of what is offered. */
    boolean answer(String said) {
        Question asked = question;
        if (asked == null || heard.isPresent()) return false;
        Optional<Answers.Heard> understood = asked.answers().hear(said);
        if (understood.isEmpty()) return false;
        heard = understood;
        if (understood.get().right()) right++;
        QuizFile.Answer answer = new QuizFile.Answer(
                now.get(),
                asked.kind().id(),
                asked.level(),
                asked.seed(),
                understood.get().said(),
                sure);
        learning = learning.after(answer);
        try {
            sink.keep(answer);
            trouble = "";
        } catch (FileRefused e) {
            trouble = e.reason();
        }
        return true;
    }

    /** Goes on to the next question; nothing where this one was not answered. */
    void next() {
        if (heard.isEmpty()) return;
        at++;
        heard = Optional.empty();
        sure = Optional.empty();
        question = at < kinds.size() ? learning.question(kinds.get(at)) : null;
    }
}
