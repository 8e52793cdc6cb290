package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Bench;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.fit.DryFit;
import org.marktwice.fit.JointFit;
import org.marktwice.fit.JointFit.SeatFit;
import org.marktwice.fit.Rectangle;
import org.marktwice.fit.Seat;
import org.marktwice.fit.ToleranceStack;

/**
 * What comes of putting the job together dry, judged by tolerances: whether each joint meets, on which side and by how much
 * it is out; the overall sizes; the diagonals; how flush faces come; with where each of these comes from. The same verdicts
 * as the rules of the stage <em>fit</em> when judged by the drawing's own.
 */
public final class FitSheet {
    /** So many jobs are made at random to see how a size comes out, always the same ones. */
    public static final int TRIAL_JOBS = 10_000;

    public static final long TRIAL_SEED = 1;

    /** What a line is about. */
    public enum Kind {
        JOINT,
        SIZE,
        DIAGONAL,
        FLUSH
    }

    /**
     * One thing judged.
     *
     * @param id of the joint; of the axis of a size; of the two parts of a diagonal, or of a step and the direction
     * @param parts the parts it is about
     * @param mm the figure that decided; null while there is none
     * @param limit what is allowed, millimetres
     * @param figure the figure in words
     * @param says one sentence
     * @param why where it comes from, the largest share first
     * @param seat where it shows; null where no one place does
     */
    public record Line(
            Kind kind,
            String id,
            Verdict verdict,
            List<String> parts,
            String title,
            @Nullable Double mm,
            double limit,
            String figure,
            String says,
            List<FitCause> why,
            @Nullable Seat seat) {
        public Line {
            parts = List.copyOf(parts);
            why = List.copyOf(why);
        }

        /** Whether a joint is out by more than its own lines and boards account for. */
        public boolean isHeldByOthers() {
            double own = why.stream().mapToDouble(FitCause::mm).sum();
            return kind == Kind.JOINT && mm != null && mm > 1.1 * own + 0.3;
        }
    }

    private final Bench bench;
    private final DryFit fit;
    private final FitLimits limits;
    private final Drawing drawing;
    private final List<Line> lines = new ArrayList<>();

    private FitSheet(Bench bench, DryFit fit, FitLimits limits) {
        this.bench = bench;
        this.fit = fit;
        this.limits = limits;
        this.drawing = fit.drawing();
        fit.joints().forEach(j -> lines.add(joint(j)));
        if (fit.isWhole()) fit.sizes().forEach(s -> lines.add(size(s)));
        fit.rectangles().forEach(r -> lines.add(diagonal(r)));
        fit.steps().forEach(s -> lines.add(step(s)));
    }

    public static FitSheet of(Bench bench, DryFit fit, FitLimits limits) {
        return new FitSheet(bench, fit, limits);
    }

    public FitLimits limits() {
        return limits;
    }

    public DryFit fit() {
        return fit;
    }

    public List<Line> lines() {
        return List.copyOf(lines);
    }

    public List<Line> lines(Kind kind) {
        return lines.stream().filter(l -> l.kind() == kind).toList();
    }

    /** Whether the whole job is set out, and nothing is out by more than is allowed. */
    public boolean goesTogether() {
        return fit.isWhole() && lines.stream().noneMatch(l -> l.verdict() == Verdict.WRONG);
    }

    /** What is missing before the whole job can be put together, a sentence each; none when nothing is. */
    public List<String> missing() {
        return new FitMissing(bench, fit).all();
    }

    /** The one sentence that sums it up. */
    public String sum() {
        if (!fit.isWhole()) {
            long ready = fit.joints().stream()
                    .filter(j -> j.state() == JointFit.State.TOGETHER)
                    .count();
            return ready == 0
                    ? "Nothing can be put together yet."
                    : ready + " of " + fit.joints().size() + " joints can be put together.";
        }
        long wrong = lines.stream().filter(l -> l.verdict() == Verdict.WRONG).count();
        long close = lines.stream().filter(l -> l.verdict() == Verdict.CLOSE).count();
        if (wrong > 0) return "It doesn't go together as drawn: " + count(wrong, "figure is", "figures are") + " out.";
        if (close > 0) return "It goes together; " + count(close, "figure is", "figures are") + " near the limit.";
        return "It goes together as drawn.";
    }

    private static String count(long n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }

    /** The sizes that an overall size is made up of; empty where no parts that bear on each other lead through the job. */
    public Optional<ToleranceStack> stack(JobAxis axis) {
        return ToleranceStack.of(drawing, axis, limits.sizes());
    }

    private String name(String part) {
        return drawing.part(part).map(Part::name).orElse(part);
    }

    // Joints

    private Line joint(JointFit j) {
        Joint joint = j.joint();
        Seat seat = j.seats().isEmpty() ? null : widest(j);
        Found found = found(j);
        List<FitCause> why = found.verdict() == Verdict.OPEN ? List.of() : new FitCauses(bench, fit).of(joint);
        return new Line(
                Kind.JOINT,
                joint.id(),
                found.verdict(),
                List.of(joint.in(), joint.takes()),
                name(joint.takes()) + " – " + name(joint.in()),
                found.mm(),
                found.limit(),
                found.figure(),
                found.says(),
                why,
                seat);
    }

    private record Found(Verdict verdict, @Nullable Double mm, double limit, String figure, String says) {}

    private Found found(JointFit j) {
        String noun = "The " + j.joint().noun();
        return switch (j.state()) {
            case NO_BOARD -> new Found(Verdict.OPEN, null, limits.gap(), "no board yet", "A part of it has no board.");
            case NOT_SET_OUT ->
                new Found(
                        Verdict.OPEN, null, limits.gap(), "not set out", "Some of its lines have still to be struck.");
            case WRONG_SIDE ->
                new Found(
                        Verdict.WRONG,
                        null,
                        limits.gap(),
                        "on the wrong side",
                        noun + " would be cut on the wrong side. " + sides(j));
            case TOGETHER -> together(j, noun);
        };
    }

    private Found together(JointFit j, String noun) {
        double place = limits.sizes().plusMinus(FitCauses.place(fit, j.joint()));
        double off = Math.abs(j.off().orElse(0));
        double clash = j.clash();
        double gap = j.gap().map(JointFit.Gap::mm).orElse(0.0);
        String where = " " + sides(j);
        if (off > place) {
            String says = noun + " stands " + mm(off) + " from where the drawing has it; " + mm(place) + " is allowed.";
            return new Found(Verdict.WRONG, off, place, mm(off) + " off its place", says + where);
        }
        double limit = limits.gap();
        if (isTight(j)) {
            boolean pegs = widest(j).kind() == Seat.Kind.PEGGED;
            String says = pegs ? missing(noun, clash) : tight(noun, j);
            String figure = pegs ? "holes " + mm(clash) + " apart" : mm(clash) + howTight(j);
            return new Found(limits.gap(clash), clash, limit, figure, says + where);
        }
        String says = gap < 0.05
                ? noun + " meets."
                : noun + (gap > limit / 2 ? " gapes by " : " closes to ") + mm(gap) + "; " + mm(limit / 2)
                        + " is good, " + mm(limit) + " allowed.";
        Verdict worse = clash > limit ? Verdict.WRONG : limits.gap(gap);
        return new Found(worse, gap, limit, gap < 0.05 ? "meets" : mm(gap) + " gap", says + where);
    }

    private String missing(String noun, double clash) {
        return noun + meets(clash) + "its holes miss each other by " + mm(clash) + ".";
    }

    private String tight(String noun, JointFit j) {
        double clash = j.clash();
        double good = limits.gap() / 2;
        if (clash <= good) return noun + meets(clash) + "it is " + mm(clash) + " tight, which gives way.";
        if (j.ownClash() > good) return noun + meets(clash) + "it is " + mm(clash) + " too tight.";
        return noun + meets(clash) + "it has room enough by itself, but other joints hold its parts " + mm(clash)
                + " into each other.";
    }

    private String howTight(JointFit j) {
        double good = limits.gap() / 2;
        if (j.clash() <= good) return " tight";
        return j.ownClash() > good ? " too tight" : " forced";
    }

    private String meets(double clash) {
        if (clash > limits.gap()) return " won't go together: ";
        return clash > limits.gap() / 2 ? " goes together only with force: " : " goes together: ";
    }

    /** On which surface of each board the joint is, and where that looks; empty where it shows on both faces alike. */
    private String sides(JointFit j) {
        return Stream.of(j.joint().in(), j.joint().takes())
                .flatMap(p -> new FitCauses(bench, fit).side(p, j.joint().id()).stream())
                .reduce((a, b) -> a + " " + b)
                .orElse("");
    }

    /** Whether wood would have to go farther into wood than it gapes anywhere; when it is the same, that is the worse. */
    private static boolean isTight(JointFit j) {
        double gap = j.gap().map(JointFit.Gap::mm).orElse(0.0);
        return j.clash() >= 0.05 && j.clash() >= gap - 0.01;
    }

    /** Where it gapes most, or where wood would have to go farthest into wood. */
    private static Seat widest(JointFit j) {
        Optional<SeatFit> tightest = j.seats().stream().min((a, b) -> Double.compare(a.tight(), b.tight()));
        if (isTight(j) && tightest.isPresent()) return tightest.get().seat();
        return j.gap().map(g -> g.at().seat()).orElse(j.seats().get(0).seat());
    }

    // The job as a whole

    private Line size(DryFit.SizeFit size) {
        double off = size.off().orElse(0);
        double made = size.made().orElse(size.drawn());
        double limit = limits.sizes().plusMinus(size.drawn());
        String says = "The job comes out " + mm(made) + " " + size.axis().id() + ", drawn " + mm(size.drawn()) + "; ±"
                + mm(limit) + " is allowed.";
        List<String> parts = stack(size.axis())
                .map(s -> s.links().stream()
                        .map(ToleranceStack.Link::part)
                        .distinct()
                        .toList())
                .orElse(List.of());
        return new Line(
                Kind.SIZE,
                size.axis().id(),
                limits.size(size.drawn(), off),
                parts,
                capital(size.axis().id()),
                off,
                limit,
                signed(off) + " mm",
                says,
                new FitCauses(bench, fit).of(parts, size.axis()),
                null);
    }

    private Line diagonal(Rectangle r) {
        double limit = limits.sizes().plusMinus(Math.max(r.one(), r.other()));
        String says = "The diagonals between the " + name(r.first()) + " and the " + name(r.second()) + " measure "
                + mm(r.one()) + " and " + mm(r.other()) + "; they may differ by " + mm(limit) + ".";
        return new Line(
                Kind.DIAGONAL,
                r.first() + " " + r.second(),
                r.difference() <= limit ? Verdict.SOUND : Verdict.WRONG,
                List.of(r.first(), r.second()),
                name(r.first()) + " – " + name(r.second()),
                r.difference(),
                limit,
                r.difference() < 0.05 ? "agree" : mm(r.difference()) + " apart",
                says,
                List.of(),
                null);
    }

    private Line step(DryFit.Step step) {
        double off = Math.abs(step.step());
        Verdict verdict = limits.gap(off);
        String out = step.step() > 0 ? step.other() : step.one();
        String says = off < 0.05
                ? "Their faces come flush."
                : "The " + name(out) + " stands out by " + mm(off) + "; " + mm(limits.gap()) + " is allowed.";
        return new Line(
                Kind.FLUSH,
                step.joint().id() + " " + step.looks().id(),
                verdict,
                List.of(step.one(), step.other()),
                name(step.other()) + " – " + name(step.one()) + ", " + side(step.looks()),
                off,
                limits.gap(),
                off < 0.05 ? "flush" : mm(off) + " step",
                says,
                verdict == Verdict.SOUND ? List.of() : new FitCauses(bench, fit).of(step.joint()),
                seat(step));
    }

    private static String side(Direction looks) {
        return looks == Direction.TOP || looks == Direction.BOTTOM ? looks.id() : looks.id() + " side";
    }

    /** The seat of the joint that the step runs along: one that is not square to the step's own axis. */
    private @Nullable Seat seat(DryFit.Step step) {
        return fit.joint(step.joint().id()).seats().stream()
                .map(SeatFit::seat)
                .filter(s -> s.axis() != step.looks().axis())
                .findFirst()
                .orElse(null);
    }

    static String mm(double mm) {
        return Words.figure(mm) + " mm";
    }

    private static String signed(double mm) {
        String figure = Words.figure(Math.abs(mm));
        return figure.equals("0") ? "±0" : (mm > 0 ? "+" : "−") + figure;
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }
}
