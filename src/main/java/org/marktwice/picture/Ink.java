package org.marktwice.picture;

import org.marktwice.rulebook.Verdict;

/** What something drawn means; the {@link Palette} says in which colour. */
public enum Ink {
    /** The ground of a window or sheet. */
    PAPER,
    /** The ground of a panel on the paper. */
    PANEL,
    /** A panel's border, and rules between things. */
    BORDER,
    /** Text and drawn outlines. */
    INK,
    /** Notes, captions, dimension lines. */
    QUIET,
    /** What can be done, what is chosen, and the cut's outline. */
    ACTION,
    /** Text on a ground of {@link #ACTION}. */
    ON_ACTION,
    SOUND,
    CLOSE,
    WRONG,
    /** Pencil on wood: the same in every palette, for the wood is. */
    PENCIL,
    /** A knife line in wood. */
    KNIFE,
    /** The ground of a part in a drawn job. */
    PART,
    /** The ground of the part that is picked out. */
    PICKED,
    /** The shadow under a board; drawn thin. */
    SHADOW,
    /** The steel of a rule. */
    STEEL,
    /** Graduations and figures on steel. */
    GRADUATION,
    /** The wood of a tool: winding sticks, the stock of a square. */
    TOOL_WOOD,
    /** Light that shows under a tool. */
    LIGHT;

    /** The ink a verdict is shown in, always together with its sign and word. */
    public static Ink of(Verdict verdict) {
        return switch (verdict) {
            case SOUND -> SOUND;
            case CLOSE -> CLOSE;
            case WRONG -> WRONG;
            case OPEN -> QUIET;
        };
    }
}
