package org.marktwice.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.marktwice.quiz.Question;
import org.marktwice.quiz.Quiz;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Which quiz: the same figures make the same one. */
final class QuizAsked {
    private static final int MOST = 500;
    /** As large as a number in JSON is sure to be read as it is. */
    private static final long LARGEST_SEED = 1L << 52;

    @Option(names = "--seed", required = true, paramLabel = "N", description = "what the questions are made from")
    private long seed;

    @Option(names = "--questions", required = true, paramLabel = "N", description = "how many, 1 to 500")
    private int questions;

    @Option(names = "--level", paramLabel = "L", description = "1 to 3, of every question (default: 2)")
    private int level = 2;

    int questions() {
        return questions;
    }

    long seed() {
        return seed;
    }

    int level() {
        return level;
    }

    List<Question> made(CommandLine.Model.@Nullable CommandSpec spec) {
        return made(spec, seed, questions, level);
    }

    static List<Question> made(CommandLine.Model.@Nullable CommandSpec spec, long seed, int questions, int level) {
        if (seed < 0 || seed > LARGEST_SEED)
            throw WrongUse.of(spec, "--seed: expected a whole number from 0 to " + LARGEST_SEED);
        if (questions < 1 || questions > MOST)
            throw WrongUse.of(spec, "--questions: expected a whole number from 1 to " + MOST);
        if (level < 1 || level > Quiz.HARDEST) throw WrongUse.of(spec, "--level: expected 1, 2 or 3");
        return Quiz.of(seed, questions, level);
    }
}
