package org.marktwice.rulebook;

/**
 * How a clearance compares with the margin it should keep: kept is sound, from half of it close with that share of the
 * credit, less is wrong.
 */
record Keeps(Verdict verdict, double credit) {
    /** What a clearance is computed to, millimetres: bodies that are nearer meet. */
    static final double TOLERANCE = 0.05;

    static Keeps of(double clearance, double margin) {
        if (clearance >= margin) return new Keeps(Verdict.SOUND, 1);
        if (clearance >= margin / 2) return new Keeps(Verdict.CLOSE, clearance / margin);
        return new Keeps(Verdict.WRONG, 0);
    }
}
