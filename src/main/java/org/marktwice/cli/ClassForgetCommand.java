package org.marktwice.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.LearnerName;
import org.marktwice.classroom.Forgetting;
import org.marktwice.files.FileRefused;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Deletes what there is about a learner. */
@Command(
        name = "forget",
        description = {
            "Finds what a folder holds about a learner, and with --yes deletes it.",
            "Found are attempts and quiz journals by what they hold, whatever they are called; the learner's variant of a "
                    + "class set; the learner's lines in tables (*.csv with a column \"learner\") and in records of finished "
                    + "jobs. Without --yes it only lists. Folders in the folder are looked into."
        },
        footer = {
            "",
            "Workbooks (*.xlsx), printed sheets and copies elsewhere are the teacher's to delete; files that bear the",
            "learner's name but can't be read are listed, and left.",
            "",
            "Exit 0: listed or deleted. 1: nothing is there. 2: the folder can't be read, or a file not deleted.",
            "",
            "--json writes one object:",
            "  learner, deleted (whether it was done)",
            "  files[], tables[] (that lose lines), doubtful[] (left as they are)"
        })
final class ClassForgetCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    @Nullable
    CommandSpec spec;

    @Parameters(index = "0", paramLabel = "LEARNER", description = "as the attempts have it; capitals don't count")
    private String learner = "";

    @Parameters(index = "1", paramLabel = "DIR", description = "the folder to look in")
    private Path folder = Path.of("");

    @Option(names = "--yes", description = "delete what is listed")
    private boolean yes;

    @Option(names = "--json", description = "write the result as JSON, as described below")
    private boolean json;

    ClassForgetCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused {
        if (LearnerName.key(learner).isEmpty()) {
            throw WrongUse.of(spec, "expected a learner, found \"" + learner + "\"");
        }
        Forgetting found = Forgetting.find(folder, learner);
        if (yes) found.delete();
        if (json) json(found);
        else text(found);
        return found.isEmpty() ? Exit.NO : Exit.DONE;
    }

    private void json(Forgetting found) {
        console.json(Fields.with("learner", learner)
                .and("deleted", yes)
                .and("files", names(found.files()))
                .and("tables", names(found.tables()))
                .and("doubtful", names(found.doubtful()))
                .map());
    }

    private static List<String> names(List<Path> files) {
        return files.stream().map(Path::toString).toList();
    }

    private void text(Forgetting found) {
        if (found.isEmpty()) console.line("Nothing about " + learner + " in " + folder);
        for (Path file : found.files()) console.line((yes ? "deleted  " : "would delete  ") + file);
        for (Path table : found.tables()) {
            console.line((yes ? "lines taken out of  " : "would take lines out of  ") + table);
        }
        for (Path file : found.doubtful()) {
            console.line("left, though it bears the name  " + file);
        }
        if (!yes && !found.isEmpty()) console.line("Nothing was changed; --yes does it.");
    }
}
