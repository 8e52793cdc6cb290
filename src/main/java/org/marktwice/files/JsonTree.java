package org.marktwice.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** JSON text as a tree of located values. Refuses what is not JSON, the same name twice, and what is absurdly large. */
final class JsonTree {
    static final int DEEPEST = 32;
    private static final int MOST_VALUES = 200_000;
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_TEXT = 100_000;
    private static final int LONGEST_NUMBER = 100;

    static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST + 8)
                    .maxNameLength(LONGEST_NAME)
                    .maxStringLength(LONGEST_TEXT)
                    .maxNumberLength(LONGEST_NUMBER)
                    .build())
            .build();

    private final JsonParser parser;
    private final String file;
    private final int firstLine;
    private Place place;
    private int values;

    private JsonTree(JsonParser parser, String file, int firstLine) {
        this.parser = parser;
        this.file = file;
        this.firstLine = firstLine;
        this.place = Place.root(file, firstLine, 1);
    }

    /**
     * The one value that the text holds.
     *
     * @param firstLine the file's line on which the text begins
     */
    static Json parse(String file, String text, int firstLine) throws FileRefused {
        Json plain = JsonScan.parse(file, text, firstLine);
        return plain == null ? parseAny(file, text, firstLine) : plain;
    }

    /** Whatever the text is like. */
    static Json parseAny(String file, String text, int firstLine) throws FileRefused {
        try (JsonParser parser = FACTORY.createParser(text)) {
            return new JsonTree(parser, file, firstLine).whole();
        } catch (IOException e) {
            throw new IllegalStateException("a string can't fail to be read", e);
        }
    }

    private Json whole() throws IOException, FileRefused {
        try {
            if (parser.nextToken() == null) throw new FileRefused(file, "the file is empty");
            Json root = value(Place.root(file, line(), column()), 0);
            place = root.place();
            if (parser.nextToken() != null) {
                throw Place.root(file, line(), column()).refuse("expected the end, found more after the closing brace");
            }
            return root;
        } catch (StreamConstraintsException e) {
            throw new FileRefused(file, line(), column(), whereStopped(), tooLong(e));
        } catch (JsonParseException e) {
            JsonLocation at = e.getLocation();
            int atLine = at == null ? firstLine : firstLine + at.getLineNr() - 1;
            throw new FileRefused(file, atLine, at == null ? 0 : at.getColumnNr(), whereStopped(), reason(e));
        }
    }

    /** The path of the value at which the parser stopped; it reads a field's name and value in one go. */
    private String whereStopped() {
        String path = place.path();
        String name = parser.getParsingContext().getCurrentName();
        if (name == null || path.endsWith("." + name)) return path;
        return path + "." + Words.printable(name);
    }

    private Json value(Place here, int depth) throws IOException, FileRefused {
        place = here;
        if (depth > DEEPEST) throw here.refuse("nested more than " + DEEPEST + " deep");
        if (++values > MOST_VALUES) throw here.refuse("more than " + MOST_VALUES + " values in one file");
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> object(here, depth);
            case START_ARRAY -> list(here, depth);
            case VALUE_STRING -> new Json.Text(here, parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(here);
            case VALUE_TRUE, VALUE_FALSE -> new Json.Bool(here, token == JsonToken.VALUE_TRUE);
            default -> new Json.Null(here);
        };
    }

    private Json number(Place here) throws IOException, FileRefused {
        String written = parser.getText();
        // + 0.0 turns the negative zero into the plain one
        double value = Double.parseDouble(written) + 0.0;
        Json.Num number = new Json.Num(here, written, value);
        if (Double.isInfinite(value)) throw number.expected("a number of ordinary size");
        return number;
    }

    private Json object(Place here, int depth) throws IOException, FileRefused {
        Map<String, Json.Member> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            Place nameAt = here.field(name, line(), column());
            if (members.containsKey(name)) throw nameAt.refuse("the field " + Words.quoted(name) + " is given twice");
            place = nameAt;
            parser.nextToken();
            Json value = value(here.field(name, line(), column()), depth + 1);
            members.put(name, new Json.Member(nameAt, value));
            place = here;
        }
        return new Json.Obj(here, Collections.unmodifiableMap(members));
    }

    private Json list(Place here, int depth) throws IOException, FileRefused {
        List<Json> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(here.item(items.size(), line(), column()), depth + 1));
            place = here;
        }
        return new Json.Arr(here, List.copyOf(items));
    }

    private int line() {
        return firstLine + parser.currentTokenLocation().getLineNr() - 1;
    }

    private int column() {
        return parser.currentTokenLocation().getColumnNr();
    }

    private static String tooLong(StreamConstraintsException e) {
        String said = String.valueOf(e.getOriginalMessage());
        if (said.startsWith("Number"))
            return "expected a number of at most " + LONGEST_NUMBER + " digits, found a longer one";
        if (said.startsWith("Name"))
            return "expected a field name of at most " + LONGEST_NAME + " letters, found a longer one";
        if (said.startsWith("String"))
            return "expected a text of at most " + LONGEST_TEXT + " letters, found a longer one";
        return "nested more than " + DEEPEST + " deep";
    }

    private static String reason(JsonParseException e) {
        String said = String.valueOf(e.getOriginalMessage());
        if (e instanceof JsonEOFException || said.startsWith("Unexpected end-of-input")) {
            return "not JSON: the text ends before the value does";
        }
        if (said.startsWith("Unexpected close marker"))
            return "not JSON: a closing bracket too many, or of the wrong kind";

        String odd = between(said, "Non-standard token '", "'");
        if (odd != null) return "expected a number, found " + odd;
        String token = between(said, "Unrecognized token '", "'");
        if (token != null) return "not JSON: found " + Words.quoted(token);
        String character = between(said, "Unexpected character ('", "' (code");
        if (character != null) return "not JSON: " + unexpected(character, said);
        if (said.startsWith("Illegal unquoted character")) return "not JSON: a text runs over the end of its line";
        int end = said.indexOf(" (");
        String plain = end < 0 ? said : said.substring(0, end);
        return "not JSON: " + Words.printable(plain.substring(0, 1).toLowerCase(Locale.ROOT) + plain.substring(1));
    }

    private static String unexpected(String character, String said) {
        String found = ", found '" + Words.printable(character) + "'";
        if (said.contains("to start field name")) return "expected a field name in double quotes" + found;
        if (said.contains("comma to separate")) return "expected a comma or a closing bracket" + found;
        if (said.contains("colon to separate")) return "expected a colon after the field name" + found;
        return "expected a value" + found;
    }

    private static @Nullable String between(String text, String before, String after) {
        int from = text.indexOf(before);
        if (from < 0) return null;
        int to = text.indexOf(after, from + before.length());
        return to < 0 ? null : text.substring(from + before.length(), to);
    }
}
