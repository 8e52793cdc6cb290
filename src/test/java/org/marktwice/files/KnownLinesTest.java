package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.bench.Action;

/** A line that was read before is known again as what it was read as, and nothing else is. */
class KnownLinesTest {
    private static final Path ATTEMPTS = Path.of("scenarios", "attempts");

    private final KnownLines known = new KnownLines();

    private static byte[] attempt(String name) throws IOException {
        return Files.readAllBytes(ATTEMPTS.resolve(name + ".attempt.jsonl"));
    }

    /** What comes of reading a file: the attempt with its lines, or the refusal. */
    private static Object read(byte[] bytes, KnownLines known) {
        try {
            return AttemptFile.read("attempt", bytes, known);
        } catch (FileRefused e) {
            return String.valueOf(e.getMessage());
        }
    }

    @Test
    void theSameLineAtAnotherTimeIsKnown() {
        byte[] line = "{\"t\":4.25,\"do\":\"uncramp\",\"board\":\"A\"}".getBytes(StandardCharsets.UTF_8);
        byte[] later = "{\"t\":61,\"do\":\"uncramp\",\"board\":\"A\"}".getBytes(StandardCharsets.UTF_8);
        byte[] other = "{\"t\":61,\"do\":\"uncramp\",\"board\":\"B\"}".getBytes(StandardCharsets.UTF_8);

        known.keep(line, 0, line.length, t -> new Action.Uncramp(t, "A"));

        assertThat(known.find(later, 0, later.length)).isEqualTo(new Action.Uncramp(61, "A"));
        assertThat(known.find(other, 0, other.length)).isNull();
    }

    /** Among so many lines about a dozen have the hash of one that is known. */
    @Test
    void aLineOfTheSameHashIsNotTheSame() {
        SplittableRandom random = new SplittableRandom(20261128);
        byte[] line =
                "{\"t\":4,\"do\":\"fault\",\"slip\":\"abcdefghijklmnopqrstuvwx\"}".getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 16_384; i++) known.keep(another(line, random), 0, line.length, Action.Undo::new);
        assertThat(known.find(line, 0, line.length)).isEqualTo(new Action.Undo(4));

        int taken = 0;
        for (int i = 0; i < 3_000_000; i++) if (known.find(another(line, random), 0, line.length) != null) taken++;
        assertThat(taken).isZero();
    }

    /** In the same array: what is kept must be no view of it. */
    private static byte[] another(byte[] line, SplittableRandom random) {
        for (int i = line.length - 26; i < line.length - 2; i++) line[i] = (byte) ('a' + random.nextInt(26));
        return line;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "-1",
                "01",
                "1.",
                ".5",
                "1e3",
                "1234567890123456",
                "1.234567890123456",
                "1.2345678901234567",
                "100000001",
                "\"4\"",
                " 4",
                "4 ",
                "1.2.3",
                "",
                "null"
            })
    void aTimeThatIsNotWrittenPlainlyIsLeftToTheReader(String time) {
        byte[] line = "{\"t\":4,\"do\":\"undo\"}".getBytes(StandardCharsets.UTF_8);
        known.keep(line, 0, line.length, Action.Undo::new);
        byte[] odd = ("{\"t\":" + time + ",\"do\":\"undo\"}").getBytes(StandardCharsets.UTF_8);

        assertThat(known.find(odd, 0, odd.length)).isNull();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "0.5", "4.1", "178", "99999.123", "0.3000000000001"})
    void aPlainTimeIsTheNearestDouble(String time) {
        byte[] line = "{\"t\":4,\"do\":\"undo\"}".getBytes(StandardCharsets.UTF_8);
        known.keep(line, 0, line.length, Action.Undo::new);
        byte[] at = ("{\"t\":" + time + ",\"do\":\"undo\"}").getBytes(StandardCharsets.UTF_8);

        assertThat(known.find(at, 0, at.length)).isEqualTo(new Action.Undo(Double.parseDouble(time)));
    }

    /** Always the same ones. */
    @ParameterizedTest
    @ValueSource(strings = {"porch-shelf-perfect", "jar-shelf-flawed", "glove-chest-flawed"})
    void whateverIsWrongWithAFileItIsReadAsIfNothingWereKnown(String name) throws IOException {
        byte[] whole = attempt(name);
        assertThat(read(whole, known)).isEqualTo(read(whole, new KnownLines()));
        Random random = new Random(name.hashCode());
        for (int i = 0; i < 2000; i++) {
            byte[] spoilt = whole.clone();
            for (int k = random.nextInt(3); k >= 0; k--) {
                spoilt[random.nextInt(spoilt.length)] =
                        random.nextInt(4) == 0 ? (byte) random.nextInt(256) : (byte) (32 + random.nextInt(95));
            }
            assertThat(read(spoilt, known)).isEqualTo(read(spoilt, new KnownLines()));
        }
    }
}
