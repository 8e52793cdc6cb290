package org.marktwice.view;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.marktwice.files.FileRefused;
import org.marktwice.files.Save;

/**
 * What a learner has set for themself.
 *
 * @param learner the name or number that goes on attempts; empty until it is known
 * @param dark whether the window is dark
 * @param textSize 1 is the usual size; everything scales with it
 * @param movement whether turns are shown moving
 */
public record Settings(String learner, boolean dark, double textSize, boolean movement) {
    private static final JsonFactory JSON = new JsonFactory();

    /** The sizes one steps through. */
    private static final double[] SIZES = {0.85, 1.0, 1.15, 1.3, 1.5, 1.75, 2.0};

    private static final int LONGEST_NAME = 40;

    public static final Settings DEFAULT = new Settings("", false, 1.0, true);

    public Settings {
        learner = learner.strip();
        if (learner.length() > LONGEST_NAME) learner = learner.substring(0, LONGEST_NAME);
        if (!(textSize >= SIZES[0] && textSize <= SIZES[SIZES.length - 1])) textSize = 1.0;
    }

    public Settings withLearner(String name) {
        return new Settings(name, dark, textSize, movement);
    }

    public Settings withDark(boolean on) {
        return new Settings(learner, on, textSize, movement);
    }

    public Settings withMovement(boolean on) {
        return new Settings(learner, dark, textSize, on);
    }

    /** The next size up (+1) or down (−1); the same at either end. */
    public Settings stepped(int up) {
        int now = 0;
        for (int i = 0; i < SIZES.length; i++) if (SIZES[i] <= textSize + 1e-9) now = i;
        int next = Math.max(0, Math.min(SIZES.length - 1, now + up));
        return new Settings(learner, dark, SIZES[next], movement);
    }

    /** The settings of this file; the defaults, key by key, for whatever it doesn't say or says unreadably. */
    static Settings read(Path file) {
        // Read token by token: it is the first thing done before the first window, and data binding takes long to load.
        try (JsonParser json = JSON.createParser(Files.readString(file))) {
            if (json.nextToken() != JsonToken.START_OBJECT) return DEFAULT;
            Settings settings = DEFAULT;
            while (json.nextToken() == JsonToken.FIELD_NAME) settings = settings.with(json.currentName(), json);
            return settings;
        } catch (IOException e) {
            // Settings are a comfort, never a reason not to start.
            return DEFAULT;
        }
    }

    /** With the value that comes next, where it is one that this key can have. */
    private Settings with(String key, JsonParser json) throws IOException {
        JsonToken value = json.nextToken();
        json.skipChildren();
        boolean on = value == JsonToken.VALUE_TRUE;
        return switch (key) {
            case "learner" -> value == JsonToken.VALUE_STRING ? withLearner(json.getText()) : this;
            case "dark" -> value.isBoolean() ? withDark(on) : this;
            case "movement" -> value.isBoolean() ? withMovement(on) : this;
            case "textSize" -> value.isNumeric() ? new Settings(learner, dark, json.getDoubleValue(), movement) : this;
            default -> this;
        };
    }

    /** The old file is whole until the new one is. */
    void write(Path file) throws FileRefused {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) Save.folder(folder);
        try {
            Save.whole(file, toJson().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory can be written", e);
        }
    }

    private String toJson() throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(text)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter());
            json.writeStartObject();
            json.writeStringField("learner", learner);
            json.writeBooleanField("dark", dark);
            json.writeNumberField("textSize", textSize);
            json.writeBooleanField("movement", movement);
            json.writeEndObject();
        }
        return text + "\n";
    }
}
