package org.marktwice.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** A command used wrongly: what it expected is said in one line, and it ends with {@link Exit#WRONG}. */
final class WrongUse {
    private WrongUse() {}

    /** @param spec of the command so used; picocli sets it before the command is called */
    static ParameterException of(@Nullable CommandSpec spec, String why) {
        if (spec == null) throw new IllegalStateException("picocli sets the spec");
        return new ParameterException(spec.commandLine(), why);
    }

    /** A command that does nothing by itself. */
    static ParameterException noSubcommand(@Nullable CommandSpec spec) {
        if (spec == null) throw new IllegalStateException("picocli sets the spec");
        return of(
                spec, "expected one of " + String.join(", ", spec.subcommands().keySet()));
    }
}
