package org.marktwice.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.LearnerName;
import org.marktwice.files.FileRefused;
import org.marktwice.files.QuizFile;
import org.marktwice.files.QuizJournal;
import org.marktwice.quiz.Answers;
import org.marktwice.quiz.Kind;
import org.marktwice.quiz.Learning;
import org.marktwice.quiz.Question;
import org.marktwice.quiz.Spacing;
import org.marktwice.view.LearnerFolder;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** A quiz taken in the terminal. */
@Command(
        name = "take",
        description = {
            "Asks what is due today, one question after another, and tells the reason at once.",
            "Answer by the letter, or by a number; \"?\" after it says that you are not sure, as in \"b?\".",
            "An empty line leaves the quiz. Every answer is kept in the learner's journal as it is given."
        },
        footer = {"", "Exit 0: all right. 1: some answer was wrong. 2: the journal can't be read or written."})
final class QuizTakeCommand implements Callable<Integer> {
    private final Console console;
    private final InputStream in;

    @CommandLine.Spec
    CommandLine.Model.@Nullable CommandSpec spec;

    @Option(names = "--learner", paramLabel = "NAME", description = "a number or initials (default: as in the window)")
    private @Nullable String learner;

    @Option(
            names = "--journal",
            paramLabel = "FILE",
            description = "the journal (*.quiz.jsonl; default: the learner's own in the folder Marktwice)")
    private @Nullable Path journal;

    @Option(
            names = "--questions",
            paramLabel = "N",
            description = "ask so many, due or not, the shakiest first (default: what is due)")
    private @Nullable Integer questions;

    private int right;
    private int asked;

    QuizTakeCommand(Console console, InputStream in) {
        this.console = console;
        this.in = in;
    }

    @Override
    public Integer call() throws FileRefused {
        Integer many = questions;
        if (many != null && (many < 1 || many > 100)) {
            throw WrongUse.of(spec, "--questions: expected a whole number from 1 to 100");
        }
        LearnerFolder folder = LearnerFolder.ofThisUser();
        String who = who(folder);
        Path file = journal == null ? folder.quizJournal(who) : journal;
        Clock clock = Clock.systemDefaultZone();
        Learning learning = Learning.begin(who, Spacing.WEEKLY);
        if (file.toFile().exists()) {
            QuizFile read = QuizFile.read(file);
            read.notices().forEach(console::complain);
            checkIsTheirs(file, read.learner());
            learning = Learning.of(read, Spacing.WEEKLY);
        }
        List<Kind> kinds = many == null ? learning.due(OffsetDateTime.now(clock).toLocalDate()) : learning.more(many);
        return take(kinds, learning, file, clock);
    }

    /** Answers in another's journal would be taken for that learner's. */
    private void checkIsTheirs(Path file, String whose) {
        String named = learner;
        if (named == null || LearnerName.key(named).equals(LearnerName.key(whose))) return;
        throw WrongUse.of(spec, "--learner: " + file + " is the journal of \"" + whose + "\"");
    }

    private String who(LearnerFolder folder) {
        if (learner != null && LearnerName.key(learner).isEmpty()) {
            throw WrongUse.of(spec, "--learner: expected a name or number, found \"" + learner + "\"");
        }
        String named = learner == null ? folder.settings().learner() : learner;
        return named.isBlank() ? "unnamed" : named.strip();
    }

    private int take(List<Kind> kinds, Learning begun, Path file, Clock clock) throws FileRefused {
        BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        Learning learning = begun;
        if (kinds.isEmpty()) {
            console.line("Nothing is due today. --questions 5 asks some all the same.");
            return Exit.DONE;
        }
        QuizJournal.check(file);
        console.line(
                Text.wrapped(
                        "",
                        Text.count(kinds.size(), "question", "questions")
                                + ". Answer by letter or number, with a ? after it where you are not sure; an empty line leaves."));
        console.line("");
        for (Kind kind : kinds) {
            Question question = learning.question(kind);
            Optional<QuizFile.Answer> answer = ask(question, kinds.size(), lines, clock);
            if (answer.isEmpty()) break;
            QuizJournal.append(file, learning.learner(), answer.get());
            learning = learning.after(answer.get());
            long days = learning.daysUntil(kind, OffsetDateTime.now(clock).toLocalDate());
            console.line("   again  " + (days <= 1 ? "tomorrow" : "in " + days + " days") + ", with another board");
            console.line("");
        }
        console.line((asked == 0 ? "Nothing answered." : right + " of " + asked + " right.")
                + (asked < kinds.size() ? " The rest waits." : ""));
        return right < asked ? Exit.NO : Exit.DONE;
    }

    private Optional<QuizFile.Answer> ask(Question question, int of, BufferedReader lines, Clock clock) {
        QuizText.ask(console, asked + 1 + " of " + of, question);
        while (true) {
            console.out().print("> ");
            console.out().flush();
            String said = line(lines);
            if (said.isBlank()) return Optional.empty();
            boolean unsure = said.strip().endsWith("?");
            String plain = unsure ? said.strip().substring(0, said.strip().length() - 1) : said;
            Optional<Answers.Heard> heard = question.answers().hear(plain);
            if (heard.isEmpty()) {
                console.line(
                        question.answers().how() == Answers.How.FIGURE
                                ? "   expected a number, such as 12.5"
                                : "   expected a letter from a to "
                                        + Answers.letter(
                                                question.answers().offers().size() - 1));
                continue;
            }
            told(question, heard.get());
            OffsetDateTime now = OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS);
            return Optional.of(new QuizFile.Answer(
                    now,
                    question.kind().id(),
                    question.level(),
                    question.seed(),
                    heard.get().said(),
                    unsure ? Optional.of(false) : Optional.empty()));
        }
    }

    private void told(Question question, Answers.Heard heard) {
        asked++;
        if (heard.right()) right++;
        String because =
                heard.right() ? "" : heard.offer().map(o -> " " + o.because()).orElse("");
        console.line(Text.wrapped("   ", (heard.right() ? "✓ Right." : "✕ Not so." + because)));
        QuizText.reason(console, question);
    }

    /** An empty one where nothing more comes. */
    private String line(BufferedReader lines) {
        try {
            String line = lines.readLine();
            if (line == null) console.line("");
            return line == null ? "" : line;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
