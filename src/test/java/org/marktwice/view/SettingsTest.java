package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.files.FileRefused;

class SettingsTest {
    @TempDir
    Path folder;

    @Test
    void settingsComeBackAsWritten() throws FileRefused {
        Path file = folder.resolve("deeper").resolve("settings.json");
        Settings settings = new Settings("P07 Ümit", true, 1.3, false);
        settings.write(file);
        settings.withDark(false).write(file);

        assertThat(Settings.read(file)).isEqualTo(new Settings("P07 Ümit", false, 1.3, false));
        assertThat(file.getParent()).isDirectoryNotContaining("glob:**.new");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "not json", "[]", "{\"textSize\": -4}", "{\"textSize\": \"large\", \"dark\": 7}"})
    void unreadableSettingsAreTheDefaults(String content) throws IOException {
        Path file = folder.resolve("settings.json");
        Files.writeString(file, content);
        assertThat(Settings.read(file)).isEqualTo(Settings.DEFAULT);
    }

    @Test
    void noFileIsTheDefaults() {
        assertThat(Settings.read(folder.resolve("none.json"))).isEqualTo(Settings.DEFAULT);
    }

    @Test
    void textSizeStepsUpAndDownAndStopsAtBothEnds() {
        Settings settings = Settings.DEFAULT;
        assertThat(settings.stepped(1).textSize()).isEqualTo(1.15);
        assertThat(settings.stepped(1).stepped(-1)).isEqualTo(settings);
        for (int i = 0; i < 20; i++) settings = settings.stepped(1);
        assertThat(settings.textSize()).isEqualTo(2.0);
        for (int i = 0; i < 20; i++) settings = settings.stepped(-1);
        assertThat(settings.textSize()).isEqualTo(0.85);
    }
}
