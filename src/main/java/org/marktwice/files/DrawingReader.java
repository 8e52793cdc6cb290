package org.marktwice.files;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.DrawingRefused;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;

/** The drawing of a scenario. What contradicts itself is refused by {@link Drawing} and given its place here. */
final class DrawingReader {
    private static final List<String> PART =
            List.of("id", "name", "stuff", "size", "at", "runs", "faceSide", "faceEdge");
    private static final Pattern STEP = Pattern.compile("\\.?([A-Za-z]+)|\\[(\\d+)]");

    private DrawingReader() {}

    static Drawing read(Json json) throws FileRefused {
        Fields in = Fields.of(json, "a drawing (an object)", List.of("overall", "parts", "joints"));
        Overall overall = overall(in.need("overall"));
        List<Part> parts = parts(in.need("parts"));
        List<Joint> joints = JointReader.joints(
                in.get("joints"), parts.stream().map(Part::id).toList());
        try {
            return Drawing.of(overall, parts, joints);
        } catch (DrawingRefused e) {
            throw at(json, e.where()).refuse(String.valueOf(e.getMessage()));
        }
    }

    private static Overall overall(Json json) throws FileRefused {
        Fields in = Fields.of(json, "an object with across, deep and high", List.of("across", "deep", "high"));
        return new Overall(
                in.number("across", Range.SIZE), in.number("deep", Range.SIZE), in.number("high", Range.SIZE));
    }

    private static List<Part> parts(Json json) throws FileRefused {
        Set<String> ids = new HashSet<>();
        return Values.list(json, "a list of parts", 1, item -> {
            Part part = part(item);
            // before the joints are read: a doubled id would show as an unknown part there
            Values.once(ids, part.id(), item, "parts");
            return part;
        });
    }

    private static Part part(Json json) throws FileRefused {
        Fields in = Fields.of(json, "a part (an object)", PART);
        Optional<Json> word = in.get("stuff");
        PartStuff stuff =
                word.isPresent() ? Values.word(word.get(), PartStuff.values(), PartStuff::id) : PartStuff.TIMBER;
        Fields runs = Fields.of(in.need("runs"), "an object with length and width", List.of("length", "width"));
        JobAxis length = Values.word(runs.need("length"), JobAxis.values(), JobAxis::id);
        JobAxis width = Values.word(runs.need("width"), JobAxis.values(), JobAxis::id);
        return new Part(
                Id.WORD.read(in.need("id")),
                Values.line(in.need("name"), 60),
                stuff,
                BoardReader.size(in.need("size")),
                Values.point(in.need("at")),
                length,
                width,
                looks(in.get("faceSide")),
                looks(in.get("faceEdge")));
    }

    static List<Direction> looks(Optional<Json> json) throws FileRefused {
        if (json.isEmpty()) return List.of();
        return Values.list(json.get(), "a list of directions", 0, DrawingReader::direction);
    }

    static Direction direction(Json json) throws FileRefused {
        return Values.word(json, Direction.values(), Direction::id);
    }

    /** The place of the path within the drawing, or as far down it as the file goes. */
    private static Place at(Json drawing, String where) {
        Json here = drawing;
        Matcher step = STEP.matcher(where);
        while (step.find()) {
            Json next = child(here, step.group(1), step.group(2));
            if (next == null) break;
            here = next;
        }
        return here.place();
    }

    private static @Nullable Json child(Json json, @Nullable String field, @Nullable String index) {
        if (field != null && json instanceof Json.Obj object) {
            Json.Member member = object.members().get(field);
            return member == null ? null : member.value();
        }
        if (index != null && json instanceof Json.Arr list) {
            int at = Integer.parseInt(index);
            return at < list.items().size() ? list.items().get(at) : null;
        }
        return null;
    }
}
