package org.marktwice.quiz;

/**
 * A question, computed. The same kind, level and seed give the same question on every machine.
 *
 * @param level 1 to {@link Quiz#HARDEST}
 * @param given what is to be seen in the picture, in words enough to answer without it
 * @param beside what has to be known beside the picture
 * @param asks the question itself
 * @param reason why the right answer is right, shown whichever way it went
 */
public record Question(
        Kind kind,
        int level,
        long seed,
        String given,
        String beside,
        String asks,
        Answers answers,
        Picture picture,
        Reason reason) {

    /** The text with figures kept on one line with their units and names, to be shown where lines are broken. */
    public static String unbroken(String text) {
        return text.replaceAll("(?<=\\d) (?=(mm|%)(?!\\w))|(?<=(face|edge|end|knot)) (?=\\d)", "\u00a0");
    }

    /** @param shows what shows it: the board turned to where it can be seen, with the places picked out */
    public record Reason(String text, Picture shows) {}

    /** What a maker makes; {@link Quiz} adds where it comes from. */
    record Draft(String given, String beside, String asks, Answers answers, Picture picture, Reason reason) {
        /** Where all that is given has to be said beside the picture as well. */
        Draft(String given, String asks, Answers answers, Picture picture, Reason reason) {
            this(given, given, asks, answers, picture, reason);
        }

        Question of(Kind kind, int level, long seed) {
            return new Question(kind, level, seed, given, beside, asks, answers, picture, reason);
        }
    }
}
