package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState.Done;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.CutAt;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.fit.SetOut.Marked;
import org.marktwice.fit.TrueLine;
import org.marktwice.fit.TrueLines;
import org.marktwice.rulebook.SetBoard.Squared;

/** Slips with rule, square and gauge on one board. */
final class SettingOutSlips {
    /** A rule misread by a whole centimetre, millimetres. */
    private static final double TEN = 10;

    private SettingOutSlips() {}

    private static List<SetBoard> boards(Slipping s) {
        return SetBoard.all(s.situation()).stream()
                .filter(b -> !b.board().isSheet() && b.part().takesMarks())
                .toList();
    }

    /** The square passed on from each surface to the next, until its stock bears on a surface that is not marked. */
    static List<Slipped> walkedRound(Slipping s) {
        List<Slipped> all = new ArrayList<>();
        for (SetBoard b : boards(s)) {
            List<Squared> carried = b.squared().stream()
                    .filter(Squared::isCarriedOn)
                    .filter(q -> !b.references().contains(q.line().on()))
                    .filter(q -> !b.references().contains(q.line().reference().opposite()))
                    .toList();
            if (carried.isEmpty()) continue;
            List<Integer> steps = carried.stream().map(q -> q.line().step()).toList();
            Rewriting walked = step(s, steps, a -> {
                Action.Line l = (Action.Line) a;
                return new Action.Line(
                        l.t(), l.board(), l.on(), l.square().opposite(), l.from(), l.at(), l.mate(), l.with());
            });
            all.add(s.made(Slip.SQUARE_WALKED_ROUND, b.id(), new StockOnReference(), walked));
        }
        return all;
    }

    /** The fence of the gauge run along a back or a back edge, set to what is left of the size as drawn. */
    static List<Slipped> gaugedFromBack(Slipping s) {
        List<Slipped> all = new ArrayList<>();
        for (SetBoard b : boards(s)) {
            List<Integer> steps = b.out().marked().stream()
                    .filter(m -> !m.side().isSquared())
                    .flatMap(m -> m.round().stream())
                    .filter(l -> !b.references().contains(l.reference().opposite()))
                    .map(TrueLine::step)
                    .distinct()
                    .toList();
            if (steps.isEmpty()) continue;
            Rewriting back = step(s, steps, a -> {
                Action.Gauge g = (Action.Gauge) a;
                double size = b.part().size().along(g.fence().axis());
                return new Action.Gauge(g.t(), g.board(), g.on(), g.fence().opposite(), size - g.set());
            });
            all.add(s.made(Slip.GAUGED_FROM_BACK, b.id(), new DepthAsSet(), back));
        }
        return all;
    }

    /** A distance measured on from the line of the joint before it. */
    static List<Slipped> chained(Slipping s) {
        List<Slipped> all = new ArrayList<>();
        for (SetBoard b : boards(s)) {
            for (Squared later : measured(b)) {
                nearer(b, later).ifPresent(earlier -> {
                    double on = distance(later) - distance(earlier);
                    Rewriting chained = step(s, List.of(later.line().step()), a -> {
                        Action.Line l = (Action.Line) a;
                        Datum from = new Datum.Step(earlier.line().step());
                        return new Action.Line(l.t(), l.board(), l.on(), l.square(), from, on, null, l.with());
                    });
                    all.add(s.made(Slip.CHAINED_SIZES, b.id(), new OneDatum(), chained));
                });
            }
        }
        return all;
    }

    /** A line of another joint, measured earlier and from the same place. */
    private static Optional<Squared> nearer(SetBoard b, Squared later) {
        return measured(b).stream()
                .filter(e -> e.line().step() < later.line().step() && distance(e) < distance(later))
                .filter(e -> e.action().from().equals(later.action().from()))
                .filter(e -> joint(b, e).isPresent() && joint(b, later).isPresent())
                .filter(e -> !joint(b, e).equals(joint(b, later)))
                .findFirst();
    }

    private static Optional<String> joint(SetBoard b, Squared q) {
        return b.out().marked().stream()
                .filter(m ->
                        m.round().stream().anyMatch(l -> l.step() == q.line().step()))
                .flatMap(m -> Stream.ofNullable(m.side().joint()))
                .findFirst();
    }

    private static double distance(Squared q) {
        Double at = q.action().at();
        return at == null ? 0 : at;
    }

    /** The lines whose distance was read off the rule. */
    private static List<Squared> measured(SetBoard b) {
        return b.squared().stream()
                .filter(q -> q.action().at() != null && !q.isCarriedOn())
                .toList();
    }

    /** The second line measured at the drawing's thickness instead of struck from the mate; where the mate is another. */
    static List<Slipped> nominal(Slipping s) {
        List<Slipped> all = new ArrayList<>();
        double tells = s.situation().practice().gap() / 4;
        for (SetBoard b : boards(s)) {
            for (Squared q : b.squared()) {
                String mate = q.action().mate();
                Optional<Double> drawn = mate == null ? Optional.empty() : drawn(s, b, q);
                if (mate == null || drawn.isEmpty()) continue;
                double actual = TrueLines.mate(s.situation().bench(), b.board(), mate);
                if (Math.abs(actual - drawn.get()) <= tells) continue;
                Rewriting nominal = step(s, List.of(q.line().step()), a -> {
                    Action.Line l = (Action.Line) a;
                    return new Action.Line(l.t(), l.board(), l.on(), l.square(), l.from(), drawn.get(), null, l.with());
                });
                all.add(s.made(Slip.NOMINAL_THICKNESS, b.id(), new WidthFromMate(), nominal, mate));
            }
        }
        return all;
    }

    private static Optional<Double> drawn(Slipping s, SetBoard b, Squared q) {
        return joint(b, q)
                .flatMap(id -> s.situation().scenario().drawing().joint(id))
                .map(joint -> {
                    String other = joint.in().equals(b.part().id()) ? joint.takes() : joint.in();
                    Part mate = s.situation().scenario().drawing().part(other).orElseThrow();
                    return mate.box().extent(b.part().length().ordinal());
                });
    }

    /** A cut decided on the other side of its line; the waste shaded there, up to a line of something else. */
    static List<Slipped> wrongSide(Slipping s) {
        List<Slipped> all = new ArrayList<>(cutBeyond(s));
        for (SetBoard b : boards(s)) {
            for (String joint : b.joints()) {
                Joint kind = s.situation().scenario().drawing().joint(joint).orElseThrow();
                List<Marked> own = b.out().marked(joint);
                long shoulders = own.stream().filter(m -> m.side().isSquared()).count();
                if (kind instanceof Joint.Dowelled || shoulders != 2) continue;
                Optional<TrueLine> stranger = stranger(b, own);
                for (Done<Action.Waste> waste : b.out().wastes(joint)) {
                    stranger.ifPresent(line -> {
                        Rewriting beside = step(s, List.of(waste.step()), a -> {
                            Action.Waste w = (Action.Waste) a;
                            return new Action.Waste(w.t(), w.board(), w.joint(), w.between(), line.step());
                        });
                        all.add(s.made(Slip.WRONG_SIDE_OF_LINE, b.id(), new WasteShown(), beside));
                    });
                }
            }
        }
        return all;
    }

    private static List<Slipped> cutBeyond(Slipping s) {
        List<Slipped> all = new ArrayList<>();
        for (SetBoard b : boards(s)) {
            for (Sawn c : Sawn.on(b)) {
                if (c.cut().side() != CutAt.WASTE || c.of().isEmpty()) continue;
                Rewriting beyond = step(s, List.of(c.step()), a -> {
                    Action.Cut cut = (Action.Cut) a;
                    return new Action.Cut(cut.t(), cut.board(), cut.step(), cut.with(), CutAt.KEPT);
                });
                all.add(s.made(Slip.WRONG_SIDE_OF_LINE, b.id(), new CutOnWasteSide(), beyond));
            }
        }
        return all;
    }

    /** A squared line that is none of the joint's own, struck before its waste was shaded. */
    private static Optional<TrueLine> stranger(SetBoard b, List<Marked> own) {
        int last = own.stream()
                .flatMap(m -> m.round().stream())
                .mapToInt(TrueLine::step)
                .max()
                .orElse(0);
        return b.out().lines().stream()
                .filter(l -> l.isSquared() && l.step() < last)
                .filter(l -> own.stream()
                        .flatMap(m -> m.struck().stream())
                        .noneMatch(o -> o.isSquared() && Math.abs(o.middle() - l.middle()) <= TEN / 2))
                .findFirst();
    }

    /** A distance misread by a whole centimetre, either way, or with two figures exchanged. */
    static List<Slipped> misread(Slipping s) {
        List<Slipped> all = new ArrayList<>();
        for (SetBoard b : boards(s)) {
            double length = b.board().size().length();
            for (Squared q : measured(b)) {
                boolean wanted = b.out().marked().stream()
                        .anyMatch(m -> m.round().stream()
                                .anyMatch(l -> l.step() == q.line().step()));
                if (!wanted) continue;
                for (double read : misread(distance(q))) {
                    double x = q.line().meant() + read - distance(q);
                    double y = q.line().meant() - read + distance(q);
                    if (read <= 0 || Math.min(x, y) < TEN || Math.max(x, y) > length - TEN) continue;
                    Rewriting misread = step(s, List.of(q.line().step()), a -> {
                        Action.Line l = (Action.Line) a;
                        return new Action.Line(l.t(), l.board(), l.on(), l.square(), l.from(), read, null, l.with());
                    });
                    if (canBeDone(s, misread)) {
                        all.add(s.made(Slip.RULE_MISREAD, b.id(), new PlaceAsDrawn(), misread));
                    }
                }
            }
        }
        return all;
    }

    /** Lines struck from the misread one may come to lie off the board. */
    private static boolean canBeDone(Slipping s, Rewriting rewritten) {
        try {
            Bench.after(s.situation().scenario(), rewritten.attempt());
            return true;
        } catch (CannotDo e) {
            return false;
        }
    }

    private static List<Double> misread(double distance) {
        List<Double> all = new ArrayList<>(List.of(distance + TEN, distance - TEN));
        long whole = Math.round(distance);
        if (whole >= 10 && whole <= 99) {
            double exchanged = whole % 10 * 10 + whole / 10 + (distance - whole);
            if (Math.abs(exchanged - distance) > 2) all.add(exchanged);
        }
        return all;
    }

    /** The attempt with the actions of these steps changed. */
    private static Rewriting step(Slipping s, List<Integer> steps, UnaryOperator<Action> by) {
        List<Action> which =
                steps.stream().map(i -> s.good().actions().get(i - 1)).toList();
        return new Rewriting(s.good()).changing(a -> which.stream().anyMatch(w -> w == a) ? by.apply(a) : a);
    }
}
