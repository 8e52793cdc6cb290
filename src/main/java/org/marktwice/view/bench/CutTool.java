package org.marktwice.view.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Cutter;
import org.marktwice.fit.TrueLine;
import org.marktwice.picture.Struck;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/**
 * Saw and chisel, decisions only: which line, and on which side of it. That everything is set out and checked before the first
 * cut is said beforehand, and stops nobody.
 */
final class CutTool implements BenchTool {
    /** A line farther than this from the place pointed at isn't meant, millimetres. */
    private static final double NEAR = 12;

    private final BenchModel model;
    private final Chooser chooser;
    private Cutter with = Cutter.SAW;
    private @Nullable Integer line;

    CutTool(BenchModel model, Chooser chooser) {
        this.model = model;
        this.chooser = chooser;
    }

    @Override
    public Command command() {
        return BenchCommands.CUT;
    }

    @Override
    public String hint() {
        return order() + "Click the line, then choose the side. Keys: ←→ from line to line, Enter, then 1, 2 or 3.";
    }

    /** What comes before the first cut, and how far that has got. */
    private String order() {
        String shaded = Progress.of(model.session().bench(), Stage.SETTING_OUT)
                .filter(c -> !c.isFull())
                .map(c -> "waste is shaded at " + c)
                .orElse("");
        String measured = isChecked() ? "" : "this board has not been measured since its last line";
        if (shaded.isEmpty() && measured.isEmpty()) return "";
        String both = shaded.isEmpty() || measured.isEmpty() ? "" : ", and ";
        return "Set out everything and check it before the first cut: " + shaded + both + measured + ". ";
    }

    private boolean isChecked() {
        BoardState state = model.board();
        int struck = state.struck().stream()
                .filter(d -> d.action() instanceof Action.Line || d.action() instanceof Action.Gauge)
                .mapToInt(BoardState.Done::step)
                .max()
                .orElse(0);
        return state.measurements().stream().anyMatch(m -> m.step() > struck);
    }

    @Override
    public Optional<String> choice() {
        return Optional.of("with the " + with.spoken());
    }

    @Override
    public void chooseNext() {
        with = with == Cutter.SAW ? Cutter.CHISEL : Cutter.SAW;
    }

    @Override
    public void takenUp() {
        line = null;
    }

    private Board board() {
        return model.board().board();
    }

    @Override
    public void point(@Nullable Aim aim) {
        if (aim != null) line = near(aim.at()).map(TrueLine::step).orElse(null);
        else if (!model.byKeys()) line = null;
    }

    /** The line at this place that could still be cut to, in words. */
    Optional<String> at(SurfacePoint at) {
        return near(at).filter(l -> model.board().cut(l.step()).isEmpty()).map(CutTool::words);
    }

    private Optional<TrueLine> near(SurfacePoint at) {
        return model.lines().stream()
                .filter(l -> l.on() == at.surface() && away(l, at) <= NEAR)
                .min(Comparator.comparingDouble(l -> away(l, at)));
    }

    private double away(TrueLine l, SurfacePoint at) {
        double along = at.in(board().size()).get(l.runs());
        return Math.abs(l.at(along, board()) - at.in(board().size()).get(l.axis()));
    }

    @Override
    public void release(Aim aim) {
        point(aim);
        if (line == null) model.refuse(aim.at(), "There is no line here to cut to");
        else ask();
    }

    @Override
    public boolean key(ToolKey key) {
        List<TrueLine> all = model.lines();
        if (all.isEmpty()) {
            model.say(Note.refused("There is no line on board " + board().id() + " yet"));
            return true;
        }
        if (key.stroke() == ToolKey.Stroke.ENTER && line != null) {
            ask();
            return true;
        }
        boolean back = key.stroke() == ToolKey.Stroke.LEFT || key.stroke() == ToolKey.Stroke.UP;
        int now = all.indexOf(chosen().orElse(null));
        TrueLine next = all.get(now < 0 ? 0 : Math.floorMod(now + (back ? -1 : 1), all.size()));
        line = next.step();
        model.moveCaret(middle(next));
        model.say(Note.plain(Words.capital(words(next)) + ": Enter to choose the side"));
        return true;
    }

    private Optional<TrueLine> chosen() {
        Integer step = line;
        return model.lines().stream()
                .filter(l -> step != null && l.step() == step)
                .findFirst();
    }

    private SurfacePoint middle(TrueLine l) {
        Struck.Line lies = Struck.line(l, board(), model.marker());
        return Caret.within(
                board(),
                new SurfacePoint(
                        l.on(),
                        (lies.from().u() + lies.to().u()) / 2,
                        (lies.from().v() + lies.to().v()) / 2));
    }

    private static String words(TrueLine l) {
        String kind = l.isSquared() ? "the line at " + Reading.mm(l.measured()) : "the gauge line";
        return kind + " on " + l.on().spoken();
    }

    private void ask() {
        Optional<TrueLine> found = chosen();
        if (found.isEmpty()) return;
        TrueLine l = found.get();
        String id = board().id();
        Cutter tool = with;
        chooser.side(middle(l), side -> {
            String how = tool == Cutter.SAW ? "sawn " : "chiselled ";
            model.perform(
                    middle(l),
                    t -> new Action.Cut(t, id, l.step(), tool, side),
                    words(l) + " is " + how + side.spoken());
        });
    }

    @Override
    public List<Overlay> overlays() {
        return chosen().map(l -> List.<Overlay>of(new Overlay.LinePicked(l))).orElse(List.of());
    }
}
