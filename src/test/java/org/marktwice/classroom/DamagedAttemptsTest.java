package org.marktwice.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.marktwice.classroom.Marked.State;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.scenario.Scenario;

/** 500 attempts damaged in every way that a class finds, always the same ones: each is accounted for, and rightly. */
class DamagedAttemptsTest {
    private static final int FILES = 500;

    @TempDir
    Path folder;

    private final Random random = new Random(20260112);
    private final Scenario shelf = Handed.shelf();
    private final Map<String, Damage> damages = new TreeMap<>();

    /** What was done to a file, and what its state may then be. */
    private record Damage(String what, byte[] bytes, List<State> may, String reason) {}

    private Damage done(String name) {
        return Objects.requireNonNull(damages.get(name));
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private String whole(int n) {
        return Handed.by("P" + n, random.nextBoolean() ? Handed.perfect() : Handed.flawed(), n);
    }

    private Damage damaged(int n) {
        String whole = whole(n);
        return switch (n % 9) {
            case 0 -> truncated(whole);
            case 1 -> flipped(whole);
            case 2 -> swapped(whole);
            case 3 -> new Damage("untouched", utf8(whole), List.of(State.WHOLE), "");
            case 4 -> editedMarks(whole);
            case 5 -> otherScenario(whole);
            case 6 -> lineTwice(whole);
            case 7 -> noise();
            default -> overwritten(whole);
        };
    }

    private Damage truncated(String whole) {
        byte[] bytes = utf8(whole);
        int header = whole.indexOf('\n');
        int at = random.nextInt(bytes.length);
        List<State> may = at < header
                ? List.of(State.UNREADABLE, State.NOT_AN_ATTEMPT)
                : List.of(State.TORN, State.UNFINISHED, State.WHOLE);
        return new Damage("cut off at " + at, Arrays.copyOf(bytes, at), may, "");
    }

    private Damage flipped(String whole) {
        byte[] bytes = utf8(whole);
        for (int i = 0; i <= random.nextInt(3); i++)
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        return new Damage("bits flipped", bytes, List.of(State.values()), "");
    }

    private Damage swapped(String whole) {
        List<String> lines = new ArrayList<>(whole.lines().toList());
        int i = 1 + random.nextInt(lines.size() - 2);
        Collections.swap(lines, i, i + 1);
        String reason = i + 1 == lines.size() - 1 ? "after the job was handed in" : "runs backwards";
        return new Damage("lines swapped", utf8(String.join("\n", lines)), List.of(State.UNREADABLE), reason);
    }

    private Damage editedMarks(String whole) {
        String marks = random.nextBoolean()
                ? whole.replaceFirst("\"learner\"", "\"marks\":21,\"learner\"")
                : whole.replaceFirst("\"do\":\"hand-in\"", "\"do\":\"hand-in\",\"marks\":21");
        return new Damage("marks written in", utf8(marks), List.of(State.UNREADABLE), "unknown field \"marks\"");
    }

    private Damage otherScenario(String whole) {
        if (random.nextBoolean()) {
            String other = whole.replaceFirst("\"scenario\":\"porch-shelf\"", "\"scenario\":\"peg-rail\"");
            return new Damage("another's scenario", utf8(other), List.of(State.WRONG_SCENARIO), "peg-rail");
        }
        String changed = whole.replaceFirst("sha256:[0-9a-f]{8}", "sha256:00000000");
        return new Damage("changed scenario", utf8(changed), List.of(State.CHANGED_SCENARIO), "was changed since");
    }

    /** A line twice: the same time and the same action, which can be done again or not, and after the hand-in never. */
    private Damage lineTwice(String whole) {
        List<String> lines = new ArrayList<>(whole.lines().toList());
        int i = 1 + random.nextInt(lines.size() - 1);
        lines.add(i, lines.get(i));
        return new Damage("a line twice", utf8(String.join("\n", lines)), List.of(State.WHOLE, State.UNREADABLE), "");
    }

    private Damage noise() {
        byte[] bytes = new byte[random.nextInt(3000)];
        random.nextBytes(bytes);
        return new Damage("noise", bytes, List.of(State.UNREADABLE, State.NOT_AN_ATTEMPT), "");
    }

    /** A run of zeros in the middle, as a stick that was pulled out leaves it. */
    private Damage overwritten(String whole) {
        byte[] bytes = utf8(whole);
        int header = whole.indexOf('\n');
        int from = header + 1 + random.nextInt(bytes.length - header - 200);
        Arrays.fill(bytes, from, from + 100, (byte) 0);
        return new Damage("zeros", bytes, List.of(State.UNREADABLE), "found a binary file");
    }

    private String name(int n) {
        return switch (n % 7) {
            case 0 -> "P" + n + " final (2).attempt.jsonl";
            case 1 -> "essay-" + n + ".docx";
            case 2 -> "group b/P" + n + ".jsonl";
            default -> "P" + n + ".attempt.jsonl";
        };
    }

    private void writeAll() throws IOException {
        for (int n = 0; n < FILES; n++) {
            if (n % 50 == 49) {
                String first = damages.entrySet().stream()
                        .filter(e -> e.getValue().what().equals("untouched"))
                        .findFirst()
                        .orElseThrow()
                        .getKey();
                damages.put(
                        "z" + n + ".attempt.jsonl",
                        new Damage("same as " + first, done(first).bytes(), List.of(State.WHOLE), ""));
            } else {
                damages.put(name(n), damaged(n));
            }
        }
        for (Map.Entry<String, Damage> one : damages.entrySet()) {
            Path file = folder.resolve(one.getKey());
            Files.createDirectories(file.getParent());
            Files.write(file, one.getValue().bytes());
        }
    }

    @Test
    void everyOneIsAccountedForAndRightly() throws IOException {
        writeAll();
        assertThat(damages).hasSize(FILES);

        List<Marked> marked = Handed.marked(folder, ExerciseSet.of(shelf), false);

        assertThat(marked).extracting(Marked::file).containsExactlyElementsOf(damages.keySet());
        for (Marked one : marked) check(one, done(one.file()));
        Map<State, Long> states =
                marked.stream().collect(Collectors.groupingBy(Marked::state, TreeMap::new, Collectors.counting()));
        assertThat(states).as("%s", states).containsOnlyKeys(State.values());
    }

    private void check(Marked marked, Damage damage) {
        String what = marked.file() + ", " + damage.what() + ": " + marked.state() + " " + marked.reason();
        assertThat(damage.may()).as(what).contains(marked.state());
        assertThat(marked.reason()).as(what).contains(damage.reason()).doesNotContain("fault in the program");
        boolean same = damage.what().startsWith("same as ");
        if (same) assertThat(damage.what()).as(what).isEqualTo("same as " + marked.sameAs());
        if (damage.what().equals("untouched"))
            assertThat(marked.sameAs()).as(what).isEmpty();
        assertMarks(marked, damage, what);
    }

    /** What can be opened alone is marked, and gets the same; what can't be has no marks. */
    private void assertMarks(Marked marked, Damage damage, String what) {
        try {
            MarkSheet alone = Handed.judged(damage.bytes(), shelf);
            Exercise.checked(AttemptFile.read("attempt", damage.bytes()));
            assertThat(marked.sheet()).as(what).isPresent();
            assertThat(marked.sheet().orElseThrow().marks()).as(what).isEqualTo(alone.marks(), within(1e-9));
        } catch (FileRefused e) {
            assertThat(marked.sheet()).as(what).isEmpty();
            assertThat(marked.state()).as(what).isGreaterThan(State.TORN);
        }
    }
}
