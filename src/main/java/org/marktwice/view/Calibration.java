package org.marktwice.view;

import java.util.List;
import org.marktwice.feedback.SheetModel;

/**
 * How a learner's estimates have fared, attempt by attempt. It is computed from the attempts in the learner's folder, like
 * the marks.
 *
 * @param points one for each attempt handed in with an estimate, oldest first
 */
public record Calibration(List<Point> points) {
    public static final Calibration NONE = new Calibration(List.of());
    /** As many of the latest attempts are told as how one does now. */
    private static final int LATELY = 3;

    /**
     * One attempt.
     *
     * @param started an ISO 8601 instant
     * @param off how far each estimate of a clearance was off, millimetres
     * @param foreseen parts or rules that lost marks and were expected to
     * @param missed parts or rules that lost marks unexpectedly
     * @param held parts or rules expected to lose marks that lost none
     */
    public record Point(String started, String exercise, List<Double> off, int foreseen, int missed, int held) {
        public Point {
            off = List.copyOf(off);
        }

        /** How far its clearances were off on average, millimetres; not a number where there was none. */
        double meanOff() {
            return off.stream().mapToDouble(d -> d).average().orElse(Double.NaN);
        }
    }

    public Calibration {
        points = List.copyOf(points);
    }

    public boolean isEmpty() {
        return points.isEmpty();
    }

    /** What there is to say of it, a sentence each. */
    List<String> words() {
        List<Point> measured = points.stream().filter(p -> !p.off().isEmpty()).toList();
        List<String> words = new java.util.ArrayList<>();
        if (!measured.isEmpty()) {
            List<Point> late = measured.subList(Math.max(0, measured.size() - LATELY), measured.size());
            List<Point> early = measured.subList(0, measured.size() - late.size());
            String before = early.isEmpty() ? "" : "; before that " + mean(early);
            words.add("Clearances: " + mean(late) + " off on average" + before + ".");
        }
        int foreseen = points.stream().mapToInt(Point::foreseen).sum();
        int lost = foreseen + points.stream().mapToInt(Point::missed).sum();
        int held = points.stream().mapToInt(Point::held).sum();
        if (lost > 0) words.add("Of " + lost + " that lost marks you foresaw " + foreseen + ".");
        if (held > 0) words.add(held + (held == 1 ? " that you doubted was sound." : " that you doubted were sound."));
        return List.copyOf(words);
    }

    private static String mean(List<Point> of) {
        double mean = of.stream()
                .flatMap(p -> p.off().stream())
                .mapToDouble(d -> d)
                .average()
                .orElse(0);
        return SheetModel.fixed(mean, 1) + " mm";
    }
}
