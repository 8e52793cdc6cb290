package org.marktwice.files;

import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The program's own file formats; the number behind the stroke is the newest that this program reads. */
enum Format {
    SCENARIO("marktwice-scenario", 1, "scenario"),
    ATTEMPT("marktwice-attempt", 1, "attempt"),
    BOARD("marktwice-board", 1, "board"),
    DRAFT("marktwice-draft", 1, "draft of a scenario"),
    RACK("marktwice-rack", 1, "rack"),
    RECORD("marktwice-record", 1, "record of finished jobs"),
    QUIZ("marktwice-quiz", 1, "quiz journal");

    private static final Pattern WRITTEN = Pattern.compile("(marktwice-[a-z]+)/([1-9][0-9]{0,29})");

    private final String word;
    private final int newest;
    private final String what;

    Format(String word, int newest, String what) {
        this.word = word;
        this.newest = newest;
        this.what = what;
    }

    /** As the newest files have it. */
    String written() {
        return word + "/" + newest;
    }

    String word() {
        return word;
    }

    String what() {
        return what;
    }

    /** Checked before anything else of the file, so that a newer file isn't refused for a field that is new in it. */
    void check(Json root) throws FileRefused {
        String expected = "expected " + article() + " " + what + " (" + Words.quoted(written()) + ")";
        if (!(root instanceof Json.Obj object)) throw root.place().refuse(expected + ", found " + root.found());
        Json.Member member = object.members().get("format");
        if (member == null)
            throw root.place().refuse(expected + ", found a file of another program: it has no \"format\"");
        Json found = member.value();
        Matcher written = WRITTEN.matcher(found instanceof Json.Text text ? text.value() : "");
        if (!written.matches()) {
            throw found.place().refuse(expected + ", found a file of another program: " + found.found());
        }
        if (!written.group(1).equals(word)) throw found.place().refuse(expected + ", found " + found.found());
        BigInteger number = new BigInteger(written.group(2));
        if (number.compareTo(BigInteger.valueOf(newest)) > 0) {
            throw found.place()
                    .refuse("this file is of a newer Marktwice: format " + number + ", this one reads " + newest);
        }
    }

    private String article() {
        return this == ATTEMPT ? "an" : "a";
    }
}
