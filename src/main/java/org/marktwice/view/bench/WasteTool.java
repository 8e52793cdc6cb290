package org.marktwice.view.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.fit.TrueLine;
import org.marktwice.picture.WasteOutline;
import org.marktwice.timber.Board;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Commands.Command;

/** Shades the waste between two lines in pencil: those on either side of the place that is pointed at. */
final class WasteTool implements BenchTool {
    private final BenchModel model;
    private final Chooser chooser;
    private @Nullable SurfacePoint at;

    WasteTool(BenchModel model, Chooser chooser) {
        this.model = model;
        this.chooser = chooser;
    }

    @Override
    public Command command() {
        return BenchCommands.WASTE;
    }

    @Override
    public String hint() {
        return "Click between the two lines that bound the waste. Keys: arrows move by 1 mm (Ctrl 10), Tab to the next waste,"
                + " Enter shades it.";
    }

    @Override
    public boolean snaps() {
        return true;
    }

    @Override
    public void takenUp() {
        at = null;
    }

    private Board board() {
        return model.board().board();
    }

    @Override
    public void point(@Nullable Aim aim) {
        if (aim != null) at = aim.at();
        else if (!model.byKeys()) at = null;
    }

    @Override
    public void release(Aim aim) {
        at = aim.at();
        shade();
    }

    @Override
    public boolean key(ToolKey key) {
        switch (key.stroke()) {
            case LEFT, RIGHT, UP, DOWN -> move(key.right(), key.down());
            case NEXT -> jump(true);
            case PREVIOUS -> jump(false);
            case ENTER -> {
                if (at == null) jump(true);
                else shade();
            }
        }
        return true;
    }

    private void move(double right, double down) {
        to(Caret.moved(board(), model.caret(), right, down));
    }

    private void to(SurfacePoint place) {
        at = place;
        model.moveCaret(place);
        model.say(Note.plain(bounds(place)
                .map(b -> Words.capital(words(b)) + ": Enter shades it")
                .orElse("No two lines here, " + Reading.mm(place.u()) + " from end 1")));
    }

    /** Between the next two lines of the surface. */
    private void jump(boolean forwards) {
        SurfacePoint from = model.caret();
        List<TrueLine> lines = Setting.squared(model.lines()).stream()
                .filter(l -> l.on() == from.surface())
                .toList();
        double v = board().vExtent(from.surface()) / 2;
        List<Double> middles = new java.util.ArrayList<>();
        for (int i = 0; i + 1 < lines.size(); i++) {
            middles.add((lines.get(i).middle() + lines.get(i + 1).middle()) / 2);
        }
        List<Double> beyond = middles.stream()
                .filter(m -> forwards ? m > from.u() + 0.01 : m < from.u() - 0.01)
                .toList();
        List<Double> choice = beyond.isEmpty() ? middles : beyond;
        if (choice.isEmpty()) to(from);
        else to(new SurfacePoint(from.surface(), choice.get(forwards ? 0 : choice.size() - 1), v));
    }

    /** The lines on either side of a place. */
    private record Bounds(TrueLine one, TrueLine other) {}

    /** Two squared lines on either side; else the nearest squared line and a gauge line; else two gauge lines. */
    private Optional<Bounds> bounds(SurfacePoint place) {
        List<TrueLine> here =
                model.lines().stream().filter(l -> l.on() == place.surface()).toList();
        Optional<TrueLine> below = beside(here, place, 0, false);
        Optional<TrueLine> above = beside(here, place, 0, true);
        if (below.isPresent() && above.isPresent()) return Optional.of(new Bounds(below.get(), above.get()));
        Optional<TrueLine> squared = below.isPresent() ? below : above;
        int axis = place.surface().isEnd()
                ? place.surface().uAxis()
                : 3 - place.surface().axis();
        if (squared.isPresent()) return gauged(here, place).map(g -> new Bounds(squared.get(), g));
        Optional<TrueLine> low = beside(here, place, axis, false);
        Optional<TrueLine> high = beside(here, place, axis, true);
        return low.isPresent() && high.isPresent() ? Optional.of(new Bounds(low.get(), high.get())) : Optional.empty();
    }

    private Optional<TrueLine> beside(List<TrueLine> lines, SurfacePoint place, int axis, boolean above) {
        double here = along(place, axis);
        return lines.stream()
                .filter(l -> l.axis() == axis && (at(l, place) > here) == above)
                .min(Comparator.comparingDouble(l -> Math.abs(at(l, place) - here)));
    }

    /** Where a line passes the place. */
    private double at(TrueLine line, SurfacePoint place) {
        return line.at(along(place, line.runs()), board());
    }

    private double along(SurfacePoint place, int axis) {
        return place.in(board().size()).get(axis);
    }

    /** The gauge line nearest to the place on its own surface, else any on the board. */
    private Optional<TrueLine> gauged(List<TrueLine> here, SurfacePoint place) {
        Optional<TrueLine> near = here.stream()
                .filter(l -> !l.isSquared())
                .min(Comparator.comparingDouble(l -> Math.abs(at(l, place) - along(place, l.axis()))));
        if (near.isPresent()) return near;
        return model.lines().stream().filter(l -> !l.isSquared()).findFirst();
    }

    private String words(Bounds b) {
        return "waste between " + word(b.one()) + " and " + word(b.other());
    }

    private static String word(TrueLine line) {
        if (!line.isSquared()) return "the gauge line on " + line.on().spoken();
        return "the line at " + Reading.mm(line.measured());
    }

    /** The joints that are cut into the board; all where it isn't named. */
    private List<Joint> joints() {
        Drawing drawing = model.session().scenario().drawing();
        Optional<Part> part = model.part();
        if (part.isEmpty()) return drawing.joints();
        List<String> cut = drawing.cuts(part.get()).stream().map(Cut::joint).toList();
        return drawing.joints().stream().filter(j -> cut.contains(j.id())).toList();
    }

    private void shade() {
        SurfacePoint place = at;
        if (place == null) return;
        Optional<Bounds> bounds = bounds(place);
        if (bounds.isEmpty()) {
            model.refuse(place, "Waste lies between two lines: strike them first, then click between them");
            return;
        }
        List<Joint> joints = joints();
        if (joints.isEmpty()) model.refuse(place, "Nothing is cut out of this part");
        else if (joints.size() == 1) shade(place, bounds.get(), joints.get(0));
        else chooser.joint(place, joints, j -> shade(place, bounds.get(), j));
    }

    private void shade(SurfacePoint place, Bounds b, Joint joint) {
        String board = board().id();
        int one = b.one().step();
        int other = b.other().step();
        model.perform(place, t -> new Action.Waste(t, board, joint.id(), one, other), words(b) + " shaded");
    }

    @Override
    public List<Overlay> overlays() {
        SurfacePoint place = at;
        if (place == null) return List.of();
        Optional<Bounds> bounds = bounds(place);
        if (bounds.isEmpty()) return model.byKeys() ? List.of(new Overlay.CaretAt(place)) : List.of();
        String joint = joints().stream().findFirst().map(Joint::id).orElse("");
        List<SurfacePoint> outline = new WasteOutline(board(), model.placing())
                .of(joint, bounds.get().one(), bounds.get().other());
        return List.of(new Overlay.WastePicked(outline));
    }
}
