package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Files that are odd as files: missing, empty, huge, binary, in another encoding. */
class OddFilesTest {
    @TempDir
    Path folder;

    @Test
    void aMissingFileIsNamed() {
        Path file = folder.resolve("nowhere.scenario.json");
        assertThatThrownBy(() -> ScenarioFile.read(file)).hasMessage(file + ": there is no such file");
        assertThatThrownBy(() -> AttemptFile.read(file)).hasMessage(file + ": there is no such file");
        assertThatThrownBy(() -> BoardFile.read(file)).hasMessage(file + ": there is no such file");
    }

    @Test
    void aFolderIsNoFile() {
        assertThatThrownBy(() -> ScenarioFile.read(folder)).hasMessage(folder + ": expected a file, found a folder");
    }

    @Test
    void aFileOf50MegabytesIsRefusedByItsSizeAlone() throws IOException {
        Path file = folder.resolve("large.scenario.json");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(50L << 20);
        }
        String message = file + ": larger than 16 MiB, so it is no file of this program";
        assertThatThrownBy(() -> ScenarioFile.read(file)).hasMessage(message);
        assertThatThrownBy(() -> AttemptFile.read(file)).hasMessage(message);
    }

    static Stream<Arguments> odd() {
        String deep = "[".repeat(5000);
        String scenario = Samples.text(Samples.SCENARIO);
        byte[] latin = scenario.replace("Porch", "Pörch").getBytes(StandardCharsets.ISO_8859_1);
        return Stream.of(
                odd("empty", new byte[0], "x: the file is empty"),
                odd("blank", Samples.utf8(" \n\n "), "x: the file is empty"),
                odd(
                        "a picture",
                        new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13},
                        "x: expected UTF-8 text, found a binary file or another encoding"),
                odd(
                        "UTF-16",
                        scenario.getBytes(StandardCharsets.UTF_16),
                        "x: expected UTF-8 text, found a binary file or another encoding"),
                odd("Latin 1", latin, "x:1:69: expected UTF-8 text, found a byte that is none"),
                odd("deeply nested", Samples.utf8(deep), "x:1:34: $" + "[0]".repeat(33) + ": nested more than 32 deep"),
                odd(
                        "very many values",
                        Samples.utf8("[" + "0,".repeat(300_000) + "0]"),
                        "x:1:400000: $[199999]: more than 200000 values in one file"),
                odd(
                        "very long name",
                        Samples.utf8("{\"" + "a".repeat(100_000) + "\": 1}"),
                        "x:1:1: $: expected a field name of at most 200 letters, found a longer one"));
    }

    private static Arguments odd(String what, byte[] bytes, String message) {
        return Arguments.of(what, bytes, message);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("odd")
    void isRefused(String what, byte[] bytes, String message) {
        assertThatThrownBy(() -> ScenarioFile.read("x", bytes))
                .isInstanceOf(FileRefused.class)
                .hasMessage(message);
    }

    @Test
    void aByteOrderMarkIsPassedOver() throws FileRefused {
        byte[] marked = Samples.utf8('\uFEFF' + Samples.text(Samples.SCENARIO));
        assertThat(ScenarioFile.read("x", marked).id()).isEqualTo("porch-shelf");
        byte[] attempt = Samples.utf8('\uFEFF' + Samples.text(Samples.ATTEMPT));
        assertThat(AttemptFile.read("x", attempt).attempt().actions()).hasSize(14);
    }

    @Test
    void anAttemptMayHaveWindowsLineEndsAndBlankLines() throws FileRefused {
        byte[] windows = Samples.utf8(Samples.text(Samples.ATTEMPT).replace("\n", "\r\n\r\n"));
        AttemptFile read = AttemptFile.read("x", windows);
        assertThat(read.attempt())
                .isEqualTo(AttemptFile.read("x", Samples.bytes(Samples.ATTEMPT)).attempt());
        assertThat(read.lines()).startsWith(3, 5, 7);
        assertThat(read.torn()).isFalse();
    }

    @Test
    void aMessageNeverCarriesWhatATerminalWouldActOn() {
        byte[] bytes = Samples.utf8("{\"\\u001b[2J\": 1, \"format\": \"marktwice-scenario/1\"}");
        assertThatThrownBy(() -> ScenarioFile.read("x", bytes)).message().doesNotContainPattern("\\p{Cntrl}");
    }

    @Test
    void aLongTextIsCutShortInAMessage() {
        byte[] bytes = Samples.utf8("{\"format\": \"" + "z".repeat(50_000) + "\"}");
        assertThatThrownBy(() -> ScenarioFile.read("x", bytes))
                .message()
                .hasSizeLessThan(300)
                .contains("…");
    }

    @Test
    void filesAreLeftAsTheyWere() throws IOException {
        Path file = Files.write(folder.resolve("a.attempt.jsonl"), Samples.bytes(Samples.ATTEMPT));
        assertThatThrownBy(() -> ScenarioFile.read(file)).isInstanceOf(FileRefused.class);
        assertThat(file).hasBinaryContent(Samples.bytes(Samples.ATTEMPT));
    }

    @Test
    void whatIsNoOrdinaryFileIsNotWaitedFor() throws IOException {
        Path socket = folder.resolve("s.json");
        try (ServerSocketChannel open = ServerSocketChannel.open(StandardProtocolFamily.UNIX)) {
            open.bind(UnixDomainSocketAddress.of(socket));

            assertThatThrownBy(() -> Bytes.read(socket))
                    .isInstanceOf(FileRefused.class)
                    .hasMessageEndingWith("s.json: not an ordinary file");
        }
    }
}
