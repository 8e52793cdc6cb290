package org.marktwice.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.marktwice.scenario.Practice;

/** The workshop's practice; a key that isn't given has its default. */
final class PracticeReader {
    private static final List<String> KNOWN = List.of(
            "faceSide",
            "heartSide",
            "knotMargin",
            "cupRatio",
            "size",
            "gap",
            "worth",
            "guidance",
            "aids",
            "proportions");
    private static final Range TOLERANCE = new Range(0, 100, true, false);
    private static final Range RATIO = Range.of(1, 10_000);
    static final Range WORTH = Range.of(0, 100);

    private PracticeReader() {}

    static Practice read(Json json) throws FileRefused {
        Fields in = Fields.of(json, "the practice settings (an object)", KNOWN);
        Practice standard = Practice.DEFAULT;
        return new Practice(
                word(in, "faceSide", Practice.FaceSide.values(), Practice.FaceSide::id, standard.faceSide()),
                word(in, "heartSide", Practice.HeartSide.values(), Practice.HeartSide::id, standard.heartSide()),
                knotMargin(in.get("knotMargin")),
                cupRatio(in.get("cupRatio")),
                in.number("size", TOLERANCE, standard.size()),
                in.number("gap", TOLERANCE, standard.gap()),
                worth(in.get("worth")),
                word(in, "guidance", Practice.Guidance.values(), Practice.Guidance::id, standard.guidance()),
                aids(in.get("aids")),
                ProportionsFields.read(in.get("proportions")));
    }

    private static <T> T word(Fields in, String name, T[] all, java.util.function.Function<T, String> id, T absent)
            throws FileRefused {
        Optional<Json> json = in.get(name);
        return json.isPresent() ? Values.word(json.get(), all, id) : absent;
    }

    private static Practice.KnotMargin knotMargin(Optional<Json> json) throws FileRefused {
        Practice.KnotMargin standard = Practice.DEFAULT.knotMargin();
        if (json.isEmpty()) return standard;
        Fields in = Fields.of(json.get(), "an object with mm and diameters", List.of("mm", "diameters"));
        return new Practice.KnotMargin(
                in.number("mm", Range.of(0, 1000), standard.mm()),
                in.number("diameters", Range.of(0, 100), standard.diameters()));
    }

    private static Practice.CupRatio cupRatio(Optional<Json> json) throws FileRefused {
        Practice.CupRatio standard = Practice.DEFAULT.cupRatio();
        if (json.isEmpty()) return standard;
        Fields in = Fields.of(json.get(), "an object with clear and poor", List.of("clear", "poor"));
        double clear = in.number("clear", RATIO, standard.clear());
        double poor = in.number("poor", RATIO, standard.poor());
        if (poor > clear)
            throw in.place().refuse("a cup of 1 in \"poor\" must be no flatter than one of 1 in \"clear\"");
        return new Practice.CupRatio(clear, poor);
    }

    private static Map<String, Double> worth(Optional<Json> json) throws FileRefused {
        if (json.isEmpty()) return Map.of();
        Map<String, Double> worth = new LinkedHashMap<>();
        for (var member : Fields.object(json.get(), "an object of marks by rule")
                .members()
                .entrySet()) {
            Json.Member rule = member.getValue();
            if (!Id.WORD.matches(member.getKey())) {
                throw rule.name().refuse("expected a rule's id, found " + Words.quoted(member.getKey()));
            }
            worth.put(member.getKey(), Values.number(rule.value(), WORTH));
        }
        return worth;
    }

    private static Set<Practice.Aid> aids(Optional<Json> json) throws FileRefused {
        if (json.isEmpty()) return Set.of();
        return Set.copyOf(Values.distinct(
                json.get(), "a list of aids", 0, item -> Values.word(item, Practice.Aid.values(), Practice.Aid::id)));
    }
}
