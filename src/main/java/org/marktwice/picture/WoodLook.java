package org.marktwice.picture;

import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Species;

/**
 * What a species looks like when planed: colours are packed 0xRRGGBB. From the look of common boards, our own choice.
 *
 * @param sapEarly earlywood outside the heartwood
 * @param sapLate latewood outside the heartwood
 * @param heartFrom the heartwood's radius about the pith, millimetres, before it varies from tree to tree
 * @param rays how strongly the short dark flecks of the rays show, 0 to 1
 * @param pores how strongly the vessels show as dashes, 0 to 1
 * @param knot a live knot's wood; {@code knotRim} its outside
 */
record WoodLook(
        Rings rings,
        int sapEarly,
        int sapLate,
        int heartEarly,
        int heartLate,
        double heartFrom,
        double rays,
        double pores,
        int knot,
        int knotRim,
        int deadKnot,
        int bark) {

    /** How a year's growth runs from its first wood to its last. */
    enum Rings {
        /** Light wood that darkens slowly, then a sharp edge. */
        SOFTWOOD,
        /** A row of large vessels first, then dense wood. */
        RING_POROUS,
        /** Even wood with a thin darker line at the year's end. */
        DIFFUSE
    }

    private static final WoodLook PINE = softwood(0xECCF9F, 0xB67D44, 0xE5BD88, 0xAA6F3C, 74);
    private static final WoodLook WHITE_PINE = softwood(0xF0D9AE, 0xCFA26A, 0xE8C797, 0xC08F59, 80);
    private static final WoodLook SPRUCE = softwood(0xF1DDB4, 0xCDA167, 0xEFD8AD, 0xC99A60, 90);
    private static final WoodLook DOUGLAS_FIR = softwood(0xEBCBA0, 0xAE6D3F, 0xE0AC7C, 0x9A5632, 130);
    private static final WoodLook MAPLE =
            hardwood(Rings.DIFFUSE, 0xEFDDBD, 0xCFAE80, 0xE4CBA2, 0xC09A6C, 70, 0.35, 0.15);
    private static final WoodLook BEECH = hardwood(Rings.DIFFUSE, 0xE6C6A0, 0xC99B6C, 0xDDB68D, 0xBD8D60, 95, 1.0, 0.2);
    private static final WoodLook ASH =
            hardwood(Rings.RING_POROUS, 0xEBDABA, 0xB08A5A, 0xDDC49B, 0xA17A4D, 85, 0.15, 0.9);
    private static final WoodLook CHERRY =
            hardwood(Rings.DIFFUSE, 0xE6CAA4, 0xC59A6C, 0xD0A078, 0xA97450, 150, 0.45, 0.25);
    private static final WoodLook POPLAR =
            hardwood(Rings.DIFFUSE, 0xECE4C6, 0xD0C199, 0xCFC79C, 0xA8A377, 70, 0.15, 0.2);
    private static final WoodLook WALNUT =
            hardwood(Rings.DIFFUSE, 0xCDB08A, 0x9C7A55, 0x86603F, 0x573A26, 160, 0.2, 1.0);

    private static WoodLook softwood(int sapEarly, int sapLate, int heartEarly, int heartLate, double heartFrom) {
        return new WoodLook(
                Rings.SOFTWOOD,
                sapEarly,
                sapLate,
                heartEarly,
                heartLate,
                heartFrom,
                0,
                0,
                0xB4703C,
                0x6E4222,
                0x6B4327,
                0x2E1D12);
    }

    private static WoodLook hardwood(
            Rings rings,
            int sapEarly,
            int sapLate,
            int heartEarly,
            int heartLate,
            double heartFrom,
            double rays,
            double pores) {
        return new WoodLook(
                rings,
                sapEarly,
                sapLate,
                heartEarly,
                heartLate,
                heartFrom,
                rays,
                pores,
                mixed(heartLate, 0x7A4A2C, 0.55),
                mixed(heartLate, 0x3A2416, 0.70),
                mixed(heartLate, 0x4A2F1E, 0.75),
                0x2A1B12);
    }

    /** The look of a species; pine for one that is not known here. */
    static WoodLook of(@Nullable Species species) {
        String id = species == null ? "" : species.id();
        if (id.endsWith("white-pine")) return WHITE_PINE;
        if (id.endsWith("spruce")) return SPRUCE;
        if (id.endsWith("fir")) return DOUGLAS_FIR;
        if (id.endsWith("maple")) return MAPLE;
        if (id.endsWith("beech")) return BEECH;
        if (id.endsWith("ash")) return ASH;
        if (id.endsWith("cherry")) return CHERRY;
        if (id.endsWith("poplar")) return POPLAR;
        if (id.endsWith("walnut")) return WALNUT;
        return PINE;
    }

    /** Two packed colours mixed: 0 gives the first, 1 the second. */
    static int mixed(int a, int b, double share) {
        int out = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            int from = (a >> shift) & 255;
            int to = (b >> shift) & 255;
            out |= (int) Math.round(from + (to - from) * share) << shift;
        }
        return out;
    }
}
