package org.marktwice.cli;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.files.FileRefused;
import org.marktwice.quiz.Answers;
import org.marktwice.quiz.Offer;
import org.marktwice.quiz.Question;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A quiz made. */
@Command(
        name = "make",
        description = {
            "Makes a quiz: questions from boards and drawings that are grown from the seed, with their answers apart.",
            "The same seed gives the same quiz every time."
        },
        footer = {
            "",
            "Exit 0.",
            "",
            "--json writes one object:",
            "  seed, level",
            "  questions[]  kind, level, seed, how (point, choose or figure), asks, answers[], right, explains",
            "    asks       what is given and what is asked, in words enough to answer without a picture",
            "    answers    right and wrong ones; of a number the right one and what the known slips come to",
            "    right      the one of them that is right",
            "    tolerance, unit   of a number, either way",
            "    slips      for each of the answers what it comes of, in the same order"
        })
final class QuizMakeCommand implements Callable<Integer> {
    private final Console console;

    @CommandLine.Spec
    CommandLine.Model.@Nullable CommandSpec spec;

    @Mixin
    private QuizAsked asked = new QuizAsked();

    @Option(names = "--json", description = "write the questions as JSON, as described below")
    private boolean json;

    QuizMakeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused {
        List<Question> quiz = asked.made(Objects.requireNonNull(spec));
        if (json) console.json(json(quiz));
        else text(quiz);
        return Exit.DONE;
    }

    private Map<String, @Nullable Object> json(List<Question> quiz) {
        return Fields.with("seed", asked.seed())
                .and("level", asked.level())
                .and("questions", quiz.stream().map(QuizMakeCommand::json).toList())
                .map();
    }

    private static Map<String, @Nullable Object> json(Question question) {
        Answers answers = question.answers();
        boolean figure = answers.how() == Answers.How.FIGURE;
        return Fields.with("kind", question.kind().id())
                .and("level", question.level())
                .and("seed", question.seed())
                .and("how", answers.how().name().toLowerCase(java.util.Locale.ROOT))
                .and("asks", question.given() + "\n" + question.asks())
                .and("answers", answers.offers().stream().map(Offer::text).toList())
                .and("right", answers.rightOne().text())
                .maybe("tolerance", figure ? answers.tolerance() : null)
                .maybe("unit", figure ? answers.unit() : null)
                .and("explains", question.reason().text())
                .and("slips", answers.offers().stream().map(Offer::because).toList())
                .map();
    }

    private void text(List<Question> quiz) {
        for (int i = 0; i < quiz.size(); i++) {
            QuizText.ask(console, String.valueOf(i + 1), quiz.get(i));
            console.line("");
        }
        console.line(Text.rule());
        console.line("Answers");
        console.line("");
        for (int i = 0; i < quiz.size(); i++) {
            console.line(
                    Text.wrapped(String.format(java.util.Locale.ROOT, "%3d  ", i + 1), QuizText.rightly(quiz.get(i))));
            console.line(Text.wrapped("     ", quiz.get(i).reason().text()));
        }
    }
}
