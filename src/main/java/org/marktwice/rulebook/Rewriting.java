package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;

/**
 * An attempt's actions being rewritten. Steps that later actions speak of are told anew, so that they still mean the same
 * lines; an action that speaks of one that was taken out goes with it. What is put in gets a time between its neighbours.
 */
final class Rewriting {
    private final Attempt attempt;
    private final List<Row> rows = new ArrayList<>();

    /** @param was the step in the attempt as given; 0 where it was put in */
    private record Row(int was, Action action) {}

    Rewriting(Attempt attempt) {
        this.attempt = attempt;
        for (Action action : attempt.actions()) rows.add(new Row(rows.size() + 1, action));
    }

    static Predicate<Action> on(String board) {
        return a -> a instanceof Action.OnBoard on && on.board().equals(board);
    }

    Rewriting without(Predicate<Action> which) {
        rows.removeIf(row -> which.test(row.action()));
        return this;
    }

    Rewriting changing(UnaryOperator<Action> by) {
        rows.replaceAll(row -> new Row(row.was(), by.apply(row.action())));
        return this;
    }

    /** Puts steps in after the last action of this kind; before a hand-in where there is none. */
    Rewriting after(Predicate<Action> which, List<BoardWork.Step> steps) {
        int at = 0;
        for (int i = 0; i < rows.size(); i++) {
            if (which.test(rows.get(i).action())) at = i + 1;
        }
        return insert(at == 0 ? end() : at, steps);
    }

    /** Puts steps in the place of all actions of this kind, where the first of them stood; before a hand-in where there is none. */
    Rewriting instead(Predicate<Action> which, List<BoardWork.Step> steps) {
        int at = 0;
        while (at < rows.size() && !which.test(rows.get(at).action())) at++;
        int place = at == rows.size() ? end() : at;
        rows.removeIf(row -> which.test(row.action()));
        return insert(place, steps);
    }

    /** Where what is put at the end goes: before a hand-in. */
    private int end() {
        boolean handedIn = !rows.isEmpty() && rows.get(rows.size() - 1).action() instanceof Action.HandIn;
        return handedIn ? rows.size() - 1 : rows.size();
    }

    private Rewriting insert(int at, List<BoardWork.Step> steps) {
        double before = at == 0 ? 0 : rows.get(at - 1).action().t();
        double after = at == rows.size()
                ? before + 6.0 * (steps.size() + 1)
                : rows.get(at).action().t();
        for (int i = 0; i < steps.size(); i++) {
            double t = before + (after - before) * (i + 1) / (steps.size() + 1);
            double tenths = Math.max(before, Math.min(after, Math.round(t * 10) / 10.0));
            rows.add(at + i, new Row(0, steps.get(i).at(tenths)));
        }
        return this;
    }

    Attempt attempt() {
        int[] now = new int[attempt.actions().size() + 1]; // by the step that was; 0 where it is gone
        List<Action> actions = new ArrayList<>();
        for (Row row : rows) {
            if (!speaksOfKnown(row.action(), now)) continue;
            actions.add(told(row.action(), now));
            if (row.was() > 0) now[row.was()] = actions.size();
        }
        return new Attempt(attempt.scenario(), attempt.digest(), attempt.learner(), attempt.started(), actions);
    }

    private static boolean speaksOfKnown(Action action, int[] now) {
        if (action instanceof Action.RubOut a) return now[a.step()] > 0;
        if (action instanceof Action.Waste a) return now[a.between()] > 0 && now[a.and()] > 0;
        if (action instanceof Action.Cut a) return now[a.step()] > 0;
        if (action instanceof Action.Line a) return isKnown(a.from(), now);
        return !(action instanceof Action.Bevel a) || isKnown(a.from(), now);
    }

    private static boolean isKnown(Action.Datum from, int[] now) {
        return !(from instanceof Action.Datum.Step s) || now[s.step()] > 0;
    }

    private static Action told(Action action, int[] now) {
        if (action instanceof Action.RubOut a) return new Action.RubOut(a.t(), now[a.step()]);
        if (action instanceof Action.Waste a) {
            return new Action.Waste(a.t(), a.board(), a.joint(), now[a.between()], now[a.and()]);
        }
        if (action instanceof Action.Cut a) {
            return new Action.Cut(a.t(), a.board(), now[a.step()], a.with(), a.side());
        }
        if (action instanceof Action.Line a) {
            return new Action.Line(
                    a.t(), a.board(), a.on(), a.square(), told(a.from(), now), a.at(), a.mate(), a.with());
        }
        if (action instanceof Action.Bevel a) {
            return new Action.Bevel(
                    a.t(), a.board(), a.on(), a.stock(), told(a.from(), now), a.at(), a.degrees(), a.with());
        }
        return action;
    }

    private static Action.Datum told(Action.Datum from, int[] now) {
        return from instanceof Action.Datum.Step s ? new Action.Datum.Step(now[s.step()]) : from;
    }
}
