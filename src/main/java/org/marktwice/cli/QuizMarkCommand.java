package org.marktwice.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.files.FileRefused;
import org.marktwice.files.QuizFile;
import org.marktwice.quiz.Answers;
import org.marktwice.quiz.Kind;
import org.marktwice.quiz.Question;
import org.marktwice.quiz.Quiz;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A quiz marked. */
@Command(
        name = "mark",
        description = {
            "Marks the answers of a sheet that \"quiz make\" made, or a journal that a learner hands on.",
            "Every question is made anew and judged: nothing that stands in a file counts as a mark."
        },
        footer = {
            "",
            "For example: quiz mark --seed 7 --questions 4 --answers b,23.5,-,a   (- for no answer)",
            "",
            "Exit 0: all right. 1: some answer is wrong or missing. 2: wrong use, or the journal can't be read.",
            "",
            "--json writes one object:",
            "  learner      of a journal",
            "  right, outOf",
            "  answers[]    kind, level, seed, said (null where nothing was), right (true or false), should, because"
        })
final class QuizMarkCommand implements Callable<Integer> {
    private final Console console;

    @CommandLine.Spec
    CommandLine.Model.@Nullable CommandSpec spec;

    @Option(names = "--seed", paramLabel = "N", description = "of a sheet: what it was made from")
    private @Nullable Long seed;

    @Option(names = "--questions", paramLabel = "N", description = "of a sheet: how many, 1 to 500")
    private @Nullable Integer questions;

    @Option(names = "--level", paramLabel = "L", description = "of a sheet: 1 to 3 (default: 2)")
    private int level = 2;

    @Option(
            names = "--answers",
            split = ",",
            paramLabel = "ANSWER",
            description = "of a sheet: what was answered, in order")
    private @Nullable List<String> answers;

    @Parameters(arity = "0..1", paramLabel = "JOURNAL", description = "a quiz journal (*.quiz.jsonl)")
    private @Nullable Path journal;

    @Option(names = "--json", description = "write the marks as JSON, as described below")
    private boolean json;

    QuizMarkCommand(Console console) {
        this.console = console;
    }

    /** A question and what was said to it; empty where nothing was, or nothing that is an answer. */
    private record Marked(Question question, Optional<Answers.Heard> heard) {
        boolean right() {
            return heard.filter(Answers.Heard::right).isPresent();
        }
    }

    @Override
    public Integer call() throws FileRefused {
        Path file = journal;
        boolean all = seed != null && questions != null && answers != null;
        boolean none = seed == null && questions == null && answers == null;
        if (file == null ? !all : !none) {
            throw WrongUse.of(spec, "expected a journal, or --seed, --questions and --answers");
        }
        List<Marked> marked;
        String who = null;
        if (file != null) {
            QuizFile read = QuizFile.read(file);
            read.notices().forEach(console::complain);
            who = read.learner();
            marked = marked(read);
            int unknown = read.answers().size() - marked.size();
            if (unknown > 0) {
                console.complain(file + ": left out: " + Text.count(unknown, "answer", "answers")
                        + " to questions of a kind or level that this program doesn't have");
            }
        } else {
            marked = marked(
                    QuizAsked.made(spec, Objects.requireNonNull(seed), Objects.requireNonNull(questions), level),
                    Objects.requireNonNull(answers),
                    spec);
        }
        int right = (int) marked.stream().filter(Marked::right).count();
        if (json) console.json(json(who, right, marked));
        else text(who, right, marked);
        return right == marked.size() ? Exit.DONE : Exit.NO;
    }

    private static List<Marked> marked(
            List<Question> quiz, List<String> answers, CommandLine.Model.@Nullable CommandSpec spec) {
        if (answers.size() > quiz.size()) {
            throw WrongUse.of(spec, "--answers: expected at most " + quiz.size() + ", found " + answers.size());
        }
        List<Marked> all = new ArrayList<>();
        for (int i = 0; i < quiz.size(); i++) {
            String said = i < answers.size() ? answers.get(i).strip() : "-";
            Optional<Answers.Heard> heard = quiz.get(i).answers().hear(said);
            if (heard.isEmpty() && !said.equals("-") && !said.isEmpty()) {
                throw WrongUse.of(
                        spec,
                        "--answers: number " + (i + 1) + " expects "
                                + (quiz.get(i).answers().how() == Answers.How.FIGURE ? "a number" : "a letter")
                                + ", found \"" + said + "\"");
            }
            all.add(new Marked(quiz.get(i), heard));
        }
        return all;
    }

    /** Questions of a kind or level that this program doesn't have are passed over. */
    private static List<Marked> marked(QuizFile journal) {
        List<Marked> all = new ArrayList<>();
        for (QuizFile.Answer answer : journal.answers()) {
            Optional<Kind> kind = Kind.of(answer.kind());
            if (kind.isEmpty() || answer.level() > Quiz.HARDEST) continue;
            Question question = Quiz.question(kind.get(), answer.level(), answer.seed());
            all.add(new Marked(question, question.answers().hear(answer.said())));
        }
        return all;
    }

    private static Map<String, @Nullable Object> json(@Nullable String who, int right, List<Marked> marked) {
        return new Fields()
                .maybe("learner", who)
                .and("right", right)
                .and("outOf", marked.size())
                .and("answers", marked.stream().map(QuizMarkCommand::json).toList())
                .map();
    }

    private static Map<String, @Nullable Object> json(Marked one) {
        return Fields.with("kind", one.question().kind().id())
                .and("level", one.question().level())
                .and("seed", one.question().seed())
                .orNull("said", one.heard().map(Answers.Heard::said).orElse(null))
                .and("right", one.right())
                .and("should", one.question().answers().rightOne().text())
                .and("because", because(one))
                .map();
    }

    private static String because(Marked one) {
        if (one.right()) return one.question().reason().text();
        return one.heard()
                        .flatMap(Answers.Heard::offer)
                        .map(o -> o.because() + " ")
                        .orElse("")
                + one.question().reason().text();
    }

    private void text(@Nullable String who, int right, List<Marked> marked) {
        for (int i = 0; i < marked.size(); i++) {
            Marked one = marked.get(i);
            String said = one.heard().map(Answers.Heard::said).orElse("no answer");
            String sign = one.right() ? "✓" : "✕";
            console.line(Text.wrapped(
                    String.format(java.util.Locale.ROOT, "%3d  %s  ", i + 1, sign),
                    one.question().kind().idea() + ": " + said));
            if (one.right()) continue;
            console.line(Text.wrapped("     right  ", QuizText.rightly(one.question())));
            console.line(Text.wrapped("     why    ", because(one)));
        }
        console.line((who == null ? "" : who + ": ") + right + " of " + marked.size() + " right.");
    }
}
