package org.marktwice.print;

import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.marktwice.bench.Bench;
import org.marktwice.drawing.JobAxis;
import org.marktwice.fit.DryFit;
import org.marktwice.fit.JointFit;
import org.marktwice.fit.ToleranceStack;
import org.marktwice.picture.FitCamera;
import org.marktwice.picture.FitPicture;
import org.marktwice.picture.Ink;
import org.marktwice.picture.StackPicture;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.rulebook.FitCause;
import org.marktwice.rulebook.FitSheet;
import org.marktwice.rulebook.FitSheet.Kind;
import org.marktwice.rulebook.FitSheet.Line;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Scenario;

/**
 * A dry fit on sheets of paper: the job together and drawn apart, what was judged of it and where it comes from, and how each
 * overall size adds up.
 *
 * @param conditions by what it was judged, in which room, by whose hand, in words
 */
public record FitReport(Bench bench, FitSheet sheet, String learner, String conditions) {
    /** Pixels of the wood for each point: 216 an inch. */
    private static final double FINE = 3;

    private static final double HIGH = 250;
    /** The share of the width that the job together has. */
    private static final double LEFT = 0.54;

    public List<Page> pages(Paper paper) {
        Scenario scenario = bench.scenario();
        List<Block> blocks = new ArrayList<>();
        blocks.add(Blocks.heading(sheet.sum(), ""));
        blocks.add(Blocks.text(conditions, Type.BODY, Ink.QUIET));
        blocks.add(Blocks.space(6));
        sheet.missing().forEach(m -> blocks.add(Blocks.text(m, Type.BODY, Ink.INK)));
        pictures(blocks);
        lines(blocks, "Joints", Kind.JOINT);
        lines(blocks, "Overall sizes", Kind.SIZE);
        lines(blocks, "Diagonals", Kind.DIAGONAL);
        lines(blocks, "Faces that should come flush", Kind.FLUSH);
        for (Line size : sheet.lines(Kind.SIZE)) stack(blocks, size);
        TitleBlock block =
                new TitleBlock("dry fit", scenario.title(), "level " + scenario.level() + " · " + learner, "");
        return Leaf.bound(Leaf.flowing(block, paper, blocks), paper);
    }

    private void pictures(List<Block> blocks) {
        FitPicture picture = new FitPicture(sheet.fit(), bench, new SurfacePainter(new Wood(), Type.BODY.font()));
        double times = picture.times();
        String larger = times == 1 ? "" : ", what is out drawn ×" + Figure.number(times);
        FitPicture.Shown together = new FitPicture.Shown(FitCamera.FIRST, 0, times, Set.of(), spots());
        FitPicture.Shown apart = new FitPicture.Shown(FitCamera.FIRST, 0.7, times, Set.of(), List.of());
        blocks.add(Blocks.picture(
                HIGH,
                (pen, place) -> {
                    Rectangle2D left =
                            new Rectangle2D.Double(place.getX(), place.getY(), place.getWidth() * LEFT, HIGH);
                    Rectangle2D right =
                            new Rectangle2D.Double(left.getMaxX(), place.getY(), place.getWidth() * (1 - LEFT), HIGH);
                    picture.paint(pen.g, left, together, FINE, Pen.PALETTE);
                    picture.paint(pen.g, right, apart, FINE, Pen.PALETTE);
                },
                "seen " + FitCamera.FIRST.spoken() + ", together and drawn apart" + larger));
    }

    private List<FitPicture.Spot> spots() {
        List<FitPicture.Spot> spots = new ArrayList<>();
        for (Line line : sheet.lines(Kind.JOINT)) {
            var seat = line.seat();
            JointFit joint = sheet.fit().joint(line.id());
            if (seat == null || line.verdict() == Verdict.SOUND || joint.state() != JointFit.State.TOGETHER) continue;
            spots.add(new FitPicture.Spot(seat, sheet.fit().faces(seat), line.verdict(), line.figure(), false));
        }
        return spots;
    }

    private void lines(List<Block> blocks, String title, Kind kind) {
        List<Line> all = sheet.lines(kind);
        if (all.isEmpty()) return;
        blocks.add(Blocks.heading(title, ""));
        for (Line line : all) {
            blocks.add(Blocks.verdict(line.verdict(), line.title(), line.figure(), ""));
            if (line.verdict() == Verdict.SOUND || line.verdict() == Verdict.OPEN) continue;
            blocks.add(Blocks.text(line.says(), Type.NOTE, Ink.INK));
            for (FitCause cause : line.why()) blocks.add(Blocks.text("· " + cause.says(), Type.NOTE, Ink.QUIET));
            blocks.add(Blocks.space(3));
        }
    }

    private void stack(List<Block> blocks, Line size) {
        JobAxis axis = JobAxis.valueOf(size.id().toUpperCase(Locale.ROOT));
        Optional<ToleranceStack> found = sheet.stack(axis);
        if (found.isEmpty()) return;
        ToleranceStack stack = found.get();
        ToleranceStack.Trial trial = stack.trial(FitSheet.TRIAL_JOBS, FitSheet.TRIAL_SEED);
        StackPicture picture = new StackPicture(stack, trial, size.limit(), size.mm());
        Font font = Type.NOTE.font();
        String sum = String.format(
                Locale.ROOT,
                "At worst ±%s mm, likely ±%s mm. Of %,d jobs made so, %.1f %% come within ±%s mm.",
                Figure.number(stack.worst()),
                Figure.number(stack.likely()),
                trial.jobs(),
                100 * trial.within(size.limit()),
                Figure.number(size.limit()));
        blocks.add(Blocks.together(List.of(
                Blocks.heading("How " + Figure.number(stack.nominal()) + " mm " + size.id() + " adds up", ""),
                Blocks.text(chain(sheet.fit(), stack), Type.NOTE, Ink.QUIET),
                Blocks.text(sum, Type.NOTE, Ink.INK),
                Blocks.picture(
                        96,
                        (pen, place) -> picture.paint(
                                pen.g,
                                new Rectangle2D.Double(
                                        place.getX(), place.getY() + 4, Math.min(360, place.getWidth()), 90),
                                font,
                                Pen.PALETTE),
                        null))));
    }

    /** {@code 18 ±1 (Left upright) − 6 ±1 (Left upright) + …} */
    private static String chain(DryFit fit, ToleranceStack stack) {
        StringBuilder all = new StringBuilder();
        for (ToleranceStack.Link link : stack.links()) {
            if (all.length() > 0 || link.sign() < 0) all.append(link.sign() > 0 ? " + " : " − ");
            String name = fit.drawing().part(link.part()).orElseThrow().name();
            all.append(Figure.number(link.size())).append(" ±").append(Figure.number(link.plusMinus()));
            all.append(" (")
                    .append(name)
                    .append(", ")
                    .append(link.of().spoken())
                    .append(")");
        }
        return all.toString();
    }
}
