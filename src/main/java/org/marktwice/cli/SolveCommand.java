package org.marktwice.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.Difficulty;
import org.marktwice.advice.Explanation;
import org.marktwice.advice.ModelAnswer;
import org.marktwice.advice.Option;
import org.marktwice.advice.Options;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.files.FileRefused;
import org.marktwice.rulebook.ExplanationWords;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** The model answer. */
@Command(
        name = "solve",
        description = {
            "Finds the best board, turn and trim for each part.",
            "Best is: most parts supplied, then most parts clear of knots, then the greatest least clearance,",
            "then the greatest sum of clearances."
        },
        footer = {
            "",
            "Exit 0: every part can be supplied clear. 1: no, some part gets no board, or a knot within its",
            "margin of a cut. 2: the file can't be read.",
            "",
            "--json writes one object; figures are unrounded millimetres:",
            "  scenario, parts, supplied, clear   ids and counts",
            "  least, sum    of the clearances, each capped at 25 mm",
            "  difficulty    value, 0 to 1: half wrongChoices, three tenths closeness, two tenths crowd",
            "    wrongChoices  share of the boards' turns in the parts that are wrong",
            "    closeness     how near the best choice comes to the next that is worse",
            "    crowd         how many boards there are to look through",
            "  placings[]    in the drawing's order of parts:",
            "    board, part",
            "    facing      face-1, edge-1: the directions these look",
            "    trim        end, mm: so much comes off that end, the rest of the surplus off the other",
            "    clearance   least distance of a knot from a cut, capped at 25 mm",
            "    clear       whether every knot keeps its margin",
            "  unsupplied[]  ids of parts without a board",
            "  leftOver[]    ids of boards without a part",
            "  why[]         sentences: why this set is the best, what the next best loses, what proves a shortage",
            "  nextBest      (where there is one) supplied, clear, least, sum, placings[] of board and part: the best of",
            "                the sets in which a board serves less well than above, or not at all",
            "  shortages[]   parts[], boards[], clear: these parts can be made (or, with clear, come clear) of",
            "                these boards only, which are fewer",
            "  boards[]      (with --table) board, uses[] of part, unfit (why not), turns[] of facing, trim, allowed",
            "                (as drawn and planed), clearance, clear, nearest {knot, joint, clearance, margin}, chosen"
        })
final class SolveCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "SCENARIO", description = "the scenario (*.scenario.json)")
    private Path file = Path.of("");

    @picocli.CommandLine.Option(names = "--json", description = "write the result as JSON, as described below")
    private boolean json;

    @picocli.CommandLine.Option(
            names = "--table",
            description = "for each board, every part and turn with its clearance")
    private boolean table;

    SolveCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws FileRefused {
        Scenario scenario = Inputs.scenario(file);
        Explanation explanation = Explanation.of(scenario);
        ModelAnswer answer = explanation.answer();
        if (json) console.json(json(explanation));
        else text(explanation);
        return solved(scenario, answer) ? Exit.DONE : Exit.NO;
    }

    /** Whether every part can be supplied clear. */
    static boolean solved(Scenario scenario, ModelAnswer answer) {
        return answer.clear() == scenario.drawing().parts().size();
    }

    static List<Part> unsupplied(Scenario scenario, ModelAnswer answer) {
        return scenario.drawing().parts().stream()
                .filter(p -> answer.of(p).isEmpty())
                .toList();
    }

    private static List<Board> leftOver(Scenario scenario, ModelAnswer answer) {
        return scenario.boards().stream().filter(b -> answer.of(b).isEmpty()).toList();
    }

    private Map<String, @Nullable Object> json(Explanation explanation) {
        Scenario scenario = explanation.scenario();
        ModelAnswer answer = explanation.answer();
        Fields fields = Fields.with("scenario", scenario.id())
                .and("parts", scenario.drawing().parts().size())
                .and("supplied", answer.supplied())
                .and("clear", answer.clear())
                .and("least", answer.least())
                .and("sum", answer.sum())
                .and("difficulty", difficulty(Difficulty.of(scenario, answer)))
                .and(
                        "placings",
                        answer.placings().stream().map(SolveCommand::placing).toList())
                .and(
                        "unsupplied",
                        unsupplied(scenario, answer).stream().map(Part::id).toList())
                .and(
                        "leftOver",
                        leftOver(scenario, answer).stream().map(Board::id).toList())
                .and("why", new ExplanationWords(explanation).why())
                .maybe(
                        "nextBest",
                        explanation.nextBest().map(ExplanationFields::nextBest).orElse(null))
                .and(
                        "shortages",
                        explanation.shortages().stream()
                                .map(ExplanationFields::shortage)
                                .toList());
        if (table) {
            fields.and(
                    "boards",
                    scenario.boards().stream()
                            .map(b -> ExplanationFields.board(explanation, b))
                            .toList());
        }
        return fields.map();
    }

    private static Map<String, @Nullable Object> difficulty(Difficulty hard) {
        return Fields.with("value", hard.value())
                .and("wrongChoices", hard.wrongChoices())
                .and("closeness", hard.closeness())
                .and("crowd", hard.crowd())
                .map();
    }

    private static Map<String, @Nullable Object> placing(Option option) {
        Placing placing = option.placing();
        return Fields.with("board", placing.board().id())
                .and("part", placing.part().id())
                .and("facing", Fields.facing(placing))
                .and("trim", ExplanationFields.trim(placing))
                .and("clearance", option.clearance())
                .and("clear", option.clear())
                .map();
    }

    private void text(Explanation explanation) {
        Scenario scenario = explanation.scenario();
        ModelAnswer answer = explanation.answer();
        int parts = scenario.drawing().parts().size();
        console.line(scenario.title() + ": " + answer.supplied() + " of " + Text.count(parts, "part", "parts")
                + " supplied, " + answer.clear() + " clear; least clearance " + Text.mm(answer.least()) + ", sum "
                + Text.mm(answer.sum()) + " (each counts up to " + Text.number(Option.CAP) + " mm)");
        for (Option option : answer.placings()) console.line(text(option));
        for (Part part : unsupplied(scenario, answer)) {
            console.line("  " + part.name() + ": no board");
            for (Board board : scenario.boards()) {
                Options.unfit(scenario, board, part).ifPresent(why -> console.line(Text.wrapped("    ", why)));
            }
        }
        List<Board> leftOver = leftOver(scenario, answer);
        if (!leftOver.isEmpty()) {
            console.line("  left over: "
                    + String.join(", ", leftOver.stream().map(Board::id).toList()));
        }
        Difficulty hard = Difficulty.of(scenario, answer);
        console.line(String.format(
                Locale.ROOT,
                "Difficulty %.2f: wrong choices %.2f, closeness of the next best %.2f, boards to look through %.2f",
                hard.value(),
                hard.wrongChoices(),
                hard.closeness(),
                hard.crowd()));
        ExplanationWords words = new ExplanationWords(explanation);
        console.line("Why this set");
        words.why().forEach(sentence -> console.line(Text.wrapped("  ", sentence)));
        if (table) scenario.boards().forEach(board -> table(board, words.table(board)));
    }

    private void table(Board board, List<ExplanationWords.Row> rows) {
        console.line("Board " + board.id());
        String before = "";
        for (ExplanationWords.Row row : rows) {
            String part = row.part().name().equals(before) ? "" : row.part().name();
            before = row.part().name();
            String lies = row.off().isEmpty() ? row.turn() : row.turn() + ", " + row.off();
            String end = lies.isEmpty() ? row.result() : lies + ": " + row.result();
            String sign = row.chosen() ? "▸" : row.clear() ? "✓" : " ";
            console.line(Text.wrapped(String.format(Locale.ROOT, "  %-18s %s ", part, sign), end));
        }
    }

    private static String text(Option option) {
        Placing placing = option.placing();
        String line = String.format(
                Locale.ROOT,
                "  %-20s board %-3s face 1 %-7s edge 1 %-7s %s off end 1, %s off end 2; ",
                placing.part().name(),
                placing.board().id(),
                placing.turn().of(Surface.FACE_1).id(),
                placing.turn().of(Surface.EDGE_1).id(),
                Text.mm(placing.off(Surface.END_1)),
                Text.mm(placing.off(Surface.END_2)));
        String near = option.nearest()
                .map(n -> "knot " + n.knot() + " keeps " + Text.mm(n.clearance()) + " from " + n.joint() + ", margin "
                        + Text.mm(n.margin()))
                .orElse("no knot near a cut");
        return line + (option.clear() ? "clear: " : "NOT CLEAR: ") + near;
    }
}
