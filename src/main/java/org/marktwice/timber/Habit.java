package org.marktwice.timber;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * How a species grows its branches, by ranges: read from {@code habits.csv} beside this class. Every range is a default of
 * this program's own, drawn so that boards look like those of a timber yard; none is a published figure.
 *
 * <p>Pines set their branches in whorls, one a year; spruces and Douglas-fir in weaker whorls with scattered branches
 * between them; hardwoods carry few, anywhere.
 *
 * @param ring mean width of the annual rings, millimetres
 * @param spacing of the whorls along the stem, millimetres; nothing where there are none
 * @param perWhorl branches
 * @param whorlRadius of a whorl's branches where they are thickest, millimetres
 * @param scattered branches a metre that belong to no whorl
 * @param scatteredRadius of these, millimetres
 * @param lean degrees from the stem's direction upwards
 * @param live how far along the branch it is live (intergrown), millimetres from the pith
 */
record Habit(
        Span ring,
        Span spacing,
        Span perWhorl,
        Span whorlRadius,
        Span scattered,
        Span scatteredRadius,
        Span lean,
        Span live) {
    private static final String FILE = "habits.csv";
    private static final Map<String, Habit> ALL = read();

    /** A range, both ends among it. */
    record Span(double least, double most) {
        double of(Chance chance) {
            return chance.between(least, most);
        }

        double tenths(Chance chance) {
            return chance.tenths(least, most);
        }

        /** Half by chance, half by where {@code share} (0 to 1) lies between the two ends. */
        double towards(double share, Chance chance) {
            return least + (most - least) * (share + chance.share()) / 2;
        }
    }

    static Habit of(Species species) {
        return Objects.requireNonNull(ALL.get(species.id()), species.id());
    }

    boolean hasWhorls() {
        return spacing.most() > 0;
    }

    private static Map<String, Habit> read() {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(Habit.class.getResourceAsStream(FILE), FILE), StandardCharsets.UTF_8)) {
            Map<String, Habit> all = new LinkedHashMap<>();
            for (CSVRecord row : format.parse(reader)) all.put(row.get("species"), habit(row));
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(FILE + " cannot be read", e);
        }
    }

    private static Habit habit(CSVRecord row) {
        return new Habit(
                span(row, "ring"),
                span(row, "whorl_spacing"),
                span(row, "whorl_branches"),
                span(row, "whorl_radius"),
                span(row, "scattered"),
                span(row, "scattered_radius"),
                span(row, "lean"),
                span(row, "live"));
    }

    private static Span span(CSVRecord row, String what) {
        return new Span(Double.parseDouble(row.get(what + "_least")), Double.parseDouble(row.get(what + "_most")));
    }
}
