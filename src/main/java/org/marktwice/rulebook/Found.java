package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.Option;
import org.marktwice.drawing.Part;
import org.marktwice.rulebook.Finding.Evidence;
import org.marktwice.rulebook.Finding.Measured;
import org.marktwice.rulebook.Finding.Phrase;
import org.marktwice.rulebook.Finding.Subject;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * A finding in the making. Keys of phrases are written out in the rule's own source ({@code says.…}, {@code better.…}), so
 * that a test can hold them against the rule's texts.
 */
final class Found {
    private final Rule rule;
    private final Subject subject;
    private List<Surface> surfaces = List.of();
    private List<SurfacePoint> points = List.of();
    private List<String> knots = List.of();
    private @Nullable Measured measured;
    private @Nullable Integer step;
    private @Nullable Supplier<Phrase> instead;

    private Found(Rule rule, Subject subject) {
        this.rule = rule;
        this.subject = subject;
    }

    static Found by(Rule rule, Subject subject) {
        return new Found(rule, subject);
    }

    static Found by(Rule rule, Workpiece workpiece) {
        return by(rule, workpiece.subject());
    }

    /** The finding about a part that no board is for yet. */
    static Finding missing(Rule rule, Part part, String says) {
        return by(rule, Subject.part(part.id())).open(says, "part", part.id());
    }

    Found at(@Nullable Integer decidingStep) {
        step = decidingStep;
        return this;
    }

    /** @param unit mm, degrees, %, ratio or count */
    Found measured(double value, String unit, double limit) {
        measured = new Measured(value, unit, limit);
        return this;
    }

    Found showing(Surface... more) {
        surfaces = and(surfaces, List.of(more));
        return this;
    }

    Found showing(SurfacePoint... more) {
        points = and(points, List.of(more));
        return this;
    }

    Found showing(Evidence evidence) {
        surfaces = and(surfaces, evidence.surfaces());
        points = and(points, evidence.points());
        knots = and(knots, evidence.knots());
        return this;
    }

    Found showingKnots(List<String> more) {
        knots = and(knots, more);
        return this;
    }

    private static <T> List<T> and(List<T> some, List<T> more) {
        if (more.isEmpty()) return some;
        if (some.isEmpty()) return more;
        List<T> all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }

    /** @param values names and values in turn */
    Found instead(String key, Object... values) {
        instead = () -> phrase(key, values);
        return this;
    }

    /** @param better asked for only where the finding isn't sound */
    Found instead(Supplier<Phrase> better) {
        instead = better;
        return this;
    }

    /**
     * A turn that would have been better, and how far it would have kept the knots from the joints.
     *
     * @param best how the board would lie; empty where it doesn't fit
     * @param plain the key where no knot comes near a joint, @param clear where it is clear, @param near where it isn't
     */
    Found insteadTurn(Optional<Option> best, String plain, String clear, String near, Object... values) {
        if (best.isEmpty() || best.get().nearest().isEmpty()) return instead(plain, values);
        Option to = best.get();
        return instead(() -> {
            Object[] all = Stream.of(Remedy.valuesToKnot(to), values)
                    .flatMap(Stream::of)
                    .toArray();
            return phrase(to.clear() ? clear : near, all);
        });
    }

    Finding sound(String says, Object... values) {
        instead = null;
        return finding(Verdict.SOUND, 1, says, values);
    }

    Finding close(double credit, String says, Object... values) {
        return finding(Verdict.CLOSE, credit, says, values);
    }

    Finding wrong(String says, Object... values) {
        return finding(Verdict.WRONG, 0, says, values);
    }

    Finding open(String says, Object... values) {
        return finding(Verdict.OPEN, 0, says, values);
    }

    private Finding finding(Verdict verdict, double credit, String says, Object... values) {
        Evidence evidence = surfaces.isEmpty() && points.isEmpty() && knots.isEmpty()
                ? Evidence.NONE
                : new Evidence(distinct(surfaces), points, knots);
        Phrase better = instead == null ? null : instead.get();
        return new Finding(rule.id(), subject, verdict, credit, measured, evidence, step, phrase(says, values), better);
    }

    private static List<Surface> distinct(List<Surface> surfaces) {
        return surfaces.size() < 2 ? surfaces : List.copyOf(new LinkedHashSet<>(surfaces));
    }

    static Phrase phrase(String key, Object... values) {
        return new Phrase(key, Pairs.of(values));
    }
}
