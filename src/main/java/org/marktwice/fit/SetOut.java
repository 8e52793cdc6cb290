package org.marktwice.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    private final TrueLines struck;
    private final List<TrueLine> lines;
    private final Wanted wanted;
    private final List<CutSide> sides;
    private final List<Marked> marked;
    private final Map<String, List<Marked>> byJoint = new HashMap<>();
    /** Whether shading told more than what is nearest. */
    private final boolean byShading;

    private SetOut(Placing placing, BoardState state, TrueLines struck, Wanted wanted, boolean byWaste) {
        this.placing = placing;
        this.state = state;
        this.struck = struck;
        this.lines = struck.all();
        this.wanted = wanted;
        this.sides = wanted.sides();
        @Nullable TrueLine[] chosen = new TrueLine[sides.size()];
        @Nullable TrueLine[] near = nearest(chosen);
        boolean shaded = false;
        for (int i = 0; byWaste && i < chosen.length; i++) {
            if (!isClear(i, near)) chosen[i] = named(i).orElse(null);
            shaded |= chosen[i] != null;
        }
        this.byShading = shaded;
        if (shaded) near = nearest(chosen);
        List<Marked> all = new ArrayList<>(sides.size());
        for (int i = 0; i < chosen.length; i++) {
            CutSide side = sides.get(i);
            TrueLine line = near[i];
            all.add(marked(side, line == null || chosen[i] != null ? line : firstStruck(side, line)));
        }
        this.marked = List.copyOf(all);
        for (String joint : wanted.joints()) {
            byJoint.put(joint, marked.stream().filter(m -> m.isFor(joint)).toList());
        }
    }

    public static SetOut of(Placing placing, BoardState state, TrueLines lines) {
        return new SetOut(placing, state, lines, new Wanted(placing), true);
    }

    public static SetOut of(Placing placing, BoardState state, TrueLines lines, FitWorkings workings) {
        return new SetOut(placing, state, lines, workings.wanted(placing), true);
    }

    /** With each side's nearest line, whatever was shaded. */
    public SetOut nearest() {
        return byShading ? new SetOut(placing, state, struck, wanted, false) : this;
    }

    public Placing placing() {
        return placing;
    }

    public BoardState state() {
        return state;
    }

    /** What the drawing wants of the board. */
    Wanted wanted() {
        return wanted;
    }

    /** Where lines land on the board. */
    public TrueLines struck() {
        return struck;
    }

    /** All lines on the board. */
    public List<TrueLine> lines() {
        return lines;
    }

    /** Every side that has to be marked, with its line. */
    public List<Marked> marked() {
        return marked;
    }

    /** The joints for which something has to be marked, in the drawing's order. */
    public List<String> joints() {
        return wanted.joints();
    }

    /** The sides of one joint's cut. */
    public List<Marked> marked(String joint) {
        return byJoint.getOrDefault(joint, List.of());
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
        for (Done<Action.Waste> waste : wastes(joint)) {
            for (TrueLine l : lines) {
                boolean shaded = l.step() == waste.action().between()
                        || l.step() == waste.action().and();
                if (shaded && isElsewhere(joint, l)) return true;
            }
        }
        return false;
    }

    private boolean isElsewhere(String joint, TrueLine line) {
        boolean there = false;
        for (Marked m : marked(joint)) {
            if (!isAt(m, line)) continue;
            if (m.side().shows().contains(line.on())) return false;
            there = true;
        }
        return there;
    }

    private static boolean isAt(Marked marked, TrueLine line) {
        TrueLine own = marked.line();
        return marked.side().axis() == line.axis() && own != null && Math.abs(own.middle() - line.middle()) <= ROUND;
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
    private boolean isClear(int side, @Nullable TrueLine[] near) {
        double last = Double.NEGATIVE_INFINITY;
        for (CutSide like : wanted.like(side)) {
            TrueLine line = near[sides.indexOf(like)];
            if (line == null || line.middle() < last) return false;
            last = line.middle();
        }
        return true;
    }

    /** The line that the joint's waste was shaded to at this side. */
    private Optional<TrueLine> named(int of) {
        CutSide side = sides.get(of);
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
        List<CutSide> like = wanted.like(of);
        // both lines of a cut that lies between two: in their order, wherever they are
        if (like.size() == named.size()) return Optional.of(named.get(like.indexOf(side)));
        if (like.size() > 1) return Optional.empty();
        // a shoulder: not the line at which the board is cut to length
        return named.stream().min(Comparator.comparingDouble(l -> Math.abs(l.middle() - side.at())));
    }

    /**
     * Each side that has no line yet takes the nearest one that no other side of its joint has, the nearest pair first.
     *
     * @param given the line of each side; null where there is none
     * @return the same with those that were taken
     */
    private @Nullable TrueLine[] nearest(@Nullable TrueLine[] given) {
        @Nullable TrueLine[] chosen = given.clone();
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
        return chosen;
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
