package org.marktwice.cli;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Attempt;
import org.marktwice.classroom.BulkMarking;
import org.marktwice.classroom.ExerciseSet;
import org.marktwice.classroom.Marked;
import org.marktwice.classroom.Marked.State;
import org.marktwice.files.FileRefused;
import org.marktwice.files.Printable;
import org.marktwice.rulebook.MarkSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Marks a folder of attempts. */
@Command(
        name = "mark",
        description = {
            "Marks every file of a folder, whatever state it is in; none is left out, none stops the rest.",
            "Marks are computed from the actions. A file is known by what it holds, not by its name."
        },
        footer = {
            "",
            "Exit 0: every file is accounted for, whatever its state. 2: the scenario or the folder can't be read.",
            "",
            "--json writes one object:",
            "  scenario, title",
            "  files[]   by name:",
            "    file      its path below the folder",
            "    state     whole; unfinished (not handed in) and torn (its last line was cut off), marked as",
            "              far as they go; changed-scenario, wrong-scenario, unreadable, not-an-attempt",
            "    reason    why it isn't whole; absent where it is",
            "    learner, started, handedIn   where it could be read",
            "    scenario  the id of the scenario it was made on, where it could be read",
            "    marks, outOf                 where it was marked",
            "    madeFor   the learner of a class set on whose boards it was made",
            "    sameAs    another file with the very same actions at the same times; it says nothing",
            "              about why, and both are marked",
            "  counts    how many files of each state",
            "  missing[] learners of a class set of whom there is no attempt"
        })
final class ClassMarkCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private final FolderMarking marking = new FolderMarking();

    ClassMarkCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused, InterruptedException {
        ExerciseSet set = marking.set();
        BulkMarking files = marking.files();
        if (marking.json) json(set, files);
        else text(set, files);
        return Exit.DONE;
    }

    private void json(ExerciseSet set, BulkMarking files) throws FileRefused, InterruptedException {
        Map<State, Integer> counts = new EnumMap<>(State.class);
        Set<String> learners = new HashSet<>();
        try (JsonStream out = console.jsonStream()) {
            out.field("scenario", set.scenarios().get(0).id());
            out.field("title", set.title());
            out.list("files");
            marking.run(console, set, files, marked -> {
                counts.merge(marked.state(), 1, Integer::sum);
                learners.add(marked.learner());
                out.item(answer(marked));
            });
            out.endList();
            Map<String, Integer> named = new LinkedHashMap<>();
            for (State state : State.values()) named.put(state.id(), counts.getOrDefault(state, 0));
            out.field("counts", named);
            out.field("missing", set.missing(learners));
        }
    }

    private static Map<String, @Nullable Object> answer(Marked marked) {
        Attempt attempt = marked.attempt().orElse(null);
        MarkSheet sheet = marked.sheet().orElse(null);
        Fields fields =
                Fields.with("file", marked.file()).and("state", marked.state().id());
        if (!marked.reason().isEmpty()) fields.and("reason", marked.reason());
        if (attempt != null) {
            fields.and("learner", attempt.learner())
                    .and("started", attempt.started())
                    .and("scenario", attempt.scenario());
            if (sheet != null || !attempt.actions().isEmpty()) fields.and("handedIn", attempt.handedIn());
        }
        if (sheet != null) fields.and("marks", sheet.marks()).and("outOf", sheet.outOf());
        if (!marked.madeFor().isEmpty()) fields.and("madeFor", marked.madeFor());
        if (!marked.sameAs().isEmpty()) fields.and("sameAs", marked.sameAs());
        return fields.map();
    }

    private void text(ExerciseSet set, BulkMarking files) throws FileRefused, InterruptedException {
        Map<State, Integer> counts = new EnumMap<>(State.class);
        Set<String> learners = new HashSet<>();
        int longest = files.names().stream().mapToInt(String::length).max().orElse(4);
        String row = "%-" + Math.max(4, Math.min(48, longest)) + "s  %-16s  %-12s  %15s  %s";
        console.line("Attempts at " + set.title() + variants(set) + ": " + Text.count(files.size(), "file", "files"));
        console.line(Text.rule());
        console.line(format(row, "file", "state", "learner", "marks", ""));
        marking.run(console, set, files, marked -> {
            counts.merge(marked.state(), 1, Integer::sum);
            learners.add(marked.learner());
            console.line(format(
                    row,
                    marked.file(),
                    marked.state().spoken(),
                    marked.learner(),
                    marked.sheet().map(ClassMarkCommand::marks).orElse("–"),
                    remark(marked)));
        });
        console.line(Text.rule());
        counts.forEach((state, n) -> console.line(format("%5d  %s", n, state.spoken())));
        List<String> missing = set.missing(learners);
        if (!missing.isEmpty()) console.line(Text.wrapped("Nothing from: ", String.join(", ", missing)));
    }

    private static String variants(ExerciseSet set) {
        int n = set.scenarios().size();
        return n == 1 ? "" : " (" + Text.count(n, "variant", "variants") + ")";
    }

    static String marks(MarkSheet sheet) {
        return Text.number(sheet.marks()) + " of " + Text.number(sheet.outOf());
    }

    private static String remark(Marked marked) {
        List<String> said = new ArrayList<>();
        if (!marked.reason().isEmpty()) said.add(marked.reason());
        if (marked.onAnothersBoards()) said.add("made on the boards of " + marked.madeFor());
        if (!marked.sameAs().isEmpty()) {
            said.add("same actions at the same times as " + marked.sameAs() + "; that alone says nothing about why");
        }
        return String.join("; ", said);
    }

    /** What a file brings with it can't break the lines of the list. */
    private static String format(String row, Object... values) {
        return Printable.of(String.format(Locale.ROOT, row, values)).stripTrailing();
    }
}
