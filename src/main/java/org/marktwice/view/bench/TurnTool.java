package org.marktwice.view.bench;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.picture.Lie;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/**
 * Turns the board as it will lie in the job, and slides it along its part's length. Nothing is recorded until it is settled.
 * Taken up for trimming alone, the arrows slide instead of turning.
 */
final class TurnTool implements BenchTool {
    private final BenchModel model;
    private final boolean trimming;
    private @Nullable SurfacePoint pressed;
    private double offAtPress;

    TurnTool(BenchModel model, boolean trimming) {
        this.model = model;
        this.trimming = trimming;
    }

    @Override
    public Command command() {
        return trimming ? BenchCommands.TRIM : BenchCommands.TURN;
    }

    @Override
    public String hint() {
        return trimming
                ? "Drag the board along, or ← → by 1 mm (Ctrl 10); what is shaded comes off. Enter settles."
                : "← → roll, ↑ ↓ end for end, drag or Shift+←→ to trim. Enter settles.";
    }

    @Override
    public void takenUp() {
        pressed = null;
        BoardState state = model.board();
        Optional<Part> part = model.part();
        model.tryTurn(null);
        if (part.isEmpty()) {
            String why = state.setAside().isPresent()
                    ? "Board " + state.board().id() + " is set aside: name it to take it up again"
                    : "Name the board first: it is turned as the part that it becomes";
            model.refuse(Caret.middle(state.board(), model.lie().up()), why);
            return;
        }
        double surplus = surplus(part.get());
        if (surplus < 0) {
            String why = "The board is " + Reading.mm(-surplus) + " too short for the "
                    + Words.lower(part.get().name());
            model.refuse(Caret.middle(state.board(), model.lie().up()), why);
            return;
        }
        model.tryTurn(start(part.get()));
    }

    /** As it was settled while it still lies so, else as it lies on the bench. */
    private TurnTrial start(Part part) {
        List<Turn> turns = turns(part);
        Optional<Placing> settled = model.session().bench().placing(model.board());
        if (settled.isPresent()) {
            return new TurnTrial(part, settled.get().turn(), settled.get().off(Surface.END_1));
        }
        Lie lie = model.lie();
        Turn asItLies = lie.turn(part);
        Turn turn = turns.contains(asItLies) ? asItLies : lie.rollForward().turn(part);
        return new TurnTrial(part, turns.contains(turn) ? turn : turns.get(0), 0);
    }

    private List<Turn> turns(Part part) {
        boolean square = model.board().board().isSquare() && part.size().isSquare(Board.SIZE_TOLERANCE);
        return Turn.in(part, square);
    }

    private double surplus(Part part) {
        return model.board().board().size().length() - part.size().length();
    }

    @Override
    public @Nullable Surface holding() {
        SurfacePoint start = pressed;
        return start == null ? null : start.surface();
    }

    @Override
    public void press(Aim aim) {
        pressed = aim.at().surface().isEnd() ? null : aim.at();
        offAtPress = model.trial().map(TurnTrial::offEnd1).orElse(0.0);
    }

    @Override
    public void drag(Aim aim) {
        SurfacePoint start = pressed;
        // The part stays where it is: pulling the board towards end-2 leaves less of it beyond end-1.
        if (start != null) trim(offAtPress - (aim.at().u() - start.u()));
    }

    @Override
    public void release(Aim aim) {
        pressed = null;
    }

    private void trim(double off) {
        model.trial().ifPresent(trial -> {
            double surplus = surplus(trial.part());
            double whole = Math.max(0, Math.min(surplus, Math.rint(off)));
            model.tryTurn(trial.trimmed(whole));
            model.say(Note.read(trimWords(whole, surplus)));
        });
    }

    static String trimWords(double offEnd1, double surplus) {
        if (surplus == 0) return "The board is as long as its part: nothing comes off";
        return Reading.mm(offEnd1) + " off end 1, " + Reading.mm(surplus - offEnd1) + " off end 2";
    }

    @Override
    public boolean key(ToolKey key) {
        if (model.trial().isEmpty()) {
            takenUp();
            return true;
        }
        boolean sideways = key.stroke() == ToolKey.Stroke.LEFT || key.stroke() == ToolKey.Stroke.RIGHT;
        if (key.stroke() == ToolKey.Stroke.ENTER) {
            settle();
        } else if (sideways && (trimming || key.shift())) {
            slide(key);
        } else if (sideways) {
            roll(key.stroke() == ToolKey.Stroke.RIGHT);
        } else if (key.stroke() == ToolKey.Stroke.UP || key.stroke() == ToolKey.Stroke.DOWN) {
            turnTo(model.lie().endForEnd());
        } else {
            return false;
        }
        return true;
    }

    /** To the next way of lying that the part allows: a quarter turn for square stock, half a turn for a flat board. */
    private void roll(boolean forward) {
        Lie lie = model.lie();
        Optional<TurnTrial> trial = model.trial();
        if (trial.isEmpty()) return;
        List<Turn> allowed = turns(trial.get().part());
        Lie next = lie;
        do {
            next = forward ? next.rollForward() : next.rollBack();
        } while (!allowed.contains(next.turn(trial.get().part())));
        turnTo(next);
    }

    private void turnTo(Lie lie) {
        model.trial().ifPresent(trial -> {
            Turn turn = lie.turn(trial.part());
            model.tryTurn(trial.turned(turn));
            boolean told = model.grants(Practice.Aid.TURN_PREVIEW);
            model.say(Note.read(Words.capital(Words.turned(model.board(), trial.part(), turn, told))));
        });
    }

    private void slide(ToolKey key) {
        model.trial().ifPresent(trial -> {
            double step = key.wide() ? 10 : 1;
            boolean right = key.stroke() == ToolKey.Stroke.RIGHT;
            boolean end1AtLeft = model.lie().left() == Surface.END_1;
            // To the right on the bench is towards end-2 while end-1 is at the left.
            trim(trial.offEnd1() + (right == end1AtLeft ? -step : step));
        });
    }

    /** Records the turn as it stands. */
    void settle() {
        Optional<TurnTrial> trying = model.trial();
        if (trying.isEmpty()) return;
        TurnTrial trial = trying.get();
        String board = model.board().board().id();
        double surplus = surplus(trial.part());
        Trim trim = surplus > 0 ? new Trim(Surface.END_1, trial.offEnd1()) : null;
        SurfacePoint where = Caret.middle(model.board().board(), model.lie().up());
        boolean done = model.perform(
                where, t -> new Action.Turning(t, board, trial.turn().named(), trim));
        if (!done) return;
        Note said = model.said();
        Optional<Callout> callout = model.callout();
        model.putDown();
        if (callout.isPresent()) model.show(callout.get(), said);
        else model.say(said.words().isEmpty() ? Note.read(settledWords(trial)) : said);
    }

    private String settledWords(TurnTrial trial) {
        return "Settled: " + Words.turned(model.board(), trial.part(), trial.turn(), true);
    }
}
