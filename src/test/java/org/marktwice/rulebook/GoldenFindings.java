package org.marktwice.rulebook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.marktwice.rulebook.FindingsTour.Met;

/**
 * The findings as they read, one of each kind that a rule can make on the tour: where, verdict, figure against limit, what
 * was found, and what would have been better. After a change of words that is meant, {@code main} writes the file anew.
 */
final class GoldenFindings {
    static final Path FILE = Path.of("src/test/resources/rulebook/findings.txt");

    private GoldenFindings() {}

    public static void main(String[] args) throws IOException {
        Files.createDirectories(FILE.getParent());
        Files.writeString(FILE, String.join("\n", all().values()), StandardCharsets.UTF_8);
    }

    /** The text of each rule, by its id, in the rule book's order. */
    static Map<String, String> all() {
        Map<String, Map<String, Met>> kinds = new LinkedHashMap<>();
        RuleBook.rules().forEach(r -> kinds.put(r.id(), new LinkedHashMap<>()));
        FindingsTour.all()
                .forEach(met -> Optional.ofNullable(kinds.get(met.finding().rule()))
                        .ifPresent(k -> k.putIfAbsent(kind(met.finding()), met)));
        Map<String, String> all = new LinkedHashMap<>();
        kinds.forEach((rule, met) -> all.put(rule, text(rule, met)));
        return all;
    }

    private static String kind(Finding finding) {
        Finding.Phrase better = finding.instead();
        return finding.says().key() + (better == null ? "" : " + " + better.key());
    }

    private static String text(String rule, Map<String, Met> kinds) {
        Texts.RuleTexts texts = Texts.of(rule);
        List<String> lines = new ArrayList<>();
        lines.add("== " + rule + ": " + texts.title());
        lines.add("Why:    " + texts.why());
        lines.add("Source: " + texts.source());
        if (!texts.safety().isEmpty()) lines.add("Care:   " + texts.safety());
        new TreeMap<>(kinds).forEach((kind, met) -> {
            lines.add("");
            lines.add("-- " + kind + " (" + met.exercise() + ")");
            lines.add(met.finding().verdict().id() + figure(met.finding().measured()) + ": " + met.says());
            if (!met.instead().isEmpty()) lines.add("Better: " + met.instead());
        });
        lines.add("");
        return String.join("\n", lines);
    }

    private static String figure(Finding.@Nullable Measured measured) {
        return measured == null
                ? ""
                : String.format(
                        Locale.ROOT, " (%.2f %s, limit %.2f)", measured.value(), measured.unit(), measured.limit());
    }
}
