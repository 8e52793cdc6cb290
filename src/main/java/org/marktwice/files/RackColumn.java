package org.marktwice.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.marktwice.timber.Species;
import org.marktwice.timber.SpeciesTable;
import org.marktwice.timber.Surface;

/** The columns of a rack's table (see {@link RackTable}), and how what is typed there is put right. */
public enum RackColumn {
    BOARD("board", "What is chalked on the board: letters and digits"),
    SPECIES("species", "The species"),
    LENGTH("length", "Length, mm"),
    WIDTH("width", "Width, mm"),
    THICKNESS("thickness", "Thickness, mm"),
    MOISTURE("moisture", "Moisture now, percent; empty for 12"),
    PLANED_AT("planed-at", "Moisture when it was planed, percent; empty for what it is now"),
    SAWN("sawn", "Which surfaces are as sawn; empty where all are planed"),
    PITH_Y("pith-y", "The rings' middle, mm from edge 1 towards edge 2; below 0 it lies before edge 1"),
    PITH_Z("pith-z", "The rings' middle, mm from face 2 towards face 1; below 0 it lies beneath face 2"),
    RING("ring", "Instead of the pith: three points y z or more of one ring, such as 0 4; 65 9; 130 5"),
    KNOT("knot", "The knot's name, such as k1"),
    ON("on", "The surface on which it shows: f1 is face 1, e2 edge 2"),
    U("u", "The middle of what shows: mm along from end 1 (on an end: from edge 1)"),
    V("v", "The middle of what shows: mm across, on a face from edge 1, on an edge or an end from face 2"),
    ALONG("along", "How much of the length it takes up, mm (on an end: of the width)"),
    ACROSS("across", "How much of the width it takes up, mm (on an edge or an end: of the thickness)"),
    DEAD("dead", "Whether it is dead there, loose or in bark: yes or no");

    private final String id;
    private final String help;

    RackColumn(String id, String help) {
        this.id = id;
        this.help = help;
    }

    /** As it stands in the table's head. */
    public String id() {
        return id;
    }

    /** What is to be typed there. */
    public String help() {
        return help;
    }

    /** Whether it says something of the board, and not of a knot. */
    public boolean isOfTheBoard() {
        return compareTo(KNOT) < 0;
    }

    /** What there is to choose from in it, as the table has it; empty where a name or figure is typed. */
    public List<String> choices() {
        return switch (this) {
            case SPECIES -> SpeciesTable.all().stream().map(Species::id).toList();
            case SAWN, ON -> Stream.of(Surface.values()).map(Surface::id).toList();
            case DEAD -> List.of("yes", "no");
            default -> List.of();
        };
    }

    /** Whether several of its choices may stand in one cell, with a space between them. */
    public boolean takesSeveral() {
        return this == SAWN;
    }

    static Optional<RackColumn> of(String id) {
        return Arrays.stream(values()).filter(c -> c.id.equals(id)).findFirst();
    }

    /** What somebody typed, put as the table has it: a comma in a number, {@code f1} for face-1, a part of a species. */
    public String tidied(String typed) {
        String text = typed.replaceAll("\\p{Cntrl}", " ").strip();
        String small = text.toLowerCase(Locale.ROOT);
        return switch (this) {
            case BOARD, KNOT, RING -> text;
            case SPECIES -> species(small).orElse(text);
            case ON -> surface(small).orElse(text);
            case SAWN -> sawn(small).orElse(text);
            case DEAD ->
                switch (small) {
                    case "y", "d", "dead", "x" -> "yes";
                    case "n", "live" -> "no";
                    default -> small;
                };
            default -> Double.isNaN(Tables.number(text)) ? text : JsonText.number(Tables.number(text));
        };
    }

    /** The one species of whose id this is a part. */
    private static Optional<String> species(String typed) {
        List<String> ids = SpeciesTable.all().stream().map(Species::id).toList();
        String part = typed.replace(' ', '-');
        if (part.isEmpty() || ids.contains(part)) return Optional.of(part);
        List<String> like = ids.stream().filter(id -> id.contains(part)).toList();
        return like.size() == 1 ? Optional.of(like.get(0)) : Optional.empty();
    }

    private static Optional<String> surface(String typed) {
        String bare = typed.replaceAll("[ -]", "");
        return Stream.of(Surface.values())
                .filter(s -> bare.equals(s.id().replace("-", "")) || bare.equals(shortly(s)))
                .map(Surface::id)
                .findFirst();
    }

    /** {@code f1}, {@code e2}; an end is {@code n1}, since e is an edge's. */
    private static String shortly(Surface s) {
        String letter = s.id().startsWith("end") ? "n" : s.id().substring(0, 1);
        return letter + s.id().charAt(s.id().length() - 1);
    }

    private static Optional<String> sawn(String typed) {
        if (typed.isEmpty()) return Optional.of("");
        List<String> found = new ArrayList<>();
        for (String word : typed.replaceAll("(face|edge|end) ", "$1-").split("[\\s;,]+")) {
            Optional<String> one = surface(word);
            if (one.isEmpty()) return Optional.empty();
            found.add(one.get());
        }
        return Optional.of(String.join(" ", found));
    }
}
