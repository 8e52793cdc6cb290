package org.marktwice.view.bench;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * A tool that is set to a figure, and strikes along an arris with something that bears beyond it. Once set it stays set,
 * from board to board, until it is set anew by drawing it out or by typing.
 */
abstract class SetTool implements BenchTool {
    final BenchModel model;
    private final Typed typed = new Typed();
    private @Nullable SurfacePoint at;
    private @Nullable Surface bears;
    private @Nullable SurfacePoint pressed;

    SetTool(BenchModel model) {
        this.model = model;
    }

    /** Sets it to what is typed, as it is. */
    abstract void setTo(double figure);

    /** The surface that it bears on when this place is pointed at; empty for the usual one. */
    abstract Optional<Surface> bearsAt(SurfacePoint place);

    /** Drawn so far from where it was pressed, as far as that sets it. */
    abstract void drawn(SurfacePoint from, SurfacePoint to);

    /** Where it is laid first when keys are used. */
    abstract Surface firstByKeys();

    /** What a key does to it where it lies. Whether it meant anything. */
    abstract boolean moved(ToolKey key, SurfacePoint lies);

    /** What it does where it lies as it is set, at the time t. */
    abstract Action action(double t, SurfacePoint lies);

    /** That in words. */
    abstract String words(SurfacePoint lies);

    final Board board() {
        return model.board().board();
    }

    /** Where it lies; null where it isn't on the board. */
    final @Nullable SurfacePoint lies() {
        return at;
    }

    final void lay(SurfacePoint place) {
        at = place;
    }

    /** What it bears on where it lies on a surface. */
    final Surface bearsNow(Surface on) {
        return Setting.stock(model.board(), on, bears);
    }

    final void bearOnNext(Surface on) {
        bears = Setting.next(Setting.beside(on), bearsNow(on));
    }

    /** To the middle of a surface, bearing as usual. */
    final void layInMiddle(Surface surface) {
        bears = null;
        at = Caret.middle(board(), surface);
        model.moveCaret(Caret.middle(board(), surface));
    }

    /** No longer to what was typed. */
    final void forgetTyped() {
        typed.clear();
    }

    @Override
    public void takenUp() {
        at = null;
        bears = null;
        pressed = null;
        typed.clear();
    }

    // The mouse

    @Override
    public @Nullable Surface holding() {
        SurfacePoint start = pressed;
        return start == null ? null : start.surface();
    }

    @Override
    public void point(@Nullable Aim aim) {
        if (pressed != null) return;
        if (aim == null) {
            if (!model.byKeys()) at = null;
            return;
        }
        at = aim.at();
        bears = bearsAt(aim.at()).orElse(null);
    }

    @Override
    public void press(Aim aim) {
        point(aim);
        pressed = aim.at();
    }

    @Override
    public void drag(Aim aim) {
        SurfacePoint start = pressed;
        if (start != null) drawn(start, aim.at());
    }

    @Override
    public void release(Aim aim) {
        if (pressed == null) point(aim);
        pressed = null;
        strike();
    }

    // Keys

    @Override
    public boolean type(char c) {
        if (at == null) layInMiddle(firstByKeys());
        boolean meant = typed.type(c);
        OptionalDouble value = typed.value();
        if (value.isPresent()) setTo(value.getAsDouble());
        if (meant) say();
        return meant;
    }

    @Override
    public boolean key(ToolKey key) {
        SurfacePoint now = at;
        if (now == null || !canLie(now.surface())) {
            layInMiddle(firstByKeys());
        } else if (key.stroke() == ToolKey.Stroke.ENTER) {
            strike();
            return true;
        } else if (!moved(key, now)) {
            return false;
        }
        say();
        return true;
    }

    /** Whether keys can move it about there. */
    boolean canLie(Surface surface) {
        return true;
    }

    // The line

    /** The place that it is tried at, for whatever is said of it. */
    SurfacePoint tried(SurfacePoint lies) {
        return lies;
    }

    final void say() {
        SurfacePoint now = at;
        if (now != null) model.say(Note.plain(Words.capital(words(now))));
    }

    private void strike() {
        SurfacePoint now = at;
        if (now != null && model.perform(tried(now), t -> action(t, now), words(now))) typed.clear();
    }
}
