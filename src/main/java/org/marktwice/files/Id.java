package org.marktwice.files;

import java.util.regex.Pattern;

/** The shapes that ids have in files. */
enum Id {
    /** Scenarios, parts, joints and rules. */
    WORD("[a-z0-9-]", 60, "small letters, digits and hyphens"),
    BOARD("[A-Za-z0-9]", 20, "letters and digits"),
    /** Knots, and the cuts of a board file. */
    KNOT("[A-Za-z0-9-]", 20, "letters, digits and hyphens"),
    /** What is measured on a finished job; a joint's id with what is measured there. */
    MEASURE("[a-z0-9-]", 80, "small letters, digits and hyphens");

    private final Pattern pattern;
    private final String spoken;

    Id(String letters, int longest, String spoken) {
        this.pattern = Pattern.compile(letters + "{1," + longest + "}");
        this.spoken = "an id of 1 to " + longest + " " + spoken;
    }

    boolean matches(String text) {
        return pattern.matcher(text).matches();
    }

    String read(Json json) throws FileRefused {
        if (json instanceof Json.Text text && matches(text.value())) return text.value();
        throw json.expected(spoken);
    }
}
