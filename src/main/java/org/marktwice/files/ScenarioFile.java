package org.marktwice.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.marktwice.drawing.Drawing;
import org.marktwice.scenario.Grown;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.scenario.Stock;
import org.marktwice.timber.Board;

/** Reads scenarios ({@code *.scenario.json}). */
public final class ScenarioFile {
    private static final List<String> KNOWN = List.of(
            "format",
            "id",
            "title",
            "level",
            "brief",
            "idea",
            "stages",
            "practice",
            "drawing",
            "boards",
            "stock",
            "minutes");

    private ScenarioFile() {}

    public static Scenario read(Path file) throws FileRefused {
        return read(file.toString(), Bytes.read(file));
    }

    /** @param name what messages call the file */
    public static Scenario read(String name, byte[] bytes) throws FileRefused {
        Json root = JsonTree.parse(name, Bytes.text(name, bytes), 1);
        Format.SCENARIO.check(root);
        Fields in = Fields.of(root, "a scenario (an object)", KNOWN);
        String id = Id.WORD.read(in.need("id"));
        Optional<Json> brief = in.get("brief");
        Optional<Json> idea = in.get("idea");
        Optional<Json> practice = in.get("practice");
        String title = Values.line(in.need("title"), 120);
        int level = Values.whole(in.need("level"), 1, 9);
        List<Stage> stages = Values.distinct(
                in.need("stages"), "a list of stages", 1, s -> Values.word(s, Stage.values(), Stage::id));
        Drawing drawing = DrawingReader.read(in.need("drawing"));
        Practice set = practice.isPresent() ? PracticeReader.read(practice.get()) : Practice.DEFAULT;
        if (!in.has("boards") && !in.has("stock")) {
            throw root.place().refuse("there are no boards: give \"boards\", or a \"stock\" to grow them from");
        }
        Optional<Stock> stock = StockReader.read(in, drawing);
        return new Scenario(
                id,
                title,
                level,
                brief.isPresent() ? Values.paragraphs(brief.get(), 2000) : "",
                idea.isPresent() ? Values.line(idea.get(), Scenario.LONGEST_IDEA) : "",
                stages,
                set,
                drawing,
                stock.isPresent()
                        ? new Grown(() -> StockReader.boards(stock.get(), drawing, set, id))
                        : boards(in.need("boards"), id),
                stock,
                minutes(in.get("minutes")),
                Bytes.digest(bytes));
    }

    static OptionalInt minutes(Optional<Json> json) throws FileRefused {
        if (json.isEmpty()) return OptionalInt.empty();
        return OptionalInt.of(Values.whole(json.get(), 1, Scenario.MOST_MINUTES));
    }

    static List<Board> boards(Json json, String scenario) throws FileRefused {
        Set<String> ids = new HashSet<>();
        List<Board> boards = new ArrayList<>();
        for (Json item : Values.items(json, "a list of boards", 1)) {
            Board board = BoardReader.read(Fields.of(item, "a board (an object)", BoardReader.KNOWN), scenario);
            Values.once(ids, board.id(), item, "boards");
            boards.add(board);
        }
        return boards;
    }
}
