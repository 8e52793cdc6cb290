package org.marktwice.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marktwice.cli.Ran.marktwice;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code class forget}: lists first, deletes when told to. */
class ClassForgetTest {
    @TempDir
    Path folder;

    @Test
    void nothingIsDeletedBeforeYes() throws IOException {
        Path attempt = Files.copy(Ran.ATTEMPT, folder.resolve("one.txt"));

        Ran listed = marktwice("class", "forget", "p07", folder);

        assertThat(listed.code()).isZero();
        assertThat(listed.out()).contains("would delete  " + attempt).contains("Nothing was changed");
        assertThat(attempt).exists();

        Ran done = marktwice("class", "forget", "p07", folder, "--yes", "--json");

        assertThat(done.code()).isZero();
        assertThat(done.json().get("deleted").asBoolean()).isTrue();
        assertThat(done.json().get("files").get(0).asText()).isEqualTo(attempt.toString());
        assertThat(attempt).doesNotExist();
    }

    @Test
    void whereNothingIsTheAnswerIsNo() {
        Ran ran = marktwice("class", "forget", "P07", folder);
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).startsWith("Nothing about P07");
        assertThat(marktwice("class", "forget", "P07", folder.resolve("none")).code())
                .isEqualTo(2);
        assertThat(marktwice("class", "forget", " \u00a0", folder, "--yes").err())
                .hasLineCount(1)
                .contains("expected a learner, found");
    }
}
