package org.marktwice.print;

import java.util.Locale;

/** Figures as they are written on a sheet, and scales. */
final class Figure {
    /** Full size and the reductions that ISO 5455 recommends, as far as joinery goes; an ordinary rule reads them. */
    private static final double[] SCALES = {1, 2, 5, 10, 20, 50, 100};

    /** The enlargements that ISO 5455 recommends, as far as a sheet of paper holds them. */
    private static final double[] ENLARGED = {20, 10, 5, 2};

    private Figure() {}

    /** As few places as tell it to a hundredth. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", Math.round(value * 100) / 100.0 + 0.0);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }

    static String tenth(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    static String percent(double value) {
        return number(Math.round(value * 10) / 10.0) + " %";
    }

    /** A knot as it is spoken of: by its number where it has one. */
    static String knot(String id) {
        return id.replaceFirst("^k(?=\\d)", "");
    }

    /** The reductions, the least first: 2 for 1 : 2. */
    static double[] scales() {
        return SCALES.clone();
    }

    /** The least reduction that is no larger than so many points a millimetre; the greatest where none is. */
    static double scale(double pointsPerMm) {
        for (double scale : SCALES) if (Paper.points(1) / scale <= pointsPerMm) return scale;
        return SCALES[SCALES.length - 1];
    }

    /** The largest scale for a detail, full size being 1, that is no larger than there is room for; the least where none is. */
    static double detailScale(double room) {
        for (double times : ENLARGED) if (times <= room) return times;
        for (double scale : SCALES) if (1 / scale <= room) return 1 / scale;
        return 1 / SCALES[SCALES.length - 1];
    }

    /** {@code 2 : 1}, {@code 1 : 2.5}. */
    static String detailText(double scale) {
        return scale > 1.001 ? number(scale) + " : 1" : scaleText(1 / scale);
    }

    /** {@code 1 : 2.5}. */
    static String scaleText(double reduction) {
        return "1 : " + number(reduction);
    }
}
