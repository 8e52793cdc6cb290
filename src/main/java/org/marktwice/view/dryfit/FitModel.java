package org.marktwice.view.dryfit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Bench;
import org.marktwice.fit.DryFit;
import org.marktwice.fit.Hand;
import org.marktwice.fit.JointFit;
import org.marktwice.fit.Tools;
import org.marktwice.picture.FitPicture;
import org.marktwice.rulebook.FitLimits;
import org.marktwice.rulebook.FitSheet;
import org.marktwice.rulebook.FitSheet.Kind;
import org.marktwice.rulebook.FitSheet.Line;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Climate;

/** What is asked of a dry fit, what comes of it, and what is being looked at. */
final class FitModel {
    private final Bench bench;
    private final List<FitLimits> choices;
    private final List<Runnable> listeners = new ArrayList<>();
    private FitLimits limits;
    private @Nullable Climate room;
    private boolean careful;
    private long seed = 1;
    private FitSheet sheet;
    private @Nullable String chosen;

    FitModel(Bench bench) {
        this.bench = bench;
        this.choices = FitLimits.all(bench.scenario().practice());
        this.limits = choices.get(0);
        this.sheet = made();
    }

    private FitSheet made() {
        DryFit fit = DryFit.of(bench, careful ? Hand.careful(seed) : Hand.EXACT, Tools.TRUE);
        Climate in = room;
        return FitSheet.of(bench, in == null ? fit : fit.in(in), limits);
    }

    void addListener(Runnable listener) {
        listeners.add(listener);
    }

    private void changed(boolean anew) {
        if (anew) sheet = made();
        for (Runnable listener : List.copyOf(listeners)) listener.run();
    }

    Bench bench() {
        return bench;
    }

    Scenario scenario() {
        return bench.scenario();
    }

    FitSheet sheet() {
        return sheet;
    }

    List<FitLimits> choices() {
        return choices;
    }

    FitLimits limits() {
        return limits;
    }

    void judgeBy(FitLimits next) {
        limits = next;
        changed(true);
    }

    void judgeByNext() {
        judgeBy(choices.get((choices.indexOf(limits) + 1) % choices.size()));
    }

    Optional<Climate> room() {
        return Optional.ofNullable(room);
    }

    /** @param next where the job has stood until its wood settled; null where it is as it was made */
    void in(@Nullable Climate next) {
        room = next;
        changed(true);
    }

    boolean isCareful() {
        return careful;
    }

    long seed() {
        return seed;
    }

    /** As struck by a careful hand, which reads and strikes a little amiss; or by one that doesn't. */
    void byCarefulHand(boolean on, long number) {
        careful = on;
        seed = number;
        changed(true);
    }

    Optional<Line> chosen() {
        return sheet.lines().stream().filter(l -> key(l).equals(chosen)).findFirst();
    }

    void choose(@Nullable Line line) {
        chosen = line == null ? null : key(line);
        changed(false);
    }

    private static String key(Line line) {
        return line.kind() + " " + line.id();
    }

    void chooseNext(int step) {
        List<Line> all = sheet.lines();
        if (all.isEmpty()) return;
        int now = chosen().map(all::indexOf).orElse(step > 0 ? -1 : all.size());
        choose(all.get(Math.max(0, Math.min(all.size() - 1, now + step))));
    }

    /** The next line about a part, after the one that is chosen. */
    void chooseAbout(String part) {
        List<Line> all = sheet.lines();
        int now = chosen().map(all::indexOf).orElse(-1);
        for (int i = 1; i <= all.size(); i++) {
            Line line = all.get((now + i) % all.size());
            if (!line.parts().contains(part)) continue;
            choose(line);
            return;
        }
    }

    /** The parts that what is chosen is about; none where nothing is. */
    Set<String> picked() {
        return chosen().map(l -> Set.copyOf(l.parts())).orElse(Set.of());
    }

    /** What is picked out in place: every joint that can be put together, and a step that is chosen. */
    List<FitPicture.Spot> spots() {
        List<FitPicture.Spot> spots = new ArrayList<>();
        Optional<Line> now = chosen();
        for (Line line : sheet.lines()) {
            boolean isChosen = now.filter(line::equals).isPresent();
            boolean others = line.kind() == Kind.JOINT && now.isEmpty() && line.verdict() != Verdict.SOUND;
            if (isChosen || others) spot(line, isChosen).ifPresent(spots::add);
        }
        return spots;
    }

    private Optional<FitPicture.Spot> spot(Line line, boolean isChosen) {
        var seat = line.seat();
        if (seat == null) return Optional.empty();
        JointFit joint = sheet.fit().joint(seat.joint().id());
        if (joint.state() != JointFit.State.TOGETHER) return Optional.empty();
        return Optional.of(new FitPicture.Spot(seat, sheet.fit().faces(seat), line.verdict(), line.figure(), isChosen));
    }
}
