package org.marktwice.cli;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.Results.Counting;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Which of a learner's attempts at the same exercise counts. */
final class CountingOption {
    @CommandLine.Spec(CommandLine.Spec.Target.MIXEE)
    CommandLine.Model.@Nullable CommandSpec spec;

    @Option(
            names = "--count",
            paramLabel = "last|best|first",
            defaultValue = "last",
            description = "which of a learner's attempts at the same exercise counts (default: last)")
    private String word = "last";

    Counting counting() {
        for (Counting one : Counting.values()) {
            if (one.name().toLowerCase(Locale.ROOT).equals(word)) return one;
        }
        throw WrongUse.of(spec, "--count: expected last, best or first, found " + word);
    }
}
