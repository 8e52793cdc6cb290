package org.marktwice.files;

import java.util.List;
import java.util.Map;

/** A JSON value that knows where it stands. Immutable; fields keep the file's order. */
sealed interface Json {
    Place place();

    /** What it is, in a message. */
    String found();

    /** A refusal that says what was expected here instead of this value. */
    default FileRefused expected(String what) {
        return place().refuse("expected " + what + ", found " + found());
    }

    record Obj(Place place, Map<String, Member> members) implements Json {
        @Override
        public String found() {
            return "an object";
        }
    }

    /** A field of an object, with the place of its name. */
    record Member(Place name, Json value) {}

    record Arr(Place place, List<Json> items) implements Json {
        @Override
        public String found() {
            return "a list";
        }
    }

    record Text(Place place, String value) implements Json {
        @Override
        public String found() {
            return Words.quoted(value);
        }
    }

    /** @param written the number as the file has it */
    record Num(Place place, String written, double value) implements Json {
        @Override
        public String found() {
            return written.length() > 30 ? written.substring(0, 30) + "…" : written;
        }
    }

    record Bool(Place place, boolean value) implements Json {
        @Override
        public String found() {
            return Boolean.toString(value);
        }
    }

    record Null(Place place) implements Json {
        @Override
        public String found() {
            return "null";
        }
    }
}
