package org.marktwice.view.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import org.marktwice.classroom.ClassList;
import org.marktwice.classroom.ClassSet;
import org.marktwice.classroom.JobRecord;
import org.marktwice.classroom.Measure;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RecordFile;
import org.marktwice.scenario.Scenario;

/** Where the record of finished jobs is kept, and for whom one is begun: opened, begun, saved, and kept when one leaves. */
final class RecordKeeping {
    private static final int USUAL = 20;

    private final Desk desk;
    private final Scenario scenario;
    private final RecordModel model;
    private final Consumer<String> say;
    private final PathField path =
            new PathField("record-file", "The record's file, *.record.json or *.csv", PathField.Kind.FILE, () -> {});
    private final WorkFile work;
    private final PathField list = new PathField(
            "record-list", "Their names, from a class list (CSV); empty for so many", PathField.Kind.FILE, () -> {});
    private final NumberField count;
    private final Runnable opened;
    private int learners = USUAL;

    /**
     * @param opened is told when a record that was asked for is there
     * @param say is told in one line what was done, or why not
     */
    RecordKeeping(Desk desk, Scenario scenario, RecordModel model, Runnable opened, Consumer<String> say) {
        this.desk = desk;
        this.scenario = scenario;
        this.model = model;
        work = new WorkFile(path, model.steps());
        this.opened = opened;
        this.say = say;
        count = new NumberField(
                "record-learners",
                "How many learners, for a record that is begun",
                4,
                n -> n == Math.rint(n) && n >= 1 && n <= ClassList.MOST,
                n -> learners = n == null ? learners : (int) Math.rint(n));
        count.show((double) learners);
    }

    static RecordFile empty(Scenario scenario) {
        return RecordFile.blank(scenario.id(), ClassList.numbered(USUAL).learners());
    }

    PathField path() {
        return path;
    }

    PathField list() {
        return list;
    }

    NumberField count() {
        return count;
    }

    private Path usual(String ending) {
        return desk.folder().folder().resolve(scenario.id() + ".record" + ending);
    }

    /** Goes on with the record that is kept of this exercise; else with an empty one for those it was handed out to. */
    void kept() {
        Path table = usual(".csv");
        Path own = Files.exists(table) && !Files.exists(usual(".json")) ? table : usual(".json");
        path.show(own);
        if (Files.exists(own)) {
            read(own, "");
            return;
        }
        Aside.run(
                () -> ClassSet.entries(handedOut()).stream()
                        .map(ClassSet.Entry::learner)
                        .toList(),
                whose -> {
                    if (whose.isEmpty() || !model.isBlank()) return;
                    model.begin(RecordFile.blank(scenario.id(), whose));
                    say.accept("Begun for the " + whose.size() + " learners to whom it was handed out");
                },
                notHandedOut -> {});
    }

    /** Where its class set lies, if it was handed out. */
    Path handedOut() {
        return desk.handedOut().of(scenario.id());
    }

    private Optional<Path> chosen() {
        Optional<Path> typed = path.path();
        if (typed.isEmpty()) say.accept("Say which file the record is in");
        return typed;
    }

    /** Opens the record, or begins one where there is none. */
    void open() {
        // the key may have come while one was still in the field
        count.postActionEvent();
        chosen().ifPresent(p -> {
            if (Files.exists(p)) read(p, "Opened: " + p);
            else begin(p);
        });
    }

    /** @param then is said; the learners of the class list, where one is given, are put in who aren't there */
    private void read(Path from, String then) {
        Optional<Path> more = list.path();
        Aside.run(
                () -> {
                    RecordFile read = RecordFile.read(from);
                    RecordFile named = new RecordFile(scenario.id(), read.tolerance(), read.gap(), read.rows());
                    JobRecord.of(scenario, read.scenario().isEmpty() ? named : read, from.toString());
                    return new Read(
                            named, more.isPresent() ? ClassList.read(more.get()).learners() : List.of());
                },
                read -> {
                    // somebody began to type before it came
                    if (then.isEmpty() && !model.steps().isSaved()) return;
                    if (then.isEmpty()) model.begin(read.record());
                    else model.open(read.record());
                    work.opened(from);
                    int before = model.learners().size();
                    if (!read.more().isEmpty()) model.steps().edit(read.record().withAll(read.more()));
                    int put = model.learners().size() - before;
                    if (!then.isEmpty()) opened.run();
                    say.accept(then + (put > 0 ? ", and " + put + " more of the list put in" : ""));
                },
                say);
    }

    private record Read(RecordFile record, List<String> more) {}

    /** @param at where it is going to be kept */
    private void begin(Path at) {
        Optional<Path> names = list.path();
        int number = learners;
        Aside.run(
                () -> names.isPresent() ? ClassList.read(names.get()) : ClassList.numbered(number),
                all -> {
                    String back =
                            model.isBlank() ? "" : "; " + RecordScreen.UNDO.word() + " brings back what was typed";
                    model.open(RecordFile.blank(scenario.id(), all.learners()));
                    work.opened(at);
                    opened.run();
                    int n = all.learners().size();
                    say.accept("Begun for " + n + (n == 1 ? " learner" : " learners") + back);
                },
                say);
    }

    /** @param over asked over this, where another file is there */
    void save(JComponent over) {
        chosen().filter(p -> work.agreed(over, p)).ifPresent(p -> {
            RecordFile now = model.steps().now();
            Aside.run(
                    () -> {
                        WorkFile.write(p, bytes(now, p));
                        return p;
                    },
                    saved -> {
                        work.saved(saved);
                        if (model.steps().now().equals(now)) model.steps().saved();
                        boolean lost = isTable(saved) && !now.tolerance().isEmpty();
                        say.accept("Saved: " + saved
                                + (lost ? "; a table doesn't say by which tolerances it is judged, JSON does" : ""));
                    },
                    say);
        });
    }

    private static boolean isTable(Path path) {
        return path.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
    }

    private byte[] bytes(RecordFile record, Path to) throws FileRefused {
        String name = to.toString().toLowerCase(Locale.ROOT);
        if (isTable(to))
            return record.csv(model.measures().stream().map(Measure::id).toList());
        if (name.endsWith(".json")) return record.bytes();
        throw new FileRefused(to.toString(), "expected a file *.record.json or *.csv to save to");
    }

    /** What was typed is kept, before anything else comes. */
    void left(JComponent over) {
        work.keepWhenLeft(
                desk,
                over,
                "The record",
                usual(".json"),
                to -> bytes(model.steps().now(), to));
    }
}
