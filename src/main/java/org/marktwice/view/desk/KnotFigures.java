package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The figures of a board's knots, a line a knot. */
final class KnotFigures extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient OneBoard drawn;
    private final transient List<Runnable> shows = new ArrayList<>();
    private List<String> ids = List.of();
    private String picked = "";

    KnotFigures(OneBoard drawn) {
        super(new MigLayout("insets 0, gap 4 4, wrap 6, fillx", "[36!][54!,fill][54!,fill][54!,fill][54!,fill][]"));
        this.drawn = drawn;
        setOpaque(false);
    }

    /** @param knot the one that is picked out; empty for none */
    void show(Board board, String knot) {
        picked = knot;
        List<String> now = board.knots().stream().map(Knot::id).toList();
        if (!now.equals(ids) || getComponentCount() == 0) {
            ids = now;
            build();
        }
        shows.forEach(Runnable::run);
    }

    private void build() {
        shows.clear();
        removeAll();
        for (String head : new String[] {"Knot", "x", "Round", "Lean", "Across", ""}) add(Look.quiet(head, Style.NOTE));
        for (String id : ids) addKnot(id);
        revalidate();
    }

    private void addKnot(String id) {
        JLabel name = Look.label(id, Style.BODY);
        add(name);
        shows.add(() -> Look.inked(
                name, id.equals(picked) ? Style.STRONG : Style.BODY, id.equals(picked) ? Ink.ACTION : Ink.INK));
        figure(
                id,
                "x",
                "Where on the pith its branch starts, mm from end 1",
                -100_000,
                100_000,
                Knot::x,
                (k, n) -> knot(k, n, k.azimuth(), k.lean(), k.maxRadius()));
        figure(
                id,
                "azimuth",
                "Which way round the pith it grows, degrees",
                -360,
                360,
                Knot::azimuth,
                (k, n) -> knot(k, k.x(), n, k.lean(), k.maxRadius()));
        figure(
                id,
                "lean",
                "Degrees from the stem; 90 is square to it",
                1,
                179,
                Knot::lean,
                (k, n) -> knot(k, k.x(), k.azimuth(), n, k.maxRadius()));
        figure(
                id,
                "across",
                "Its greatest diameter, mm",
                0.2,
                1000,
                Knot::diameter,
                (k, n) -> knot(k, k.x(), k.azimuth(), k.lean(), n / 2));
        JButton gone = Look.link(new JButton("Remove"));
        gone.setName("knot-" + id + "-remove");
        gone.addActionListener(e -> drawn.board().ifPresent(now -> drawn.put(BoardEdits.without(now, id))));
        add(gone);
        JCheckBox dead = new JCheckBox("dead where it comes out");
        dead.setName("knot-" + id + "-dead");
        dead.setOpaque(false);
        Look.styled(dead, Style.NOTE);
        dead.addActionListener(e -> change(
                id,
                k -> new Knot(
                        k.id(),
                        k.x(),
                        k.azimuth(),
                        k.lean(),
                        k.halfAngle(),
                        k.maxRadius(),
                        dead.isSelected() ? 0 : Double.POSITIVE_INFINITY,
                        k.endsAt())));
        add(dead, "skip 1, span 5");
        shows.add(() -> dead.setSelected(drawn.board()
                .flatMap(now -> now.knot(id))
                .filter(k -> Double.isFinite(k.deadFrom()))
                .isPresent()));
    }

    private static Knot knot(Knot k, double x, double azimuth, double lean, double radius) {
        return new Knot(k.id(), x, azimuth, lean, k.halfAngle(), radius, k.deadFrom(), k.endsAt());
    }

    private void figure(
            String id,
            String name,
            String what,
            double least,
            double most,
            Function<Knot, Double> read,
            BiFunction<Knot, Double, Knot> write) {
        NumberField field = new NumberField("knot-" + id + "-" + name, what, 4, n -> n >= least && n <= most, n -> {
            if (n != null) change(id, k -> write.apply(k, n));
            drawn.refresh();
        });
        field.expecting("a number from " + NumberField.spoken(least) + " to " + NumberField.spoken(most));
        shows.add(() -> drawn.board().flatMap(b -> b.knot(id)).ifPresent(k -> field.show(read.apply(k))));
        add(field);
    }

    private void change(String id, Function<Knot, Knot> how) {
        drawn.board().ifPresent(b -> b.knot(id).ifPresent(k -> drawn.put(BoardEdits.with(b, how.apply(k)))));
    }
}
