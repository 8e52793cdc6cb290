package org.marktwice.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Joint;

/** The joints of a drawing: each kind has its own fields. */
final class JointReader {
    private static final int MOST_DOWELS = 99;

    /** The kinds of joint that this format has, with the fields that only they have. */
    private enum Kind {
        THROUGH_HOUSING("through-housing"),
        STOPPED_HOUSING("stopped-housing", "stops"),
        REBATE("rebate"),
        HALVING("halving", "from"),
        BRIDLE("bridle"),
        MORTISE_TENON("mortise-tenon", "tenon", "haunch"),
        DOWELLED("dowelled", "dowels"),
        BUTT("butt");

        private final String id;
        private final List<String> known;

        Kind(String id, String... own) {
            this.id = id;
            List<String> all = new ArrayList<>(List.of("id", "kind", "in", "takes"));
            all.addAll(List.of(own));
            this.known = List.copyOf(all);
        }

        String id() {
            return id;
        }
    }

    private JointReader() {}

    static List<Joint> joints(Optional<Json> json, List<String> parts) throws FileRefused {
        if (json.isEmpty()) return List.of();
        return Values.list(json.get(), "a list of joints", 0, joint -> joint(joint, parts));
    }

    private static Joint joint(Json json, List<String> parts) throws FileRefused {
        Json.Member word = Fields.object(json, "a joint (an object)").members().get("kind");
        if (word == null) throw json.place().refuse("the field \"kind\" is missing");
        Kind kind = Values.word(word.value(), Kind.values(), Kind::id);
        Fields in = Fields.of(json, "a joint (an object)", kind.known);
        String id = Id.WORD.read(in.need("id"));
        String into = partId(in.need("in"), parts);
        String takes = partId(in.need("takes"), parts);
        return switch (kind) {
            case THROUGH_HOUSING -> new Joint.ThroughHousing(id, into, takes);
            case STOPPED_HOUSING -> stopped(id, into, takes, in.need("stops"));
            case REBATE -> new Joint.Rebate(id, into, takes);
            case HALVING -> new Joint.Halving(id, into, takes, DrawingReader.direction(in.need("from")));
            case BRIDLE -> new Joint.Bridle(id, into, takes);
            case MORTISE_TENON ->
                new Joint.MortiseTenon(id, into, takes, tenon(in.need("tenon")), haunch(in.get("haunch")));
            case DOWELLED -> new Joint.Dowelled(id, into, takes, dowels(in.need("dowels")));
            case BUTT -> new Joint.Butt(id, into, takes);
        };
    }

    private static Joint stopped(String id, String into, String takes, Json json) throws FileRefused {
        Fields in = Fields.of(json, "an object with at and mm", List.of("at", "mm"));
        return new Joint.StoppedHousing(
                id, into, takes, DrawingReader.direction(in.need("at")), in.number("mm", Range.SIZE));
    }

    private static Joint.Tenon tenon(Json json) throws FileRefused {
        Fields in = Fields.of(
                json, "an object with thickness, width and perhaps inset", List.of("thickness", "width", "inset"));
        return new Joint.Tenon(
                in.number("thickness", Range.SIZE),
                in.number("width", Range.SIZE),
                in.has("inset") ? (Double) in.number("inset", Range.DISTANCE) : null);
    }

    private static Joint.@Nullable Haunch haunch(Optional<Json> json) throws FileRefused {
        if (json.isEmpty()) return null;
        Fields in = Fields.of(json.get(), "an object with length", List.of("length"));
        return new Joint.Haunch(in.number("length", Range.SIZE));
    }

    private static Joint.Dowels dowels(Json json) throws FileRefused {
        Fields in =
                Fields.of(json, "an object with count, diameter and length", List.of("count", "diameter", "length"));
        return new Joint.Dowels(
                Values.whole(in.need("count"), 1, MOST_DOWELS),
                in.number("diameter", Range.SIZE),
                in.number("length", Range.SIZE));
    }

    private static String partId(Json json, List<String> parts) throws FileRefused {
        String id = Id.WORD.read(json);
        if (parts.contains(id)) return id;
        throw json.expected("a part of the drawing (" + Words.allOf(parts) + ")");
    }
}
