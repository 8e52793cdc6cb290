package org.marktwice.rulebook;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * What a rule found about one subject. Data only: the sentences are made from {@code says} and {@code instead} by
 * {@link Texts}.
 *
 * @param rule the rule's id
 * @param subject the board, part or joint that it is about
 * @param credit 0..1
 * @param measured the figure that the verdict rests on; null where there is none to state
 * @param evidence what shows it
 * @param step the action that decided it; null where none did
 * @param says what was found
 * @param instead what would have been better on this very board; null where nothing would
 */
public record Finding(
        String rule,
        Subject subject,
        Verdict verdict,
        double credit,
        @Nullable Measured measured,
        Evidence evidence,
        @Nullable Integer step,
        Phrase says,
        @Nullable Phrase instead) {

    /** The same, decided by another action. */
    Finding at(@Nullable Integer decidingStep) {
        return new Finding(rule, subject, verdict, credit, measured, evidence, decidingStep, says, instead);
    }

    /** Board, part and joint ids, each where it applies. */
    public record Subject(
            @Nullable String board,
            @Nullable String part,
            @Nullable String joint) {
        public static final Subject JOB = new Subject(null, null, null);

        public static Subject board(String board) {
            return new Subject(board, null, null);
        }

        public static Subject part(String part) {
            return new Subject(null, part, null);
        }

        public static Subject boardAs(String board, @Nullable String part) {
            return new Subject(board, part, null);
        }
    }

    /** @param unit mm, degrees, %, ratio or count */
    public record Measured(double value, String unit, double limit) {}

    /** Surfaces and points of the subject's board (or of {@code board}) that show the finding, the most telling first. */
    public record Evidence(List<Surface> surfaces, List<SurfacePoint> points, List<String> knots) {
        public static final Evidence NONE = new Evidence(List.of(), List.of(), List.of());

        public Evidence {
            surfaces = List.copyOf(surfaces);
            points = List.copyOf(points);
            knots = List.copyOf(knots);
        }

        public static Evidence on(Surface... surfaces) {
            return new Evidence(List.of(surfaces), List.of(), List.of());
        }
    }

    /**
     * A sentence to be: a key of the rule's texts and the values it is filled with. Numbers are millimetres, degrees or
     * counts as the text says, unrounded; ids of surfaces, directions, boards, parts and joints are ids.
     */
    public record Phrase(String key, Map<String, Object> values) {
        public Phrase {
            values = values instanceof Pairs ? values : Map.copyOf(values);
        }

        public static Phrase of(String key) {
            return new Phrase(key, Map.of());
        }
    }
}
