package org.marktwice.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The quiz, without the window. */
@Command(
        name = "quiz",
        description = "Questions made from boards and drawings: as a sheet, in the terminal, and marked.",
        synopsisSubcommandLabel = "COMMAND")
final class QuizCommand implements Runnable {
    @CommandLine.Spec
    CommandLine.Model.@Nullable CommandSpec spec;

    /** With its subcommands. */
    static CommandLine line(Console console) {
        return new CommandLine(new QuizCommand())
                .addSubcommand(new QuizMakeCommand(console))
                .addSubcommand(new QuizTakeCommand(console, System.in))
                .addSubcommand(new QuizMarkCommand(console));
    }

    @Override
    public void run() {
        throw WrongUse.noSubcommand(spec);
    }
}
