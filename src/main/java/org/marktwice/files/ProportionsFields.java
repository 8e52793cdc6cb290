package org.marktwice.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.marktwice.scenario.Proportions;

/** The workshop's proportions of joints, as a file has them: what isn't given is usual. */
final class ProportionsFields {
    private static final List<String> KNOWN =
            List.of("housing", "stop", "rebate", "haunch", "stub", "dowel", "chisels");
    private static final List<String> RANGE = List.of("least", "usual", "most");
    private static final Range SHARE = new Range(0, 1, true, true);
    private static final Range MILLIMETRES = new Range(0, 100, true, false);

    private ProportionsFields() {}

    static Proportions read(Optional<Json> json) throws FileRefused {
        Proportions usual = Proportions.USUAL;
        if (json.isEmpty()) return usual;
        Fields in = Fields.of(json.get(), "an object of proportions by what is proportioned", KNOWN);
        return new Proportions(
                range(in, "housing", SHARE, usual.housing()),
                range(in, "stop", MILLIMETRES, usual.stop()),
                range(in, "rebate", SHARE, usual.rebate()),
                range(in, "haunch", SHARE, usual.haunch()),
                range(in, "stub", SHARE, usual.stub()),
                range(in, "dowel", SHARE, usual.dowel()),
                chisels(in, usual.chisels()));
    }

    private static Proportions.Range range(Fields in, String name, Range within, Proportions.Range usual)
            throws FileRefused {
        Optional<Json> json = in.get(name);
        if (json.isEmpty()) return usual;
        Fields fields = Fields.of(json.get(), "an object with least, usual and most", RANGE);
        Proportions.Range range = new Proportions.Range(
                fields.number("least", within, usual.least()),
                fields.number("usual", within, usual.usual()),
                fields.number("most", within, usual.most()));
        if (range.least() > range.usual() || range.usual() > range.most()) {
            throw fields.place()
                    .refuse(String.format(
                            java.util.Locale.ROOT,
                            "\"least\" is no more than \"usual\", and \"usual\" no more than \"most\"; these are %s, %s"
                                    + " and %s",
                            plain(range.least()),
                            plain(range.usual()),
                            plain(range.most())));
        }
        return range;
    }

    private static String plain(double value) {
        return String.valueOf(Math.round(value * 1000) / 1000.0);
    }

    private static List<Double> chisels(Fields in, List<Double> usual) throws FileRefused {
        Optional<Json> json = in.get("chisels");
        if (json.isEmpty()) return usual;
        return Values.distinct(
                json.get(), "a list of chisels' widths in millimetres", 1, item -> Values.number(item, MILLIMETRES));
    }

    /** What differs from the usual; empty where nothing does. */
    static Map<String, Object> write(Proportions p) {
        Proportions usual = Proportions.USUAL;
        Map<String, Object> out = new LinkedHashMap<>();
        put(out, "housing", p.housing(), usual.housing());
        put(out, "stop", p.stop(), usual.stop());
        put(out, "rebate", p.rebate(), usual.rebate());
        put(out, "haunch", p.haunch(), usual.haunch());
        put(out, "stub", p.stub(), usual.stub());
        put(out, "dowel", p.dowel(), usual.dowel());
        if (!p.chisels().equals(usual.chisels())) out.put("chisels", p.chisels());
        return out;
    }

    private static void put(Map<String, Object> out, String name, Proportions.Range own, Proportions.Range usual) {
        if (own.equals(usual)) return;
        Map<String, Object> range = new LinkedHashMap<>();
        range.put("least", own.least());
        range.put("usual", own.usual());
        range.put("most", own.most());
        out.put(name, range);
    }
}
