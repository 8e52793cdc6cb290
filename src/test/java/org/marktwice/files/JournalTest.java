package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Surface;

class JournalTest {
    private static final Attempt HEADER = new Attempt("porch-shelf", "", "P07", "2026-01-12T09:30:00Z", List.of());
    private static final Action SIDE = new Action.FaceSide(1, "A", Surface.FACE_1, Surface.EDGE_1);
    private static final Action EDGE = new Action.FaceEdge(2.5, "A", Surface.EDGE_1, Surface.FACE_1);

    @TempDir
    Path folder;

    private final Scenario scenario = Samples.scenario();
    private Path file = Path.of("");

    @BeforeEach
    void nameTheFile() {
        file = folder.resolve("p07.attempt.jsonl");
    }

    private void write(Action... actions) throws FileRefused {
        try (Journal journal = Journal.create(file, HEADER)) {
            for (Action action : actions) journal.append(action);
        }
    }

    private void append(String text) throws IOException {
        Files.writeString(file, text, StandardOpenOption.APPEND);
    }

    @Test
    void everyAppendedActionIsInTheFileAtOnce() throws FileRefused {
        try (Journal journal = Journal.create(file, HEADER)) {
            assertThat(AttemptFile.read(file).attempt()).isEqualTo(HEADER);
            journal.append(SIDE);
            assertThat(AttemptFile.read(file).attempt()).isEqualTo(HEADER.with(SIDE));
            journal.append(EDGE);
            assertThat(AttemptFile.read(file).attempt())
                    .isEqualTo(HEADER.with(SIDE).with(EDGE));
        }
    }

    @Test
    void anAttemptIsGoneOnWithWhereItWasLeft() throws FileRefused {
        write(SIDE);
        Journal.Resumed resumed = Journal.resume(file, scenario);
        try (Journal journal = resumed.journal()) {
            assertThat(resumed.notices()).isEmpty();
            assertThat(resumed.opened().bench().log()).containsExactly(SIDE);
            journal.append(EDGE);
        }
        assertThat(AttemptFile.read(file).attempt()).isEqualTo(HEADER.with(SIDE).with(EDGE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"t\":2.5,\"do\":\"face-ed", "{", "\0\0\0\0", "{\"t\":2.5,\"do\":\"na\u00e4"})
    void aTornTailIsKeptAsideAndTheNextActionStartsOnALineOfItsOwn(String tail) throws FileRefused, IOException {
        write(SIDE);
        byte[] before = Files.readAllBytes(file);
        append(tail);

        assertThat(AttemptFile.read(file).torn()).isTrue();
        Journal.Resumed resumed = Journal.resume(file, scenario);
        try (Journal journal = resumed.journal()) {
            assertThat(resumed.notices())
                    .containsExactly(
                            file + ":3: the last line was cut off and is left out; every line before it counts");
            assertThat(file).hasBinaryContent(before);
            journal.append(EDGE);
        }
        assertThat(AttemptFile.read(file).attempt()).isEqualTo(HEADER.with(SIDE).with(EDGE));
        assertThat(AttemptFile.read(file).torn()).isFalse();
        assertThat(folder.resolve("p07.attempt.jsonl.torn")).hasContent(tail);
    }

    /** Whatever byte the power cut left as the last, every whole line counts and the file can be gone on with. */
    @Test
    void aPrefixOfALogIsALog() throws FileRefused, IOException {
        write(SIDE, EDGE);
        byte[] whole = Files.readAllBytes(file);
        int header = new String(whole, StandardCharsets.UTF_8).indexOf('\n') + 1;
        for (int length = header; length <= whole.length; length++) {
            byte[] cut = Arrays.copyOf(whole, length);
            long lines = new String(cut, StandardCharsets.UTF_8)
                    .lines()
                    .filter(l -> l.endsWith("}"))
                    .count();
            Files.write(file, cut);
            Journal.Resumed resumed = Journal.resume(file, scenario);
            try (Journal journal = resumed.journal()) {
                assertThat(resumed.opened().bench().steps()).isEqualTo((int) lines - 1);
                journal.append(new Action.HandIn(9));
            }
            assertThat(AttemptFile.read(file).attempt().actions()).hasSize((int) lines);
        }
    }

    @Test
    void twoWindowsDoNotWriteToOneAttempt() throws FileRefused {
        try (Journal journal = Journal.create(file, HEADER)) {
            assertThatThrownBy(() -> Journal.resume(file, scenario))
                    .hasMessage(file + ": this attempt is open in another window");
            journal.append(SIDE);
        }
        Journal.resume(file, scenario).journal().close();
        assertThat(folder).isDirectoryNotContaining("glob:**.lock");
    }

    @Test
    void anAttemptThatIsThereIsNotOverwritten() throws FileRefused {
        write(SIDE);
        assertThatThrownBy(() -> Journal.create(file, HEADER))
                .hasMessage(file + ": there is an attempt of this name already; it is left as it is");
        assertThat(AttemptFile.read(file).attempt().actions()).containsExactly(SIDE);
        Journal.resume(file, scenario).journal().close();
    }

    @Test
    void aRefusedAttemptIsLeftAsItIsAndUnlocked() throws FileRefused, IOException {
        write(SIDE);
        append("{\"t\":3,\"do\":\"face-side\",\"board\":\"Q\",\"on\":\"face-1\",\"towards\":\"edge-1\"}\n{\"t\":");
        byte[] before = Files.readAllBytes(file);
        assertThatThrownBy(() -> Journal.resume(file, scenario)).message().startsWith(file + ":3: step 2, face-side: ");
        assertThat(file).hasBinaryContent(before);
        assertThat(folder).isDirectoryNotContaining("glob:**.lock");
    }

    @Test
    void aFolderThatIsNotThereIsNamed() {
        Path nowhere = folder.resolve("no").resolve("p07.attempt.jsonl");
        assertThatThrownBy(() -> Journal.create(nowhere, HEADER))
                .hasMessage(nowhere + ": its folder can't be written to: there is no such file or folder");
    }

    @Test
    void aFullDiskIsSaidAndTheFileStaysWhole() throws IOException, FileRefused {
        Path full = Path.of("/dev/full");
        assumeThat(full).as("only some systems have a disk that is always full").exists();
        Path link = Files.createSymbolicLink(folder.resolve("full.attempt.jsonl"), full);
        assertThatThrownBy(() -> Journal.over(link).append(SIDE))
                .hasMessage(link + ": the last action could not be saved: the disk is full");
        Files.delete(link);
    }

    static Stream<Arguments> troubles() {
        return Stream.of(
                Arguments.of(new NoSuchFileException("a"), "there is no such file or folder"),
                Arguments.of(new AccessDeniedException("a"), "the permission is missing"),
                Arguments.of(new FileSystemException("a", null, "Read-only file system"), "the disk is read-only"),
                Arguments.of(new IOException("No space left on device"), "the disk is full"),
                Arguments.of(new IOException("There is not enough space on the disk"), "the disk is full"),
                Arguments.of(new IOException(), "the disk reports an error"),
                Arguments.of(new IOException("Input/output error"), "Input/output error"));
    }

    @ParameterizedTest
    @MethodSource("troubles")
    void aTroubleIsSaidInPlainWords(IOException e, String words) {
        assertThat(Bytes.trouble(e)).isEqualTo(words);
    }

    @Test
    void savingAWholeFileReplacesTheOldOneOrLeavesIt() throws FileRefused, IOException {
        Path kept = folder.resolve("kept.json");
        Save.whole(kept, Samples.utf8("one"));
        Save.whole(kept, Samples.utf8("two"));
        assertThat(kept).hasContent("two");
        Path occupied = folder.resolve("occupied");
        Files.createDirectories(occupied.resolve("inside"));
        assertThatThrownBy(() -> Save.whole(occupied, Samples.utf8("x"))).isInstanceOf(FileRefused.class);
        assertThat(occupied.resolve("inside")).exists();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(f -> f.getFileName().toString())).containsExactlyInAnyOrder("kept.json", "occupied");
        }
    }
}
