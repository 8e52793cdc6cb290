package org.marktwice.bench;

import static org.marktwice.timber.Figures.mm;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Trim;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * Whether an action can be done. Only what is impossible or means nothing is refused: what is merely wrong, such as a
 * face side on an edge, must stay possible, for the rules to find.
 */
final class Checks {
    /** Positions are compared with this much slack, so that a figure that went through arithmetic still lies on the board; millimetres. */
    private static final double SLACK = 1e-6;

    private final Bench bench;
    private final BoardState state;
    private final Board board;

    private Checks(Bench bench, BoardState state) {
        this.bench = bench;
        this.state = state;
        this.board = state.board();
    }

    static void possible(Bench bench, Action action) throws CannotDo {
        if (action instanceof Action.RubOut rub) {
            RubbingOut.possible(bench, rub);
        } else if (action instanceof Action.LessHelp less) {
            lessHelp(bench, less);
        } else if (action instanceof Action.Hint hint) {
            if (hint.board() != null && bench.find(hint.board()).isEmpty()) {
                throw refused("Board %s is not on the rack", hint.board());
            }
            if (bench.guidance() == Practice.Guidance.EXAMINATION) {
                throw refused("There are no hints in an examination");
            }
        } else if (action instanceof Action.TakeOver && bench.takenOver() > 0) {
            throw refused("Another hand's work was taken over before");
        } else if (action instanceof Action.OnBoard onBoard) {
            Optional<BoardState> state = bench.find(onBoard.board());
            if (state.isEmpty()) throw refused("Board %s is not on the rack", onBoard.board());
            new Checks(bench, state.get()).possible(onBoard);
        }
    }

    private static void lessHelp(Bench bench, Action.LessHelp less) throws CannotDo {
        if (less.to() == Practice.Guidance.EXAMINATION) {
            throw refused("An examination is set by the teacher");
        }
        if (less.to().compareTo(bench.guidance()) <= 0) {
            throw refused("That would not be less help than now");
        }
    }

    static void undoGranted(Scenario scenario) throws CannotDo {
        if (!scenario.grants(Practice.Aid.UNDO)) {
            throw refused("This exercise has no undo: rub out the pencil, or do it again");
        }
    }

    private void possible(Action.OnBoard action) throws CannotDo {
        if (action instanceof Action.Measure m) {
            onBoard(m.from());
            onBoard(m.to());
        } else if (action instanceof Action.Test t) {
            test(t);
        } else if (action instanceof Action.FaceSide f) {
            mark(Mark.Kind.FACE_SIDE, f.on(), f.towards());
        } else if (action instanceof Action.FaceEdge f) {
            mark(Mark.Kind.FACE_EDGE, f.on(), f.towards());
        } else if (action instanceof Action.Name n) {
            if (bench.scenario().drawing().part(n.part()).isEmpty()) {
                throw refused("The drawing has no part \"%s\"", n.part());
            }
            onBoard(n.at());
        } else if (action instanceof Action.Fault) {
            if (bench.takenOver() == 0) throw refused("There is no other hand's work here to find a fault in");
        } else if (action instanceof Action.Turning t) {
            notAside();
            turn(t);
        } else if (action instanceof Action.Line line) {
            notAside();
            line(line);
        } else if (action instanceof Action.Bevel bevel) {
            notAside();
            bevel(bevel);
        } else if (action instanceof Action.Gauge gauge) {
            notAside();
            gauge(gauge);
        } else if (action instanceof Action.Waste waste) {
            notAside();
            waste(waste);
        } else if (action instanceof Action.Cut cut) {
            notAside();
            cut(cut);
        } else if (action instanceof Action.Cramp cramp) {
            notAside();
            Cramping.possible(bench, cramp);
        } else if (action instanceof Action.Uncramp && bench.paired(board.id()).isEmpty()) {
            throw refused("Board %s lies in no cramp", board.id());
        }
    }

    private void notAside() throws CannotDo {
        if (state.setAside().isPresent()) {
            throw refused("Board %s is set aside: name it to take it up again", board.id());
        }
    }

    private void onBoard(SurfacePoint p) throws CannotDo {
        within(
                p.u(),
                board.uExtent(p.surface()),
                p.surface(),
                axisWord(p.surface().uAxis()));
        within(
                p.v(),
                board.vExtent(p.surface()),
                p.surface(),
                axisWord(p.surface().vAxis()));
    }

    private void within(double at, double extent, Surface surface, String along) throws CannotDo {
        if (!(at >= -SLACK && at <= extent + SLACK)) {
            throw refused(
                    "%s mm lies off %s of board %s, which measures %s mm %s",
                    mm(at), surface.spoken(), board.id(), mm(extent), along);
        }
    }

    private static String axisWord(int axis) {
        return switch (axis) {
            case 0 -> "along the grain";
            case 1 -> "across the width";
            default -> "through the thickness";
        };
    }

    private void test(Action.Test test) throws CannotDo {
        if (test.with() == Tool.WINDING_STICKS && test.on().isEnd()) {
            throw refused("Winding sticks need the length of a board: try a face or an edge");
        }
        if (test.with() == Tool.END_GRAIN) endGrain(test);
        stock(test);
        Double at = test.at();
        if (at == null) return;
        if (test.on().isEnd()) throw refused("An end has no position along the grain");
        within(at, board.size().length(), test.on(), axisWord(0));
    }

    private void endGrain(Action.Test test) throws CannotDo {
        if (!test.on().isEnd()) throw refused("The arcs of the end grain show on an end: look at end 1 or end 2");
        if (board.isSheet()) throw refused("Board %s is sheet stuff: it has plies and no pith", board.id());
    }

    private void stock(Action.Test test) throws CannotDo {
        Surface from = test.from();
        if (from == null) return;
        if (test.with() != Tool.TRY_SQUARE) throw refused("Only a try-square has a stock that bears on a surface");
        adjoining(test.on(), from, "the stock of the square bears on an adjoining surface");
    }

    private void mark(Mark.Kind kind, Surface on, Surface towards) throws CannotDo {
        if (on.isEnd()) throw refused("A %s mark goes on a long surface, not on an end", kind.spoken());
        if (!on.adjoins(towards)) {
            throw refused(
                    "%s and %s share no arris: a mark points at an adjoining surface",
                    capital(on.spoken()), towards.spoken());
        }
        for (Mark m : state.marks()) {
            if (m.kind() == kind && m.on() == on && m.towards() == towards) {
                throw refused("%s of board %s carries that mark already", capital(on.spoken()), board.id());
            }
        }
    }

    private void turn(Action.Turning action) throws CannotDo {
        if (action.facing().size() != 2) throw refused("A turn is named by where two adjoining surfaces look");
        if (Effects.facing(action).isEmpty()) {
            List<Surface> two = action.facing().keySet().stream().sorted().toList();
            throw refused(
                    "No board lies so: %s cannot look %s while %s looks %s",
                    two.get(0).spoken(),
                    looks(action, two.get(0)).id(),
                    two.get(1).spoken(),
                    looks(action, two.get(1)).id());
        }
        Trim trim = action.trim();
        if (trim != null) trim(trim);
    }

    private static Direction looks(Action.Turning action, Surface surface) {
        return Objects.requireNonNull(action.facing().get(surface));
    }

    private void trim(Trim trim) throws CannotDo {
        Optional<Part> part =
                state.named().flatMap(n -> bench.scenario().drawing().part(n.part()));
        double length = board.size().length();
        if (part.isEmpty()) {
            if (!(trim.mm() < length)) {
                throw refused("Board %s is %s mm long: %s mm cannot come off", board.id(), mm(length), mm(trim.mm()));
            }
            return;
        }
        double surplus = Math.max(0, length - part.get().size().length());
        if (!(trim.mm() <= surplus + SLACK)) {
            throw refused(
                    "Board %s has %s mm to spare for %s: %s mm cannot come off",
                    board.id(), mm(surplus), part.get().name(), mm(trim.mm()));
        }
    }

    private void line(Action.Line line) throws CannotDo {
        if (line.on().isEnd()) throw refused("A line is squared across a long surface; use the gauge on an end");
        if (line.square().isEnd()) throw refused("The stock of the square bears on a face or an edge, not on an end");
        adjoining(line.on(), line.square(), "the stock of the square bears on an adjoining surface");
        inReach(line.on());
        String mate = line.mate();
        Double at = line.at();
        if ((mate == null) == (at == null)) throw refused("A line needs either a distance or a mate, not both");
        if (mate != null) {
            if (mate.equals(board.id())) throw refused("Board %s cannot be its own mate", board.id());
            if (bench.find(mate).isEmpty()) throw refused("Board %s is not on the rack", mate);
        }
        if (line.from() instanceof Action.Datum.End end && !end.end().isEnd()) {
            throw refused(
                    "A distance runs from an end or from a line, not from %s",
                    end.end().spoken());
        }
        if (line.from() instanceof Action.Datum.Step step && !(standing(step.step()) instanceof Action.Line)) {
            throw refused("Step %d is no line squared across the board", step.step());
        }
        if (at != null) {
            double x = Placed.on(state, line, id -> bench.board(id).board(), bench::action)
                    .x();
            if (!(x >= -SLACK && x <= board.size().length() + SLACK)) {
                throw refused(
                        "That line would lie %s mm from end 1; board %s is %s mm long",
                        mm(x), board.id(), mm(board.size().length()));
            }
        }
    }

    private void bevel(Action.Bevel bevel) throws CannotDo {
        double flattest = Action.Bevel.FLATTEST;
        if (!(bevel.degrees() >= flattest && bevel.degrees() <= 180 - flattest)) {
            throw refused("A bevel is set between %s and %s degrees", mm(flattest), mm(180 - flattest));
        }
        // Where it begins it is bound as a squared line is.
        line(new Action.Line(
                bevel.t(), bevel.board(), bevel.on(), bevel.stock(), bevel.from(), bevel.at(), null, bevel.with()));
    }

    /** What lies against the other board in the cramp can't be got at. */
    private void inReach(Surface on) throws CannotDo {
        Optional<Pairing> pair = bench.paired(board.id());
        if (pair.isPresent() && pair.get().touches() == on) {
            throw refused(
                    "%s lies against board %s: take the cramp off first",
                    capital(on.spoken()), pair.get().there());
        }
    }

    private void gauge(Action.Gauge gauge) throws CannotDo {
        inReach(gauge.on());
        adjoining(gauge.on(), gauge.fence(), "the fence bears on an adjoining surface");
        double reach = board.size().along(gauge.fence().axis());
        if (!(gauge.set() > 0 && gauge.set() < reach)) {
            throw refused(
                    "Set to %s mm the gauge misses %s of board %s, which measures %s mm %s",
                    mm(gauge.set()),
                    gauge.on().spoken(),
                    board.id(),
                    mm(reach),
                    axisWord(gauge.fence().axis()));
        }
    }

    private void adjoining(Surface on, Surface other, String rule) throws CannotDo {
        if (!on.adjoins(other)) {
            throw refused("%s and %s share no arris: %s", capital(on.spoken()), other.spoken(), rule);
        }
    }

    private void waste(Action.Waste waste) throws CannotDo {
        if (bench.scenario().drawing().joint(waste.joint()).isEmpty()) {
            throw refused("The drawing has no joint \"%s\"", waste.joint());
        }
        if (waste.between() == waste.and()) throw refused("Waste lies between two lines, not at one");
        for (int step : new int[] {waste.between(), waste.and()}) {
            line(step);
        }
    }

    private void cut(Action.Cut cut) throws CannotDo {
        line(cut.step());
        if (state.cut(cut.step()).isPresent()) throw refused("The line of step %d is cut already", cut.step());
    }

    /** A line or a gauge line that stands on the board. */
    private void line(int step) throws CannotDo {
        Action.OnBoard found = standing(step);
        if (found instanceof Action.Waste || found instanceof Action.Cut) throw refused("Step %d is no line", step);
    }

    /** What this step left on this board: a line, a gauge line or shaded waste. */
    private Action.OnBoard standing(int step) throws CannotDo {
        if (step < 1 || step > bench.steps()) throw refused("There is no step %d yet", step);
        Action.OnBoard found = standingAt(step);
        if (found != null) return found;
        Action there = bench.action(step);
        if (!(there instanceof Action.Line || there instanceof Action.Gauge || there instanceof Action.Bevel)) {
            throw refused("Step %d is no line", step);
        }
        if (there instanceof Action.OnBoard other && !other.board().equals(board.id())) {
            throw refused("The line of step %d is on board %s, not on board %s", step, other.board(), board.id());
        }
        throw refused("The line of step %d is no longer on board %s", step, board.id());
    }

    private Action.@Nullable OnBoard standingAt(int step) {
        for (BoardState.Done<? extends Action.OnBoard> done : state.struck()) {
            if (done.step() == step) return done.action();
        }
        return null;
    }

    static CannotDo refused(String format, Object... figures) {
        return new CannotDo(String.format(Locale.ROOT, format, figures));
    }

    private static String capital(String spoken) {
        return spoken.substring(0, 1).toUpperCase(Locale.ROOT) + spoken.substring(1);
    }
}
