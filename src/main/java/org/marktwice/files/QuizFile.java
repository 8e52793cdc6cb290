package org.marktwice.files;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A learner's quiz journal, read: one answer a line after a header. It holds what was asked and what was said, never whether
 * that was right: this is worked out anew from the question.
 *
 * @param answers oldest first, in the order of the lines
 * @param notices what was done about a torn last line, in lines fit to show
 */
public record QuizFile(String name, String learner, List<Answer> answers, List<String> notices) {
    static final String ENDING = ".quiz.jsonl";
    private static final double LARGEST_SEED = 1L << 52;
    private static final int LEVELS = 9;

    public QuizFile {
        answers = List.copyOf(answers);
        notices = List.copyOf(notices);
    }

    /**
     * One answer.
     *
     * @param at when it was given, by the clock and in the zone of the learner's machine
     * @param kind the question's kind
     * @param seed what the question was made from
     * @param said as it was said: the answer's words, or a number
     * @param sure how sure the learner was beforehand; empty where nothing was said
     */
    public record Answer(OffsetDateTime at, String kind, int level, long seed, String said, Optional<Boolean> sure) {}

    /** @throws FileRefused where a line before the last is no answer */
    public static QuizFile read(Path file) throws FileRefused {
        return read(file.toString(), Bytes.read(file));
    }

    public static QuizFile read(String name, byte[] bytes) throws FileRefused {
        return Lines.of(name, bytes).file();
    }

    static String header(String learner) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("format", Format.QUIZ.written());
        out.put("learner", learner);
        return JsonText.line(out);
    }

    static String line(Answer answer) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("at", answer.at().toString());
        out.put("kind", answer.kind());
        out.put("level", answer.level());
        out.put("seed", (double) answer.seed());
        out.put("said", answer.said());
        answer.sure().ifPresent(sure -> out.put("sure", sure));
        return JsonText.line(out);
    }

    /** The whole journal, for the learner to hand on. */
    public String text() {
        StringBuilder text = new StringBuilder(header(learner)).append('\n');
        for (Answer answer : answers) text.append(line(answer)).append('\n');
        return text.toString();
    }

    /**
     * The lines, and how many of the bytes they are.
     *
     * @param whole what lies beyond is the torn tail
     * @param endsInLine whether the last line that counts ends with a line feed
     */
    record Lines(QuizFile file, int whole, boolean endsInLine) {
        static Lines of(String name, byte[] bytes) throws FileRefused {
            if (bytes.length == 0) throw new FileRefused(name, "the file is empty");
            int from = Bytes.bomLength(bytes);
            String learner = null;
            List<Answer> answers = new ArrayList<>();
            for (int line = 1; from < bytes.length; line++) {
                int to = from;
                while (to < bytes.length && bytes[to] != '\n') to++;
                try {
                    Json json = parsed(name, bytes, from, to, line);
                    if (json != null && learner == null) learner = learner(json);
                    else if (json != null) answers.add(answer(json));
                } catch (FileRefused broken) {
                    if (to < bytes.length || learner == null) throw broken;
                    String torn = Words.printable(name) + ":" + line
                            + ": the last line was cut off and is left out; every line before it counts";
                    return new Lines(new QuizFile(name, learner, answers, List.of(torn)), from, true);
                }
                from = to + 1;
            }
            if (learner == null) throw new FileRefused(name, "the file is empty");
            boolean ends = bytes[bytes.length - 1] == '\n';
            return new Lines(new QuizFile(name, learner, answers, List.of()), bytes.length, ends);
        }

        private static @Nullable Json parsed(String name, byte[] bytes, int from, int to, int line) throws FileRefused {
            Bytes.checkIsText(name, bytes, from, to);
            String text = Bytes.decode(name, bytes, from, to, line);
            return text.isBlank() ? null : JsonTree.parse(name, text, line);
        }

        private static String learner(Json json) throws FileRefused {
            Format.QUIZ.check(json);
            Fields in = Fields.of(json, "a quiz journal's header (an object)", List.of("format", "learner"));
            return Values.line(in.need("learner"), 60);
        }

        private static Answer answer(Json json) throws FileRefused {
            Fields in =
                    Fields.of(json, "an answer (an object)", List.of("at", "kind", "level", "seed", "said", "sure"));
            Optional<Json> sure = in.get("sure");
            return new Answer(
                    time(in.need("at")),
                    Id.WORD.read(in.need("kind")),
                    Values.whole(in.need("level"), 1, LEVELS),
                    seed(in.need("seed")),
                    Values.line(in.need("said"), 500),
                    sure.isPresent() ? Optional.of(Values.truth(sure.get())) : Optional.empty());
        }

        private static long seed(Json json) throws FileRefused {
            if (json instanceof Json.Num number
                    && number.value() == Math.rint(number.value())
                    && number.value() >= 0
                    && number.value() <= LARGEST_SEED) return (long) number.value();
            throw json.expected("a whole number from 0 to " + (long) LARGEST_SEED);
        }

        private static OffsetDateTime time(Json json) throws FileRefused {
            if (json instanceof Json.Text text && text.value().length() <= 40) {
                try {
                    return OffsetDateTime.parse(text.value());
                } catch (DateTimeException e) {
                    // refused below
                }
            }
            throw json.expected("a time such as \"2026-01-12T18:30:00+01:00\"");
        }
    }
}
