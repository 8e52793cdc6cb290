package org.marktwice.picture;

import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Pith;

/** How one knot colours the wood and bends the rings around it. Its outline is exactly the knot's own cone and cylinder. */
final class KnotFigure {
    /** Beyond so many fading lengths the bend can't be seen. */
    static final double FADED = 3.6;
    /** The bend fades by e over this share of the greatest radius. */
    private static final double FADES = 0.9;
    /** The bend at the flank, as a share of the radius there. */
    private static final double BENDS = 0.75;
    /** How much more slowly it fades along the grain. */
    private static final double LENGTHWISE = 0.4;
    /** What is left of the bend where the branch is dead. */
    private static final double DEAD_SHARE = 0.45;
    /** Distance over which live turns into dead, millimetres; the bend turns over a longer one. */
    private static final double DIES_OVER = 2.0;

    private static final int STEPS = 64;
    private static final float[] EXP = new float[(int) (STEPS * (FADED + 1)) + 2];

    static {
        for (int i = 0; i < EXP.length; i++) EXP[i] = (float) StrictMath.exp(-i / (double) STEPS);
    }

    final Knot knot;
    final double px;
    final double py;
    final double pz;
    final double dx;
    final double dy;
    final double dz;
    final double slope;
    private final Vector3d across;
    private final Vector3d up;
    private final Check[] checks = new Check[2];
    private final ValueNoise grain;
    private final WoodLook look;
    private final double ringsInside;

    /** A drying check, in the plane square to the branch. @param reaches how far out, as a share of the radius */
    private record Check(double cos, double sin, double reaches) {}

    KnotFigure(Knot knot, Pith pith, WoodLook look, long seed, int index) {
        this.knot = knot;
        this.look = look;
        this.px = knot.x();
        this.py = pith.y();
        this.pz = pith.z();
        // StrictMath, so that a board looks the same on every machine
        double a = StrictMath.toRadians(knot.azimuth());
        double l = StrictMath.toRadians(knot.lean());
        this.dx = StrictMath.cos(l);
        this.dy = StrictMath.sin(l) * StrictMath.cos(a);
        this.dz = StrictMath.sin(l) * StrictMath.sin(a);
        this.slope = StrictMath.tan(StrictMath.toRadians(knot.halfAngle()));
        Vector3dc axis = new Vector3d(dx, dy, dz);
        this.across = (Math.abs(dx) < 0.9 ? new Vector3d(1, 0, 0) : new Vector3d(0, 1, 0)).cross(axis);
        across.div(Math.sqrt(across.dot(across)));
        this.up = new Vector3d(axis).cross(across);
        for (int i = 0; i < checks.length; i++) {
            double angle = 2 * StrictMath.PI * ValueNoise.unit(seed, 41 + index, i);
            double reaches = 0.25 + 0.6 * ValueNoise.unit(seed, 41 + index, 10 + i);
            checks[i] = new Check(StrictMath.cos(angle), StrictMath.sin(angle), reaches);
        }
        this.grain = new ValueNoise(seed, 60 + index, 2.2, 2.2, 2.2);
        this.ringsInside = 2.5 + 0.55 * knot.maxRadius();
    }

    /**
     * The distance from the branch's axis within which it colours or bends anything on a row that passes the axis at this
     * least distance, millimetres; 0 for nothing. The bend reaches farther along the grain than across it.
     */
    double reach(double passes) {
        double far = FADED * FADES * knot.maxRadius();
        double radius = knot.maxRadius();
        if (passes - radius >= far) return 0;
        double low = Math.max(passes, radius);
        double high = radius + far / (1 - LENGTHWISE);
        for (int i = 0; i < 6; i++) {
            double rho = (low + high) / 2;
            double faded = (rho - radius) * (1 - LENGTHWISE * (1 - passes * passes / (rho * rho)));
            if (faded < far) low = rho;
            else high = rho;
        }
        return high;
    }

    double radius(double s) {
        return s <= 0 ? 0 : Math.min(s * slope, knot.maxRadius());
    }

    /** 0 where the branch is live, 1 where it is dead, as a share in between where it dies. */
    double dead(double s, double over) {
        double t = (s - knot.deadFrom()) / over + 0.5;
        if (t <= 0) return 0;
        return t >= 1 ? 1 : t * t * (3 - 2 * t);
    }

    /**
     * What is to be taken from the distance from the pith, millimetres.
     *
     * @param outside the distance outside the flank, millimetres
     * @param lengthwise how much of the way out from the axis runs along the grain, 0 to 1; the rings need longer to
     *     close again along the grain than across it
     */
    double bend(double s, double outside, double lengthwise) {
        double fade = outside * (1 - LENGTHWISE * lengthwise) / (FADES * knot.maxRadius());
        if (fade >= FADED) return 0;
        double live = BENDS * (1 - (1 - DEAD_SHARE) * dead(s, 4 * DIES_OVER));
        return live * radius(s) * (exp(fade) - EXP_END * fade / FADED);
    }

    private static final double EXP_END = StrictMath.exp(-FADED);

    static float exp(double x) {
        double at = x * STEPS;
        int i = (int) at;
        if (i >= EXP.length - 1) return 0;
        return EXP[i] + (EXP[i + 1] - EXP[i]) * (float) (at - i);
    }

    /** How much darker the wood is just outside the flank: 1 is not at all. */
    float halo(double s, double outside) {
        double strength = 0.17 + 0.08 * dead(s, DIES_OVER);
        return (float) (1 - strength * exp(outside * 0.9));
    }

    /**
     * The colour inside, packed 0xRRGGBB.
     *
     * @param rho the distance from the branch's axis, {@code s} along it; x, y, z the point, all millimetres
     */
    int colour(double s, double rho, double x, double y, double z) {
        double radius = Math.max(radius(s), 1e-6);
        double q = rho / radius;
        float wave = grain.at(x, y, z);
        double dead = dead(s, DIES_OVER);
        int live = liveColour(q, rho, wave);
        int colour = dead <= 0 ? live : WoodLook.mixed(live, deadColour(q, rho, wave), dead);
        double check = check(rho, q, wave, x, y, z) * (0.3 + 0.7 * dead);
        return check <= 0 ? colour : WoodLook.mixed(colour, look.bark(), check);
    }

    private int liveColour(double q, double rho, float wave) {
        double ring = ringShare(q, wave);
        double rim = q * q * q * q;
        double dark = 0.10 + 0.30 * ring + 0.45 * rim + 0.10 * wave;
        int colour = WoodLook.mixed(look.knot(), look.knotRim(), clamp(dark));
        return rho < 0.8 ? WoodLook.mixed(look.knotRim(), colour, clamp(rho / 0.8)) : colour;
    }

    private int deadColour(double q, double rho, float wave) {
        double ring = ringShare(q, wave);
        int wood = WoodLook.mixed(look.deadKnot(), look.bark(), clamp(0.08 + 0.35 * ring + 0.12 * wave));
        double bark = clamp((q + 0.03 * wave - 0.84) / 0.05);
        int colour = WoodLook.mixed(wood, look.bark(), 0.9 * bark);
        return rho < 0.8 ? WoodLook.mixed(look.bark(), colour, clamp(rho / 0.8)) : colour;
    }

    /** The branch's own rings: dark at the end of each of its years. */
    private double ringShare(double q, float wave) {
        double at = Math.sqrt(q) * q * ringsInside + 0.28 * wave + 0.1;
        double t = at - Math.floor(at);
        return t < 0.85 ? t * t : t * t * (1 - t) / 0.15;
    }

    /** Fine drying checks that run out from the branch's own pith. */
    private double check(double rho, double q, float wave, double x, double y, double z) {
        if (q > 0.85 || knot.maxRadius() < 4) return 0;
        double a = (x - px) * across.x + (y - py) * across.y + (z - pz) * across.z;
        double b = (x - px) * up.x + (y - py) * up.y + (z - pz) * up.z;
        double deepest = 0;
        for (Check check : checks) {
            if (q > check.reaches() || a * check.cos() + b * check.sin() <= 0) continue;
            double off = Math.abs(a * check.sin() - b * check.cos() + 0.05 * rho * (wave + 0.3));
            double half = 0.20 * (1 - q / check.reaches()) + 0.02;
            deepest = Math.max(deepest, clamp(1.4 - off / half));
        }
        return 0.7 * deepest * clamp(rho);
    }

    private static double clamp(double t) {
        return t < 0 ? 0 : t > 1 ? 1 : t;
    }
}
