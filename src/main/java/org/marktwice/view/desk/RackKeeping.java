package org.marktwice.view.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import org.marktwice.files.TypedRack;

/** Where the rack is kept: opened, saved, and kept when one leaves. */
final class RackKeeping {
    private final Desk desk;
    private final RackModel model;
    private final RackTableView table;
    private final Consumer<String> say;
    private final PathField path =
            new PathField("rack", "The rack's file, *.csv or *.rack.json", PathField.Kind.FILE, () -> {});
    private final WorkFile work;

    /** @param say is told in one line what was done, or why not */
    RackKeeping(Desk desk, RackModel model, RackTableView table, Consumer<String> say) {
        this.desk = desk;
        this.model = model;
        work = new WorkFile(path, model.steps());
        this.table = table;
        this.say = say;
        path.onChosen(this::open);
    }

    PathField path() {
        return path;
    }

    private Path usual() {
        return desk.folder().folder().resolve("rack.csv");
    }

    /** Goes on with the workshop's own rack, where one is kept. */
    void kept() {
        path.show(usual());
        if (!Files.exists(usual())) return;
        Aside.run(
                () -> TypedRack.read(usual()),
                read -> {
                    // somebody began to type before it came
                    if (!model.steps().isSaved() || table.isEditing()) return;
                    model.begin(read);
                    work.opened(usual());
                },
                say);
    }

    private Optional<Path> chosen() {
        Optional<Path> typed = path.path();
        if (typed.isEmpty()) say.accept("Say which file the rack is in");
        return typed;
    }

    void open() {
        chosen().ifPresent(p -> read(p, () -> say.accept("Opened: " + p)));
    }

    /** Reads the file that is named. @return whether there is one */
    boolean read(Runnable then) {
        Optional<Path> from = path.path().filter(Files::exists);
        from.ifPresent(p -> read(p, then));
        return from.isPresent();
    }

    private void read(Path from, Runnable then) {
        Aside.run(
                () -> TypedRack.read(from),
                read -> {
                    table.giveUp();
                    model.open(read);
                    work.opened(from);
                    then.run();
                },
                say);
    }

    /** @param over asked over this, where another file is there */
    void save(JComponent over) {
        table.settle();
        chosen().filter(p -> work.agreed(over, p)).ifPresent(p -> {
            TypedRack now = model.rack();
            Aside.run(
                    () -> {
                        WorkFile.write(p, RackModel.bytes(now, p.toString()));
                        return p;
                    },
                    saved -> {
                        work.saved(saved);
                        if (model.rack().equals(now)) model.steps().saved();
                        say.accept("Saved: " + saved);
                    },
                    say);
        });
    }

    /** What was typed is kept, whole or not, before anything else comes; as JSON that isn't whole it is kept on the desk. */
    void left(JComponent over) {
        table.settle();
        work.keepWhenLeft(desk, over, "The rack", usual(), to -> RackModel.bytes(model.rack(), to.toString()));
    }
}
