package org.marktwice.view.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.drawing.Part;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/** Writes a part's name on the board: first where, then which. */
final class NameTool implements BenchTool {
    private final BenchModel model;
    private final Chooser chooser;
    private @Nullable SurfacePoint at;

    NameTool(BenchModel model, Chooser chooser) {
        this.model = model;
        this.chooser = chooser;
    }

    @Override
    public Command command() {
        return BenchCommands.NAME;
    }

    @Override
    public String hint() {
        return "Click where the name goes, clear of joints and ends. Keys: arrows move by 1 mm (Ctrl 10), Enter.";
    }

    @Override
    public void takenUp() {
        at = null;
    }

    @Override
    public void point(@Nullable Aim aim) {
        if (aim != null) at = aim.at();
        else if (!model.byKeys()) at = null;
    }

    @Override
    public void release(Aim aim) {
        at = aim.at();
        ask();
    }

    @Override
    public boolean key(ToolKey key) {
        switch (key.stroke()) {
            case LEFT, RIGHT, UP, DOWN -> move(key.right(), key.down());
            case ENTER -> {
                if (at == null) move(0, 0);
                ask();
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private void move(double right, double down) {
        SurfacePoint to = Caret.moved(model.board().board(), model.caret(), right, down);
        at = to;
        model.moveCaret(to);
        model.say(Note.plain("Name on " + to.surface().spoken() + ", " + Reading.mm(to.u()) + " from end 1"));
    }

    private void ask() {
        SurfacePoint place = at;
        if (place != null) ask(place);
    }

    /** Asks which part the board is, to be written here. */
    void ask(SurfacePoint place) {
        List<Part> parts = model.session().scenario().drawing().parts();
        if (parts.size() == 1) write(place, parts.get(0));
        else chooser.part(place, parts, p -> write(place, p));
    }

    private void write(SurfacePoint place, Part part) {
        String board = model.board().board().id();
        SurfacePoint exact = new SurfacePoint(place.surface(), Reading.toHalf(place.u()), Reading.toHalf(place.v()));
        SurfacePoint on = Caret.within(model.board().board(), exact);
        String said = "Board " + board + " is named " + part.name();
        model.perform(place, t -> new Action.Name(t, board, part.id(), on), said);
    }

    @Override
    public List<Overlay> overlays() {
        SurfacePoint place = at;
        if (place == null) return List.of();
        Overlay ghost = new Overlay.GhostName("name", place);
        return model.byKeys() ? List.of(ghost, new Overlay.CaretAt(place)) : List.of(ghost);
    }
}
