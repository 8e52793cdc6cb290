package org.marktwice.quiz;

/**
 * How a learner stands with one idea. Immutable; days are the learner's own, counted so that a clock set back loses none.
 *
 * @param step how many right answers in their time it has had since the last wrong one, up to {@link Spacing#steps()}
 * @param dueOn the day on which it is due again
 * @param asked how often it was asked
 * @param right how often it was answered rightly
 * @param last how it was answered last
 */
public record Standing(int step, long dueOn, int asked, int right, Last last) {
    /** How an idea was answered last. */
    public enum Last {
        NEVER,
        WRONG,
        UNSURE,
        RIGHT
    }

    /** In a word. */
    public enum Word {
        NOT_MET("not met yet"),
        SHAKY("shaky"),
        ON_THE_WAY("on the way"),
        FIRM("firm");

        private final String spoken;

        Word(String spoken) {
            this.spoken = spoken;
        }

        public String spoken() {
            return spoken;
        }
    }

    static final Standing NEW = new Standing(0, 0, 0, 0, Last.NEVER);

    /** Whether it is due on this day; what was never asked is due at once. */
    boolean isDue(long day) {
        return last == Last.NEVER || day >= dueOn;
    }

    Standing after(long day, boolean isRight, boolean unsure, Spacing spacing) {
        if (!isRight) return new Standing(0, day + spacing.gap(0), asked + 1, right, Last.WRONG);
        Last now = unsure ? Last.UNSURE : Last.RIGHT;
        // answered once more before its time: that proves nothing, and puts nothing off
        if (!isDue(day)) return new Standing(step, dueOn, asked + 1, right + 1, last == Last.WRONG ? last : now);
        int next = unsure ? step : Math.min(step + 1, spacing.steps());
        return new Standing(next, day + spacing.gap(next), asked + 1, right + 1, now);
    }

    Word word(Spacing spacing) {
        return switch (last) {
            case NEVER -> Word.NOT_MET;
            case WRONG, UNSURE -> Word.SHAKY;
            case RIGHT -> step >= spacing.steps() ? Word.FIRM : Word.ON_THE_WAY;
        };
    }

    /** The level that the idea is asked at next. */
    int level() {
        return Math.max(1, Math.min(Quiz.HARDEST, step));
    }
}
