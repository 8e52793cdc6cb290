package org.marktwice.rulebook;

import java.util.Map;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** A sentence with gaps: {@code {clearance:mm}}, {@code {n:count board|boards}}; the formats are those of {@link Words}. */
final class Template {
    private static final Pattern GAP = Pattern.compile("\\{([A-Za-z][A-Za-z0-9]*)(?::([^{}]*))?}");
    private static final Pattern SENTENCE = Pattern.compile("(?:^|[.?!] )(\\p{Ll})");

    private Template() {}

    /** The sentence filled in, each of its sentences begun with a capital. @throws IllegalArgumentException for a gap that can't be filled */
    static String fill(String template, Map<String, Object> values, Words words) {
        String filled = replace(GAP, template, gap -> {
            Object value = values.get(gap.group(1));
            if (value == null) throw new IllegalArgumentException("no value for " + gap.group() + " in: " + template);
            String format = gap.group(2);
            return words.of(value, format == null ? "" : format);
        });
        if (filled.indexOf('{') >= 0 || filled.indexOf('}') >= 0) {
            throw new IllegalArgumentException("a gap that can't be read in: " + template);
        }
        return replace(SENTENCE, filled, start -> {
            String all = start.group();
            int last = all.length() - 1;
            return all.substring(0, last) + Character.toUpperCase(all.charAt(last));
        });
    }

    private static String replace(Pattern pattern, String text, Function<MatchResult, String> by) {
        StringBuilder out = new StringBuilder();
        int[] from = {0};
        pattern.matcher(text).results().forEach(found -> {
            out.append(text, from[0], found.start()).append(by.apply(found));
            from[0] = found.end();
        });
        return out.append(text.substring(from[0])).toString();
    }
}
