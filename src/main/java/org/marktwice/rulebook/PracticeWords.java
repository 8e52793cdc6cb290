package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.marktwice.drawing.Joint;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Practice.FaceSide;
import org.marktwice.scenario.Practice.HeartSide;
import org.marktwice.scenario.Proportions;
import org.marktwice.scenario.Proportions.Proportion;
import org.marktwice.scenario.Scenario;

/** A workshop's settings in the words of the trade. Authorities differ, so whoever marks by them names them. */
public final class PracticeWords {
    /**
     * One setting.
     *
     * @param key its key in a scenario's {@code practice}; {@code marks} for the shapes of the face marks, which have none
     * @param name what is set, such as {@code Face side}
     * @param value how it is set here
     * @param usual how it is where nothing is set
     * @param meaning what that means at the bench, a sentence
     * @param choices where authorities differ, and what else may be chosen
     */
    public record Setting(String key, String name, String value, String usual, String meaning, String choices) {
        /** {@code Face side: the truest surface, turned in}; where that departs from what is usual, this too. */
        public String line() {
            String line = name + ": " + value;
            boolean listed = key.equals("worth") || key.equals("proportions");
            return departs() && !listed ? line + " (usual: " + usual + ")" : line;
        }

        /** Whether the workshop has it otherwise than is usual; how much help there is, is each exercise's own. */
        public boolean departs() {
            return !value.equals(usual) && !isHelp();
        }

        /** Whether it is about help, not about how work is judged. */
        public boolean isHelp() {
            return key.equals("guidance") || key.equals("aids");
        }
    }

    private PracticeWords() {}

    /** Every setting in force, in the order in which the work meets it; what can be left unsaid only where it departs. */
    public static List<Setting> all(Practice p) {
        return page(p).stream()
                .filter(s -> s.departs()
                        || !s.key().equals("proportions") && !s.key().equals("worth"))
                .toList();
    }

    /** Every setting there is, each with what is usual and what else may be chosen. */
    public static List<Setting> page(Practice p) {
        return List.of(
                setting(p, "faceSide", "Face side", PracticeWords::faceSide, faceSideMeans(p)),
                setting(
                        p,
                        "marks",
                        "Marks",
                        q -> "a loop with a tail for the face side, a V for the face edge",
                        "They are drawn near mid-length, close together, and point at the arris that the two surfaces share."),
                setting(p, "heartSide", "Heart side", PracticeWords::heart, heartMeans(p)),
                setting(
                        p,
                        "knotMargin",
                        "Knots",
                        PracticeWords::knots,
                        "The grain bends round a knot, further out than the knot itself shows."),
                setting(
                        p,
                        "cupRatio",
                        "Cup",
                        PracticeWords::cup,
                        "Between the two the board may be used, and is poor."),
                setting(p, "size", "Sizes", PracticeWords::sizes, "How far a size may be from the drawing's."),
                setting(
                        p,
                        "gap",
                        "Gaps",
                        PracticeWords::gaps,
                        "What a feeler gauge would find in a joint pushed home."),
                setting(
                        p,
                        "proportions",
                        "Joints",
                        q -> joints(q.proportions()),
                        "How large the parts of a joint are for their stuff. Whatever isn't named here is as usual."),
                setting(p, "guidance", "Told", q -> told(q.guidance()), meaning(p.guidance())),
                setting(
                        p,
                        "aids",
                        "Aids",
                        PracticeWords::aids,
                        "What the exercise grants beyond what one has at the bench."),
                setting(
                        p,
                        "worth",
                        "Marks changed",
                        q -> worth(q.worth()),
                        "Every other rule is worth what the rule book says."));
    }

    private static Setting setting(
            Practice p, String key, String name, Function<Practice, String> words, String meaning) {
        return new Setting(key, name, words.apply(p), words.apply(Practice.DEFAULT), meaning, PracticeChoices.of(key));
    }

    private static String faceSide(Practice p) {
        return p.faceSide() == FaceSide.TRUEST_IN ? "the truest surface, turned in" : "the best surface, turned out";
    }

    private static String faceSideMeans(Practice p) {
        return p.faceSide() == FaceSide.TRUEST_IN
                ? "In an assembly the joints are set out from the truest surface, and that is turned in."
                : "The cleanest surface is the face side, and is seen on the finished job.";
    }

    private static String heart(Practice p) {
        return switch (p.heartSide()) {
            case ANY -> "any way";
            case AWAY -> "away from the middle of the job";
            case TOWARDS -> "towards the middle of the job";
        };
    }

    private static String heartMeans(Practice p) {
        return p.heartSide() == HeartSide.AWAY
                ? "As the boards dry they hollow on the bark side, and the corners stay shut."
                : "A drying board hollows on its bark side.";
    }

    private static String knots(Practice p) {
        double diameters = p.knotMargin().diameters();
        String times = diameters == 1 ? "one knot diameter" : Words.figure(diameters) + " knot diameters";
        return Words.figure(p.knotMargin().mm()) + " mm or " + times + " from a joint, whichever is more";
    }

    private static String cup(Practice p) {
        return "good up to 1 in " + Words.figure(p.cupRatio().clear()) + " of the width, refused beyond 1 in "
                + Words.figure(p.cupRatio().poor());
    }

    private static String sizes(Practice p) {
        String preset =
                p.size() == 0.5 ? " (strict)" : p.size() == 1 ? " (standard)" : p.size() == 2 ? " (first attempt)" : "";
        return "± " + Words.figure(p.size()) + " mm" + preset;
    }

    private static String gaps(Practice p) {
        return "good up to " + hundredths(p.gap() / 2) + " mm, fair up to " + hundredths(p.gap()) + " mm";
    }

    /** Half of a tenth is worth telling. */
    private static String hundredths(double mm) {
        return String.format(Locale.ROOT, "%.2f", mm).replaceAll("\\.?0+$", "");
    }

    /** Only what departs from what is usual. */
    private static String joints(Proportions p) {
        Proportions usual = Proportions.USUAL;
        List<String> own = new ArrayList<>();
        range(own, "a housing's depth", p.housing(), usual.housing(), " of the thickness");
        range(own, "a stop", p.stop(), usual.stop(), " mm");
        range(own, "a rebate's depth", p.rebate(), usual.rebate(), " of the thickness");
        range(own, "a haunch", p.haunch(), usual.haunch(), " of the width");
        range(own, "a stub mortise", p.stub(), usual.stub(), " of the width");
        range(own, "a dowel", p.dowel(), usual.dowel(), " of the thickness");
        if (!p.chisels().equals(usual.chisels())) {
            own.add("chisels " + p.chisels().stream().map(Words::figure).collect(Collectors.joining(", ")) + " mm");
        }
        return own.isEmpty() ? "as is usual for each kind" : String.join("; ", own);
    }

    private static void range(
            List<String> own, String what, Proportions.Range range, Proportions.Range usual, String of) {
        if (range.equals(usual)) return;
        own.add(what + " " + share(range.least()) + " to " + share(range.most()) + of);
    }

    /** {@code 1/4}, where it is a plain fraction; else to a hundredth. */
    private static String share(double value) {
        if (value == Math.rint(value)) return Words.figure(value);
        for (int of = 2; of <= 8; of++) {
            double parts = value * of;
            if (Math.abs(parts - Math.rint(parts)) < 1e-6) return Math.round(parts) + "/" + of;
        }
        return hundredths(value);
    }

    /** Where the drawing's own joints are not as large as the workshop has them: a sentence each. */
    public static List<String> departures(Scenario scenario) {
        List<String> all = new ArrayList<>();
        for (Joint joint : scenario.drawing().joints()) {
            for (Proportion p : scenario.practice().proportions().of(scenario.drawing(), joint)) {
                if (p.isUsual()) continue;
                all.add(joint.id() + ": " + spoken(p.of()) + " is drawn " + Words.figure(p.drawn())
                        + " mm; the workshop has " + Words.figure(p.usual().least()) + " to "
                        + Words.figure(p.usual().most()) + " mm here");
            }
        }
        return all;
    }

    private static String spoken(Proportions.Of of) {
        return switch (of) {
            case HOUSING_DEPTH -> "the housing's depth";
            case STOP -> "the stop";
            case REBATE_DEPTH -> "the rebate's depth";
            case HALF -> "the half";
            case THIRD -> "the third";
            case TENON_THICKNESS -> "the tenon's thickness";
            case HAUNCH_LENGTH -> "the haunch";
            case STUB_DEPTH -> "the mortise's depth";
            case DOWEL_DIAMETER -> "the dowel";
        };
    }

    private static String aids(Practice p) {
        return p.aids().isEmpty()
                ? "none, as at the bench"
                : p.aids().stream().sorted().map(PracticeWords::aid).collect(Collectors.joining(", "));
    }

    private static String aid(Practice.Aid aid) {
        return switch (aid) {
            case CUT_GHOST -> "the cuts lie on the board";
            case CLEARANCE -> "clearances are written on it";
            case TURN_PREVIEW -> "turns and the job are shown as they come out";
            case UNDO -> "undo";
        };
    }

    private static String worth(Map<String, Double> worth) {
        if (worth.isEmpty()) return "none";
        return new TreeMap<>(worth)
                .entrySet().stream()
                        .map(e -> title(e.getKey()) + " " + hundredths(e.getValue()) + usualWorth(e.getKey()))
                        .collect(Collectors.joining("; "));
    }

    private static String usualWorth(String rule) {
        return RuleBook.rule(rule)
                .map(r -> " instead of " + hundredths(r.worth()))
                .orElse("");
    }

    private static String title(String rule) {
        return RuleBook.rule(rule).isPresent() ? Texts.of(rule).title() : rule;
    }

    /** {@code after each step}. */
    public static String told(Practice.Guidance guidance) {
        return switch (guidance) {
            case EACH_STEP -> "after each step";
            case EACH_PART -> "after each part";
            case AT_HAND_IN -> "at hand-in";
            case EXAMINATION -> "by the teacher, as in an examination";
        };
    }

    private static String meaning(Practice.Guidance guidance) {
        return switch (guidance) {
            case EACH_STEP -> "Whatever a step decides is told at once; hints can be had.";
            case EACH_PART -> "A board is judged when it is turned for its part or set aside; hints can be had.";
            case AT_HAND_IN -> "Nothing is judged before the work is handed in; hints can be had.";
            case EXAMINATION -> "Nothing is told and there are no hints: what is handed in is kept for the teacher.";
        };
    }
}
