package org.marktwice.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.BoardState.Done;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Surface;

/**
 * A board as it was set out: for each side of each cut the line that was struck for it. That is the nearest line; where
 * lines are too far out to tell, a joint's lines are those that its waste was shaded between.
 */
public final class SetOut {
    /** A line farther than this from every side, not named by any waste, is for none of them; millimetres. */
    private static final double REACH = 25;
    /** Lines on several surfaces that come within this of one another are one line squared round, millimetres. */
    private static final double ROUND = 3;

    /**
     * A side and what was struck for it.
     *
     * @param line the line that the cut follows; null where there is none
     * @param round all lines struck for it, one for each surface that it shows on, the line itself among them
     */
    public record Marked(CutSide side, @Nullable TrueLine line, List<TrueLine> round) {
        public Marked {
            round = List.copyOf(round);
        }

        public Optional<TrueLine> struck() {
            return Optional.ofNullable(line);
        }

        /** How far the line lies from where the drawing has it, where it was measured; + towards greater coordinates. */
        public double off() {
            return line == null ? 0 : line.measured() - side.at();
        }

        public boolean isFor(String joint) {
            return joint.equals(side.joint());
        }

        /** Whether the line is on a surface on which the cut comes out. */
        public boolean onItsSurface() {
            return line == null || side.shows().contains(line.on());
        }
    }

    private final Placing placing;
    private final BoardState state;
    private final List<TrueLine> lines;
    private final List<CutSide> sides;
    private final List<Marked> marked;

    private SetOut(Placing placing, BoardState state, List<TrueLine> lines, List<CutSide> sides, boolean byWaste) {
        this.placing = placing;
        this.state = state;
        this.lines = lines;
        this.sides = sides;
        @Nullable TrueLine[] chosen = new TrueLine[sides.size()];
        boolean[] byShading = new boolean[sides.size()];
        if (byWaste) {
            @Nullable TrueLine[] near = new TrueLine[sides.size()];
            nearest(near);
            for (int i = 0; i < chosen.length; i++) {
                if (!isClear(sides.get(i), near))
                    chosen[i] = named(sides.get(i)).orElse(null);
                byShading[i] = chosen[i] != null;
            }
        }
        nearest(chosen);
        List<Marked> all = new ArrayList<>(sides.size());
        for (int i = 0; i < chosen.length; i++) {
            CutSide side = sides.get(i);
            TrueLine line = chosen[i];
            all.add(marked(side, line == null || byShading[i] ? line : firstStruck(side, line)));
        }
        this.marked = List.copyOf(all);
    }

    public static SetOut of(Placing placing, BoardState state, TrueLines lines) {
        return new SetOut(placing, state, lines.all(), CutSides.of(placing), true);
    }

    public static SetOut of(Placing placing, BoardState state, TrueLines lines, FitWorkings workings) {
        return new SetOut(placing, state, lines.all(), workings.sides(placing), true);
    }

    /** With each side's nearest line, whatever was shaded. */
    public SetOut nearest() {
        return new SetOut(placing, state, lines, sides, false);
    }

    public Placing placing() {
        return placing;
    }

    public BoardState state() {
        return state;
    }

    /** All lines on the board. */
    public List<TrueLine> lines() {
        return lines;
    }

    /** Every side that has to be marked, with its line. */
    public List<Marked> marked() {
        return marked;
    }

    /** The sides of one joint's cut. */
    public List<Marked> marked(String joint) {
        List<Marked> own = new ArrayList<>();
        for (Marked m : marked) {
            if (m.isFor(joint)) own.add(m);
        }
        return own;
    }

    /** Whether every side of a joint's cut has its line. */
    public boolean isSetOut(String joint) {
        return marked(joint).stream().allMatch(m -> m.line() != null);
    }

    /** The waste shaded for a joint on this board, oldest first. */
    public List<Done<Action.Waste>> wastes(String joint) {
        List<Done<Action.Waste>> out = new ArrayList<>();
        for (Done<? extends Action.OnBoard> done : state.struck()) {
            if (done.action() instanceof Action.Waste w && w.joint().equals(joint)) {
                out.add(new Done<>(done.step(), w));
            }
        }
        return out;
    }

    /** Whether a joint's waste was shaded between lines on a surface on which its cut doesn't come out. */
    public boolean isShadedElsewhere(String joint) {
        List<Marked> sides = marked(joint);
        return wastes(joint).stream()
                .flatMap(w -> Stream.of(w.action().between(), w.action().and()))
                .flatMap(step -> lines.stream().filter(l -> l.step() == step))
                .anyMatch(l -> sides.stream().anyMatch(m -> isAt(m, l))
                        && sides.stream()
                                .filter(m -> isAt(m, l))
                                .noneMatch(m -> m.side().shows().contains(l.on())));
    }

    private static boolean isAt(Marked marked, TrueLine line) {
        return marked.side().axis() == line.axis()
                && marked.struck()
                        .filter(own -> Math.abs(own.middle() - line.middle()) <= ROUND)
                        .isPresent();
    }

    /** Lines that are for no side of any cut. */
    public List<TrueLine> strays() {
        Set<Integer> used = new HashSet<>();
        marked.forEach(m -> m.round().forEach(l -> used.add(l.step())));
        return lines.stream().filter(l -> !used.contains(l.step())).toList();
    }

    /**
     * Whether the sides of the same joint along the same axis all have a line near them, in their own order; then shading
     * says nothing more.
     */
    private boolean isClear(CutSide side, @Nullable TrueLine[] near) {
        double last = Double.NEGATIVE_INFINITY;
        for (CutSide like : like(side)) {
            TrueLine line = near[sides.indexOf(like)];
            if (line == null || line.middle() < last) return false;
            last = line.middle();
        }
        return true;
    }

    /** The sides of the same joint along the same axis, from low to high. */
    private List<CutSide> like(CutSide side) {
        List<CutSide> like = new ArrayList<>();
        for (CutSide s : sides) {
            if (s.axis() == side.axis() && Objects.equals(side.joint(), s.joint())) like.add(s);
        }
        like.sort(Comparator.comparingDouble(CutSide::at));
        return like;
    }

    /** The line that the joint's waste was shaded to at this side. */
    private Optional<TrueLine> named(CutSide side) {
        if (side.joint() == null) return Optional.empty();
        Set<Integer> steps = new HashSet<>();
        for (Done<Action.Waste> waste : wastes(side.joint())) {
            steps.add(waste.action().between());
            steps.add(waste.action().and());
        }
        List<TrueLine> named = lines.stream()
                .filter(l -> steps.contains(l.step()) && l.axis() == side.axis())
                .sorted(Comparator.comparingDouble(TrueLine::middle))
                .toList();
        List<CutSide> like = like(side);
        // both lines of a cut that lies between two: in their order, wherever they are
        if (like.size() == named.size()) return Optional.of(named.get(like.indexOf(side)));
        if (like.size() > 1) return Optional.empty();
        // a shoulder: not the line at which the board is cut to length
        return named.stream().min(Comparator.comparingDouble(l -> Math.abs(l.middle() - side.at())));
    }

    /**
     * Each side that has no line yet takes the nearest one that no other side of its joint has, the nearest pair first.
     *
     * @param chosen the line of each side; null where there is none
     */
    private void nearest(@Nullable TrueLine[] chosen) {
        record Pair(int side, TrueLine line, double apart) {}
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < chosen.length; i++) {
            CutSide side = sides.get(i);
            if (chosen[i] != null) continue;
            for (TrueLine line : lines) {
                double apart = Math.abs(line.measured() - side.at());
                if (line.axis() != side.axis() || apart > REACH) continue;
                // a line on the wrong surface is taken only where there is no other
                pairs.add(new Pair(i, line, side.shows().contains(line.on()) ? apart : apart + REACH));
            }
        }
        pairs.sort(Comparator.comparingDouble(Pair::apart));
        for (Pair pair : pairs) {
            boolean free = chosen[pair.side()] == null && !taken(sides.get(pair.side()), pair.line(), chosen);
            if (free) chosen[pair.side()] = pair.line();
        }
    }

    /** Of one line squared round, the one that the others were carried on from. */
    private TrueLine firstStruck(CutSide side, TrueLine line) {
        TrueLine first = line;
        boolean found = false;
        for (TrueLine l : lines) {
            boolean same = l.axis() == side.axis()
                    && Math.abs(l.middle() - line.middle()) <= ROUND
                    && (side.shows().contains(l.on()) || l.on() == line.on());
            if (!same || found && l.step() >= first.step() || isNearerToAnother(side, l)) continue;
            first = l;
            found = true;
        }
        return first;
    }

    private boolean isNearerToAnother(CutSide side, TrueLine line) {
        double own = Math.abs(side.at() - line.measured());
        for (CutSide s : sides) {
            if (s.axis() == side.axis() && Math.abs(s.at() - line.measured()) < own) return true;
        }
        return false;
    }

    /** Whether another side that lies elsewhere has this line, or one squared round from it. */
    private boolean taken(CutSide side, TrueLine line, @Nullable TrueLine[] chosen) {
        for (int i = 0; i < chosen.length; i++) {
            CutSide other = sides.get(i);
            TrueLine has = chosen[i];
            boolean elsewhere = other.axis() == side.axis() && Math.abs(other.at() - side.at()) > ROUND;
            if (has != null && elsewhere && Math.abs(has.middle() - line.middle()) <= ROUND) return true;
        }
        return false;
    }

    private Marked marked(CutSide side, @Nullable TrueLine line) {
        if (line == null) return new Marked(side, null, List.of());
        Map<Surface, TrueLine> round = new EnumMap<>(Surface.class);
        for (TrueLine other : lines) {
            double apart = Math.abs(other.middle() - line.middle());
            if (other.axis() != side.axis() || apart > ROUND || !side.shows().contains(other.on())) continue;
            TrueLine nearer = round.get(other.on());
            if (nearer == null || apart < Math.abs(nearer.middle() - line.middle())) round.put(other.on(), other);
        }
        round.put(line.on(), line);
        List<TrueLine> inOrder = new ArrayList<>(round.values());
        inOrder.sort(Comparator.comparingInt(TrueLine::step));
        return new Marked(side, line, inOrder);
    }
}
