package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.CutAt;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.fit.DryFit;
import org.marktwice.fit.SetOut;
import org.marktwice.fit.SetOut.Marked;
import org.marktwice.fit.TrueLine;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/** Finds which lines, struck from which surfaces, put a dry fit out. */
final class FitCauses {
    /** What is out by less is not worth a word, millimetres. */
    private static final double TELLS = 0.05;

    private static final int MOST = 4;

    private final Bench bench;
    private final DryFit fit;

    FitCauses(Bench bench, DryFit fit) {
        this.bench = bench;
        this.fit = fit;
    }

    /** How far from the low end of its part a joint's farthest shoulder is drawn: the size that its place depends on. */
    static double place(DryFit fit, Joint joint) {
        return Stream.of(joint.in(), joint.takes())
                .flatMap(p -> fit.setOut(p).stream())
                .flatMap(o -> o.marked(joint.id()).stream()
                        .filter(m -> m.side().isSquared())
                        .map(m -> m.side().at() - o.placing().partInBoard().min(0)))
                .mapToDouble(Math::abs)
                .max()
                .orElse(0);
    }

    List<FitCause> of(Joint joint) {
        List<FitCause> all = new ArrayList<>();
        for (String part : List.of(joint.in(), joint.takes())) {
            fit.setOut(part).ifPresent(out -> {
                for (Marked m : out.marked(joint.id())) lines(out, m, all);
            });
        }
        fit.setOut(joint.takes()).ifPresent(out -> size(out, all, -1));
        return largest(all);
    }

    /** Of a size that these parts make up: what lies along it. */
    List<FitCause> of(List<String> parts, JobAxis along) {
        List<FitCause> all = new ArrayList<>();
        for (String part : parts) {
            fit.setOut(part).ifPresent(out -> {
                for (Marked m : out.marked()) {
                    if (along(out, m.side().axis()) == along.ordinal()) lines(out, m, all);
                }
                List<FitCause> sizes = new ArrayList<>();
                size(out, sizes, along.ordinal());
                all.addAll(sizes);
            });
        }
        return largest(all);
    }

    /** The job axis along which a board's axis lies. */
    private static int along(SetOut out, int boardAxis) {
        return out.placing().turn().along(boardAxis).axis();
    }

    private static List<FitCause> largest(List<FitCause> all) {
        Map<String, FitCause> once = new LinkedHashMap<>();
        all.stream()
                .sorted(Comparator.comparingDouble(FitCause::mm).reversed())
                .forEach(c -> once.putIfAbsent(like(c), c));
        return once.values().stream().limit(MOST).toList();
    }

    /** The same slip on the same board is told once, where it is largest. */
    private static String like(FitCause cause) {
        String says = cause.says();
        int from = says.indexOf(": ");
        return cause.board() + says.substring(from < 0 ? 0 : from).replaceAll("[0-9.]+", "");
    }

    /** The lines of one side of a cut, as far as they are out of place or out of line. */
    private void lines(SetOut out, Marked marked, List<FitCause> to) {
        for (TrueLine line : marked.round()) {
            double off = line.measured() - marked.side().at();
            if (Math.abs(off) >= TELLS) to.add(cause(out, line, Math.abs(off), off(out, line, off)));
            if (line.isSquared() && Math.abs(line.lean()) >= TELLS) {
                to.add(cause(out, line, Math.abs(line.lean()), lean(out, line)));
            }
            out.state().cut(line.step()).filter(c -> c.side() != CutAt.WASTE).ifPresent(c -> {
                double lost = c.with().lost(c.side());
                String side = c.side() == CutAt.LINE ? "on the line itself" : "on the side that stays";
                if (lost >= TELLS)
                    to.add(cause(out, line, lost, "cut " + side + "; " + mm(lost) + " of good wood went."));
            });
        }
    }

    private static FitCause cause(SetOut out, TrueLine line, double mm, String says) {
        return new FitCause(board(out).id(), line.step(), mm, where(out, line) + " " + says);
    }

    /** {@code Board B, face 1, step 12:} */
    private static String where(SetOut out, TrueLine line) {
        return "Board " + board(out).id() + ", " + line.on().spoken() + ", step " + line.step() + ":";
    }

    private String off(SetOut out, TrueLine line, double off) {
        String how = how(out, line);
        Surface end = Surface.on(line.axis(), off > 0 ? +1 : -1);
        return how + "; the line lies " + mm(Math.abs(off)) + " too far towards " + end.spoken() + ".";
    }

    private String lean(SetOut out, TrueLine line) {
        Surface low = Surface.on(line.runs(), -1);
        Surface high = Surface.on(line.runs(), +1);
        return how(out, line) + "; over the board the line runs " + mm(Math.abs(line.lean())) + " out of square, from "
                + low.spoken() + " to " + high.spoken() + ".";
    }

    /** With which tool the line was struck, and from which surface. */
    private String how(SetOut out, TrueLine line) {
        String bore = line.reference().spoken() + mark(out, line.reference());
        Action action = bench.action(line.step());
        if (action instanceof Action.Gauge g) return "gauged " + mm(g.set()) + " from " + bore;
        if (action instanceof Action.Bevel b)
            return "struck with the bevel at " + Words.figure(b.degrees()) + "°, stock on " + bore;
        String stock = "squared with the stock on " + bore;
        if (action instanceof Action.Line l) {
            String mate = l.mate();
            Double at = l.at();
            if (mate != null) return stock + ", struck from board " + mate;
            if (l.from() instanceof Action.Datum.Step s && at != null) {
                return at == 0
                        ? stock + ", carried on from step " + s.step()
                        : stock + ", " + mm(at) + " on from step " + s.step();
            }
            if (l.from() instanceof Action.Datum.End e && at != null) {
                return stock + ", " + mm(at) + " from " + e.end().spoken();
            }
        }
        return stock;
    }

    /** Which mark a surface carries; that it carries none is what matters most. */
    private static String mark(SetOut out, Surface surface) {
        if (board(out).isSheet() || !out.placing().part().takesMarks()) return "";
        return out.state().marks().stream()
                .filter(m -> m.on() == surface)
                .map(m -> m.kind() == Mark.Kind.FACE_SIDE ? " (face side)" : " (face edge)")
                .findFirst()
                .orElse(" (not marked)");
    }

    /** That the board itself is not as thick or wide as drawn. @param only along this job axis; −1 for any */
    private void size(SetOut out, List<FitCause> to, int only) {
        Board board = board(out);
        Part part = out.placing().part();
        for (int axis = 1; axis < 3; axis++) {
            double off = board.size().along(axis) - part.size().along(axis);
            if (Math.abs(off) < TELLS || (only >= 0 && along(out, axis) != only)) continue;
            String what = axis == 1 ? " wide" : " thick";
            to.add(new FitCause(
                    board.id(),
                    null,
                    Math.abs(off),
                    "Board " + board.id() + " is " + mm(board.size().along(axis)) + what + ", drawn "
                            + mm(part.size().along(axis)) + "."));
        }
    }

    /** On which surface a joint is marked, and where that looks: the side and the hand. Empty where it shows on both alike. */
    Optional<String> side(String part, String joint) {
        return fit.setOut(part).flatMap(out -> {
            Set<Surface> wanted = new TreeSet<>();
            Set<Surface> marked = new TreeSet<>();
            for (Marked m : out.marked(joint)) {
                if (!m.side().isSquared()) continue;
                m.side().shows().stream().filter(Surface::isFace).forEach(wanted::add);
                m.struck().map(TrueLine::on).filter(Surface::isFace).ifPresent(marked::add);
            }
            if (wanted.size() != 1 || marked.size() != 1) return Optional.empty();
            Surface want = wanted.iterator().next();
            Surface on = marked.iterator().next();
            BoardState state = out.state();
            String is = "Board " + state.board().id() + ": on " + on.spoken() + mark(out, on) + ", which looks "
                    + looks(out, on);
            return Optional.of(
                    is + (on == want ? ", as drawn." : "; drawn on the face that looks " + looks(out, want) + "."));
        });
    }

    private static String looks(SetOut out, Surface surface) {
        return new Words(out.placing().drawing(), null).of(out.placing().turn().of(surface), "dir");
    }

    private static Board board(SetOut out) {
        return out.state().board();
    }

    private static String mm(double mm) {
        return FitSheet.mm(mm);
    }
}
