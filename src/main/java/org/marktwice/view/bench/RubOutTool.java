package org.marktwice.view.bench;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.view.Commands.Command;

/** Rubs out pencil: pointed at and clicked, or stepped to by the arrows. */
final class RubOutTool implements BenchTool {
    private final BenchModel model;
    private @Nullable Pencil picked;

    RubOutTool(BenchModel model) {
        this.model = model;
    }

    @Override
    public Command command() {
        return BenchCommands.RUB_OUT;
    }

    @Override
    public String hint() {
        return Pencil.on(model.session().bench(), model.board()).isEmpty()
                ? "There is no pencil on board " + model.board().board().id() + " yet."
                : "Click the pencil to be rubbed out. Keys: arrows go from one to the next, Enter rubs it out.";
    }

    @Override
    public void takenUp() {
        picked = null;
    }

    @Override
    public void point(@Nullable Aim aim) {
        if (aim != null)
            picked = Pencil.at(model.session().bench(), model.board(), aim.at()).orElse(null);
        else if (!model.byKeys()) picked = null;
    }

    @Override
    public void release(Aim aim) {
        Optional<Pencil> there = Pencil.at(model.session().bench(), model.board(), aim.at());
        if (there.isPresent()) rub(there.get());
        else model.refuse(aim.at(), "There is no pencil here to rub out");
    }

    @Override
    public boolean key(ToolKey key) {
        List<Pencil> all = Pencil.on(model.session().bench(), model.board());
        if (all.isEmpty()) {
            model.say(Note.refused(hint()));
            return true;
        }
        Pencil now = picked;
        switch (key.stroke()) {
            case ENTER -> {
                if (now != null) rub(now);
                else pick(all.get(all.size() - 1));
            }
            case LEFT, UP, PREVIOUS -> pick(all.get(Math.floorMod(all.indexOf(now) - 1, all.size())));
            default -> pick(all.get(Math.floorMod(all.indexOf(now) + 1, all.size())));
        }
        return true;
    }

    private void pick(Pencil pencil) {
        picked = pencil;
        model.moveCaret(Caret.within(model.board().board(), pencil.middle()));
        model.say(Note.plain(Words.capital(pencil.word()) + ": Enter rubs it out"));
    }

    private void rub(Pencil pencil) {
        picked = null;
        model.perform(pencil.middle(), t -> new Action.RubOut(t, pencil.step()), pencil.word() + " rubbed out");
    }

    @Override
    public List<Overlay> overlays() {
        Pencil now = picked;
        return now == null ? List.of() : List.of(new Overlay.PencilPicked(now));
    }
}
