package org.marktwice.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as the shell sees it: a process of its own, in an odd encoding, without a display. */
class ProcessTest {
    @TempDir
    Path folder;

    private Ran process(List<String> jvm, String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "-Djava.awt.headless=true",
                "-Dfile.encoding=ISO-8859-1"));
        command.addAll(jvm);
        command.add(Main.class.getName());
        command.addAll(List.of(args));
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        ProcessBuilder builder = new ProcessBuilder(command);
        // A display that nothing answers at, for whoever asks for one.
        builder.environment().put("DISPLAY", ":937");
        int code = builder.redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start()
                .waitFor();
        return new Ran(code, Files.readString(out), Files.readString(err, StandardCharsets.UTF_8));
    }

    @Test
    void withoutADisplayTheDemoAttemptIsMarkedAndTheWayToTheWindowIsTold() throws IOException, InterruptedException {
        Ran ran = process(List.of());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .startsWith("There is no display here, so this is a shipped exercise, marked:\n\nMark sheet ")
                .contains("Exercise   Porch shelf")
                .contains("✕ wrong  ")
                .contains("✓ sound  ")
                .contains("\nFor the window, start the program the same way on a desktop")
                .endsWith("For the commands: java -jar target/marktwice.jar --help\n");
    }

    @Test
    void aDisplayThatCannotBeReachedIsNone() throws IOException, InterruptedException {
        Ran ran = process(List.of("-Djava.awt.headless=false"));
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("There is no display here");
    }

    @Test
    void wrongUseEndsWithTwo() throws IOException, InterruptedException {
        Ran ran = process(List.of(), "solve", "nowhere.json");
        assertThat(ran).isEqualTo(new Ran(2, "", "nowhere.json: there is no such file\n"));
    }

    /** 16 MB is too little for a file of 15 MB; whatever gives way first, it is said in one line. */
    @Test
    void tooLittleMemoryIsNoStackTrace() throws IOException, InterruptedException {
        Path file = folder.resolve("large.scenario.json");
        Files.writeString(file, "[\"" + "a".repeat(15 << 20) + "\"]");
        Ran ran = process(List.of("-Xmx16m", "-XX:+UseSerialGC"), "solve", file.toString());
        assertThat(ran).isEqualTo(new Ran(2, "", "marktwice: there is not enough memory for this\n"));
    }
}
