package org.marktwice.files;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;

/**
 * The lines of an attempt's file, read.
 *
 * @param whole how many of the bytes are whole lines that count; what lies beyond is the torn tail
 * @param endsInLine whether the last line that counts ends with a line feed
 */
record JournalText(AttemptFile file, int whole, boolean endsInLine) {
    private static final List<String> HEADER = List.of("format", "scenario", "digest", "learner", "started");
    private static final Pattern DIGEST = Pattern.compile("sha256:[0-9a-f]{64}");
    private static final Pattern INSTANT =
            Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d{1,9})?(Z|[+-]\\d\\d:\\d\\d)");

    static JournalText read(String name, byte[] bytes) throws FileRefused {
        return read(name, bytes, new KnownLines());
    }

    static JournalText read(String name, byte[] bytes, KnownLines known) throws FileRefused {
        if (bytes.length == 0) throw new FileRefused(name, "the file is empty");
        return new Lines(name, bytes, known).read();
    }

    /** The header alone. */
    private static Attempt header(Json json) throws FileRefused {
        Format.ATTEMPT.check(json);
        Fields in = Fields.of(json, "an attempt's header (an object)", HEADER);
        Optional<Json> digest = in.get("digest");
        return new Attempt(
                Id.WORD.read(in.need("scenario")),
                digest.isPresent() ? digest(digest.get()) : "",
                Values.line(in.need("learner"), 60),
                started(in.need("started")),
                List.of());
    }

    private static String digest(Json json) throws FileRefused {
        if (json instanceof Json.Text text && DIGEST.matcher(text.value()).matches()) return text.value();
        throw json.expected("\"sha256:\" and 64 hexadecimal digits");
    }

    private static String started(Json json) throws FileRefused {
        if (json instanceof Json.Text text && INSTANT.matcher(text.value()).matches()) {
            try {
                Instant.parse(text.value());
                return text.value();
            } catch (DateTimeException e) {
                // a date that no calendar has: refused below like any other text
            }
        }
        throw json.expected("a time such as \"2026-01-12T09:30:00Z\"");
    }

    /** One pass over a file's lines. */
    private static final class Lines {
        private final String name;
        private final byte[] bytes;
        private final KnownLines known;
        private final List<Action> actions = new ArrayList<>();
        private final List<Integer> lines = new ArrayList<>();
        private @Nullable Attempt header;
        private @Nullable Action last;
        private int from;
        private int line;

        Lines(String name, byte[] bytes, KnownLines known) {
            this.name = name;
            this.bytes = bytes;
            this.known = known;
            this.from = Bytes.bomLength(bytes);
        }

        JournalText read() throws FileRefused {
            while (from < bytes.length) {
                line++;
                int to = from;
                while (to < bytes.length && bytes[to] != '\n') to++;
                Action action = header == null ? null : known.find(bytes, from, to);
                if (action != null) {
                    take(action, Place.root(name, line, 1));
                } else {
                    Json json;
                    try {
                        json = parsed(to);
                    } catch (FileRefused broken) {
                        if (header == null) throw noHeader(broken);
                        if (to < bytes.length) throw broken;
                        return done(from, true, List.of(torn()));
                    }
                    if (json != null) take(json, to);
                }
                from = to + 1;
            }
            return done(bytes.length, bytes[bytes.length - 1] == '\n', List.of());
        }

        /** The line's value; null where it is blank. */
        private @Nullable Json parsed(int to) throws FileRefused {
            Bytes.checkIsText(name, bytes, from, to);
            String text = Bytes.decode(name, bytes, from, to, line);
            return text.isBlank() ? null : JsonTree.parse(name, text, line);
        }

        private void take(Json json, int to) throws FileRefused {
            if (header == null) {
                header = header(json);
                return;
            }
            ActionReader.Read read = ActionReader.read(json);
            take(read.action(), json.place());
            known.keep(bytes, from, to, read.what());
        }

        private void take(Action action, Place place) throws FileRefused {
            if (last instanceof Action.HandIn) throw place.refuse("there is an action after the job was handed in");
            if (last != null && action.t() < last.t()) {
                throw place.refuse("the time t runs backwards: " + JsonText.number(action.t()) + " after "
                        + JsonText.number(last.t()));
            }
            last = action;
            actions.add(action);
            lines.add(line);
        }

        private static FileRefused noHeader(FileRefused broken) {
            String expected = "expected an attempt, whose first line is a JSON object with \"format\": ";
            return new FileRefused(
                    broken.file(), broken.line(), broken.column(), broken.path(), expected + broken.reason());
        }

        private String torn() {
            return Words.printable(name) + ":" + line
                    + ": the last line was cut off and is left out; every line before it counts";
        }

        private JournalText done(int whole, boolean endsInLine, List<String> notices) throws FileRefused {
            if (header == null) throw new FileRefused(name, "the file is empty");
            Attempt attempt =
                    new Attempt(header.scenario(), header.digest(), header.learner(), header.started(), actions);
            return new JournalText(
                    new AttemptFile(name, attempt, lines, !notices.isEmpty(), notices), whole, endsInLine);
        }
    }
}
