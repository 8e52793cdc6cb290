package org.marktwice.bench;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Trim;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** One thing a learner did. {@code t} is seconds since the attempt was started. */
public sealed interface Action {
    double t();

    /** The word in the journal's {@code do}. */
    String verb();

    /** An action on one board. */
    sealed interface OnBoard extends Action {
        String board();
    }

    /**
     * The steel rule laid from one point to another.
     *
     * @param reads what it read when it was laid, millimetres, or null; a note that counts for nothing
     */
    record Measure(
            double t,
            String board,
            SurfacePoint from,
            SurfacePoint to,
            @Nullable Double reads) implements OnBoard {
        public Measure(double t, String board, SurfacePoint from, SurfacePoint to) {
            this(t, board, from, to, null);
        }

        @Override
        public String verb() {
            return "measure";
        }
    }

    /**
     * A surface tried with a tool.
     *
     * @param at a position along the grain (millimetres), or null along or over the whole board
     * @param from the surface that a try-square's stock bears on, or null for the usual one ({@link ToolReading#stock})
     * @param reads what the tool read when it was laid, or null; a note that counts for nothing, since every reading is
     *     taken anew ({@link ToolReading#of})
     */
    record Test(
            double t,
            String board,
            Tool with,
            Surface on,
            @Nullable Double at,
            @Nullable Surface from,
            @Nullable Double reads)
            implements OnBoard {
        public Test(double t, String board, Tool with, Surface on, @Nullable Double at) {
            this(t, board, with, on, at, null, null);
        }

        @Override
        public String verb() {
            return "test";
        }
    }

    /** The face-side mark, its tail running off at the arris shared with {@code towards}. */
    record FaceSide(double t, String board, Surface on, Surface towards) implements OnBoard {
        @Override
        public String verb() {
            return "face-side";
        }
    }

    /** The face-edge mark, its point touching the arris shared with {@code towards}. */
    record FaceEdge(double t, String board, Surface on, Surface towards) implements OnBoard {
        @Override
        public String verb() {
            return "face-edge";
        }
    }

    /** A part's name written on a board. */
    record Name(double t, String board, String part, SurfacePoint at) implements OnBoard {
        @Override
        public String verb() {
            return "name";
        }
    }

    /** The board turned as it will lie in the job, and where it will be trimmed. */
    record Turning(
            double t,
            String board,
            Map<Surface, Direction> facing,
            @Nullable Trim trim) implements OnBoard {
        public Turning {
            facing = Map.copyOf(facing);
        }

        @Override
        public String verb() {
            return "turn";
        }
    }

    /** The board refused, with the reason. */
    record SetAside(double t, String board, Reason because) implements OnBoard {
        @Override
        public String verb() {
            return "set-aside";
        }
    }

    /** A line squared across a surface. Either {@code at} or {@code mate} is given, never both. */
    record Line(
            double t,
            String board,
            Surface on,
            Surface square,
            Datum from,
            @Nullable Double at,
            @Nullable String mate,
            Marker with)
            implements OnBoard {
        @Override
        public String verb() {
            return "line";
        }
    }

    /**
     * A line struck across a surface at an angle, with the sliding bevel.
     *
     * @param stock the surface that the bevel's stock bears on
     * @param at where the line begins at the stock's arris, from {@code from}
     * @param degrees between the stock, as it runs towards end-2, and the line; 90 is square
     */
    record Bevel(double t, String board, Surface on, Surface stock, Datum from, double at, double degrees, Marker with)
            implements OnBoard {
        /** Flatter than this, or as far from 180, a bevel isn't set. */
        public static final double FLATTEST = 5;

        @Override
        public String verb() {
            return "bevel";
        }
    }

    /** A line run along with the marking gauge, its fence on a surface. */
    record Gauge(double t, String board, Surface on, Surface fence, double set) implements OnBoard {
        @Override
        public String verb() {
            return "gauge";
        }
    }

    /** The waste of a joint shaded between two earlier lines (steps). */
    record Waste(double t, String board, String joint, int between, int and) implements OnBoard {
        @Override
        public String verb() {
            return "waste";
        }
    }

    /**
     * Two boards cramped together, to be lined as a pair: {@code on} of the one lies against {@code to} of the other, with an
     * end of each level.
     *
     * @param level the end of {@code board} that is level with the end {@code with} of {@code mate}
     */
    record Cramp(double t, String board, Surface on, String mate, Surface to, Surface level, Surface with)
            implements OnBoard {
        @Override
        public String verb() {
            return "cramp";
        }
    }

    /** The cramp taken off a board and its mate. */
    record Uncramp(double t, String board) implements OnBoard {
        @Override
        public String verb() {
            return "uncramp";
        }
    }

    /**
     * The decision where a cut runs against a line: no game of skill, what is decided is done exactly.
     *
     * @param step the line
     */
    record Cut(double t, String board, int step, Cutter with, CutAt side) implements OnBoard {
        @Override
        public String verb() {
            return "cut";
        }
    }

    /** Pencil of an earlier step rubbed out. */
    record RubOut(double t, int step) implements Action {
        @Override
        public String verb() {
            return "rub-out";
        }
    }

    /** The last action that still counts taken back. */
    record Undo(double t) implements Action {
        @Override
        public String verb() {
            return "undo";
        }
    }

    /** What was last taken back done again. */
    record Redo(double t) implements Action {
        @Override
        public String verb() {
            return "redo";
        }
    }

    /**
     * What the learner expects to lose marks on; said before handing in.
     *
     * @param expects ids of rules
     * @param parts ids of parts; null where nothing was said of parts
     */
    record Estimate(double t, Set<String> expects, @Nullable Set<String> parts) implements Action {
        public Estimate {
            expects = Set.copyOf(expects);
            parts = parts == null ? null : Set.copyOf(parts);
        }

        public Estimate(double t, Set<String> expects) {
            this(t, expects, null);
        }

        @Override
        public String verb() {
            return "estimate";
        }
    }

    /** How far the learner expects the nearest knot of a board to be from a joint, millimetres; said before it is turned. */
    record EstimateClearance(double t, String board, double mm) implements OnBoard, Remark {
        @Override
        public String verb() {
            return "estimate-clearance";
        }
    }

    /**
     * A hint that was asked for and given.
     *
     * @param rule the rule that it is about
     * @param board with {@code part} and {@code joint}: what it is about, each where it applies
     * @param grade 1 where to look, 2 what to check, 3 what the rule says
     */
    record Hint(
            double t,
            String rule,
            @Nullable String board,
            @Nullable String part,
            @Nullable String joint,
            int grade) implements Remark {
        /** How many grades there are. */
        public static final int GRADES = 3;

        @Override
        public String verb() {
            return "hint";
        }
    }

    /** From here on the learner wants to be told later than the scenario would tell. */
    record LessHelp(double t, Practice.Guidance to) implements Remark {
        @Override
        public String verb() {
            return "less-help";
        }
    }

    /**
     * Everything before was done by another hand, with slips in it, and is taken over to be put right.
     *
     * @param seed what the slips were made from
     */
    record TakeOver(double t, int seed) implements Remark {
        @Override
        public String verb() {
            return "take-over";
        }
    }

    /** A slip of the other hand named. @param slip its id in the trade's list */
    record Fault(double t, String board, String slip) implements OnBoard {
        @Override
        public String verb() {
            return "fault";
        }
    }

    /** What leaves the boards as they are and is not taken back by undo. */
    sealed interface Remark extends Action {}

    record HandIn(double t) implements Action {
        @Override
        public String verb() {
            return "hand-in";
        }
    }

    /** Where a distance runs from: a board's end as it is, or an earlier line. */
    sealed interface Datum {
        record End(Surface end) implements Datum {}

        record Step(int step) implements Datum {}
    }
}
