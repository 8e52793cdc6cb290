package org.marktwice.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.files.FileRefused;
import org.marktwice.print.Paper;
import org.marktwice.print.QuizSheet;
import org.marktwice.print.SheetFile;
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
            "The same seed gives the same quiz every time. With --out it is a sheet to print: pictures, room to answer,",
            "and the answers on pages of their own, or in a file of their own (--answers)."
        },
        footer = {
            "",
            "A sheet has 100 questions at most. It bears the seed, by which \"quiz mark\" marks it, and no date. An old file of that name is replaced.",
            "",
            "Exit 0: made. 2: wrong use, or a file can't be written.",
            "",
            "--json writes one object:",
            "  seed, level",
            "  questions[]  kind, level, seed, how (point, choose or figure), asks, answers[], right, explains",
            "    asks       what is given and what is asked, in words enough to answer without a picture",
            "    answers    right and wrong ones; of a number the right one and what the known slips come to",
            "    right      the one of them that is right",
            "    tolerance, unit   of a number, either way",
            "    slips      for each of the answers what it comes of, in the same order",
            "With --out it writes: seed, level, questions (how many), file, answers (their file), paper, pages, answerPages"
        })
final class QuizMakeCommand implements Callable<Integer> {
    /** More pictures than these have would not fit into a small machine's memory. */
    private static final int MOST_ON_PAPER = 100;

    private final Console console;

    @CommandLine.Spec
    CommandLine.Model.@Nullable CommandSpec spec;

    @Mixin
    private QuizAsked asked = new QuizAsked();

    @Option(names = "--out", paramLabel = "FILE", description = "write a sheet to print (.pdf, .svg or .png)")
    private @Nullable Path out;

    @Option(
            names = "--answers",
            paramLabel = "FILE",
            description = "write its answers to this file instead of after the questions")
    private @Nullable Path answers;

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            converter = PaperConverter.class,
            description = "of the sheet: a4 (if nothing is said) or letter")
    private @Nullable Paper paper;

    @Option(names = "--json", description = "write the questions as JSON, as described below")
    private boolean json;

    QuizMakeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused {
        Path sheet = out;
        if (sheet == null) {
            if (answers != null) throw WrongUse.of(spec, "--answers: expected --out as well");
            if (paper != null) throw WrongUse.of(spec, "--paper: expected --out as well");
        } else {
            SheetFile.check(sheet);
            if (asked.questions() > MOST_ON_PAPER) {
                throw WrongUse.of(spec, "--questions: expected at most " + MOST_ON_PAPER + " on a sheet");
            }
            if (answers != null) SheetFile.check(answers);
            if (answers != null
                    && answers.toAbsolutePath()
                            .normalize()
                            .equals(sheet.toAbsolutePath().normalize())) {
                throw WrongUse.of(spec, "--answers: expected another file than --out");
            }
        }
        List<Question> quiz = asked.made(spec);
        if (sheet != null) {
            print(quiz, sheet, answers == null ? sheet : answers, paper == null ? Paper.A4 : paper);
            return Exit.DONE;
        }
        if (json) console.json(json(quiz));
        else text(quiz);
        return Exit.DONE;
    }

    private void print(List<Question> quiz, Path sheet, Path answersTo, Paper on) throws FileRefused {
        QuizSheet.Bound bound = QuizSheet.of(quiz, asked.seed(), on);
        String title = QuizSheet.title(quiz.size(), asked.seed());
        boolean apart = !answersTo.equals(sheet);
        SheetFile.save(sheet, apart ? bound.questions() : bound.all(), title);
        if (apart) SheetFile.save(answersTo, bound.answers(), title + ": answers");
        int pages = bound.questions().size();
        int answerPages = bound.answers().size();
        if (json) {
            console.json(Fields.with("seed", asked.seed())
                    .and("level", asked.level())
                    .and("questions", quiz.size())
                    .and("file", sheet.toString())
                    .and("answers", answersTo.toString())
                    .and("paper", on.id())
                    .and("pages", pages)
                    .and("answerPages", answerPages)
                    .map());
        } else if (apart) {
            console.line(sheet + ": " + Text.count(pages, "page", "pages"));
            console.line(answersTo + ": " + Text.count(answerPages, "page", "pages") + " of answers");
        } else {
            console.line(sheet + ": " + Text.count(pages, "page", "pages") + ", then "
                    + Text.count(answerPages, "page", "pages") + " of answers");
        }
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
