package org.marktwice.files;

import java.util.List;
import java.util.Optional;

/** The fields of an object all of whose names are known. */
final class Fields {
    private final Json.Obj object;

    private Fields(Json.Obj object) {
        this.object = object;
    }

    /** @throws FileRefused where the value is no object, or has a field that is not among the known ones */
    static Fields of(Json json, String what, List<String> known) throws FileRefused {
        Json.Obj object = object(json, what);
        for (var member : object.members().entrySet()) {
            if (!known.contains(member.getKey())) {
                throw member.getValue().name().refuse(unknown(member.getKey(), known));
            }
        }
        return new Fields(object);
    }

    /** An object whose field names are free: a map. */
    static Json.Obj object(Json json, String what) throws FileRefused {
        if (json instanceof Json.Obj object) return object;
        throw json.expected(what);
    }

    private static String unknown(String name, List<String> known) {
        String hint = Words.nearest(name, known)
                .map(n -> "did you mean " + Words.quoted(n) + "?")
                .orElse("known here are " + Words.allOf(known));
        return "unknown field " + Words.quoted(name) + ": " + hint;
    }

    Place place() {
        return object.place();
    }

    Json need(String name) throws FileRefused {
        Json.Member member = object.members().get(name);
        if (member == null) throw object.place().refuse("the field " + Words.quoted(name) + " is missing");
        return member.value();
    }

    Optional<Json> get(String name) {
        return Optional.ofNullable(object.members().get(name)).map(Json.Member::value);
    }

    boolean has(String name) {
        return object.members().containsKey(name);
    }

    /** @throws FileRefused where the field is there: {@code because} says why it has no place here */
    void refuse(String name, String because) throws FileRefused {
        Json.Member member = object.members().get(name);
        if (member != null)
            throw member.name().refuse("the field " + Words.quoted(name) + " has no place here: " + because);
    }

    double number(String name, Range range) throws FileRefused {
        return Values.number(need(name), range);
    }

    double number(String name, Range range, double absent) throws FileRefused {
        Optional<Json> json = get(name);
        return json.isPresent() ? Values.number(json.get(), range) : absent;
    }
}
