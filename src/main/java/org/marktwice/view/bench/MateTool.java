package org.marktwice.view.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Marker;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.fit.TrueLine;
import org.marktwice.fit.TrueLines;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/** Another board held in place on this one, against a line or level with an end, to strike the line at its other side. */
final class MateTool implements BenchTool {
    private final BenchModel model;
    private @Nullable String mate;
    private @Nullable Surface on;
    private @Nullable Surface stock;
    private @Nullable Datum against;

    MateTool(BenchModel model) {
        this.model = model;
    }

    @Override
    public Command command() {
        return BenchCommands.MATE;
    }

    @Override
    public String hint() {
        return "Click the line that the mate is held against; its other side is struck. Keys: ←→ the line, ↑↓ surface,"
                + " Shift+↑↓ the stock's side, " + BenchCommands.CHOICE.keyText() + " another mate, Enter.";
    }

    @Override
    public boolean strikes() {
        return true;
    }

    @Override
    public void takenUp() {
        on = null;
        stock = null;
        against = null;
        mate = mates().stream().findFirst().orElse(null);
    }

    private Board board() {
        return model.board().board();
    }

    /** The other boards that are not set aside, those that share a joint with this one first. */
    private List<String> mates() {
        return model.session().bench().boards().stream()
                .filter(b -> b != model.board() && b.setAside().isEmpty())
                .sorted(Comparator.comparing(b -> !joined(b)))
                .map(b -> b.board().id())
                .toList();
    }

    private boolean joined(BoardState other) {
        Optional<Part> here = model.part();
        Optional<Part> there = model.session().situation().partOf(other);
        if (here.isEmpty() || there.isEmpty()) return false;
        List<String> two = List.of(here.get().id(), there.get().id());
        for (Joint joint : model.session().scenario().drawing().joints()) {
            if (two.contains(joint.in()) && two.contains(joint.takes())) return true;
        }
        return false;
    }

    @Override
    public Optional<String> choice() {
        return Optional.ofNullable(mate).map(m -> "mate: board " + m);
    }

    @Override
    public void chooseNext() {
        List<String> all = mates();
        if (all.isEmpty()) return;
        mate = all.get((all.indexOf(mate) + 1) % all.size());
        say();
    }

    private Surface stockNow(Surface surface) {
        return Setting.stock(model.board(), surface, stock);
    }

    /** What the mate can be held against: lines squared across, then the ends. */
    private List<Datum> datums() {
        List<Datum> all = new ArrayList<>(Setting.datums(model.lines()));
        all.sort(Comparator.comparingDouble(this::place));
        return all;
    }

    private double place(Datum datum) {
        Surface surface = on == null ? Surface.FACE_1 : on;
        return Setting.place(board(), datum, model.lines(), stockNow(surface));
    }

    // The mouse

    @Override
    public void point(@Nullable Aim aim) {
        if (aim == null) {
            if (!model.byKeys()) on = null;
            return;
        }
        on = aim.surface();
        against = datums().stream()
                .min(Comparator.comparingDouble(
                        d -> Math.abs(place(d) - aim.at().u())))
                .orElse(null);
    }

    @Override
    public void release(Aim aim) {
        point(aim);
        strike();
    }

    // Keys

    @Override
    public boolean key(ToolKey key) {
        Surface now = on;
        if (now == null || now.isEnd()) {
            choose(model.lie().up());
            Datum newest = datums().get(0);
            for (TrueLine line : model.lines()) if (line.isSquared()) newest = new Datum.Step(line.step());
            against = newest;
            say();
            return true;
        }
        switch (key.stroke()) {
            case ENTER -> {
                strike();
                return true;
            }
            case LEFT -> step(-1);
            case RIGHT -> step(1);
            case UP, DOWN -> {
                if (key.shift()) stock = Setting.next(Setting.beside(now), stockNow(now));
                else choose(Caret.towards(now, key.stroke()));
            }
            default -> {
                return false;
            }
        }
        say();
        return true;
    }

    private void choose(Surface surface) {
        on = surface;
        model.moveCaret(Caret.middle(board(), surface));
    }

    private void step(int by) {
        List<Datum> all = datums();
        against = all.get(Math.floorMod(all.indexOf(against) + by, all.size()));
    }

    private void say() {
        line().ifPresent(l -> model.say(Note.plain(Words.capital(words(l)))));
    }

    private Optional<Action.Line> line() {
        Surface surface = on;
        Datum from = against;
        String held = mate;
        if (surface == null || surface.isEnd() || from == null || held == null) return Optional.empty();
        return Optional.of(
                new Action.Line(0, board().id(), surface, stockNow(surface), from, null, held, model.marker()));
    }

    private String words(Action.Line line) {
        return "board " + line.mate() + " held against " + Setting.words(model, line.from()) + " on "
                + line.on().spoken() + ", " + line.with().spoken() + " line at its other side, stock on "
                + Words.called(model.board(), line.square());
    }

    private void strike() {
        if (mate == null) {
            model.refuse(Caret.middle(board(), model.lie().up()), "There is no other board to strike from");
            return;
        }
        Optional<Action.Line> line = line();
        if (line.isEmpty()) return;
        Action.Line l = line.get();
        SurfacePoint where = Setting.atArris(board(), l.on(), l.square(), place(l.from()));
        model.perform(
                where,
                t -> new Action.Line(t, l.board(), l.on(), l.square(), l.from(), null, l.mate(), l.with()),
                words(l));
    }

    @Override
    public List<Overlay> overlays() {
        Optional<Action.Line> line = line();
        if (line.isEmpty()) return List.of();
        TrueLine lands = TrueLines.of(model.session().bench(), model.board()).trial(line.get());
        if (lands.middle() < 0 || lands.middle() > board().size().length()) return List.of();
        String says = "board " + line.get().mate() + ", "
                + Reading.mm(TrueLines.mate(model.session().bench(), board(), String.valueOf(mate)));
        return List.of(
                new Overlay.MateLaid(lands, place(line.get().from()), line.get().with() == Marker.KNIFE, says));
    }
}
