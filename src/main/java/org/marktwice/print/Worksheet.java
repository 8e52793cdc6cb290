package org.marktwice.print;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Figures;
import org.marktwice.picture.Ink;
import org.marktwice.picture.JobPicture;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Size;

/** What a learner marks in pencil: the job, what is asked, and every board unrolled on light wood. Holds no answers. */
final class Worksheet {
    private static final double PICTURE = Paper.points(44);
    /** The share of the width that is for words, beside the job's picture. */
    private static final double WORDS = 0.72;

    private final Scenario scenario;
    private final Paper paper;
    private final BoardStrips strips;

    Worksheet(Scenario scenario, Paper paper, Figures wood) {
        this.scenario = scenario;
        this.paper = paper;
        this.strips = new BoardStrips(Wood.light(wood), scenario.boards(), paper, 0.5);
    }

    List<Leaf> leaves() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Blocks.blanks("name", 0.42, "class", 0.24, "date", 0.26));
        List<Block> words = new ArrayList<>();
        words.add(Blocks.text(scenario.brief(), Type.BODY, Ink.INK));
        words.add(Blocks.heading(
                "What to do",
                strips.scale() + ": 1 mm measured on a board here is " + Figure.number(strips.reduction())
                        + " mm of wood"));
        int number = 1;
        for (String task : tasks()) words.add(Blocks.labelled(number++ + "", 14, task, Type.BODY, Ink.INK));
        JobPicture picture = JobPicture.of(scenario.drawing());
        blocks.add(Blocks.beside(
                words,
                WORDS,
                PICTURE,
                (pen, place) -> picture.paint(pen.g, place, JobPicture.Style.PLAIN, Pen.PALETTE)));
        for (Board board : scenario.boards()) blocks.add(board(board));
        return Leaf.flowing(Sheets.block(SheetKind.WORKSHEET, scenario, strips.scale()), paper, blocks);
    }

    private List<String> tasks() {
        List<String> tasks = new ArrayList<>();
        for (Stage stage : scenario.stages()) tasks.addAll(tasks(stage));
        return tasks;
    }

    private static List<String> tasks(Stage stage) {
        return switch (stage) {
            case FACES ->
                List.of(
                        "Choose a face side and a face edge on each board that you use, and draw their marks: the loop of "
                                + "the face side runs to the arris that it shares with the face edge, and the V of the face edge "
                                + "points back at it.");
            case NAMES -> List.of("Write each part's name on its board, where it will not be cut away.");
            case TURNS ->
                List.of(
                        "Write where the face side and the face edge look in the job, which end is where, and what comes "
                                + "off at which end.",
                        "Shade the cuts of the joints. Measure how far the nearest knot is from them.",
                        "Set aside the boards that serve nothing, and say why.");
            case SETTING_OUT ->
                List.of("Square and gauge the lines of the joints from the marked surfaces only, and shade the waste.");
            case FIT -> List.of("Say where a gap would show if the parts were put together so.");
        };
    }

    private Block board(Board board) {
        Size s = board.size();
        String size =
                Figure.number(s.length()) + " × " + Figure.number(s.width()) + " × " + Figure.number(s.thickness());
        String own = strips.own(board);
        return Blocks.together(List.of(
                Blocks.heading("Board " + board.id(), own.isEmpty() ? size : size + ", " + own),
                strips.of(BoardPicture.of(board)),
                Blocks.blanks(
                        "part, or why it is set aside", 0.46, "face side on, looks", 0.25, "face edge on, looks", 0.25),
                Blocks.blanks(
                        "which end is where", 0.30, "off which end, mm", 0.22, "nearest knot to a cut, mm", 0.42)));
    }
}
