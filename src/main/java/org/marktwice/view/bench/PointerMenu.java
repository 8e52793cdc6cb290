package org.marktwice.view.bench;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.Pairing;
import org.marktwice.bench.Tool;
import org.marktwice.fit.TrueLine;
import org.marktwice.rulebook.Outcome;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/** The menu at the pointer: only what can be done there, in the words of the tools. */
final class PointerMenu {
    private final BenchModel model;
    private final Chooser chooser;
    private final Consumer<Command> run;
    private final JPopupMenu menu = new JPopupMenu();

    private PointerMenu(BenchModel model, Chooser chooser, Consumer<Command> run) {
        this.model = model;
        this.chooser = chooser;
        this.run = run;
        menu.setName("pointer-menu");
    }

    /** @param at the place on the board; null beside it */
    static JPopupMenu of(BenchModel model, Chooser chooser, Consumer<Command> run, @Nullable SurfacePoint at) {
        PointerMenu building = new PointerMenu(model, chooser, run);
        if (at != null) building.onSurface(at);
        building.onBoard();
        return building.menu;
    }

    private void onSurface(SurfacePoint at) {
        String id = model.board().board().id();
        Surface on = at.surface();
        Surface towards = MarkTool.nearestLong(model.board().board(), at);
        String arris = " here, towards " + towards.spoken();
        item(BenchCommands.FACE_SIDE, arris, at, t -> new Action.FaceSide(t, id, on, towards));
        item(BenchCommands.FACE_EDGE, arris, at, t -> new Action.FaceEdge(t, id, on, towards));
        if (!on.isEnd()) {
            add(BenchCommands.NAME, " here …", () -> new NameTool(model, chooser).ask(at));
        }
        separator();
        Double x = on.isEnd() ? null : Double.valueOf(Reading.toHalf(at.u()));
        test(BenchCommands.STRAIGHT_EDGE, " across here", at, Tool.STRAIGHT_EDGE, x);
        if (!on.isEnd()) test(BenchCommands.STRAIGHT_EDGE, " along " + on.spoken(), at, Tool.STRAIGHT_EDGE, null);
        test(BenchCommands.WINDING_STICKS, " on " + on.spoken(), at, Tool.WINDING_STICKS, null);
        test(BenchCommands.TRY_SQUARE, " on " + on.spoken(), at, Tool.TRY_SQUARE, x);
        test(BenchCommands.END_GRAIN, " of " + on.spoken(), at, Tool.END_GRAIN, null);
        if (model.setsOut()) settingOut(at);
        Optional<Pencil> pencil = Pencil.at(model.session().bench(), model.board(), at);
        pencil.ifPresent(p -> {
            separator();
            item(BenchCommands.RUB_OUT, " " + p.word(), at, t -> new Action.RubOut(t, p.step()));
        });
        separator();
    }

    /** The tool is laid where one pointed, for its reading to be seen before it strikes. */
    private void settingOut(SurfacePoint at) {
        separator();
        if (!at.surface().isEnd()) strikes(at);
        new CutTool(model, chooser)
                .at(at)
                .ifPresent(line -> add(BenchCommands.CUT, ": " + line + " …", () -> {
                    lay(BenchCommands.CUT, at);
                    model.tool().ifPresent(t -> t.release(aim(at)));
                }));
    }

    private void strikes(SurfacePoint at) {
        Surface towards = MarkTool.nearestLong(model.board().board(), at);
        lay(BenchCommands.LINE, " here, across " + at.surface().spoken(), at);
        lay(BenchCommands.BEVEL, " here, its stock on " + towards.spoken(), at);
        lay(BenchCommands.GAUGE, " with the fence on " + towards.spoken(), at);
        List<TrueLine> lines = model.lines();
        boolean across = lines.stream().anyMatch(TrueLine::isSquared);
        if (across) lay(BenchCommands.MATE, " against the nearest line", at);
        long here = lines.stream().filter(l -> l.on() == at.surface()).count();
        if (here > 0 && lines.size() > 1) lay(BenchCommands.WASTE, " here", at);
        cramp(at);
    }

    private void cramp(SurfacePoint at) {
        String id = model.board().board().id();
        Optional<Pairing> pair = model.session().bench().paired(id);
        if (pair.isPresent()) {
            item(
                    BenchCommands.CRAMP,
                    ": take board " + pair.get().there() + " off",
                    at,
                    t -> new Action.Uncramp(t, id));
        } else {
            new CrampTool(model)
                    .mateAt(aim(at))
                    .filter(this::can)
                    .ifPresent(c -> lay(
                            BenchCommands.CRAMP,
                            ": board " + c.mate() + " against " + at.surface().spoken(),
                            at));
        }
    }

    private void lay(Command command, String where, SurfacePoint at) {
        add(command, where, () -> lay(command, at));
    }

    private void lay(Command command, SurfacePoint at) {
        run.accept(command);
        model.tool().ifPresent(t -> t.point(aim(at)));
        model.moveCaret(at);
        model.changed();
    }

    private static Aim aim(SurfacePoint at) {
        return new Aim(at, new Snap(at, Snap.To.NOTHING, ""));
    }

    private void onBoard() {
        add(BenchCommands.RIGHT, "Roll a quarter turn", () -> run.accept(BenchCommands.RIGHT));
        add(BenchCommands.UP, "Turn end for end", () -> run.accept(BenchCommands.UP));
        if (model.part().isPresent()) {
            add(BenchCommands.TURN, "", () -> run.accept(BenchCommands.TURN));
            add(BenchCommands.TRIM, "", () -> run.accept(BenchCommands.TRIM));
        }
        if (model.board().setAside().isEmpty()) {
            add(BenchCommands.SET_ASIDE, " …", () -> run.accept(BenchCommands.SET_ASIDE));
        }
        if (Outcome.shown(model.session().bench()) != Outcome.Shown.NOTHING) {
            add(BenchCommands.JOB, " as it would come out", () -> run.accept(BenchCommands.JOB));
        }
        add(BenchCommands.REPORT, "", () -> run.accept(BenchCommands.REPORT));
    }

    private void test(Command command, String where, SurfacePoint at, Tool tool, @Nullable Double x) {
        String id = model.board().board().id();
        if (!can(new Action.Test(0, id, tool, at.surface(), x))) return;
        add(command, where, () -> Proving.perform(model, at, t -> new Action.Test(t, id, tool, at.surface(), x)));
    }

    private void item(Command command, String where, SurfacePoint at, DoubleFunction<Action> action) {
        if (can(action.apply(0))) add(command, where, () -> model.perform(at, action));
    }

    /** A bench is a value: trying an action on it changes nothing. */
    private boolean can(Action action) {
        try {
            model.session().bench().after(action);
            return true;
        } catch (CannotDo e) {
            return false;
        }
    }

    private void add(Command command, String where, Runnable does) {
        boolean whole = List.of(BenchCommands.RIGHT, BenchCommands.UP).contains(command);
        JMenuItem item = new JMenuItem(whole ? where : command.word() + where);
        item.setName("here-" + command.id());
        item.setToolTipText(command.help());
        item.addActionListener(e -> does.run());
        menu.add(item);
    }

    private void separator() {
        int count = menu.getComponentCount();
        if (count > 0 && !(menu.getComponent(count - 1) instanceof JPopupMenu.Separator)) menu.addSeparator();
    }
}
