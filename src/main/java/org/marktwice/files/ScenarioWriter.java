package org.marktwice.files;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.joml.Vector3dc;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.scenario.Stock;
import org.marktwice.timber.Size;

/** Writes scenarios. What has its default is left out; the same scenario always gives the same bytes. */
public final class ScenarioWriter {
    private ScenarioWriter() {}

    public static byte[] bytes(Scenario scenario) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("format", Format.SCENARIO.written());
        out.put("id", scenario.id());
        out.put("title", scenario.title());
        out.put("level", scenario.level());
        if (!scenario.brief().isEmpty()) out.put("brief", scenario.brief());
        if (!scenario.idea().isEmpty()) out.put("idea", scenario.idea());
        out.put("stages", scenario.stages().stream().map(Stage::id).toList());
        scenario.minutes().ifPresent(m -> out.put("minutes", m));
        Map<String, Object> practice = practice(scenario.practice());
        if (!practice.isEmpty()) out.put("practice", practice);
        out.put("drawing", drawing(scenario.drawing()));
        if (scenario.stock().isPresent())
            out.put("stock", stock(scenario.stock().get()));
        else
            out.put("boards", scenario.boards().stream().map(BoardWriter::board).toList());
        return JsonText.pretty(out).getBytes(StandardCharsets.UTF_8);
    }

    static Map<String, Object> practice(Practice practice) {
        Practice standard = Practice.DEFAULT;
        Map<String, Object> out = new LinkedHashMap<>();
        if (practice.faceSide() != standard.faceSide())
            out.put("faceSide", practice.faceSide().id());
        if (practice.heartSide() != standard.heartSide())
            out.put("heartSide", practice.heartSide().id());
        if (!practice.knotMargin().equals(standard.knotMargin())) {
            out.put(
                    "knotMargin",
                    pair(
                            "mm",
                            practice.knotMargin().mm(),
                            "diameters",
                            practice.knotMargin().diameters()));
        }
        if (!practice.cupRatio().equals(standard.cupRatio())) {
            out.put(
                    "cupRatio",
                    pair(
                            "clear",
                            practice.cupRatio().clear(),
                            "poor",
                            practice.cupRatio().poor()));
        }
        if (practice.size() != standard.size()) out.put("size", practice.size());
        if (practice.gap() != standard.gap()) out.put("gap", practice.gap());
        if (!practice.worth().isEmpty()) out.put("worth", new TreeMap<>(practice.worth()));
        if (practice.guidance() != standard.guidance())
            out.put("guidance", practice.guidance().id());
        if (!practice.aids().isEmpty()) {
            out.put(
                    "aids",
                    practice.aids().stream().sorted().map(Practice.Aid::id).toList());
        }
        Map<String, Object> proportions = ProportionsFields.write(practice.proportions());
        if (!proportions.isEmpty()) out.put("proportions", proportions);
        return out;
    }

    private static Map<String, Object> drawing(Drawing drawing) {
        Map<String, Object> overall = pair(
                "across", drawing.overall().across(), "deep", drawing.overall().deep());
        overall.put("high", drawing.overall().high());
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("overall", overall);
        out.put("parts", drawing.parts().stream().map(ScenarioWriter::part).toList());
        if (!drawing.joints().isEmpty()) {
            out.put(
                    "joints",
                    drawing.joints().stream().map(ScenarioWriter::joint).toList());
        }
        return out;
    }

    private static Map<String, Object> part(Part part) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("id", part.id());
        out.put("name", part.name());
        out.put("stuff", part.stuff().id());
        out.put("size", size(part.size()));
        out.put("at", point(part.at()));
        out.put("runs", pair("length", part.length().id(), "width", part.width().id()));
        if (!part.faceSide().isEmpty()) out.put("faceSide", directions(part.faceSide()));
        if (!part.faceEdge().isEmpty()) out.put("faceEdge", directions(part.faceEdge()));
        return out;
    }

    static List<String> directions(Collection<Direction> directions) {
        return directions.stream().map(Direction::id).toList();
    }

    static Map<String, Object> joint(Joint joint) {
        Map<String, Object> out = pair("id", joint.id(), "kind", joint.kind());
        out.put("in", joint.in());
        out.put("takes", joint.takes());
        if (joint instanceof Joint.StoppedHousing stopped) {
            out.put("stops", pair("at", stopped.at().id(), "mm", stopped.mm()));
        } else if (joint instanceof Joint.Halving halving) {
            out.put("from", halving.from().id());
        } else if (joint instanceof Joint.MortiseTenon tenoned) {
            Joint.Tenon tenon = tenoned.tenon();
            Map<String, Object> section = pair("thickness", tenon.thickness(), "width", tenon.width());
            if (tenon.inset() != null) section.put("inset", tenon.inset());
            out.put("tenon", section);
            if (tenoned.haunch() != null)
                out.put("haunch", Map.of("length", tenoned.haunch().length()));
        } else if (joint instanceof Joint.Dowelled dowelled) {
            Joint.Dowels dowels = dowelled.dowels();
            Map<String, Object> row = pair("count", dowels.count(), "diameter", dowels.diameter());
            row.put("length", dowels.length());
            out.put("dowels", row);
        }
        return out;
    }

    static Map<String, Object> stock(Stock stock) {
        Map<String, Object> out =
                pair("seed", stock.seed(), "species", stock.species().id());
        if (stock.spare() > 0) out.put("spare", stock.spare());
        if (stock.difficulty() != Stock.DIFFICULTY) out.put("difficulty", stock.difficulty());
        return out;
    }

    static Map<String, Object> size(Size size) {
        Map<String, Object> out = pair("length", size.length(), "width", size.width());
        out.put("thickness", size.thickness());
        return out;
    }

    static List<Object> point(Vector3dc point) {
        List<Object> out = new ArrayList<>();
        for (int axis = 0; axis < 3; axis++) out.add(point.get(axis));
        return out;
    }

    static Map<String, Object> pair(String one, Object value, String other, Object otherValue) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put(one, value);
        out.put(other, otherValue);
        return out;
    }
}
