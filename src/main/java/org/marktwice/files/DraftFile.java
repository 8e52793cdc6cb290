package org.marktwice.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.PartStuff;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.DraftPart;
import org.marktwice.scenario.DraftPart.Figure;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.scenario.Stock;
import org.marktwice.timber.Board;

/** Drafts of scenarios ({@code *.draft.json}): as a scenario has it, but whatever isn't known yet is left out. */
public final class DraftFile {
    public static final String ENDING = ".draft.json";

    private static final List<String> KNOWN = List.of(
            "format",
            "id",
            "title",
            "level",
            "brief",
            "idea",
            "stages",
            "minutes",
            "practice",
            "parts",
            "joints",
            "boards",
            "stock");
    private static final List<String> PART =
            List.of("id", "name", "stuff", "size", "at", "runs", "faceSide", "faceEdge");
    private static final List<String> SIZE = List.of("length", "width", "thickness");
    private static final List<String> AT = List.of("left", "front", "bottom");

    private DraftFile() {}

    public static Draft read(Path file) throws FileRefused {
        return read(file.toString(), Bytes.read(file));
    }

    /** @param name what messages call the file */
    public static Draft read(String name, byte[] bytes) throws FileRefused {
        Json root = JsonTree.parse(name, Bytes.text(name, bytes), 1);
        Format.DRAFT.check(root);
        Fields in = Fields.of(root, "a draft (an object)", KNOWN);
        Optional<Json> id = in.get("id");
        Optional<Json> title = in.get("title");
        Optional<Json> brief = in.get("brief");
        Optional<Json> idea = in.get("idea");
        Optional<Json> practice = in.get("practice");
        Optional<Json> boards = in.get("boards");
        Optional<Json> stock = in.get("stock");
        if (stock.isPresent()) in.refuse("boards", "they are grown from the stock");
        String known = id.isPresent() ? Id.WORD.read(id.get()) : "";
        List<DraftPart> parts = parts(in.need("parts"));
        List<String> partIds = parts.stream().map(DraftPart::id).toList();
        List<Stage> stages = Values.distinct(
                in.need("stages"), "a list of stages", 0, s -> Values.word(s, Stage.values(), Stage::id));
        return new Draft(
                known,
                title.isPresent() ? Values.line(title.get(), 120) : "",
                Values.whole(in.need("level"), 1, 9),
                brief.isPresent() ? Values.paragraphs(brief.get(), 2000) : "",
                idea.isPresent() ? Values.line(idea.get(), Scenario.LONGEST_IDEA) : "",
                stages,
                ScenarioFile.minutes(in.get("minutes")),
                practice.isPresent() ? PracticeReader.read(practice.get()) : Practice.DEFAULT,
                parts,
                JointReader.joints(in.get("joints"), partIds),
                stock.isPresent() ? Optional.of(StockReader.stock(stock.get())) : Optional.<Stock>empty(),
                boards.isPresent() ? ScenarioFile.boards(boards.get(), known) : List.<Board>of());
    }

    private static List<DraftPart> parts(Json json) throws FileRefused {
        Set<String> ids = new HashSet<>();
        return Values.list(json, "a list of parts", 0, item -> {
            DraftPart part = part(item);
            Values.once(ids, part.id(), item, "parts");
            return part;
        });
    }

    private static DraftPart part(Json json) throws FileRefused {
        Fields in = Fields.of(json, "a part (an object)", PART);
        Optional<Json> name = in.get("name");
        Fields runs = Fields.of(in.need("runs"), "an object with length and width", List.of("length", "width"));
        Map<Figure, Double> figures = new EnumMap<>(Figure.class);
        figures(in, "size", SIZE, Range.SIZE, Figure.LENGTH, figures);
        figures(in, "at", AT, Range.POSITION, Figure.FROM_LEFT, figures);
        return new DraftPart(
                Id.WORD.read(in.need("id")),
                name.isPresent() ? Values.line(name.get(), 60) : "",
                Values.word(in.need("stuff"), PartStuff.values(), PartStuff::id),
                figures,
                Values.word(runs.need("length"), JobAxis.values(), JobAxis::id),
                Values.word(runs.need("width"), JobAxis.values(), JobAxis::id),
                DrawingReader.looks(in.get("faceSide")),
                DrawingReader.looks(in.get("faceEdge")));
    }

    private static void figures(
            Fields part, String field, List<String> names, Range range, Figure first, Map<Figure, Double> into)
            throws FileRefused {
        Fields in = Fields.of(part.need(field), "an object with " + Words.allOf(names), names);
        for (int i = 0; i < names.size(); i++) {
            Optional<Json> known = in.get(names.get(i));
            if (known.isPresent()) into.put(Figure.values()[first.ordinal() + i], Values.number(known.get(), range));
        }
    }

    /** The same draft always gives the same bytes. */
    public static byte[] bytes(Draft draft) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("format", Format.DRAFT.written());
        if (!draft.id().isEmpty()) out.put("id", draft.id());
        if (!draft.title().isEmpty()) out.put("title", draft.title());
        out.put("level", draft.level());
        if (!draft.brief().isEmpty()) out.put("brief", draft.brief());
        if (!draft.idea().isEmpty()) out.put("idea", draft.idea());
        out.put("stages", draft.stages().stream().map(Stage::id).toList());
        draft.minutes().ifPresent(m -> out.put("minutes", m));
        Map<String, Object> practice = ScenarioWriter.practice(draft.practice());
        if (!practice.isEmpty()) out.put("practice", practice);
        out.put("parts", draft.parts().stream().map(DraftFile::part).toList());
        List<Joint> joints = draft.joints();
        if (!joints.isEmpty()) {
            out.put("joints", joints.stream().map(ScenarioWriter::joint).toList());
        }
        draft.stock().ifPresent(s -> out.put("stock", ScenarioWriter.stock(s)));
        if (!draft.boards().isEmpty()) {
            out.put("boards", draft.boards().stream().map(BoardWriter::board).toList());
        }
        return JsonText.pretty(out).getBytes(StandardCharsets.UTF_8);
    }

    private static Map<String, Object> part(DraftPart part) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("id", part.id());
        if (!part.name().isEmpty()) out.put("name", part.name());
        out.put("stuff", part.stuff().id());
        out.put("size", figures(part, SIZE, Figure.LENGTH));
        out.put("at", figures(part, AT, Figure.FROM_LEFT));
        out.put(
                "runs",
                ScenarioWriter.pair(
                        "length", part.length().id(), "width", part.width().id()));
        if (!part.faceSide().isEmpty()) out.put("faceSide", ScenarioWriter.directions(part.faceSide()));
        if (!part.faceEdge().isEmpty()) out.put("faceEdge", ScenarioWriter.directions(part.faceEdge()));
        return out;
    }

    private static Map<String, Object> figures(DraftPart part, List<String> names, Figure first) {
        Map<String, Object> out = new LinkedHashMap<>();
        List<Figure> all = new ArrayList<>(List.of(Figure.values()));
        for (int i = 0; i < names.size(); i++) {
            Double known = part.figures().get(all.get(first.ordinal() + i));
            if (known != null) out.put(names.get(i), known);
        }
        return out;
    }

    /**
     * The finished scenario, as its file will have it; empty while there are gaps.
     *
     * @throws FileRefused where it would not be taken as a scenario, for a reason that a draft doesn't know
     */
    public static Optional<Scenario> finished(Draft draft) throws FileRefused {
        Optional<Scenario> bare = draft.bare();
        if (bare.isEmpty()) return Optional.empty();
        return Optional.of(ScenarioFile.read(draft.named(), ScenarioWriter.bytes(bare.get())));
    }
}
