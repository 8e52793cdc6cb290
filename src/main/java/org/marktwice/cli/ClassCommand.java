package org.marktwice.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** What a teacher does for a whole class; a family of commands. */
@Command(
        name = "class",
        description =
                "For a whole class: marks a folder of attempts, tells results and what to teach again, allots real boards.",
        synopsisSubcommandLabel = "COMMAND",
        footer = {"", "Call learners by numbers or initials: whatever is typed stands in their files and in every list."
        })
final class ClassCommand implements Runnable {
    @CommandLine.Spec
    CommandLine.Model.@Nullable CommandSpec spec;

    /** With its subcommands. */
    static CommandLine line(Console console) {
        return new CommandLine(new ClassCommand())
                .addSubcommand(new ClassMarkCommand(console))
                .addSubcommand(new ClassResultsCommand(console))
                .addSubcommand(new ClassReteachCommand(console))
                .addSubcommand(new ClassAllotCommand(console))
                .addSubcommand(new ClassRecordCommand(console))
                .addSubcommand(new ClassSheetsCommand(console))
                .addSubcommand(new ClassForgetCommand(console));
    }

    @Override
    public void run() {
        throw WrongUse.noSubcommand(spec);
    }
}
