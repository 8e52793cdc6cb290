package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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
     * @param name what is set, such as {@code Face side}
     * @param value how it is set here
     * @param meaning what that means at the bench, a sentence
     */
    public record Setting(String name, String value, String meaning) {
        /** {@code Face side: the truest surface, turned in}. */
        public String line() {
            return name + ": " + value;
        }
    }

    private PracticeWords() {}

    /** Every setting in force, in the order in which the work meets it. */
    public static List<Setting> all(Practice p) {
        List<Setting> all =
                new ArrayList<>(List.of(faceSide(p), marks(), heart(p), knots(p), cup(p), sizes(p), gaps(p)));
        joints(p.proportions()).ifPresent(all::add);
        all.add(new Setting("Told", told(p.guidance()), meaning(p.guidance())));
        all.add(aids(p));
        if (!p.worth().isEmpty()) all.add(worth(p.worth()));
        return List.copyOf(all);
    }

    private static Setting faceSide(Practice p) {
        boolean in = p.faceSide() == FaceSide.TRUEST_IN;
        return new Setting(
                "Face side",
                in ? "the truest surface, turned in" : "the best surface, turned out",
                in
                        ? "In an assembly the joints are set out from the truest surface, and that is turned in."
                        : "The cleanest surface is the face side, and is seen on the finished job.");
    }

    private static Setting marks() {
        return new Setting(
                "Marks",
                "a loop with a tail for the face side, a V for the face edge",
                "Other shapes are in use; any pair will do that points at the arris it shares.");
    }

    private static Setting heart(Practice p) {
        String value = p.heartSide() == HeartSide.ANY
                ? "any way"
                : p.heartSide() == HeartSide.AWAY ? "away from the middle of the job" : "towards the middle of the job";
        return new Setting(
                "Heart side",
                value,
                p.heartSide() == HeartSide.AWAY
                        ? "As the boards dry they hollow on the bark side, and the corners stay shut."
                        : "A drying board hollows on its bark side.");
    }

    private static Setting knots(Practice p) {
        double diameters = p.knotMargin().diameters();
        String times = diameters == 1 ? "one knot diameter" : Words.figure(diameters) + " knot diameters";
        return new Setting(
                "Knots",
                Words.figure(p.knotMargin().mm()) + " mm or " + times + " from a joint, whichever is more",
                "The grain bends round a knot, further out than the knot itself shows.");
    }

    private static Setting cup(Practice p) {
        return new Setting(
                "Cup",
                "good up to 1 in " + Words.figure(p.cupRatio().clear()) + " of the width, refused beyond 1 in "
                        + Words.figure(p.cupRatio().poor()),
                "Between the two the board may be used, and is poor.");
    }

    private static Setting sizes(Practice p) {
        String preset =
                p.size() == 0.5 ? " (strict)" : p.size() == 1 ? " (standard)" : p.size() == 2 ? " (first attempt)" : "";
        return new Setting(
                "Sizes", "± " + Words.figure(p.size()) + " mm" + preset, "How far a size may be from the drawing's.");
    }

    private static Setting gaps(Practice p) {
        return new Setting(
                "Gaps",
                "good up to " + Words.figure(p.gap() / 2) + " mm, fair up to " + Words.figure(p.gap()) + " mm",
                "What a feeler gauge would find in a joint pushed home.");
    }

    /** Only what departs from what is usual; empty where nothing does. */
    private static Optional<Setting> joints(Proportions p) {
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
        if (own.isEmpty()) return Optional.empty();
        return Optional.of(new Setting(
                "Joints",
                String.join("; ", own),
                "How large the parts of a joint are for their stuff. Whatever isn't named here is as usual."));
    }

    private static void range(
            List<String> own, String what, Proportions.Range range, Proportions.Range usual, String of) {
        if (range.equals(usual)) return;
        own.add(what + " " + Words.figure(range.least()) + " to " + Words.figure(range.most()) + of);
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

    private static Setting aids(Practice p) {
        String value = p.aids().isEmpty()
                ? "none, as at the bench"
                : p.aids().stream().sorted().map(PracticeWords::aid).collect(Collectors.joining(", "));
        return new Setting("Aids", value, "What the exercise grants beyond what one has at the bench.");
    }

    private static String aid(Practice.Aid aid) {
        return switch (aid) {
            case CUT_GHOST -> "the cuts lie on the board";
            case CLEARANCE -> "clearances are written on it";
            case TURN_PREVIEW -> "turns and the job are shown as they come out";
            case UNDO -> "undo";
        };
    }

    private static Setting worth(Map<String, Double> worth) {
        String value = new TreeMap<>(worth)
                .entrySet().stream()
                        .map(e -> title(e.getKey()) + " " + Words.figure(e.getValue()))
                        .collect(Collectors.joining("; "));
        return new Setting("Marks changed", value, "Every other rule is worth what the rule book says.");
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
