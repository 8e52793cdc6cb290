package org.marktwice.quiz;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Marker;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Turn;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Struck;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** A housing set out by another hand, with one slip in it: which step? */
final class FindSlip implements Maker {
    @Override
    public Kind kind() {
        return Kind.FIND_SLIP;
    }

    /** The slips that are made; each spoils one step. */
    enum Slip {
        STOCK_ON_BACK_EDGE(0, "The stock bears on the back edge, which nobody proved."),
        TEN_OUT(0, "The rule was misread: the line is 10 mm out."),
        WRONG_END(0, "Measured from the other end, the housing comes at the top."),
        NOMINAL(1, "The housing is as wide as the shelf is said to be, not as the shelf is."),
        WRONG_WAY(1, "Struck on the wrong side of the first line, below the shelf."),
        FENCE_ON_BACK(2, "The fence bears on the back."),
        SET_TO_WHAT_STAYS(2, "The gauge is set to what stays instead of what goes."),
        WASTE_ASIDE(3, "The shading is not between the two lines.");

        private final int step;
        private final String because;

        Slip(int step, String because) {
            this.step = step;
            this.because = because;
        }

        int step() {
            return step;
        }
    }

    /**
     * A housing set out on its board.
     *
     * @param shelf the shelf's actual thickness, millimetres
     * @param bottom the end that is at the bottom
     * @param slip the slip that was made; null where none was
     */
    record Work(
            Placing placing,
            Boards.Pair pair,
            double shelf,
            Surface bottom,
            @Nullable Slip slip) {

        Board board() {
            return placing.board();
        }

        /** How far the housing's lower side is from the bottom end, millimetres. */
        double up() {
            Box cut = placing.cuts().get(0).boxes().get(0);
            return bottom == Surface.END_1 ? cut.min(0) : board().size().length() - cut.max(0);
        }

        double depth() {
            return placing.cuts().get(0).boxes().get(0).extent(2);
        }

        Surface side() {
            return pair.side().on();
        }

        Surface edge() {
            return pair.edge().on();
        }

        /** First line, second line, gauge line, waste: as actions at the bench, steps 3 to 6 after the marks. */
        List<Action.OnBoard> actions() {
            String id = board().id();
            double at = slip == Slip.TEN_OUT ? up() + 10 : up();
            Surface from = slip == Slip.WRONG_END ? bottom.opposite() : bottom;
            Surface stock = slip == Slip.STOCK_ON_BACK_EDGE ? edge().opposite() : edge();
            // above the first line is nearer to the end that it was wrongly measured from
            boolean nearer = slip == Slip.WRONG_WAY || slip == Slip.WRONG_END;
            double wide = slip == Slip.NOMINAL ? placing.part().size().thickness() : shelf;
            double on = nearer ? -wide : wide;
            Surface fence = slip == Slip.FENCE_ON_BACK ? side().opposite() : side();
            double set = slip == Slip.SET_TO_WHAT_STAYS ? placing.part().size().thickness() - depth() : depth();
            return List.of(
                    new Action.Line(3, id, side(), stock, new Action.Datum.End(from), at, null, Marker.KNIFE),
                    new Action.Line(4, id, side(), edge(), new Action.Datum.Step(3), on, null, Marker.KNIFE),
                    new Action.Gauge(5, id, edge(), fence, set),
                    new Action.Waste(6, id, placing.cuts().get(0).joint(), 3, 4));
        }
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        Work work = work(level, chance);
        List<Offer> offers = new ArrayList<>();
        List<String> steps = steps(work);
        Slip slip = work.slip();
        for (int i = 0; i < steps.size(); i++) {
            String because = slip != null && slip.step() == i ? slip.because : right(work, i);
            offers.add(Offer.words(steps.get(i), because));
        }
        BoardPicture picture = picture(work);
        return new Question.Draft(
                given(work),
                "One of these steps is a slip. Which?",
                Answers.choose(offers, slip == null ? 0 : slip.step()),
                new Picture.Unrolled(picture),
                reason(work, picture, steps));
    }

    /** A board turned and marked for an upright, and set out with one slip. */
    static Work work(int level, Chance chance) {
        Drawing drawing = Jobs.shelves(chance, 1);
        Part part = drawing.parts().get(chance.whole(0, 1));
        Board board = Boards.of(chance, part.size(), 0.3).next();
        Boards.Pair pair = level == 1 ? Boards.pair(Surface.FACE_1, Surface.EDGE_1) : Boards.anyPair(chance);
        Placing placing = PartOfDrawing.placed(drawing, part, board, pair);
        double shelf = Chance.tenth(part.size().thickness() - chance.between(0.5, 0.9));
        Slip[] slips = Slip.values();
        Slip slip = slips[chance.whole(0, slips.length - 1)];
        return new Work(placing, pair, shelf, placing.turn().looking(Direction.BOTTOM), slip);
    }

    private static String given(Work work) {
        Part part = work.placing().part();
        Turn turn = work.placing().turn();
        return Say.of(
                "Board %s is the %s, %s: face side on %s, face edge on %s. %s is at the bottom, and its length is cut already. The"
                        + " shelf's underside stands %s up, its housing is a third of the thickness deep, and the shelf itself measures"
                        + " %s.",
                work.board().id(),
                part.name().toLowerCase(java.util.Locale.ROOT),
                Say.size(part.size()),
                work.side().spoken(),
                work.edge().spoken(),
                Say.capital(turn.looking(Direction.BOTTOM).spoken()),
                Say.mm(work.up()),
                Say.mm(work.shelf()));
    }

    private static List<String> steps(Work work) {
        List<Action.OnBoard> actions = work.actions();
        Action.Line first = (Action.Line) actions.get(0);
        Action.Line second = (Action.Line) actions.get(1);
        Action.Gauge gauge = (Action.Gauge) actions.get(2);
        double on = second.at() == null ? 0 : second.at();
        String way = work.slip() == Slip.WRONG_WAY ? "below" : "above";
        return List.of(
                Say.of(
                        "First line: knife across %s, stock on %s, %s from %s",
                        first.on().spoken(),
                        first.square().spoken(),
                        Say.mm(first.at() == null ? 0 : first.at()),
                        ((Action.Datum.End) first.from()).end().spoken()),
                Say.of(
                        "Second line: knife across %s, stock on %s, %s %s the first",
                        second.on().spoken(), second.square().spoken(), Say.mm(Math.abs(on)), way),
                Say.of(
                        "Depth: gauged on %s, fence on %s, set to %s",
                        gauge.on().spoken(), gauge.fence().spoken(), Say.mm(gauge.set())),
                work.slip() == Slip.WASTE_ASIDE
                        ? "Waste: shaded above the second line"
                        : "Waste: shaded between the two lines");
    }

    private static String right(Work work, int step) {
        return switch (step) {
            case 0 ->
                Say.of("The stock bears on the face edge, and %s up is where the drawing has it.", Say.mm(work.up()));
            case 1 -> "It was taken from the shelf itself, the stock on the face edge.";
            case 2 -> "The fence bears on the face side, set to a third of the thickness.";
            default -> "What is to go is what is shaded.";
        };
    }

    private static BoardPicture picture(Work work) {
        BoardState marked = work.pair().on(work.board());
        return BoardPicture.of(marked, null).struck(struck(work));
    }

    /** Where the lines stand on the board. */
    static List<Struck> struck(Work work) {
        Board board = work.board();
        List<Action.OnBoard> actions = work.actions();
        Action.Line first = (Action.Line) actions.get(0);
        Action.Line second = (Action.Line) actions.get(1);
        Action.Gauge gauge = (Action.Gauge) actions.get(2);
        double length = board.size().length();
        double at = first.at() == null ? 0 : first.at();
        double on = second.at() == null ? 0 : second.at();
        boolean fromOne = ((Action.Datum.End) first.from()).end() == Surface.END_1;
        double x = fromOne ? at : length - at;
        double next = fromOne ? x + on : x - on;
        double beyond = next + Math.signum(next - x) * 12;
        double width = board.size().width();
        double z = gauge.fence() == Surface.FACE_1 ? board.size().thickness() - gauge.set() : gauge.set();
        boolean aside = work.slip() == Slip.WASTE_ASIDE;
        double a = aside ? next : Math.min(x, next);
        double b = aside ? beyond : Math.max(x, next);
        return List.of(
                across(3, work.side(), x, width),
                across(4, work.side(), next, width),
                new Struck.Line(
                        5,
                        new SurfacePoint(gauge.on(), Math.min(x, next) - 15, z),
                        new SurfacePoint(gauge.on(), Math.max(x, next) + 15, z),
                        Marker.KNIFE),
                new Struck.Waste(
                        6,
                        List.of(
                                new SurfacePoint(work.side(), Math.min(a, b), 0),
                                new SurfacePoint(work.side(), Math.max(a, b), 0),
                                new SurfacePoint(work.side(), Math.max(a, b), width),
                                new SurfacePoint(work.side(), Math.min(a, b), width))));
    }

    private static Struck across(int step, Surface on, double x, double width) {
        return new Struck.Line(step, new SurfacePoint(on, x, 0), new SurfacePoint(on, x, width), Marker.KNIFE);
    }

    private static Question.Reason reason(Work work, BoardPicture picture, List<String> steps) {
        Slip slip = work.slip();
        if (slip == null) throw new IllegalStateException("no slip was made");
        Work sound = new Work(work.placing(), work.pair(), work.shelf(), work.bottom(), null);
        String better = steps(sound).get(slip.step());
        BoardPicture shows = KnotFouls.laid(picture, work.placing().cuts(), null)
                .evidence(new Evidence(List.of(), points(work, slip), List.of()), Ink.WRONG);
        return new Question.Reason(
                Say.of(
                        "%s Right would be: %s. The other steps are as the drawing and the trade want them.",
                        slip.because, better.substring(better.indexOf(':') + 2)),
                new Picture.Unrolled(shows));
    }

    /** A place on what the slip spoilt. */
    private static List<SurfacePoint> points(Work work, Slip slip) {
        Struck spoilt = struck(work).get(slip.step());
        if (spoilt instanceof Struck.Line line) return List.of(middle(line.from(), line.to()));
        Struck.Waste waste = (Struck.Waste) spoilt;
        return List.of(middle(waste.outline().get(0), waste.outline().get(2)));
    }

    private static SurfacePoint middle(SurfacePoint a, SurfacePoint b) {
        return new SurfacePoint(a.surface(), (a.u() + b.u()) / 2, (a.v() + b.v()) / 2);
    }
}
