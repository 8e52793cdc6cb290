package org.marktwice.view.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.bench.Marker;
import org.marktwice.fit.TrueLine;
import org.marktwice.fit.TrueLines;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/**
 * Rule and try-square: a line squared across the board, so far from an end or from an earlier line. Drawn from an end or a
 * line it is measured from there; near a line it is carried on from it, and so squared round.
 */
final class LineTool implements BenchTool {
    /** Nearer to a line than this it is carried on from it, millimetres. */
    private static final double ROUND = 2.5;
    /** Within this share of the surface from an arris, the stock bears beyond that arris. */
    private static final double NEAR_ARRIS = 0.2;

    private final BenchModel model;
    private final Map<String, Datum> datums = new HashMap<>();
    private final Typed typed = new Typed();
    private @Nullable Surface on;
    private @Nullable Surface stock;
    private double x;
    private boolean pressed;
    private boolean drawn;

    LineTool(BenchModel model) {
        this.model = model;
    }

    @Override
    public Command command() {
        return BenchCommands.LINE;
    }

    @Override
    public String hint() {
        return "Click where the " + model.marker().spoken() + " line goes, or draw to it from an end or a line; or type"
                + " the distance and press Enter. Keys: ←→ 1 mm (Ctrl 10), ↑↓ surface, Shift+↑↓ the stock's side, Tab lines.";
    }

    @Override
    public boolean strikes() {
        return true;
    }

    @Override
    public boolean snaps() {
        return true;
    }

    @Override
    public void takenUp() {
        on = null;
        stock = null;
        pressed = false;
        typed.clear();
    }

    private Board board() {
        return model.board().board();
    }

    /** What distances run from on this board; end 1 where that was never said, or the line is gone. */
    private Datum datum() {
        Datum chosen = datums.getOrDefault(board().id(), new Datum.End(Surface.END_1));
        boolean stands = chosen instanceof Datum.End
                || model.lines().stream().anyMatch(l -> l.step() == ((Datum.Step) chosen).step());
        return stands ? chosen : new Datum.End(Surface.END_1);
    }

    private void measureFrom(Datum datum) {
        datums.put(board().id(), datum);
    }

    @Override
    public Optional<String> choice() {
        return Optional.of("from " + Setting.words(model, datum()));
    }

    @Override
    public void chooseNext() {
        List<Datum> all = Setting.datums(model.lines());
        measureFrom(all.get((all.indexOf(datum()) + 1) % all.size()));
        typed.clear();
        model.say(Note.plain("Distances run from " + Setting.words(model, datum())));
    }

    // The mouse

    @Override
    public @Nullable Surface holding() {
        return pressed ? on : null;
    }

    @Override
    public void point(@Nullable Aim aim) {
        if (aim == null) {
            if (!model.byKeys()) on = null;
            return;
        }
        on = aim.surface();
        stock = stockFor(aim.at());
        typed.clear();
        x = aim.surface().isEnd() ? 0 : taken(aim.at().u());
    }

    /** The surface beyond the arris that the point is near to, else the usual one. */
    private Surface stockFor(SurfacePoint at) {
        Surface usual = Setting.usualStock(model.board(), at.surface());
        if (at.surface().isEnd()) return usual;
        double extent = board().vExtent(at.surface());
        Surface near = Surface.on(at.surface().vAxis(), at.v() > extent / 2 ? 1 : -1);
        return Math.min(at.v(), extent - at.v()) < NEAR_ARRIS * extent ? near : usual;
    }

    /** To a line that is near, else to a whole millimetre from where distances begin. */
    private double taken(double u) {
        Optional<TrueLine> near = lineNear(u, ROUND);
        if (near.isPresent()) return near.get().at(stockNow());
        double from = Setting.place(board(), datum(), model.lines(), stockNow());
        double to = from + Math.rint(u - from);
        return Math.max(0, Math.min(board().size().length(), to));
    }

    private Optional<TrueLine> lineNear(double u, double reach) {
        Surface bears = stockNow();
        return model.lines().stream()
                .filter(l -> l.isSquared() && Math.abs(l.at(bears) - u) <= reach)
                .min((a, b) -> Double.compare(Math.abs(a.at(bears) - u), Math.abs(b.at(bears) - u)));
    }

    @Override
    public void press(Aim aim) {
        point(aim);
        pressed = true;
        drawn = false;
        Datum from = drawnFrom(aim.at());
        if (from != null && !from.equals(datum())) pending = from;
        else pending = null;
    }

    /** Where drawing begins; it becomes the datum once the line is drawn away from it. */
    private @Nullable Datum pending;

    private @Nullable Datum drawnFrom(SurfacePoint at) {
        if (at.surface().isEnd()) return null;
        if (at.u() <= 2 * ROUND) return new Datum.End(Surface.END_1);
        if (at.u() >= board().size().length() - 2 * ROUND) return new Datum.End(Surface.END_2);
        return lineNear(at.u(), ROUND)
                .map(l -> (Datum) new Datum.Step(l.step()))
                .orElse(null);
    }

    @Override
    public void drag(Aim aim) {
        Surface bears = stock;
        Datum from = pending;
        if (from != null
                && Math.abs(aim.at().u() - Setting.place(board(), from, model.lines(), stockNow())) > 2 * ROUND) {
            measureFrom(from);
            pending = null;
        }
        on = aim.surface();
        stock = bears;
        if (!aim.surface().isEnd()) x = taken(aim.at().u());
        drawn = true;
        model.say(Note.read(Words.capital(words(line()))));
    }

    @Override
    public void release(Aim aim) {
        if (!pressed || !drawn) point(aim);
        pressed = false;
        pending = null;
        strike();
    }

    // Keys

    @Override
    public boolean type(char c) {
        if (on == null) place(model.lie().up(), board().size().length() / 2);
        boolean meant = typed.type(c);
        if (meant) say();
        return meant;
    }

    @Override
    public boolean key(ToolKey key) {
        Surface now = on;
        if (now == null || now.isEnd()) {
            place(model.lie().up(), board().size().length() / 2);
            say();
            return true;
        }
        double step = key.wide() ? 10 : 1;
        switch (key.stroke()) {
            case ENTER -> {
                strike();
                return true;
            }
            case LEFT -> move(-step);
            case RIGHT -> move(step);
            case UP, DOWN -> {
                if (key.shift()) stock = Setting.next(Setting.beside(now), stockNow());
                else place(Caret.towards(now, key.stroke()), x);
            }
            case NEXT -> jump(true);
            case PREVIOUS -> jump(false);
        }
        say();
        return true;
    }

    private void place(Surface surface, double at) {
        on = surface;
        stock = Setting.usualStock(model.board(), surface);
        x = at;
        model.moveCaret(new SurfacePoint(surface, at, board().vExtent(surface) / 2));
    }

    private void move(double by) {
        Surface now = on;
        typed.clear();
        double from = Setting.place(board(), datum(), model.lines(), stockNow());
        double to = from + Math.rint(x + by - from);
        x = Math.max(0, Math.min(board().size().length(), to));
        if (now != null) model.moveCaret(new SurfacePoint(now, x, board().vExtent(now) / 2));
    }

    /** To the next line, to be carried on from it. */
    private void jump(boolean forwards) {
        typed.clear();
        Surface bears = stockNow();
        List<Double> places = Setting.squared(model.lines()).stream()
                .map(l -> l.at(bears))
                .filter(p -> forwards ? p > x + 1e-6 : p < x - 1e-6)
                .toList();
        if (!places.isEmpty()) x = forwards ? places.get(0) : places.get(places.size() - 1);
    }

    private void say() {
        String figure = typed.isEmpty() ? "" : "  ·  typed " + typed + " mm";
        model.say(Note.plain(Words.capital(words(line())) + figure));
    }

    // The line itself

    private Surface stockNow() {
        Surface surface = on == null ? Surface.FACE_1 : on;
        return Setting.stock(model.board(), surface, stock);
    }

    /** The line as it would be struck now. */
    private Action.Line line() {
        Surface surface = on == null ? Surface.FACE_1 : on;
        if (typed.value().isPresent())
            return line(surface, datum(), typed.value().getAsDouble());
        Optional<TrueLine> carried = lineNear(x, 0.01).filter(l -> l.on() != surface);
        if (carried.isPresent())
            return line(surface, new Datum.Step(carried.get().step()), 0);
        double from = Setting.place(board(), datum(), model.lines(), stockNow());
        double distance = Setting.away(model.board(), datum()) * (x - from);
        return line(surface, datum(), Math.rint(distance * 10) / 10.0 + 0.0);
    }

    private Action.Line line(Surface surface, Datum from, double at) {
        return new Action.Line(0, board().id(), surface, stockNow(), from, at, null, model.marker());
    }

    /** {@code knife line across face 1, 86 mm from end 2, stock on the face edge}. */
    private String words(Action.Line line) {
        boolean round = line.from() instanceof Datum.Step && line.at() != null && line.at() == 0;
        String where = round
                ? "squared round from " + Setting.words(model, line.from())
                : Reading.mm(line.at() == null ? 0 : line.at()) + " from " + Setting.words(model, line.from());
        return line.with().spoken() + " line across " + line.on().spoken() + ", " + where + ", stock on "
                + Words.called(model.board(), line.square());
    }

    private void strike() {
        Surface surface = on;
        if (surface == null) return;
        Action.Line line = line();
        SurfacePoint where = new SurfacePoint(
                surface, Math.max(0, Math.min(board().uExtent(surface), x)), board().vExtent(surface) / 2);
        boolean done = model.perform(
                where,
                t -> new Action.Line(
                        t, line.board(), line.on(), line.square(), line.from(), line.at(), null, line.with()),
                words(line) + onBoth(line));
        if (done) typed.clear();
    }

    /** A line over a pair lies on the other board too. */
    private String onBoth(Action.Line line) {
        return model.session()
                .bench()
                .paired(line.board())
                .filter(p -> p.carries(line.on()))
                .map(p -> ", and on board " + p.there())
                .orElse("");
    }

    @Override
    public List<Overlay> overlays() {
        Surface surface = on;
        if (surface == null || surface.isEnd()) return List.of();
        List<Overlay> found = new ArrayList<>();
        Action.Line line = line();
        TrueLine lands = TrueLines.of(model.session().bench(), model.board()).trial(line);
        double start = Setting.place(board(), line.from(), model.lines(), line.square());
        double end = lands.measured();
        boolean onBoard = end >= 0 && end <= board().size().length();
        if (Math.abs(end - start) > 0.5 && onBoard) {
            found.add(new Overlay.RuleLaid(
                    Setting.forRule(board(), surface, line.square(), start),
                    Setting.forRule(board(), surface, line.square(), end),
                    ""));
        }
        if (onBoard) {
            int side = Setting.away(model.board(), line.from());
            boolean round = line.from() instanceof Datum.Step && Math.abs(end - start) < 0.05;
            String says = round ? "squared round" : Reading.mm(Math.abs(end - start));
            found.add(new Overlay.SquareLaid(lands, side, line.with() == Marker.KNIFE, says));
        }
        return found;
    }
}
