package org.marktwice.files;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.joml.Vector3d;

/** Single values out of located JSON, each refused with what is expected instead. */
final class Values {
    private static final Pattern LINE = Pattern.compile("[^\\x00-\\x1F\\x7F]+");
    private static final Pattern PARAGRAPHS = Pattern.compile("[^\\x00-\\x09\\x0B-\\x1F\\x7F]*");

    private Values() {}

    /** Reads one item of a list. */
    interface Reader<T> {
        T read(Json json) throws FileRefused;
    }

    static double number(Json json, Range range) throws FileRefused {
        if (json instanceof Json.Num number && range.contains(number.value())) return number.value();
        throw json.expected(range.spoken());
    }

    static int whole(Json json, int least, int most) throws FileRefused {
        if (json instanceof Json.Num number && number.value() == Math.rint(number.value())) {
            if (number.value() >= least && number.value() <= most) return (int) number.value();
        }
        throw json.expected("a whole number from " + least + " to " + most);
    }

    /** One line of text, not empty. */
    static String line(Json json, int longest) throws FileRefused {
        return text(json, LINE, longest, "a line of text of 1 to " + longest + " letters");
    }

    /** Text that may be empty and run over several lines. */
    static String paragraphs(Json json, int longest) throws FileRefused {
        return text(json, PARAGRAPHS, longest, "text of up to " + longest + " letters");
    }

    private static String text(Json json, Pattern pattern, int longest, String what) throws FileRefused {
        if (json instanceof Json.Text text && text.value().length() <= longest) {
            if (pattern.matcher(text.value()).matches()) return text.value();
        }
        throw json.expected(what);
    }

    static boolean truth(Json json) throws FileRefused {
        if (json instanceof Json.Bool bool) return bool.value();
        throw json.expected("true or false");
    }

    static <T> T word(Json json, T[] all, Function<T, String> id) throws FileRefused {
        if (json instanceof Json.Text text) {
            for (T one : all) if (id.apply(one).equals(text.value())) return one;
        }
        List<String> words = Stream.of(all).map(id).toList();
        // a few words are read faster than a guess
        boolean many = words.size() > 6;
        String hint = many && json instanceof Json.Text text ? meant(text.value(), words) : "";
        throw json.place().refuse("expected " + Words.oneOf(words) + ", found " + json.found() + hint);
    }

    /** What follows a word that is nearly one of the known ones. */
    private static String meant(String word, List<String> known) {
        return Words.nearest(word, known)
                .map(n -> ": did you mean " + Words.quoted(n) + "?")
                .orElse("");
    }

    /** A field's name that is itself a word. */
    static <T> T word(Place place, String name, T[] all, Function<T, String> id) throws FileRefused {
        for (T one : all) if (id.apply(one).equals(name)) return one;
        throw place.refuse(
                "expected " + Words.oneOf(Stream.of(all).map(id).toList()) + ", found " + Words.quoted(name));
    }

    static List<Json> items(Json json, String what, int least) throws FileRefused {
        if (json instanceof Json.Arr list && list.items().size() >= least) return list.items();
        if (json instanceof Json.Arr) throw json.place().refuse("expected " + what + ", found an empty list");
        throw json.expected(what);
    }

    static <T> List<T> list(Json json, String what, int least, Reader<T> reader) throws FileRefused {
        List<T> read = new ArrayList<>();
        for (Json item : items(json, what, least)) read.add(reader.read(item));
        return List.copyOf(read);
    }

    /** A list in which nothing stands twice. */
    static <T> List<T> distinct(Json json, String what, int least, Reader<T> reader) throws FileRefused {
        Set<T> seen = new HashSet<>();
        return list(json, what, least, item -> {
            T one = reader.read(item);
            if (!seen.add(one)) throw item.place().refuse(item.found() + " is given twice");
            return one;
        });
    }

    static Vector3d point(Json json) throws FileRefused {
        List<Json> items = items(json, "three numbers [x, y, z]", 0);
        if (items.size() != 3) throw json.place().refuse("expected three numbers [x, y, z], found " + items.size());
        Vector3d point = new Vector3d();
        for (int axis = 0; axis < 3; axis++) point.setComponent(axis, number(items.get(axis), Range.POSITION));
        return point;
    }

    /** @throws FileRefused where the id was there before; else it is added. {@code at} is the object that has it */
    static void once(Collection<String> seen, String id, Json at, String what) throws FileRefused {
        if (!seen.contains(id)) {
            seen.add(id);
            return;
        }
        Json.Member member = at instanceof Json.Obj object ? object.members().get("id") : null;
        Place place = member == null ? at.place() : member.value().place();
        throw place.refuse("two " + what + " have the id " + Words.quoted(id));
    }
}
