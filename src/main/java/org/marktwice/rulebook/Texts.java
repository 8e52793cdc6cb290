package org.marktwice.rulebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.marktwice.rulebook.Finding.Phrase;
import org.marktwice.scenario.Scenario;

/**
 * The words of the rule book: a rule's title, why, what to do instead, source, safety note, and the sentences of its
 * findings. One file a rule, {@code texts/<id>.properties}, and one for the remedies that rules share, UTF-8. A missing key or value is an error of the program,
 * thrown, never shown as a gap.
 */
public final class Texts {
    /** What a source's mark stands for. */
    static final Map<String, String> SOURCES = sources();

    private static final Map<String, Map<String, String>> FILES = new ConcurrentHashMap<>();

    private Texts() {}

    /**
     * One rule's words.
     *
     * @param why why it matters at the bench
     * @param instead what to do instead, in general
     * @param source where the trade says so, with its mark
     * @param safety a caution that belongs to it; empty where none does
     */
    public record RuleTexts(String title, String why, String instead, String source, String safety) {}

    /** A job done so that the rule is content, and one done so that it is not; a line each. */
    public record Examples(String passing, String failing) {}

    public static RuleTexts of(String ruleId) {
        return new RuleTexts(
                text(ruleId, "title"),
                text(ruleId, "why"),
                text(ruleId, "instead"),
                source(text(ruleId, "source")),
                text(ruleId, "safety"));
    }

    public static Examples examples(String ruleId) {
        return new Examples(text(ruleId, "example.passing"), text(ruleId, "example.failing"));
    }

    /** What was found, as one sentence or two. */
    public static String says(Finding finding, Scenario scenario) {
        return fill(finding, finding.says(), scenario);
    }

    /** What would have been better on this board; the rule's general advice where the finding has none of its own; empty for a sound finding. */
    public static String instead(Finding finding, Scenario scenario) {
        if (finding.verdict() == Verdict.SOUND) return "";
        Phrase better = finding.instead();
        return better == null ? text(finding.rule(), "instead") : fill(finding, better, scenario);
    }

    private static String fill(Finding finding, Phrase phrase, Scenario scenario) {
        Words words = new Words(scenario.drawing(), finding.subject().part());
        return Template.fill(text(finding.rule(), phrase.key()), phrase.values(), words);
    }

    private static String text(String ruleId, String key) {
        String found = (Remedy.isOne(key) ? remedies() : all(ruleId)).get(key);
        if (found == null) throw new IllegalArgumentException("no text " + key + " for the rule " + ruleId);
        return found;
    }

    /** Every key of a rule with its text. */
    static Map<String, String> all(String ruleId) {
        return FILES.computeIfAbsent(ruleId, Texts::read);
    }

    /** The words of the remedies, which several rules share. */
    static Map<String, String> remedies() {
        return shared("remedies.properties");
    }

    /** A file of words that belong to no single rule. */
    static Map<String, String> shared(String file) {
        return FILES.computeIfAbsent(file, Texts::readFile);
    }

    private static Map<String, String> read(String ruleId) {
        return readFile("texts/" + ruleId + ".properties");
    }

    private static Map<String, String> readFile(String file) {
        try (InputStream in = Texts.class.getResourceAsStream(file)) {
            if (in == null) throw new IllegalArgumentException("no texts " + file);
            Properties properties = new Properties();
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return properties.stringPropertyNames().stream()
                    .collect(Collectors.toUnmodifiableMap(
                            k -> k, k -> properties.getProperty(k).strip()));
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    /** {@code [N] [CP]} spelled out. */
    private static String source(String marks) {
        return Stream.of(marks.split(" "))
                .map(mark -> {
                    String spelled = SOURCES.get(mark);
                    if (spelled == null) throw new IllegalArgumentException("no source " + mark);
                    return spelled + " " + mark;
                })
                .collect(Collectors.joining("; "));
    }

    private static Map<String, String> sources() {
        Map<String, String> sources = new LinkedHashMap<>();
        sources.put("[N]", "W. Noyes, Handwork in Wood (1910)");
        sources.put("[F]", "W. Fairham, Woodwork Joints");
        sources.put("[G]", "I. S. Griffith, Essentials of Woodworking (1908)");
        sources.put("[CP]", "common practice");
        sources.put("[D]", "derived from the geometry");
        sources.put("[DC]", "a design choice that the teacher can change");
        return Map.copyOf(sources);
    }
}
