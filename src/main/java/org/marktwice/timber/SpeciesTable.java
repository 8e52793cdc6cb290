package org.marktwice.timber;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The species the program knows, read once from {@code species.csv} beside this class. */
public final class SpeciesTable {
    private static final String FILE = "species.csv";
    private static final List<Species> ALL = read();

    private SpeciesTable() {}

    /** In the table's order. */
    public static List<Species> all() {
        return ALL;
    }

    public static Optional<Species> byId(String id) {
        return all().stream().filter(s -> s.id().equals(id)).findFirst();
    }

    private static List<Species> read() {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(SpeciesTable.class.getResourceAsStream(FILE), FILE), StandardCharsets.UTF_8)) {
            return format.parse(reader).stream().map(SpeciesTable::species).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(FILE + " cannot be read", e);
        }
    }

    private static Species species(CSVRecord row) {
        return new Species(
                row.get("id"),
                row.get("name"),
                Double.parseDouble(row.get("radial_percent")),
                Double.parseDouble(row.get("tangential_percent")),
                row.get("source"));
    }
}
