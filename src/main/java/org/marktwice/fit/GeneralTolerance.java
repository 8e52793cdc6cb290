package org.marktwice.fit;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/**
 * The classes of general tolerances for linear sizes of ISO 2768-1 (1989, table 1). Where a class states nothing for a
 * size, its nearest stated one counts.
 */
public enum GeneralTolerance {
    FINE('f'),
    MEDIUM('m'),
    COARSE('c'),
    VERY_COARSE('v');

    private static final List<Row> TABLE = read();

    private final char letter;

    GeneralTolerance(char letter) {
        this.letter = letter;
    }

    private record Row(char letter, double over, double to, double plusMinus) {}

    /** As the standard writes it. */
    public char letter() {
        return letter;
    }

    public String title() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** For a size in millimetres; a size on a bound belongs to the smaller sizes. */
    public double plusMinus(double size) {
        double abs = Math.abs(size);
        List<Row> rows = TABLE.stream().filter(r -> r.letter() == letter).toList();
        for (Row row : rows) {
            if (abs <= row.to()) return row.plusMinus();
        }
        return rows.get(rows.size() - 1).plusMinus();
    }

    private static List<Row> read() {
        try (InputStream in = GeneralTolerance.class.getResourceAsStream("iso-2768-1-linear.csv")) {
            if (in == null) throw new IllegalStateException("no table of general tolerances");
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .map(c -> new Row(
                            c[0].charAt(0),
                            Double.parseDouble(c[1]),
                            Double.parseDouble(c[2]),
                            Double.parseDouble(c[3])))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
