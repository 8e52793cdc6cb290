package org.marktwice.view.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.ClassList;
import org.marktwice.classroom.RackAllotment;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RackFile;
import org.marktwice.files.TypedRack;
import org.marktwice.print.LabelSheet;
import org.marktwice.print.Paper;
import org.marktwice.scenario.Scenario;

/** For how many jobs, or whose, the rack is allotted; and the last allotment with its labels. */
final class Allotting {
    private final Scenario scenario;
    private final RackModel model;
    private final Consumer<RackAllotment> come;
    private final Consumer<String> say;
    private final PathField list = new PathField(
            "allot-list",
            "A job for each learner of a list (CSV); empty for so many jobs",
            PathField.Kind.FILE,
            () -> {});
    private final NumberField times;
    private int jobs = 1;
    private @Nullable RackAllotment allotted;
    private TypedRack allottedOf = TypedRack.BLANK;
    private List<String> names = List.of();

    /**
     * @param come is given what was found
     * @param say is told in one line why nothing can be
     */
    Allotting(Scenario scenario, RackModel model, Consumer<RackAllotment> come, Consumer<String> say) {
        this.scenario = scenario;
        this.model = model;
        this.come = come;
        this.say = say;
        times = new NumberField(
                "jobs",
                "How many jobs are made",
                4,
                n -> n == Math.rint(n) && n >= 1 && n <= RackAllotment.MOST,
                n -> jobs = n == null ? jobs : (int) Math.rint(n));
        times.show((double) jobs);
    }

    PathField list() {
        return list;
    }

    NumberField times() {
        return times;
    }

    Optional<RackAllotment> allotted() {
        return Optional.ofNullable(allotted);
    }

    /** Whose job each is. */
    List<String> names() {
        return names;
    }

    /**
     * Begins with what is whole of the rack.
     *
     * @param failed is called where it comes to nothing
     * @return whether there is anything to begin with
     */
    boolean begin(Runnable failed) {
        // the key may have come while one was still in the field
        times.postActionEvent();
        TypedRack of = model.rack();
        Optional<RackFile> whole = model.whole();
        if (whole.isEmpty()) {
            say.accept("No board of the rack is whole yet: " + model.standing());
            return false;
        }
        Optional<Path> learners = list.path();
        int number = jobs;
        say.accept("");
        Aside.run(
                () -> {
                    List<String> whose = whose(learners, number);
                    return new Found(RackAllotment.of(scenario, whole.get(), whose.size()), whose, of);
                },
                found -> {
                    allotted = found.allotment();
                    allottedOf = found.of();
                    names = found.names();
                    come.accept(found.allotment());
                },
                why -> {
                    failed.run();
                    say.accept(why);
                });
        return true;
    }

    private static List<String> whose(Optional<Path> list, int number) throws FileRefused, Aside.Said {
        List<String> whose = new ArrayList<>();
        if (list.isPresent()) whose.addAll(ClassList.read(list.get()).learners());
        else for (int i = 1; i <= number; i++) whose.add("Job " + i);
        if (whose.size() > RackAllotment.MOST) {
            throw new Aside.Said("No more than " + RackAllotment.MOST + " jobs at once");
        }
        return List.copyOf(whose);
    }

    private record Found(RackAllotment allotment, List<String> names, TypedRack of) {}

    /** What came out, in one line; and that the rack was changed since, where it was. */
    String says() {
        RackAllotment a = allotted;
        if (a == null) return "";
        boolean round = a.clear() == a.parts();
        return (round ? "✓  " : "×  ") + a.supplied() + " of " + a.parts() + " parts supplied, " + a.clear()
                + " of them clear, from " + a.rack().size() + (a.rack().size() == 1 ? " board." : " boards.")
                + (allottedOf.equals(model.rack()) ? "" : "  The rack was changed since: allot again.");
    }

    /** Saves labels for the boards. */
    void labels(Path to, Paper paper) {
        RackAllotment now = allotted;
        if (now == null) return;
        List<String> whose = names;
        Printing.save(
                to, () -> new Printing.Bound(LabelSheet.of(now, whose, paper), "Labels: " + scenario.title()), say);
    }
}
