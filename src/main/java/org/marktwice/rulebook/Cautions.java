package org.marktwice.rulebook;

import java.util.List;

/** What is said before real work. Never a barrier to practice. */
public final class Cautions {
    public static final String LINE =
            "At the real bench: work held, both hands behind the edge. Your teacher's and workshop's rules come first.";

    public static final List<String> ALL = List.of(
            "Follow your teacher, and the workshop's own rules and risk assessment. They decide.",
            "Hold the work with a bench hook, a stop or a cramp.",
            "Keep both hands behind a cutting edge. Knife strokes are light, against the square, away from the hand that holds.",
            "Wear eye protection when sawing or chiselling. Hair, ties and cords back; no loose gloves.",
            "Wood dust harms the lungs, that of hardwood and sheet stuff more. Have it extracted, and never sweep it dry.",
            "This program practises decisions. Hands are trained at the bench.");

    private Cautions() {}
}
