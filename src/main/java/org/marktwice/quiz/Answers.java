package org.marktwice.quiz;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.marktwice.timber.Chance;

/**
 * How a question is answered, and with what.
 *
 * @param offers the right answer and wrong ones, each the outcome of a known slip; all different
 * @param right which of them is right
 * @param tolerance of a number, either way, in its unit; 0 where the answer is none
 * @param unit of a number; empty where the answer is none
 */
public record Answers(How how, List<Offer> offers, int right, double tolerance, String unit) {
    /** Slack that a number typed in decimals may need. */
    private static final double SLACK = 1e-9;

    /** How an answer is given. */
    public enum How {
        /** By pointing at a place on the picture. */
        POINT,
        /** By choosing among what is offered. */
        CHOOSE,
        /** By a number. */
        FIGURE
    }

    public Answers {
        offers = List.copyOf(offers);
    }

    /** The right answer is given first, and all are shuffled. */
    static Answers choose(Chance chance, List<Offer> rightFirst) {
        return shuffled(How.CHOOSE, chance, rightFirst);
    }

    /** In this order. */
    static Answers choose(List<Offer> offers, int right) {
        return new Answers(How.CHOOSE, offers, right, 0, "");
    }

    /** The right answer is given first; they come in the order of their places. */
    static Answers point(List<Offer> rightFirst) {
        List<Offer> sorted = new ArrayList<>(rightFirst);
        sorted.sort((a, b) -> a.text().compareTo(b.text()));
        return new Answers(How.POINT, sorted, sorted.indexOf(rightFirst.get(0)), 0, "");
    }

    /**
     * A number. Slips that lead to a figure too near to the right one, or to another's, to be told apart are left out.
     *
     * @param slips what known slips come to, the most telling first
     */
    static Answers figure(Chance chance, Offer right, double tolerance, String unit, List<Offer> slips) {
        List<Offer> all = new ArrayList<>();
        all.add(right);
        for (Offer slip : slips) {
            if (slip.figure() >= 0 && all.stream().allMatch(o -> isApart(o, slip, tolerance))) all.add(slip);
        }
        Answers shuffled = shuffled(How.FIGURE, chance, all);
        return new Answers(How.FIGURE, shuffled.offers, shuffled.right, tolerance, unit);
    }

    private static boolean isApart(Offer one, Offer other, double tolerance) {
        return Math.abs(one.figure() - other.figure()) > 2 * tolerance + SLACK;
    }

    private static Answers shuffled(How how, Chance chance, List<Offer> rightFirst) {
        List<Offer> all = new ArrayList<>(rightFirst);
        for (int i = all.size() - 1; i > 0; i--) Collections.swap(all, i, chance.whole(0, i));
        return new Answers(how, all, all.indexOf(rightFirst.get(0)), 0, "");
    }

    public Offer rightOne() {
        return offers.get(right);
    }

    /** What was said, understood. @param offer the answer it is; null for a number that none of the known slips leads to */
    public record Heard(String said, boolean right, Optional<Offer> offer) {}

    /** The letter that an answer goes by on paper: a, b, c … */
    public static String letter(int offer) {
        return String.valueOf((char) ('a' + offer));
    }

    /** Takes an answer as it is said or written: a letter, the answer's own words, or a number. Empty where it is none of them. */
    public Optional<Heard> hear(String said) {
        String plain = said.strip().toLowerCase(Locale.ROOT);
        if (how == How.FIGURE) return number(plain);
        for (int i = 0; i < offers.size(); i++) {
            boolean named = offers.get(i).text().toLowerCase(Locale.ROOT).equals(plain);
            if (named || letter(i).equals(plain)) return Optional.of(heard(i));
        }
        return Optional.empty();
    }

    public Heard heard(int offer) {
        return new Heard(offers.get(offer).text(), offer == right, Optional.of(offers.get(offer)));
    }

    private Optional<Heard> number(String plain) {
        String digits = plain.replace(unit, "").replace(',', '.').strip();
        if (!digits.matches("\\d{1,5}(\\.\\d{0,3})?")) return Optional.empty();
        double value = Double.parseDouble(digits);
        Optional<Offer> offer = offers.stream()
                .filter(o -> Math.abs(o.figure() - value) <= tolerance + SLACK)
                .findFirst();
        boolean isRight = offer.isPresent() && offer.get().equals(rightOne());
        return Optional.of(new Heard(Say.number(value) + " " + unit, isRight, offer));
    }
}
