package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import net.miginfocom.swing.MigLayout;
import org.marktwice.scenario.Proportions;
import org.marktwice.scenario.Proportions.Range;
import org.marktwice.view.Card;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** The workshop's proportions of joints: the least, the usual and the most of each, of 100 or in millimetres. */
final class ProportionsForm extends Card {
    private static final long serialVersionUID = 1L;
    private static final String[] HEADS = {"least", "usual", "most"};

    private final transient Supplier<Proportions> read;
    private final transient Consumer<Proportions> write;
    private final transient List<Runnable> shows = new ArrayList<>();

    ProportionsForm(Supplier<Proportions> read, Consumer<Proportions> write) {
        super(new MigLayout("insets 20 24 20 24, gap 8 8, wrap 4, fillx", "[grow,fill][]4[]4[]"));
        this.read = read;
        this.write = write;
        add(Look.label("Proportions of joints", Style.SUBTITLE), "span 4, gapbottom 6");
        add(Look.quiet("of 100", Style.NOTE));
        for (String head : HEADS) add(Look.quiet(head, Style.NOTE), "al right");
        row(
                "housing",
                "Housing, of its thickness",
                100,
                Proportions::housing,
                (p, r) -> new Proportions(r, p.stop(), p.rebate(), p.haunch(), p.stub(), p.dowel(), p.chisels()));
        row(
                "rebate",
                "Rebate, of its thickness",
                100,
                Proportions::rebate,
                (p, r) -> new Proportions(p.housing(), p.stop(), r, p.haunch(), p.stub(), p.dowel(), p.chisels()));
        row(
                "haunch",
                "Haunch, of the width",
                100,
                Proportions::haunch,
                (p, r) -> new Proportions(p.housing(), p.stop(), p.rebate(), r, p.stub(), p.dowel(), p.chisels()));
        row(
                "stub",
                "Stub mortise, of the width",
                100,
                Proportions::stub,
                (p, r) -> new Proportions(p.housing(), p.stop(), p.rebate(), p.haunch(), r, p.dowel(), p.chisels()));
        row(
                "dowel",
                "Dowel, of the thinner part",
                100,
                Proportions::dowel,
                (p, r) -> new Proportions(p.housing(), p.stop(), p.rebate(), p.haunch(), p.stub(), r, p.chisels()));
        row(
                "stop",
                "Housing stops short, mm",
                1,
                Proportions::stop,
                (p, r) -> new Proportions(p.housing(), r, p.rebate(), p.haunch(), p.stub(), p.dowel(), p.chisels()));
        chisels();
    }

    /** @param parts 100 for a share, which stands as parts of 100; 1 for millimetres */
    private void row(
            String name,
            String words,
            double parts,
            Function<Proportions, Range> get,
            BiFunction<Proportions, Range, Proportions> set) {
        add(Look.quiet(words, Style.BODY), "wmin 0");
        for (int i = 0; i < HEADS.length; i++) {
            int at = i;
            NumberField field = new NumberField(
                    name + "-" + HEADS[i],
                    words + ": " + HEADS[i],
                    4,
                    n -> n > 0 && (parts == 1 ? n <= 100 : n < parts),
                    n -> {
                        if (n != null) {
                            Proportions now = read.get();
                            write.accept(set.apply(now, with(get.apply(now), at, n / parts)));
                        }
                        refresh();
                    });
            add(field, "w 48!");
            shows.add(() -> field.show(Math.rint(10 * parts * at(get.apply(read.get()), at)) / 10));
        }
    }

    private static double at(Range range, int at) {
        return at == 0 ? range.least() : at == 1 ? range.usual() : range.most();
    }

    /** The others give way, so that the least stays the least and the most the most. */
    private static Range with(Range range, int at, double value) {
        return switch (at) {
            case 0 -> new Range(value, Math.max(range.usual(), value), Math.max(range.most(), value));
            case 1 -> new Range(Math.min(range.least(), value), value, Math.max(range.most(), value));
            default -> new Range(Math.min(range.least(), value), Math.min(range.usual(), value), value);
        };
    }

    private void chisels() {
        WordField field = new WordField("chisels", "Widths of chisels, mm: a tenon is as thick as one", 12, 80, t -> {
            List<Double> widths = widths(t);
            Proportions p = read.get();
            if (!widths.isEmpty()) {
                write.accept(
                        new Proportions(p.housing(), p.stop(), p.rebate(), p.haunch(), p.stub(), p.dowel(), widths));
            }
            refresh();
        });
        add(Look.quiet("Chisels, mm", Style.BODY));
        add(field, "span 3, growx, wmin 0");
        shows.add(() -> field.show(
                read.get().chisels().stream().map(NumberField::spoken).collect(Collectors.joining(" "))));
    }

    /** Empty where one of them can't be. */
    private static List<Double> widths(String typed) {
        try {
            List<Double> all = Arrays.stream(typed.strip().replace(',', ' ').split("[\\s;]+"))
                    .map(Double::valueOf)
                    .distinct()
                    .toList();
            return all.stream().allMatch(w -> w > 0 && w <= 100) ? all : List.of();
        } catch (NumberFormatException e) {
            return List.of();
        }
    }

    void refresh() {
        shows.forEach(Runnable::run);
    }
}
