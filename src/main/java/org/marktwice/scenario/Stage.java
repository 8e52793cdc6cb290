package org.marktwice.scenario;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A step of the job that a scenario asks for. */
public enum Stage {
    FACES("Faces"),
    NAMES("Names"),
    TURNS("Turns"),
    SETTING_OUT("Setting out"),
    FIT("Dry fit");

    private final String title;

    Stage(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }

    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Stage> of(String id) {
        return Stream.of(values()).filter(s -> s.id().equals(id)).findFirst();
    }
}
