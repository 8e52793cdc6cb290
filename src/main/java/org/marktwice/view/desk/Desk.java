package org.marktwice.view.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Attempt;
import org.marktwice.picture.FigureCache;
import org.marktwice.rulebook.Finding;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Screen;

/** What leads from screen to screen at the teacher's desk. */
public final class Desk {
    /** Every command of the desk's screens. */
    public static final List<Command> COMMANDS = Stream.of(
                    DeskScreen.ALL, SetScreen.ALL, HandOutScreen.ALL, MarkScreen.ALL, AllotScreen.ALL, RecordScreen.ALL)
            .flatMap(List::stream)
            .toList();

    /** What the desk asks of the window. */
    public interface Host {
        void show(Screen screen);

        /** Says something above the screen. */
        void notice(String words);

        /** The title of the screen that is showing may be another now. */
        void titled();

        /** Goes to the exercises. */
        void exercises();

        /** Lets the teacher work at an exercise as a learner would; {@link Desk#resume} comes after. */
        void tryOut(Scenario scenario);

        /**
         * Shows what was done in an attempt; {@link Desk#resume} comes after.
         *
         * @param sought it begins at the step that decided this finding
         */
        void replay(Scenario scenario, Attempt attempt, Predicate<Finding> sought);
    }

    private final Host host;
    private final DeskFolder folder;
    private final List<Scenario> shelf;
    private final FigureCache figures;
    private final IssuedBy issued = new IssuedBy();
    private final HandedOut handedOut;
    private @Nullable Screen showing;
    private String last = "";

    /**
     * @param folder where the teacher's exercises are kept
     * @param shelf the exercises that come with the program
     */
    public Desk(Host host, Path folder, List<Scenario> shelf, FigureCache figures) {
        this.host = host;
        this.folder = new DeskFolder(folder);
        handedOut = new HandedOut(this.folder);
        this.shelf = List.copyOf(shelf);
        this.figures = figures;
    }

    /** Who issues the drawings that are printed, and when. */
    IssuedBy issued() {
        return issued;
    }

    /** Where exercises were handed out to. */
    HandedOut handedOut() {
        return handedOut;
    }

    /** The desk's first screen, anew. */
    public void home() {
        show(new DeskScreen(this));
    }

    /** The screen that was showing when one went to the bench from here. */
    public void resume() {
        Screen last = showing;
        if (last == null) {
            home();
            return;
        }
        // it was out of the window while the look may have changed
        SwingUtilities.updateComponentTreeUI(last.component());
        host.show(last);
    }

    private void show(Screen screen) {
        showing = screen;
        host.show(screen);
    }

    DeskFolder folder() {
        return folder;
    }

    /** The exercise that one was at last, by its name; empty where there was none. */
    String last() {
        return last;
    }

    void last(String name) {
        last = name;
    }

    List<Scenario> shelf() {
        return shelf;
    }

    FigureCache figures() {
        return figures;
    }

    void notice(String words) {
        host.notice(words);
    }

    void titled() {
        host.titled();
    }

    void exercises() {
        showing = null;
        host.exercises();
    }

    /** @param name empty for one that isn't kept yet */
    void set(String name, Draft draft) {
        show(new SetScreen(this, name, draft));
    }

    void handOut(Scenario scenario) {
        show(new HandOutScreen(this, scenario));
    }

    void allot(Scenario scenario) {
        show(new AllotScreen(this, scenario));
    }

    void record(Scenario scenario) {
        show(new RecordScreen(this, scenario));
    }

    /** @param set the scenario or the folder of variants to begin with; null for none */
    void mark(@Nullable Path set) {
        show(new MarkScreen(this, set));
    }

    void replay(Scenario scenario, Attempt attempt, Predicate<Finding> sought) {
        host.replay(scenario, attempt, sought);
    }

    void tryOut(Scenario scenario) {
        host.tryOut(scenario);
    }
}
