package org.marktwice.cli;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.marktwice.files.FileRefused;
import org.marktwice.view.Launch;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;

/** Where the program starts. Without arguments it opens the window, or, where there is no display, marks the demo attempt. */
public final class Main {
    private Main() {}

    /** The one place from which the program exits. */
    public static void main(String[] args) {
        // a command draws on paper only, and must not look for a display that is named but isn't there
        if (args.length > 0) System.setProperty("java.awt.headless", "true");
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        int code = run(out, err, args);
        if (code != Exit.DONE) System.exit(code);
    }

    private static PrintStream utf8(FileDescriptor to) {
        return new PrintStream(new FileOutputStream(to), false, StandardCharsets.UTF_8);
    }

    /** Runs one command line; the exit code. Never throws. */
    public static int run(PrintStream out, PrintStream err, String... args) {
        Console console = new Console(out, err);
        int code = guarded(console, args);
        if (console.delivered()) return code;
        console.complain("marktwice: the answer could not be written out");
        return Exit.WRONG;
    }

    private static int guarded(Console console, String[] args) {
        try {
            return args.length == 0
                    ? withoutArguments(console)
                    : commandLine(console).execute(args);
        } catch (OutOfMemoryError e) {
            console.complain("marktwice: there is not enough memory for this");
        } catch (Throwable e) {
            console.complain(spoken(e));
        }
        return Exit.WRONG;
    }

    private static int withoutArguments(Console console) throws FileRefused {
        if (!hasScreen()) return Demo.mark(console);
        Launch.open();
        return Exit.DONE;
    }

    /** Whether a window can be shown. A display that is named but can't be reached is none. */
    private static boolean hasScreen() {
        if (GraphicsEnvironment.isHeadless()) return false;
        try {
            return GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (AWTError | HeadlessException e) {
            return false;
        }
    }

    private static CommandLine commandLine(Console console) {
        return new CommandLine(new Top())
                .addSubcommand(new MarkCommand(console))
                .addSubcommand(new ReplayCommand(console))
                .addSubcommand(new FitCommand(console))
                .addSubcommand(new SolveCommand(console))
                .addSubcommand(new BoardCommand(console))
                .addSubcommand(new CheckCommand(console))
                .addSubcommand(new RulesCommand(console))
                .addSubcommand(new MakeCommand(console))
                .addSubcommand(new PrintCommand(console))
                .addSubcommand(ClassCommand.line(console))
                .addSubcommand(QuizCommand.line(console))
                .registerConverter(Path.class, new PathConverter())
                .setExpandAtFiles(false)
                .setOut(console.out())
                .setErr(console.err())
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setUsageHelpWidth(110)
                .setParameterExceptionHandler((e, args) -> {
                    String command = e.getCommandLine().getCommandSpec().qualifiedName();
                    console.complain(command + ": " + spoken(e) + " (" + command + " --help says more)");
                    return Exit.WRONG;
                })
                .setExecutionExceptionHandler((e, line, parsed) -> {
                    console.complain(spoken(e));
                    return Exit.WRONG;
                });
    }

    private static String spoken(CommandLine.ParameterException e) {
        CommandLine line = e.getCommandLine();
        if (e instanceof CommandLine.UnmatchedArgumentException unmatched
                && !line.getSubcommands().isEmpty()
                && !unmatched.isUnknownOption()) {
            return "there is no command " + unmatched.getUnmatched().get(0);
        }
        String words = String.valueOf(e.getMessage()).replaceFirst("^Error: ", "");
        return words.replaceFirst("'([^']*)' is not an? (?:long|int)$", "expected a whole number, found '$1'")
                .replaceFirst("'([^']*)' is not a double$", "expected a number, found '$1'");
    }

    /** What went wrong, in one line. A refused file says it best itself. */
    private static String spoken(Throwable e) {
        if (e instanceof FileRefused) return String.valueOf(e.getMessage());
        return "marktwice: a fault in the program, please report it: " + e + at(e.getStackTrace());
    }

    private static String at(StackTraceElement[] trace) {
        return trace.length == 0 ? "" : " at " + trace[0];
    }

    @Command(
            name = "marktwice",
            versionProvider = Version.class,
            synopsisSubcommandLabel = "COMMAND",
            description = "Marking out timber, practised and marked. Without a command it opens the window.",
            exitCodeListHeading = "%nExit codes:%n",
            exitCodeList = {
                "0:done",
                "1:the answer is no: a scenario can't be solved, a job doesn't go together",
                "2:wrong use, or a file that can't be read; the reason is on standard error, in one line"
            })
    private static final class Top implements Runnable {
        @CommandLine.Spec
        CommandLine.Model.@Nullable CommandSpec spec;

        @CommandLine.Option(
                names = {"-h", "--help"},
                usageHelp = true,
                scope = CommandLine.ScopeType.INHERIT,
                description = "show this help and do nothing else")
        private boolean help;

        @CommandLine.Option(names = "--version", versionHelp = true, description = "show the version")
        private boolean version;

        @Override
        public void run() {
            if (spec != null) throw new CommandLine.ParameterException(spec.commandLine(), "expected a command");
        }
    }

    /** The version that the jar was packaged as. */
    private static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Main.class.getPackage().getImplementationVersion();
            return new String[] {"Marktwice " + (version == null ? "(not packaged)" : version)};
        }
    }
}
