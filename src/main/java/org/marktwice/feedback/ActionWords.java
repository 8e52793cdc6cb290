package org.marktwice.feedback;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.marktwice.bench.Action;
import org.marktwice.bench.Cutter;
import org.marktwice.bench.Tool;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Trim;
import org.marktwice.rulebook.PracticeWords;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.SlipWords;
import org.marktwice.rulebook.Texts;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** What was done, as one would say it at the bench. */
public final class ActionWords {
    private final Scenario scenario;

    public ActionWords(Scenario scenario) {
        this.scenario = scenario;
    }

    public String of(Action action) {
        if (action instanceof Action.OnBoard on) return "Board " + on.board() + ": " + onBoard(on);
        if (action instanceof Action.RubOut rub) return "Rubbed out the pencil of step " + rub.step();
        if (action instanceof Action.Undo) return "Took the last step back";
        if (action instanceof Action.Redo) return "Did it again after all";
        if (action instanceof Action.Estimate e) return estimate(e);
        if (action instanceof Action.Hint h) return hint(h);
        if (action instanceof Action.LessHelp l) return "Asked for less help: " + PracticeWords.told(l.to());
        if (action instanceof Action.TakeOver) return "Took over what another hand had done";
        return "Handed in";
    }

    private String onBoard(Action.OnBoard action) {
        if (action instanceof Action.Measure a) return "measured from " + point(a.from()) + " to " + point(a.to());
        if (action instanceof Action.Test a) {
            if (a.with() == Tool.END_GRAIN) return "read the end grain of " + a.on().spoken();
            String where = a.at() == null ? "" : " at " + mm(a.at()) + " from end 1";
            String stock = a.from() == null ? "" : ", stock on " + a.from().spoken();
            return "tried " + a.on().spoken() + where + " with the " + a.with().spoken() + stock;
        }
        if (action instanceof Action.FaceSide a) {
            return "face side marked on " + a.on().spoken() + ", pointing to "
                    + a.towards().spoken();
        }
        if (action instanceof Action.FaceEdge a) {
            return "face edge marked on " + a.on().spoken() + ", pointing to "
                    + a.towards().spoken();
        }
        if (action instanceof Action.Name a) return "named “" + part(a.part()) + "” on " + point(a.at());
        if (action instanceof Action.Turning a) return "turned: " + facing(a.facing()) + trim(a);
        if (action instanceof Action.EstimateClearance a) return "estimated a clearance of " + mm(a.mm());
        if (action instanceof Action.Fault a) return "named a slip: " + SlipWords.title(a.slip());
        if (action instanceof Action.SetAside a)
            return "set aside, " + a.because().spoken();
        return onBoardSettingOut(action);
    }

    private String onBoardSettingOut(Action.OnBoard action) {
        if (action instanceof Action.Line a) {
            return a.with().spoken() + " line squared across " + a.on().spoken() + ", " + distance(a) + ", stock on "
                    + a.square().spoken();
        }
        if (action instanceof Action.Bevel a) {
            String from = a.from() instanceof Action.Datum.End end
                    ? end.end().spoken()
                    : "the line of step " + ((Action.Datum.Step) a.from()).step();
            return a.with().spoken() + " line at " + SheetModel.number(a.degrees()) + "° across " + a.on().spoken()
                    + ", " + mm(a.at()) + " from " + from + ", stock on "
                    + a.stock().spoken();
        }
        if (action instanceof Action.Gauge a) {
            return "gauged " + mm(a.set()) + " on " + a.on().spoken() + ", fence on "
                    + a.fence().spoken();
        }
        if (action instanceof Action.Cut a) {
            String done = a.with() == Cutter.SAW ? "sawn " : "chiselled ";
            return done + a.side().spoken() + " of step " + a.step();
        }
        if (action instanceof Action.Cramp a) {
            return "cramped to board " + a.mate() + ", " + a.on().spoken() + " against its " + a.to().spoken() + ", "
                    + a.level().spoken() + " level with its " + a.with().spoken();
        }
        if (action instanceof Action.Uncramp) return "taken out of the cramp";
        if (action instanceof Action.Waste a)
            return "waste shaded between the lines of steps " + a.between() + " and " + a.and();
        return action.verb();
    }

    /** {@code 86 mm from end 2}, {@code round from the line of step 7}, {@code from board D held against …}. */
    private static String distance(Action.Line line) {
        String from = line.from() instanceof Action.Datum.End end
                ? end.end().spoken()
                : "the line of step " + ((Action.Datum.Step) line.from()).step();
        if (line.mate() != null) return "from board " + line.mate() + " held against " + from;
        double at = line.at() == null ? 0 : line.at();
        return at == 0 ? "round from " + from : mm(at) + " from " + from;
    }

    private static String estimate(Action.Estimate estimate) {
        if (estimate.expects().isEmpty()) return "Expected to lose no marks";
        return "Expected to lose marks on: "
                + estimate.expects().stream()
                        .map(r -> RuleBook.rule(r).isPresent() ? Texts.of(r).title() : r)
                        .sorted()
                        .collect(Collectors.joining("; "));
    }

    private static String hint(Action.Hint hint) {
        String about =
                RuleBook.rule(hint.rule()).isPresent() ? Texts.of(hint.rule()).title() : hint.rule();
        return "Hint " + hint.grade() + " of " + Action.Hint.GRADES + ": " + about
                + (hint.board() == null ? "" : ", board " + hint.board());
    }

    private String part(String id) {
        return scenario.drawing().part(id).map(p -> p.name()).orElse(id);
    }

    public static String point(SurfacePoint p) {
        return String.format(
                Locale.ROOT, "%s (%s, %s)", p.surface().spoken(), SheetModel.number(p.u()), SheetModel.number(p.v()));
    }

    public static String facing(Map<Surface, Direction> facing) {
        return facing.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(e -> e.getKey().spoken() + " " + towards(e.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String towards(Direction direction) {
        return switch (direction) {
            case TOP -> "up";
            case BOTTOM -> "down";
            default -> "to the " + direction.id();
        };
    }

    private static String trim(Action.Turning turn) {
        Trim trim = turn.trim();
        if (trim == null) return "";
        return ", " + (trim.mm() == 0 ? "nothing" : mm(trim.mm())) + " off "
                + trim.end().spoken();
    }

    public static String mm(double value) {
        return SheetModel.number(value) + " mm";
    }
}
