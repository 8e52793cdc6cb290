package org.marktwice.classroom;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.marktwice.bench.Action;
import org.marktwice.bench.Action.Datum;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.drawing.Trim;
import org.marktwice.files.AttemptFile;
import org.marktwice.files.FileRefused;
import org.marktwice.rulebook.Situation;
import org.marktwice.rulebook.Slip;
import org.marktwice.rulebook.Slipped;
import org.marktwice.rulebook.Slips;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * Attempts of many learners at one exercise, no two alike: made from a good attempt, the same for a seed. Learners take the
 * boards in an order of their own, one board after the other or one kind of work after the other, prove surfaces in any
 * order and forget to now and then; they write names, lay rules and straight-edges where it suits them, trim from either
 * end, read a rule half a millimetre amiss one time in six, think again and rub out, take seconds or half a minute over an
 * action, and make none to three of the known slips. One in ten doesn't hand in.
 */
public final class Learners {
    private final Situation start;
    private final Attempt good;

    /** @param good an attempt that can be done, as its file has it */
    public Learners(Scenario scenario, Attempt good) {
        this.start = Situation.of(Bench.of(scenario));
        this.good = good;
    }

    /** At a shipped exercise, from its perfect sample attempt. @param scenarios where it lies */
    public static Learners at(Scenario scenario, Path scenarios) throws FileRefused {
        Path sample = scenarios.resolve("attempts").resolve(scenario.id() + "-perfect.attempt.jsonl");
        return new Learners(scenario, AttemptFile.read(sample).attempt());
    }

    /** @param was its step in the attempt that it was taken from; 0 where it is the learner's own */
    private record Row(int was, Action action) {}

    public Attempt attempt(int number) {
        Random random =
                new Random(number * 0x9E3779B97F4A7C15L + good.scenario().hashCode());
        Attempt slipped = slipped(random);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < slipped.actions().size(); i++)
            rows.add(new Row(i + 1, slipped.actions().get(i)));
        List<Row> own = new ArrayList<>();
        for (Row row : inOrder(rows, random)) {
            double kept = row.action() instanceof Action.Test || row.action() instanceof Action.Measure ? 0.93 : 0.99;
            if (row.action() instanceof Action.HandIn) kept = 0.9;
            if (random.nextDouble() < kept) own.add(new Row(row.was(), jittered(row.action(), random)));
            if (random.nextDouble() < 0.03) own.add(row);
        }
        String learner = String.format("P%04d", number);
        String started =
                String.format("2026-02-%02dT%02d:%02d:%02dZ", 1 + number % 28, 8 + number % 7, number % 60, 17);
        return new Attempt(slipped.scenario(), slipped.digest(), learner, started, done(own, random));
    }

    private Attempt slipped(Random random) {
        List<Slip> slips = new ArrayList<>(List.of(Slip.values()));
        Collections.shuffle(slips, random);
        int wanted = random.nextInt(4);
        if (wanted == 0) return good;
        List<Slipped> made = Slips.several(slips.subList(0, wanted * 2), start, good, random.nextLong());
        return made.isEmpty()
                ? good
                : made.get(Math.min(wanted, made.size()) - 1).attempt();
    }

    /** Marks, names and turns before anything is set out, as mates must be known; boards in any order. */
    private List<Row> inOrder(List<Row> rows, Random random) {
        boolean byKind = random.nextInt(3) == 0;
        Map<String, Integer> places = new HashMap<>();
        start.scenario().boards().forEach(b -> places.put(b.id(), random.nextInt(1000)));
        Map<Integer, Integer> within = new HashMap<>();
        boolean setting = false;
        for (Row row : rows) {
            setting |= isSettingOut(row.action());
            int block = row.action() instanceof Action.HandIn ? 4 : setting ? 3 : 1;
            int kind = byKind && block == 1 ? kind(row.action()) : 0;
            int board = row.action() instanceof Action.OnBoard b ? places.getOrDefault(b.board(), 0) : 0;
            int shuffled = row.action() instanceof Action.Test ? random.nextInt(20) - 25 : 0;
            within.put(row.was(), block * 100_000_000 + kind * 10_000_000 + board * 5_000 + row.was() + shuffled);
        }
        List<Row> sorted = new ArrayList<>(rows);
        sorted.sort(Comparator.comparing(r -> within.getOrDefault(r.was(), 0)));
        if (setting) swapNeighbours(sorted, random);
        return sorted;
    }

    /** Lines of one board struck in another order, where neither needs the other. */
    private static void swapNeighbours(List<Row> rows, Random random) {
        for (int i = 1; i < rows.size(); i++) {
            Row one = rows.get(i - 1);
            Row other = rows.get(i);
            boolean lines = one.action() instanceof Action.Line && other.action() instanceof Action.Line;
            if (lines && !refers(other.action(), one.was()) && random.nextInt(6) == 0) Collections.swap(rows, i - 1, i);
        }
    }

    private static boolean refers(Action action, int step) {
        return action instanceof Action.Line l && l.from() instanceof Datum.Step s && s.step() == step;
    }

    private static boolean isSettingOut(Action a) {
        return a instanceof Action.Line
                || a instanceof Action.Gauge
                || a instanceof Action.Bevel
                || a instanceof Action.Waste
                || a instanceof Action.Cut;
    }

    private static int kind(Action action) {
        if (action instanceof Action.Test || action instanceof Action.FaceSide || action instanceof Action.FaceEdge) {
            return 0;
        }
        return action instanceof Action.Name ? 1 : 2;
    }

    private Action jittered(Action action, Random r) {
        if (action instanceof Action.Test a && a.at() != null) {
            return new Action.Test(a.t(), a.board(), a.with(), a.on(), a.at() + r.nextInt(81) - 40);
        }
        if (action instanceof Action.Measure a) {
            return new Action.Measure(a.t(), a.board(), near(a.from(), r, 0.5, 1), near(a.to(), r, 0.5, 1));
        }
        if (action instanceof Action.Name a && r.nextBoolean()) {
            return new Action.Name(a.t(), a.board(), a.part(), near(a.at(), r, 1, 12));
        }
        if (action instanceof Action.Turning a && r.nextInt(4) == 0) {
            Surface end = r.nextBoolean() ? Surface.END_1 : Surface.END_2;
            return new Action.Turning(a.t(), a.board(), a.facing(), new Trim(end, r.nextInt(10)));
        }
        if (action instanceof Action.Line a && a.at() != null && a.at() != 0) {
            return new Action.Line(a.t(), a.board(), a.on(), a.square(), a.from(), a.at() + amiss(r), null, a.with());
        }
        if (action instanceof Action.Gauge a) {
            return new Action.Gauge(a.t(), a.board(), a.on(), a.fence(), a.set() + amiss(r));
        }
        return action;
    }

    private static double amiss(Random r) {
        return r.nextInt(6) > 0 ? 0 : r.nextBoolean() ? 0.5 : -0.5;
    }

    private static SurfacePoint near(SurfacePoint p, Random r, double unit, int most) {
        return new SurfacePoint(
                p.surface(),
                Math.max(0, p.u() + unit * (r.nextInt(2 * most + 1) - most)),
                Math.max(0, p.v() + unit * (r.nextInt(2 * most + 1) - most)));
    }

    /** What of it can be done, one after the other, in times of the learner's own. */
    private List<Action> done(List<Row> rows, Random random) {
        Map<Integer, Integer> now = new HashMap<>();
        Bench bench = start.bench();
        long tenths = 20 + random.nextInt(200);
        for (Row row : rows) {
            Optional<Action> action = told(row.action(), tenths / 10.0, now);
            if (action.isEmpty()) continue;
            Bench before = bench;
            bench = after(bench, action.get());
            if (bench == before) continue;
            now.put(row.was(), bench.steps());
            tenths += 5 + (long) (-60 * Math.log(1 - random.nextDouble()));
            if (!(action.get() instanceof Action.Line line) || random.nextInt(40) > 0) continue;
            // thought again; a knife line stays
            before = bench;
            bench = after(bench, new Action.RubOut(tenths / 10.0, bench.steps()));
            if (bench == before) continue;
            tenths += 30;
            bench = after(bench, told(line, tenths / 10.0, Map.of()).orElse(line));
            now.put(row.was(), bench.steps());
        }
        return bench.log();
    }

    /** The bench after an action, or as it was where that can't be done. */
    private static Bench after(Bench bench, Action action) {
        try {
            return bench.after(action);
        } catch (CannotDo e) {
            return bench;
        }
    }

    /**
     * With the time and the steps of the new attempt; empty where what it speaks of is gone.
     *
     * @param now the step that each step has become; empty where steps stay
     */
    private static Optional<Action> told(Action action, double t, Map<Integer, Integer> now) {
        if (action instanceof Action.Test a) {
            return Optional.of(new Action.Test(t, a.board(), a.with(), a.on(), a.at()));
        }
        if (action instanceof Action.Measure a) {
            return Optional.of(new Action.Measure(t, a.board(), a.from(), a.to()));
        }
        if (action instanceof Action.FaceSide a) {
            return Optional.of(new Action.FaceSide(t, a.board(), a.on(), a.towards()));
        }
        if (action instanceof Action.FaceEdge a) {
            return Optional.of(new Action.FaceEdge(t, a.board(), a.on(), a.towards()));
        }
        if (action instanceof Action.Name a) return Optional.of(new Action.Name(t, a.board(), a.part(), a.at()));
        if (action instanceof Action.Turning a) {
            return Optional.of(new Action.Turning(t, a.board(), a.facing(), a.trim()));
        }
        if (action instanceof Action.SetAside a) return Optional.of(new Action.SetAside(t, a.board(), a.because()));
        if (action instanceof Action.Gauge a) {
            return Optional.of(new Action.Gauge(t, a.board(), a.on(), a.fence(), a.set()));
        }
        if (action instanceof Action.HandIn) return Optional.of(new Action.HandIn(t));
        return speakingOfSteps(action, t, now);
    }

    private static Optional<Action> speakingOfSteps(Action action, double t, Map<Integer, Integer> now) {
        if (action instanceof Action.Waste a) {
            return step(a.between(), now)
                    .flatMap(one ->
                            step(a.and(), now).map(other -> new Action.Waste(t, a.board(), a.joint(), one, other)));
        }
        if (action instanceof Action.RubOut a) return step(a.step(), now).map(s -> new Action.RubOut(t, s));
        if (action instanceof Action.Cut a) {
            return step(a.step(), now).map(s -> new Action.Cut(t, a.board(), s, a.with(), a.side()));
        }
        if (!(action instanceof Action.Line a)) return Optional.empty();
        Optional<Datum> from =
                a.from() instanceof Datum.Step s ? step(s.step(), now).map(Datum.Step::new) : Optional.of(a.from());
        return from.map(f -> new Action.Line(t, a.board(), a.on(), a.square(), f, a.at(), a.mate(), a.with()));
    }

    private static Optional<Integer> step(int was, Map<Integer, Integer> now) {
        return now.isEmpty() ? Optional.of(was) : Optional.ofNullable(now.get(was));
    }
}
