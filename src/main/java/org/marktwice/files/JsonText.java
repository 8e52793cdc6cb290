package org.marktwice.files;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.List;
import java.util.Map;

/** JSON text from maps, lists, texts, numbers and truth values. Fields keep the map's order; whole numbers have no point. */
final class JsonText {
    private static final int WIDTH = 110;

    private JsonText() {}

    /** On one line. */
    static String line(Object value) {
        StringBuilder out = new StringBuilder();
        write(value, out);
        return out.toString();
    }

    /** Over several lines, broken only where a value would be too long for one. */
    static String pretty(Object value) {
        StringBuilder out = new StringBuilder();
        pretty(value, "", 0, out);
        return out.append('\n').toString();
    }

    private static void write(Object value, StringBuilder out) {
        if (value instanceof Map<?, ?> map) {
            out.append('{');
            String comma = "";
            for (var entry : map.entrySet()) {
                out.append(comma);
                text(String.valueOf(entry.getKey()), out);
                out.append(':');
                write(known(entry.getValue()), out);
                comma = ",";
            }
            out.append('}');
        } else if (value instanceof List<?> list) {
            out.append('[');
            String comma = "";
            for (Object item : list) {
                out.append(comma);
                write(known(item), out);
                comma = ",";
            }
            out.append(']');
        } else if (value instanceof Double number) {
            out.append(number(number));
        } else if (value instanceof Integer || value instanceof Boolean) {
            out.append(value);
        } else {
            text(value.toString(), out);
        }
    }

    private static Object known(@org.jspecify.annotations.Nullable Object value) {
        if (value == null) throw new IllegalArgumentException("a field without a value is left out, not null");
        return value;
    }

    private static void pretty(Object value, String indent, int before, StringBuilder out) {
        String line = line(value);
        if (indent.length() + before + line.length() <= WIDTH || !(value instanceof Map || value instanceof List)) {
            out.append(line);
            return;
        }
        boolean isMap = value instanceof Map;
        String inner = indent + "  ";
        out.append(isMap ? "{" : "[");
        String comma = "\n";
        for (Object item : value instanceof Map<?, ?> map ? map.entrySet() : (List<?>) value) {
            out.append(comma).append(inner);
            if (item instanceof Map.Entry<?, ?> entry) {
                String name = line(String.valueOf(entry.getKey())) + ": ";
                out.append(name);
                pretty(known(entry.getValue()), inner, name.length(), out);
            } else {
                pretty(known(item), inner, 0, out);
            }
            comma = ",\n";
        }
        out.append('\n').append(indent).append(isMap ? "}" : "]");
    }

    private static void text(String text, StringBuilder out) {
        out.append('"')
                .append(JsonStringEncoder.getInstance().quoteAsString(text))
                .append('"');
    }

    /** Unrounded; a whole number without ".0". */
    static String number(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) throw new IllegalArgumentException("JSON has no " + value);
        if (value == Math.rint(value) && Math.abs(value) < 1e15) return Long.toString((long) value);
        return Double.toString(value);
    }
}
