package org.marktwice.quiz;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.marktwice.bench.Mark;
import org.marktwice.timber.Board;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Size;
import org.marktwice.timber.Trace;

/** Words and figures that several questions share. */
final class Say {
    private Say() {}

    /** As few places as tell it to a hundredth. */
    static String number(double value) {
        long hundredths = Math.round(Math.abs(value) * 100);
        String sign = value < 0 && hundredths > 0 ? "-" : "";
        long rest = hundredths % 100;
        if (rest == 0) return sign + hundredths / 100;
        String decimals = rest % 10 == 0 ? String.valueOf(rest / 10) : (rest < 10 ? "0" : "") + rest;
        return sign + hundredths / 100 + "." + decimals;
    }

    static String mm(double value) {
        return number(Math.round(value * 10) / 10.0) + " mm";
    }

    static String size(Size size) {
        return number(size.length()) + " × " + number(size.width()) + " × " + number(size.thickness()) + " mm";
    }

    static String of(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    /** A list in a sentence: one, two and three. */
    static String and(List<String> words) {
        if (words.size() < 2) return String.join("", words);
        return String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1);
    }

    static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** A mark as it stands on a board. */
    static String mark(Mark mark) {
        return mark.kind() == Mark.Kind.FACE_SIDE
                ? of(
                        "a loop on %s, its tail running off towards %s",
                        mark.on().spoken(), mark.towards().spoken())
                : of(
                        "a V on %s, its point towards %s",
                        mark.on().spoken(), mark.towards().spoken());
    }

    /** Where the tree's centre lies, as seen on the end grain. */
    static String pith(Board board) {
        Pith pith = board.pith().orElseThrow();
        double thickness = board.size().thickness();
        double width = board.size().width();
        String depth = pith.z() < 0
                ? of("%s beyond face 2", mm(-pith.z()))
                : pith.z() > thickness ? of("%s beyond face 1", mm(pith.z() - thickness)) : "level with the board";
        String side = pith.y() < 0
                ? of("%s outside edge 1", mm(-pith.y()))
                : pith.y() > width
                        ? of("%s outside edge 2", mm(pith.y() - width))
                        : of("%s in from edge 1", mm(pith.y()));
        return of("the rings' centre lies %s and %s", depth, side);
    }

    /** Where a knot comes out. */
    static String knot(String id, List<Trace> traces) {
        return traces.stream()
                .filter(t -> t.knot().equals(id))
                .map(t -> of(
                        "%s (%s to %s mm from end 1)",
                        t.surface().spoken(),
                        number(Math.round(t.middle().u() - t.length() / 2)),
                        number(Math.round(t.middle().u() + t.length() / 2))))
                .collect(Collectors.collectingAndThen(Collectors.toList(), Say::and));
    }

    /** Knot k3 in a sentence. */
    static String knotName(String id) {
        return "knot " + id.replaceFirst("^k", "");
    }
}
