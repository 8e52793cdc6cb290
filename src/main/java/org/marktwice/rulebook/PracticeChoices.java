package org.marktwice.rulebook;

import java.util.Map;

/** Where authorities differ on a setting, and what else a workshop may choose; by the key of the setting in a scenario. */
final class PracticeChoices {
    private static final Map<String, String> ALL = Map.of(
            "faceSide",
            "Either the best surface is the face side, out where it is seen, as for single pieces and show work; or the"
                    + " truest, turned in, as in an assembly whose joints are set out from it. I. S. Griffith, Essentials of"
                    + " Woodworking (1908), has both.",
            "marks",
            "Older hands draw a comma and an X, or one stroke and two. Any pair will do that points at the arris it shares"
                    + " (W. Noyes, W. Fairham and I. S. Griffith each show another).",
            "heartSide",
            "Any way; away from the middle of the job, as in a box, whose corners then stay shut; or towards it. Common"
                    + " practice: other work has other rules.",
            "knotMargin",
            "More is asked at shoulders, tenons and dowels, less half-way between joints. Our own choice of figures, for the"
                    + " workshop to change.",
            "cupRatio",
            "Our own choice of figures: work that will be planed again bears more, a wide panel less.",
            "size",
            "Strict ± 0.5 mm, standard ± 1 mm, first attempt ± 2 mm. Schools commonly ask ± 1 mm.",
            "gap",
            "Schools commonly ask 1 mm; fine work half of that.",
            "proportions",
            "A third of the thickness for housings, bridles and tenons is common practice; W. Fairham and W. Noyes vary with"
                    + " the stuff, and a tenon is made to the nearest chisel there is.",
            "guidance",
            "After each step; after each part; at hand-in; or by the teacher, as in an examination. One is told early at"
                    + " first, and later as one improves.",
            "aids",
            "The cuts lie on the board; clearances are written on it; turns and the job are shown as they come out; undo."
                    + " They fade from level to level.");

    private PracticeChoices() {}

    /** Empty where there is nothing to choose between. */
    static String of(String key) {
        return ALL.getOrDefault(
                key, "Each rule has a worth of its own in the rule book; a workshop may weigh them otherwise.");
    }
}
