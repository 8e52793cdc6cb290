package org.marktwice.view.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.bench.Pairing;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/**
 * Cramps another board to this one, face to face, with an end of each level, so that lines over their edges are struck on
 * both at once; or takes the cramp off again. Face edges come to lie side by side unless the other board is turned.
 */
final class CrampTool implements BenchTool {
    private final BenchModel model;
    private @Nullable String mate;
    private @Nullable Surface on;
    private @Nullable Surface to;
    private Surface level = Surface.END_1;
    private boolean turned;

    CrampTool(BenchModel model) {
        this.model = model;
    }

    @Override
    public Command command() {
        return BenchCommands.CRAMP;
    }

    @Override
    public String hint() {
        Optional<Pairing> pair = pair();
        if (pair.isPresent()) {
            return "Board " + pair.get().there() + " lies in the cramp with this one: click, or Enter, takes it off.";
        }
        return "Click the face that the other board goes against, nearer to the end that shall be level. Keys: ←→ the end,"
                + " ↑↓ the face, Shift+↑↓ the other's face, Shift+←→ turns it end for end, Enter.";
    }

    @Override
    public void takenUp() {
        mate = mates().stream().findFirst().orElse(null);
        on = null;
        to = null;
        turned = false;
    }

    private Board board() {
        return model.board().board();
    }

    private Optional<Pairing> pair() {
        return model.session().bench().paired(board().id());
    }

    /** Boards of parts of one size first, then those of nearly the same size: they make a pair. */
    private List<String> mates() {
        return model.session().bench().boards().stream()
                .filter(b -> b != model.board() && b.setAside().isEmpty())
                .sorted(Comparator.comparing((BoardState b) -> !makesPair(b)).thenComparingDouble(this::unlike))
                .map(b -> b.board().id())
                .toList();
    }

    private boolean makesPair(BoardState other) {
        Optional<Part> there = model.session().situation().partOf(other);
        return model.part()
                .flatMap(here -> there.map(t -> t.size().equals(here.size())))
                .orElse(false);
    }

    private double unlike(BoardState other) {
        double length = other.board().size().length() - board().size().length();
        double width = other.board().size().width() - board().size().width();
        return Math.abs(length) + Math.abs(width);
    }

    @Override
    public Optional<String> choice() {
        String held = mate;
        return pair().isPresent() || held == null ? Optional.empty() : Optional.of("with board " + held);
    }

    @Override
    public void chooseNext() {
        List<String> all = mates();
        if (all.isEmpty()) return;
        mate = all.get((all.indexOf(mate) + 1) % all.size());
        to = null;
        say();
    }

    @Override
    public void point(@Nullable Aim aim) {
        if (aim == null) {
            if (!model.byKeys()) on = null;
            return;
        }
        on = aim.surface();
        if (!aim.surface().isEnd()) {
            level = aim.at().u() < board().size().length() / 2 ? Surface.END_1 : Surface.END_2;
        }
    }

    /** The board that would come against a face pointed at; empty where none would. */
    Optional<Action.Cramp> mateAt(Aim aim) {
        takenUp();
        point(aim);
        return asLaid().map(p ->
                new Action.Cramp(0, board().id(), p.touches(), p.there(), p.touched(), p.level(), p.with()));
    }

    @Override
    public void release(Aim aim) {
        point(aim);
        cramp();
    }

    @Override
    public boolean key(ToolKey key) {
        if (key.stroke() == ToolKey.Stroke.ENTER) {
            if (on == null && pair().isEmpty()) {
                on = faceSide(model.board());
                say();
            } else {
                cramp();
            }
            return true;
        }
        Surface now = on == null ? faceSide(model.board()) : on;
        switch (key.stroke()) {
            case LEFT, RIGHT -> {
                if (key.shift()) turned = !turned;
                else level = key.stroke() == ToolKey.Stroke.LEFT ? Surface.END_1 : Surface.END_2;
            }
            case UP, DOWN -> {
                if (key.shift()) to = touched().opposite();
                else now = now.isFace() ? now.opposite() : Surface.FACE_1;
            }
            default -> {
                return false;
            }
        }
        on = now;
        say();
        return true;
    }

    private static Surface faceSide(BoardState state) {
        return state.faceSide().map(Mark::on).filter(Surface::isFace).orElse(Surface.FACE_1);
    }

    private static Surface faceEdge(BoardState state) {
        return state.faceEdge().map(Mark::on).filter(s -> !s.isFace()).orElse(Surface.EDGE_1);
    }

    private Surface touched() {
        Surface chosen = to;
        String held = mate;
        if (chosen != null || held == null) return chosen == null ? Surface.FACE_1 : chosen;
        return faceSide(model.session().bench().board(held));
    }

    /** As the boards would lie: with the face edges side by side, or the other board turned end for end. */
    private Optional<Pairing> asLaid() {
        Surface against = on;
        String held = mate;
        if (against == null || held == null || pair().isPresent()) return Optional.empty();
        BoardState other = model.session().bench().board(held);
        for (Surface with : List.of(Surface.END_1, Surface.END_2)) {
            Pairing pairing = new Pairing(board().id(), against, held, touched(), level, with);
            boolean sideBySide = pairing.like(faceEdge(model.board())) == faceEdge(other);
            if (sideBySide != turned) return Optional.of(pairing);
        }
        return Optional.empty();
    }

    private void say() {
        asLaid().ifPresent(p -> model.say(Note.plain(Words.capital(words(p)))));
    }

    private String words(Pairing p) {
        BoardState other = model.session().bench().board(p.there());
        return "board " + p.there() + " against " + Words.called(model.board(), p.touches()) + ": its "
                + Words.called(other, p.touched()) + ", " + p.level().spoken() + " level with its "
                + p.with().spoken();
    }

    private void cramp() {
        Optional<Pairing> pair = pair();
        String id = board().id();
        SurfacePoint where = Caret.middle(board(), on == null ? model.lie().up() : on);
        if (pair.isPresent()) {
            String said = "Boards " + id + " and " + pair.get().there() + " are taken out of the cramp";
            model.perform(where, t -> new Action.Uncramp(t, id), said);
            return;
        }
        Optional<Pairing> laid = asLaid();
        if (laid.isEmpty()) {
            model.refuse(where, "There is no board to make a pair with");
            return;
        }
        Pairing p = laid.get();
        model.perform(
                where,
                t -> new Action.Cramp(t, id, p.touches(), p.there(), p.touched(), p.level(), p.with()),
                "cramped: " + words(p));
    }

    @Override
    public List<Overlay> overlays() {
        Optional<Pairing> laid = asLaid();
        if (laid.isEmpty() || laid.get().touches().axis() != Surface.FACE_1.axis()) return List.of();
        return List.of(Overlay.PairLaid.of(model.session().bench(), laid.get(), false));
    }
}
