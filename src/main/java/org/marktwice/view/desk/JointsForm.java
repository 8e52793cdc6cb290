package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Joint;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.DraftPart;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The joints: a line for each, with the kinds that can be cut where its parts lie, and its figures. */
final class JointsForm extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient SetModel model;
    private transient List<String> shape = List.of();
    private final transient List<Row> rows = new ArrayList<>();

    JointsForm(SetModel model) {
        super(new MigLayout("insets 0, gapy 2, wrap 4, fillx, hidemode 3", "6[150!,fill]8[grow,fill]8[]8[]4"));
        this.model = model;
        setOpaque(false);
        setName("joints-form");
        refresh(model.draft().gaps());
    }

    void refresh(List<Draft.Gap> gaps) {
        List<String> now = model.draft().joints().stream()
                .map(j -> j.id() + " " + j.kind() + " " + j.in() + " " + j.takes())
                .toList();
        if (!now.equals(shape) || rows.isEmpty()) build(now);
        for (int i = 0; i < rows.size(); i++) rows.get(i).show(gaps);
        repaint();
    }

    private void build(List<String> now) {
        shape = now;
        rows.clear();
        removeAll();
        if (now.isEmpty()) add(Look.quiet("No joints yet: point at two parts to join them.", Style.NOTE), "span 4");
        for (int i = 0; i < now.size(); i++) rows.add(new Row(i));
        revalidate();
    }

    private final class Row {
        private final int index;
        private final Choice<String> kind;
        private final JLabel parts = Look.label("", Style.BODY);
        private final List<Runnable> shows = new ArrayList<>();
        private final GapLine gap;

        Row(int index) {
            this.index = index;
            String key = "joint-" + index + "-";
            kind = new Choice<>(key + "kind", "Kind of joint", JointIdeas::spoken, this::change);
            add(kind);
            parts.setName(key + "parts");
            add(parts, "wmin 0");
            add(figures(key));
            JPanel words = line();
            words.add(word(key + "swap", "Swap", "Cut it into the other part", this::swap));
            words.add(word(
                    key + "remove",
                    "Remove",
                    "Take the joint away",
                    () -> model.edit(model.draft().withoutJoint(index))));
            add(words);
            gap = new GapLine(key + "gap");
            add(gap, "span 4, growx, wmin 0, gapleft 4");
        }

        private Joint joint() {
            return model.draft().joints().get(index);
        }

        private void change(String to) {
            Joint now = joint();
            if (now.kind().equals(to)) return;
            possible(now.in(), now.takes()).stream()
                    .filter(j -> j.kind().equals(to))
                    .findFirst()
                    .ifPresent(this::replace);
        }

        private List<Joint> possible(String in, String takes) {
            return JointIdeas.possible(model.draft(), joint().id(), in, takes);
        }

        private void swap() {
            Joint now = joint();
            List<Joint> other = possible(now.takes(), now.in());
            Optional<Joint> same =
                    other.stream().filter(j -> j.kind().equals(now.kind())).findFirst();
            Optional<Joint> any = same.or(() -> other.stream().findFirst());
            if (any.isPresent()) replace(any.get());
            else model.say(JointIdeas.refusal(model.draft(), now.takes(), now.in()));
        }

        private void replace(Joint next) {
            if (index < model.draft().joints().size()) model.edit(model.draft().withJoint(index, next));
        }

        void show(List<Draft.Gap> gaps) {
            Joint now = joint();
            List<String> kinds = new ArrayList<>();
            possible(now.in(), now.takes()).forEach(j -> kinds.add(j.kind()));
            if (!kinds.contains(now.kind())) kinds.add(now.kind());
            kind.show(kinds, now.kind());
            parts.setText("in " + called(now.in()) + ", takes " + called(now.takes()));
            parts.setToolTipText(parts.getText());
            shows.forEach(Runnable::run);
            gap.show(model.gapsAt(gaps, "joints[" + index + "]"));
        }

        private String called(String partId) {
            return model.draft().parts().stream()
                    .filter(p -> p.id().equals(partId))
                    .map(DraftPart::called)
                    .findFirst()
                    .orElse(partId);
        }

        /** The fields that only its kind has. */
        private JComponent figures(String key) {
            JPanel line = line();
            Joint now = joint();
            if (now instanceof Joint.StoppedHousing) {
                direction(line, key + "at", "stops at", s -> ((Joint.StoppedHousing) s).at(), (s, d) -> {
                    Joint.StoppedHousing h = (Joint.StoppedHousing) s;
                    return new Joint.StoppedHousing(h.id(), h.in(), h.takes(), d, h.mm());
                });
                number(line, key + "mm", "short by", s -> ((Joint.StoppedHousing) s).mm(), (s, mm) -> {
                    Joint.StoppedHousing h = (Joint.StoppedHousing) s;
                    return new Joint.StoppedHousing(h.id(), h.in(), h.takes(), h.at(), known(mm, h.mm()));
                });
            } else if (now instanceof Joint.Halving) {
                direction(
                        line,
                        key + "from",
                        "from",
                        s -> ((Joint.Halving) s).from(),
                        (s, d) -> new Joint.Halving(s.id(), s.in(), s.takes(), d));
            } else if (now instanceof Joint.MortiseTenon) {
                tenon(line, key);
            } else if (now instanceof Joint.Dowelled) {
                dowels(line, key);
            }
            return line;
        }

        private void tenon(JPanel line, String key) {
            number(
                    line,
                    key + "thick",
                    "tenon",
                    s -> of(s).thickness(),
                    (s, mm) -> with(s, new Joint.Tenon(known(mm, of(s).thickness()), of(s).width(), of(s).inset())));
            number(
                    line,
                    key + "wide",
                    "×",
                    s -> of(s).width(),
                    (s, mm) -> with(s, new Joint.Tenon(of(s).thickness(), known(mm, of(s).width()), of(s).inset())));
            number(
                    line,
                    key + "inset",
                    "set in",
                    s -> of(s).inset(),
                    (s, mm) -> with(s, new Joint.Tenon(of(s).thickness(), of(s).width(), mm)));
            number(
                    line,
                    key + "haunch",
                    "haunch",
                    s -> {
                        Joint.Haunch haunch = ((Joint.MortiseTenon) s).haunch();
                        return haunch == null ? null : haunch.length();
                    },
                    (s, mm) -> new Joint.MortiseTenon(
                            s.id(), s.in(), s.takes(), of(s), mm == null ? null : new Joint.Haunch(mm)));
        }

        private static Joint.Tenon of(Joint joint) {
            return ((Joint.MortiseTenon) joint).tenon();
        }

        private static Joint with(Joint joint, Joint.Tenon tenon) {
            return new Joint.MortiseTenon(
                    joint.id(), joint.in(), joint.takes(), tenon, ((Joint.MortiseTenon) joint).haunch());
        }

        private void dowels(JPanel line, String key) {
            number(
                    line,
                    key + "count",
                    "",
                    s -> (double) row(s).count(),
                    (s, n) -> with(
                            s,
                            new Joint.Dowels(
                                    (int) Math.rint(known(n, row(s).count())), row(s).diameter(), row(s).length())));
            number(
                    line,
                    key + "diameter",
                    "of Ø",
                    s -> row(s).diameter(),
                    (s, mm) ->
                            with(s, new Joint.Dowels(row(s).count(), known(mm, row(s).diameter()), row(s).length())));
            number(
                    line,
                    key + "length",
                    "×",
                    s -> row(s).length(),
                    (s, mm) ->
                            with(s, new Joint.Dowels(row(s).count(), row(s).diameter(), known(mm, row(s).length()))));
        }

        private static Joint.Dowels row(Joint joint) {
            return ((Joint.Dowelled) joint).dowels();
        }

        private static Joint with(Joint joint, Joint.Dowels dowels) {
            return new Joint.Dowelled(joint.id(), joint.in(), joint.takes(), dowels);
        }

        private void number(
                JPanel line,
                String name,
                String word,
                Function<Joint, @Nullable Double> read,
                java.util.function.BiFunction<Joint, @Nullable Double, Joint> write) {
            String what =
                    word.isEmpty() ? "How many" : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
            NumberField field = new NumberField(
                            name, what, 4, n -> n >= 0 && n <= 100_000, n -> replace(write.apply(joint(), n)))
                    .expecting("a number from 0");
            if (!word.isEmpty()) line.add(Look.quiet(word, Style.NOTE));
            line.add(field, "w 48!");
            shows.add(() -> field.show(read.apply(joint())));
        }

        private void direction(
                JPanel line,
                String name,
                String word,
                Function<Joint, Direction> read,
                java.util.function.BiFunction<Joint, Direction, Joint> write) {
            Choice<Direction> choice = new Choice<>(name, word, Direction::id, d -> {
                if (read.apply(joint()) != d) replace(write.apply(joint(), d));
            });
            line.add(Look.quiet(word, Style.NOTE));
            line.add(choice, "w 86!");
            shows.add(() -> choice.show(List.of(Direction.values()), read.apply(joint())));
        }
    }

    private static double known(@Nullable Double mm, double otherwise) {
        return mm == null ? otherwise : mm;
    }

    private static JPanel line() {
        JPanel line = new JPanel(new MigLayout("insets 0, gapx 4"));
        line.setOpaque(false);
        return line;
    }

    private static JButton word(String name, String word, String help, Runnable does) {
        JButton button = Look.link(new JButton(word));
        button.setName(name);
        button.setToolTipText(help);
        button.addActionListener(e -> does.run());
        return button;
    }
}
