package org.marktwice.rulebook;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Reason;
import org.marktwice.bench.Tool;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Joint;
import org.marktwice.timber.Surface;

/** How ids and figures read in a sentence. Lengths are rounded to 0.1 mm; a constant may be given as itself or as its id. */
final class Words {
    private final Drawing drawing;
    private final @Nullable String seenFrom;

    /** @param seenFrom the part that the sentence is about: a joint is told by the other part; null where none is */
    Words(Drawing drawing, @Nullable String seenFrom) {
        this.drawing = drawing;
        this.seenFrom = seenFrom;
    }

    /** @throws IllegalArgumentException where the format is unknown or the value doesn't suit it */
    String of(Object value, String format) {
        int space = format.indexOf(' ');
        String kind = space < 0 ? format : format.substring(0, space);
        String forms = space < 0 ? "" : format.substring(space + 1);
        return switch (kind) {
            case "" -> text(value);
            case "mm" -> figure(number(value)) + " mm";
            case "degrees" -> figure(number(value)) + " " + choose(number(value), "degree|degrees");
            case "number" -> figure(number(value));
            case "percent" -> figure(number(value)) + " %";
            case "ratio" -> "1 in " + Math.round(number(value));
            case "count" -> amount(number(value), forms);
            case "plural" -> choose(number(value), forms);
            case "surface" -> list(value, "and", v -> surface(v).spoken());
            case "surface-or" -> list(value, "or", v -> surface(v).spoken());
            case "board" -> named("board", value);
            case "knot" -> knots(value);
            case "part" -> list(value, "and", this::part);
            case "parts-or" -> list(value, "or", this::part);
            case "joint" -> list(value, "and", this::joint);
            case "dir" -> list(value, "or", v -> towards(direction(v)));
            case "dir-and" -> list(value, "and", v -> towards(direction(v)));
            case "place" -> list(value, "and", v -> "at the " + direction(v).id());
            case "tool" -> list(value, "and", v -> spoken(tool(v)));
            case "trial" -> list(value, "and", Words::trial);
            case "reason" -> reason(value);
            case "set-aside" -> setAside(value);
            case "list" -> list(value, "and", Words::text);
            default -> throw new IllegalArgumentException("no format " + format);
        };
    }

    private static String text(Object value) {
        if (value instanceof String s) return s;
        throw new IllegalArgumentException("not a text: " + value);
    }

    private static double number(Object value) {
        if (value instanceof Number n && Double.isFinite(n.doubleValue())) return n.doubleValue();
        throw new IllegalArgumentException("not a number: " + value);
    }

    /** To 0.1, without a useless .0 and without a minus before nothing. */
    static String figure(double value) {
        double tenths = Math.round(value * 10) / 10.0 + 0.0;
        return tenths == Math.rint(tenths)
                ? String.format(Locale.ROOT, "%.0f", tenths)
                : String.format(Locale.ROOT, "%.1f", tenths);
    }

    private static String amount(double value, String forms) {
        return (value == 0 ? "no" : figure(value)) + " " + choose(value, forms);
    }

    /** The singular goes with one, and with nothing else. */
    private static String choose(double value, String forms) {
        int bar = forms.indexOf('|');
        if (bar < 0) throw new IllegalArgumentException("no singular|plural: " + forms);
        return figure(value).equals("1") ? forms.substring(0, bar) : forms.substring(bar + 1);
    }

    private static String named(String noun, Object value) {
        boolean several = value instanceof Collection<?> c && c.size() != 1;
        return (several ? noun + "s" : noun) + " " + list(value, "and", Words::text);
    }

    /** A knot is told by its number: {@code k2} is knot 2. */
    private static String knots(Object value) {
        boolean several = value instanceof Collection<?> c && c.size() != 1;
        return (several ? "knots " : "knot ") + list(value, "and", v -> text(v).replaceFirst("^k(?=\\d)", ""));
    }

    private static String list(Object value, String last, Function<Object, String> each) {
        List<String> all =
                value instanceof Collection<?> c ? c.stream().map(each::apply).toList() : List.of(each.apply(value));
        if (all.isEmpty()) throw new IllegalArgumentException("an empty list");
        int end = all.size() - 1;
        if (end == 0) return all.get(0);
        return String.join(", ", all.subList(0, end)) + " " + last + " " + all.get(end);
    }

    private static Surface surface(Object value) {
        return value instanceof Surface s ? s : Surface.of(text(value)).orElseThrow(() -> unknown("surface", value));
    }

    private static Direction direction(Object value) {
        return value instanceof Direction d
                ? d
                : Direction.of(text(value)).orElseThrow(() -> unknown("direction", value));
    }

    private static Tool tool(Object value) {
        return value instanceof Tool t ? t : Tool.of(text(value)).orElseThrow(() -> unknown("tool", value));
    }

    private static String spoken(Tool tool) {
        return tool == Tool.WINDING_STICKS ? tool.spoken() : tool.id();
    }

    /** A way to prove a surface. */
    private static String trial(Object value) {
        return switch (text(value)) {
            case "along" -> "the straight-edge along";
            case "across" -> "the straight-edge across";
            case "wind" -> "the winding sticks";
            case "square" -> "the try-square";
            default -> throw unknown("trial", value);
        };
    }

    private static Reason reasonOf(Object value) {
        return value instanceof Reason r ? r : Reason.of(text(value)).orElseThrow(() -> unknown("reason", value));
    }

    private static String reason(Object value) {
        return switch (reasonOf(value)) {
            case KNOT_IN_EVERY_TURN -> "a knot in every turn";
            case CUPPED -> "cupped";
            case WRONG_SIZE -> "the wrong size";
            case NOT_NEEDED -> "not needed";
        };
    }

    /** Why a board is set aside, after that word. */
    private static String setAside(Object value) {
        return switch (reasonOf(value)) {
            case KNOT_IN_EVERY_TURN -> "for a knot in every turn";
            case CUPPED -> "as cupped";
            case WRONG_SIZE -> "for its size";
            case NOT_NEEDED -> "as not needed";
        };
    }

    static String towards(Direction direction) {
        return switch (direction) {
            case TOP -> "up";
            case BOTTOM -> "down";
            default -> "to the " + direction.id();
        };
    }

    private String part(Object value) {
        return drawing.part(text(value))
                .orElseThrow(() -> unknown("part", value))
                .name();
    }

    /** The joint told by the part at its other side: "the housing for the Shelf". */
    private String joint(Object value) {
        Joint joint = drawing.joint(text(value)).orElseThrow(() -> unknown("joint", value));
        String noun = joint.noun();
        boolean taken = joint.takes().equals(seenFrom);
        boolean cutInOne = noun.endsWith("housing") || noun.equals("rebate");
        String between = !cutInOne ? " with the " : taken ? " in the " : " for the ";
        return "the " + noun + between + part(taken ? joint.in() : joint.takes());
    }

    private static IllegalArgumentException unknown(String what, Object value) {
        return new IllegalArgumentException("no " + what + " " + value);
    }
}
