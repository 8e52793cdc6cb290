package org.marktwice.view.desk;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.PartStuff;
import org.marktwice.picture.Ink;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.DraftPart;
import org.marktwice.scenario.DraftPart.Figure;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The parts table: a line of fields for each part, and under it what stands in its way. */
final class PartsForm extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final String COLUMNS =
            "6[78:110:180,grow,fill]4[78!,fill]6[44!,fill]2[44!,fill]2[44!,fill]6[44!,fill]2[44!,fill]2[44!,fill]"
                    + "6[116!,fill]4[96!,fill]4[96!,fill]2";
    private static final List<Runs> RUNS = Runs.all();

    private final transient SetModel model;
    private final transient List<Row> rows = new ArrayList<>();
    private transient List<String> ids = List.of();

    /** Which way length and width run. */
    private record Runs(JobAxis length, JobAxis width) {
        static List<Runs> all() {
            List<Runs> all = new ArrayList<>();
            for (JobAxis l : JobAxis.values()) {
                for (JobAxis w : JobAxis.values()) if (l != w) all.add(new Runs(l, w));
            }
            return List.copyOf(all);
        }

        String words() {
            return length.id() + ", " + width.id();
        }
    }

    PartsForm(SetModel model) {
        super(new MigLayout("insets 0, gapy 2, wrap 11, fillx, hidemode 3", COLUMNS));
        this.model = model;
        setOpaque(false);
        setName("parts-form");
        refresh(model.draft().gaps());
    }

    void refresh(List<Draft.Gap> gaps) {
        List<String> now = model.draft().parts().stream().map(DraftPart::id).toList();
        if (now.size() != ids.size() || getComponentCount() == 0) build(now);
        ids = now;
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).show(model.draft().parts().get(i), model.gapsAt(gaps, "parts[" + i + "]"));
        }
        repaint();
    }

    private void build(List<String> now) {
        boolean grew = now.size() > ids.size() && !ids.isEmpty();
        ids = now;
        rows.clear();
        removeAll();
        if (now.isEmpty()) {
            String key = SetScreen.PART.keyText();
            add(
                    Look.quiet(
                            "No part yet: New part (" + key + ") adds the first, and one more each time.", Style.NOTE),
                    "span 11");
            revalidate();
            return;
        }
        for (String head : new String[] {
            "Part",
            "Stuff",
            "Length",
            "Width",
            "Thick",
            "Left",
            "Front",
            "Bottom",
            "Length, width run",
            "Face side",
            "Face edge"
        }) add(Look.quiet(head, Style.NOTE));
        for (int i = 0; i < now.size(); i++) rows.add(new Row(i));
        revalidate();
        if (grew || now.size() == 1) rows.get(rows.size() - 1).name.requestFocusInWindow();
    }

    /** The part picked out has a bar before its line. */
    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        String picked = model.picked().orElse("");
        int at = ids.indexOf(picked);
        if (at < 0 || at >= rows.size()) return;
        Component name = rows.get(at).name;
        Color before = g.getColor();
        g.setColor(Look.colour(Ink.ACTION));
        g.fillRect(0, name.getY(), Look.px(3), name.getHeight());
        g.setColor(before);
    }

    private final class Row {
        private final int index;
        private String id = "";
        private final WordField name;
        private final Choice<PartStuff> stuff;
        private final Map<Figure, NumberField> figures = new EnumMap<>(Figure.class);
        private final Choice<Runs> runs;
        private final Choice<List<Direction>> side;
        private final Choice<List<Direction>> edge;
        private final GapLine gap;

        Row(int index) {
            this.index = index;
            String key = "part-" + index + "-";
            name = new WordField(key + "name", "Name of the part", 8, 60, n -> rename(n));
            stuff = new Choice<>(
                    key + "stuff",
                    "Timber, sheet, or timber that will be shaped",
                    PartStuff::id,
                    s -> edit(part().of(s)));
            add(name, "wmin 0");
            add(stuff, "wmin 0");
            for (Figure figure : Figure.values()) {
                String what = (figure.isSize() ? "" : "Place ") + figure.spoken() + ", mm";
                NumberField field = new NumberField(
                                key
                                        + figure.name()
                                                .toLowerCase(java.util.Locale.ROOT)
                                                .replace('_', '-'),
                                what.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + what.substring(1),
                                4,
                                figure::takes,
                                mm -> edit(part().with(figure, mm)))
                        .expecting(figure.isSize() ? "a number above 0" : "a number of millimetres");
                figures.put(figure, field);
                add(field, "wmin 0");
            }
            runs = new Choice<>(
                    key + "runs",
                    "Which way its length runs in the job, and which way its width",
                    Runs::words,
                    r -> edit(part().running(r.length(), r.width())));
            side = new Choice<>(
                    key + "side",
                    "Where its face side looks",
                    PartsForm::words,
                    d -> edit(part().marked(d, part().faceEdge())));
            edge = new Choice<>(
                    key + "edge",
                    "Where its face edge looks",
                    PartsForm::words,
                    d -> edit(part().marked(part().faceSide(), d)));
            add(runs, "wmin 0");
            add(side, "wmin 0");
            add(edge, "wmin 0");
            gap = new GapLine(key + "gap");
            add(gap, "span 11, growx, wmin 0, gapleft 4");
            picksWhenEntered(name, stuff, runs, side, edge);
            figures.values().forEach(this::picksWhenEntered);
        }

        private void picksWhenEntered(Component... fields) {
            for (Component field : fields) {
                field.addFocusListener(new FocusAdapter() {
                    @Override
                    public void focusGained(FocusEvent event) {
                        if (index < ids.size()) model.pick(ids.get(index));
                    }
                });
            }
        }

        private void rename(String to) {
            if (isStill(id)) model.rename(index, to);
        }

        private boolean isStill(String partId) {
            return index < model.draft().parts().size() && part().id().equals(partId);
        }

        private DraftPart part() {
            return model.draft().parts().get(index);
        }

        private void edit(DraftPart next) {
            // a field that is left because its part was taken away has nothing more to say
            if (isStill(id)) {
                model.edit(model.draft().withPart(index, next));
            }
        }

        void show(DraftPart part, List<Draft.Gap> gaps) {
            id = part.id();
            name.show(part.name());
            stuff.show(List.of(PartStuff.values()), part.stuff());
            figures.forEach((figure, field) -> field.show(part.figures().get(figure)));
            runs.show(RUNS, new Runs(part.length(), part.width()));
            boolean marks = part.stuff() == PartStuff.TIMBER;
            side.show(marks ? looks(part.sides(), part.faceSide()) : List.of(List.of()), part.faceSide());
            edge.show(marks ? looks(part.edges(), part.faceEdge()) : List.of(List.of()), part.faceEdge());
            side.setEnabled(marks);
            edge.setEnabled(marks);
            gap.show(gaps);
        }
    }

    /** Nowhere yet, each direction, or any of those along one axis; and whatever it is now. */
    private static List<List<Direction>> looks(List<Direction> possible, List<Direction> now) {
        List<List<Direction>> all = new ArrayList<>();
        all.add(List.of());
        for (Direction d : possible) all.add(List.of(d));
        for (int axis = 0; axis < 3; axis++) {
            int a = axis;
            List<Direction> either =
                    possible.stream().filter(d -> d.axis() == a).toList();
            if (either.size() == 2) all.add(either);
        }
        if (!all.contains(now)) all.add(now);
        return all;
    }

    private static String words(List<Direction> looks) {
        return looks.isEmpty()
                ? "–"
                : String.join("/", looks.stream().map(Direction::id).toList());
    }
}
