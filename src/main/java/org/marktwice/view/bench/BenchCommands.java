package org.marktwice.view.bench;

import java.util.List;
import java.util.stream.Stream;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Place;

/** What can be done at the bench. */
public final class BenchCommands {
    public static final Command FACE_SIDE = bench("face-side", "Face side", "F", "Make the face-side mark");
    public static final Command FACE_EDGE = bench("face-edge", "Face edge", "E", "Make the face-edge mark");
    public static final Command NAME = bench("name", "Name", "N", "Write a part's name on the board");
    public static final Command RULE = bench("rule", "Measure", "M", "Lay the steel rule between two points");
    public static final Command STRAIGHT_EDGE =
            bench("straight-edge", "Straight-edge", "S", "Try a surface with the straight-edge");
    public static final Command WINDING_STICKS =
            bench("winding-sticks", "Winding sticks", "W", "Try a surface for wind");
    public static final Command TRY_SQUARE = bench("try-square", "Try-square", "Q", "Try a surface for square");
    public static final Command END_GRAIN = bench(
            "end-grain", "End grain", "P", "Read the arcs of an end: where the pith lies, which is the bark side");
    public static final Command TURN =
            bench("turn", "Turn in the job", "T", "Turn the board as it will lie in the job");
    public static final Command TRIM = bench("trim", "Trim", "X", "Slide the board along its part's length");
    public static final Command SET_ASIDE = bench("set-aside", "Set aside", "A", "Refuse the board, and say why");
    public static final Command LINE =
            bench("line", "Square a line", "L", "Strike a line across the board with rule and try-square");
    public static final Command GAUGE = bench("gauge", "Gauge", "G", "Run a line along with the marking gauge");
    public static final Command BEVEL =
            bench("bevel", "Bevel", "B", "Strike a line at an angle with the sliding bevel");
    public static final Command MATE =
            bench("mate", "From the mate", "I", "Hold another board in place and strike a line from it");
    public static final Command CUT =
            bench("cut", "Saw or chisel", "Z", "Decide on which side of a line it is sawn or chiselled");
    public static final Command CRAMP = bench(
            "cramp", "Cramp a pair", "C", "Cramp two boards face to face, to line them as a pair; or take it off");
    public static final Command WASTE = bench("waste", "Shade waste", "V", "Shade the waste between two lines");
    public static final Command RUB_OUT = bench("rub-out", "Rub out", "R", "Rub out pencil");
    public static final Command PUT_DOWN = bench("put-down", "Put down", "ESCAPE", "Put the tool down");

    /** What is taken in the hand, in the order in which it is needed. */
    public static final List<Command> TOOLS = List.of(
            FACE_SIDE,
            FACE_EDGE,
            NAME,
            RULE,
            STRAIGHT_EDGE,
            WINDING_STICKS,
            TRY_SQUARE,
            END_GRAIN,
            TURN,
            TRIM,
            SET_ASIDE,
            LINE,
            BEVEL,
            GAUGE,
            MATE,
            CRAMP,
            WASTE,
            CUT,
            RUB_OUT);

    /** What is of use only where joints are set out. */
    public static final List<Command> SETTING_OUT = List.of(LINE, BEVEL, GAUGE, MATE, CRAMP, WASTE, CUT);

    public static final Command MARKER =
            bench("marker", "Knife or pencil", "K", "Strike lines with the knife, or with the pencil");
    public static final Command CHOICE = bench(
            "choice",
            "Next choice",
            "J",
            "With a tool: measure from the next end or line, the next fence, the next mate");

    public static final Command LEFT =
            bench("left", "Left", "LEFT", "Roll the board a quarter turn; with a tool: move left");
    public static final Command RIGHT =
            bench("right", "Right", "RIGHT", "Roll the board a quarter turn; with a tool: move right");
    public static final Command UP = bench("up", "Up", "UP", "Turn the board end for end; with a tool: move up");
    public static final Command DOWN =
            bench("down", "Down", "DOWN", "Turn the board end for end; with a tool: move down");
    public static final Command ENTER = bench("enter", "Do it", "ENTER", "Do with the tool what it shows");

    public static final Command SHAPE =
            bench("shape", "Shape", "H", "Show the board's true shape larger: ×1, ×2, ×5, ×10, ×20");
    public static final Command SHAPE_BACK =
            bench("shape-back", "Shape smaller", "shift H", "Show the board's true shape less large");
    public static final Command ROOM =
            bench("room", "Another room", "O", "See what becomes of the board once it has settled in another room");

    public static final Command NEXT_BOARD = bench("next-board", "Next board", "PAGE_DOWN", "Take the next board");
    public static final Command BOARD_BEFORE =
            bench("board-before", "Board before", "PAGE_UP", "Take the board before");
    public static final Command UNDO = bench("undo", "Undo", "menu Z", "Take the last action back");
    public static final Command REDO = bench("redo", "Redo", "menu Y", "Do it again");
    public static final Command DRAWING =
            bench("drawing", "Working drawing", "D", "Show or hide the working drawing and the parts");
    public static final Command JOINT =
            bench("joint", "Joints", "U", "Show the joints of the working drawing larger, one after the other");
    public static final Command JOB =
            bench("job", "The job", "F5", "See the job as it would come out with the choices made so far");
    public static final Command DRY_FIT = bench(
            "dry-fit", "Dry fit", "Y", "Put the job together dry, from the boards cut to the lines that are on them");
    public static final Command REPORT = bench("report", "Board in words", "F2", "Read the board as text");
    public static final Command MENU =
            bench("menu", "What can be done here", "shift F10", "Open the menu at the pointer");
    public static final Command HINT =
            bench("hint", "Hint", "F3", "Ask for a hint: where to look, then what to check, then what the rule says");
    public static final Command ESTIMATE = bench(
            "estimate-clearance",
            "Estimate",
            "F4",
            "Say how near the nearest knot will come to a joint, before the board is turned");
    public static final Command NAME_SLIP = bench(
            "name-slip", "Name a slip", "F7", "In another hand's work: say which slip was made on the board in hand");
    public static final Command LESS_HELP =
            bench("less-help", "Less help", "", "Be told later from here on: after each part, or at hand-in");
    public static final Command HAND_IN = bench("hand-in", "Hand in", "menu ENTER", "Hand the work in to be marked");

    public static final List<Command> ALL = Stream.concat(
                    TOOLS.stream(),
                    Stream.of(
                            MARKER,
                            CHOICE,
                            PUT_DOWN,
                            LEFT,
                            RIGHT,
                            UP,
                            DOWN,
                            ENTER,
                            SHAPE,
                            SHAPE_BACK,
                            ROOM,
                            NEXT_BOARD,
                            BOARD_BEFORE,
                            UNDO,
                            REDO,
                            DRAWING,
                            JOINT,
                            JOB,
                            REPORT,
                            MENU,
                            HINT,
                            ESTIMATE,
                            NAME_SLIP,
                            LESS_HELP,
                            DRY_FIT,
                            HAND_IN))
            .toList();

    private BenchCommands() {}

    private static Command bench(String id, String word, String key, String help) {
        return new Command(id, Place.BENCH, word, key, help);
    }
}
