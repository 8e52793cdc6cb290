package org.marktwice.view.desk;

import java.awt.Component;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JOptionPane;
import org.marktwice.files.FileRefused;
import org.marktwice.files.NotSaved;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.AnotherFolder;
import org.marktwice.view.ShortPath;

/** Keeps an exercise that is being set, and asks where it can't. */
final class Keeping {
    private final Desk desk;
    private final SetModel model;
    private String name;
    private boolean givenUp;

    /** @param name the file's, without its ending; empty for an exercise that has none yet */
    Keeping(Desk desk, SetModel model, String name) {
        this.desk = desk;
        this.model = model;
        this.name = name;
    }

    /** The file's name, without its ending; empty while it has none. */
    String name() {
        return name;
    }

    /** The name under which it is kept: with the first save it gets one, and its id with it. */
    private String named() {
        if (name.isEmpty()) name = desk.folder().free(model.draft().named());
        if (model.draft().id().isEmpty()) model.steps().amend(model.draft().withId(name));
        return name;
    }

    /** @param notKept why it isn't kept, in one line; empty where it is */
    private record Kept(Optional<Scenario> finished, String notKept) {}

    private Kept kept(String file, Draft draft) throws FileRefused {
        try {
            return new Kept(desk.folder().save(file, draft), "");
        } catch (NotSaved e) {
            return new Kept(Optional.empty(), String.valueOf(e.getMessage()));
        }
    }

    /** @param notTaken what stands in a field and is no figure, in one line */
    void save(Component over, Optional<String> notTaken) {
        String file = named();
        Draft draft = model.draft();
        Aside.run(() -> kept(file, draft), kept -> saved(over, file, draft, kept, notTaken), model::say);
    }

    private void saved(Component over, String file, Draft draft, Kept kept, Optional<String> notTaken) {
        if (!kept.notKept().isEmpty()) {
            model.say(kept.notKept());
            if (isElsewhere(over, kept.notKept(), "Not now")) save(over, notTaken);
            return;
        }
        if (model.draft().equals(draft)) model.steps().saved();
        String how = kept.finished().isPresent()
                ? "Saved, finished: " + ShortPath.of(desk.folder().scenario(file))
                : "Saved as a draft: " + SetModel.standing(draft.gaps());
        model.say(notTaken.map(why -> how + " · Not taken: " + why).orElse(how));
    }

    /** Offers another folder to keep exercises in from now on. */
    private boolean isElsewhere(Component over, String why, String otherwise) {
        Optional<Path> other = AnotherFolder.offer(over, why, otherwise);
        other.ifPresent(desk.folder()::keepIn);
        return other.isPresent();
    }

    /** Asks what becomes of what isn't saved, where there is something. */
    boolean mayClose(Component over) {
        if (model.steps().isSaved()) return true;
        String title = model.draft().title();
        Object[] ways = {"Save", "Don't save", "Go on setting"};
        int way = JOptionPane.showOptionDialog(
                over,
                (title.isEmpty() ? "This exercise" : "\"" + title + "\"") + " has changes that are not saved.",
                "Not saved",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.WARNING_MESSAGE,
                null,
                ways,
                ways[0]);
        givenUp = way == 1;
        return givenUp || way == 0 && isSavedNow(over);
    }

    private boolean isSavedNow(Component over) {
        try {
            Kept kept = kept(named(), model.draft());
            if (!kept.notKept().isEmpty())
                return isElsewhere(over, kept.notKept(), "Go on setting") && isSavedNow(over);
            model.steps().saved();
            return true;
        } catch (FileRefused e) {
            model.say(String.valueOf(e.getMessage()));
            return false;
        }
    }

    /** Keeps what isn't saved as a draft. */
    void left(Component over) {
        if (!name.isEmpty()) desk.last(name);
        if (model.steps().isSaved() || givenUp) return;
        try {
            desk.folder().keep(named(), model.draft());
            model.steps().saved();
            desk.last(name);
        } catch (FileRefused e) {
            if (isElsewhere(over, e.getMessage() + ". The exercise is not kept yet.", "Leave without it")) left(over);
        }
    }
}
