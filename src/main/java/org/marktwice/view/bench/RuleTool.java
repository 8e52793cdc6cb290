package org.marktwice.view.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.ToolReading;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/** The steel rule: pressed at one point, drawn to another of the same surface, read to half a millimetre. */
final class RuleTool implements BenchTool {
    /** Below this the rule hasn't been laid, millimetres. */
    private static final double LEAST = 0.5;

    private final BenchModel model;
    private @Nullable SurfacePoint from;
    private @Nullable SurfacePoint to;
    private boolean laid;

    RuleTool(BenchModel model) {
        this.model = model;
    }

    @Override
    public Command command() {
        return BenchCommands.RULE;
    }

    @Override
    public String hint() {
        return "Press at one point and draw to the other. Keys: arrows move by 1 mm (Ctrl 10), Tab to the next edge, Enter at"
                + " either end.";
    }

    @Override
    public boolean snaps() {
        return true;
    }

    @Override
    public void takenUp() {
        from = null;
        to = null;
        laid = false;
    }

    @Override
    public @Nullable Surface holding() {
        SurfacePoint start = from;
        return start == null || laid ? null : start.surface();
    }

    @Override
    public void point(@Nullable Aim aim) {
        if (from == null || laid || aim == null) return;
        // Between two strokes of Enter the pointer stays out of it.
        if (!model.byKeys()) to = onSame(aim.snap().point());
    }

    @Override
    public void press(Aim aim) {
        from = aim.snap().point();
        to = from;
        laid = false;
        model.hush();
    }

    @Override
    public void drag(Aim aim) {
        SurfacePoint end = onSame(aim.snap().point());
        if (end != null) to = end;
        reading().ifPresent(r -> model.say(Note.read(r + snapWord(aim.snap()))));
    }

    @Override
    public void release(Aim aim) {
        SurfacePoint end = onSame(aim.snap().point());
        if (end != null) to = end;
        lay();
    }

    private @Nullable SurfacePoint onSame(SurfacePoint point) {
        SurfacePoint start = from;
        return start != null && point.surface() == start.surface() ? point : null;
    }

    private Optional<String> reading() {
        SurfacePoint start = from;
        SurfacePoint end = to;
        if (start == null || end == null) return Optional.empty();
        return Optional.of(Reading.mm(ToolReading.of(start, end)));
    }

    private static String snapWord(Snap snap) {
        return snap.to() == Snap.To.NOTHING ? "" : ", to the " + snap.what();
    }

    private void lay() {
        SurfacePoint start = from;
        SurfacePoint end = to;
        if (start == null || end == null || ToolReading.of(start, end) < LEAST) {
            takenUp();
            model.say(Note.plain(hint()));
            return;
        }
        String board = model.board().board().id();
        double reads = ToolReading.of(start, end);
        String said = Reading.of(new Action.Measure(0, board, start, end));
        laid = model.perform(end, t -> new Action.Measure(t, board, start, end, reads), said);
    }

    @Override
    public boolean key(ToolKey key) {
        switch (key.stroke()) {
            case LEFT, RIGHT, UP, DOWN -> move(key.right(), key.down());
            case NEXT -> jump(true);
            case PREVIOUS -> jump(false);
            case ENTER -> enter();
        }
        return true;
    }

    private void move(double right, double down) {
        SurfacePoint at = Caret.moved(model.board().board(), model.caret(), right, down);
        SurfacePoint start = from;
        boolean away = start != null && !laid && at.surface() != start.surface();
        caretTo(away ? Caret.within(model.board().board(), stay(start, model.caret(), right, down)) : at, "");
    }

    /** A step that would leave the surface the rule lies on, held at its arris. */
    private static SurfacePoint stay(@Nullable SurfacePoint start, SurfacePoint caret, double right, double down) {
        boolean downwards = start != null && (start.surface() == Surface.FACE_2 || start.surface() == Surface.EDGE_2);
        return new SurfacePoint(caret.surface(), caret.u() + right, caret.v() + (downwards ? down : -down));
    }

    private void jump(boolean forwards) {
        Snap next = Caret.next(model.board(), model.caret(), model.shownCuts(), model.lines(), forwards);
        caretTo(next.point(), next.what());
    }

    private void caretTo(SurfacePoint at, String what) {
        model.moveCaret(at);
        if (laid) takenUp();
        if (from != null) to = at;
        String place = what.isEmpty() ? place(at) : what + ", " + place(at);
        model.say(Note.read(reading().map(r -> r + " · ").orElse("") + Words.capital(place)));
    }

    private static String place(SurfacePoint at) {
        String u = at.surface().isEnd() ? " from edge 1, " : " from end 1, ";
        String v = at.surface().isFace() ? " from edge 1" : " from face 2";
        return at.surface().spoken() + ", " + Reading.mm(at.u()) + u + Reading.mm(at.v()) + v;
    }

    private void enter() {
        if (from == null || laid) {
            takenUp();
            from = model.caret();
            to = from;
            model.moveCaret(model.caret());
            model.say(Note.read("From here: move to the other end and press Enter"));
        } else {
            to = model.caret();
            lay();
        }
    }

    @Override
    public List<Overlay> overlays() {
        List<Overlay> found = new ArrayList<>();
        SurfacePoint start = from;
        SurfacePoint end = to;
        if (start != null && end != null) found.add(new Overlay.RuleLaid(start, end));
        if (model.byKeys()) found.add(new Overlay.CaretAt(model.caret()));
        else if (start == null || laid) {
            model.aim().ifPresent(a -> found.add(new Overlay.RuleEnd(a.snap())));
        }
        return found;
    }
}
