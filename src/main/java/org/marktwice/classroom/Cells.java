package org.marktwice.classroom;

import org.jspecify.annotations.Nullable;

/** Cells of tables that go to a spreadsheet and come back. */
final class Cells {
    private static final String BEGINS_A_FORMULA = "=+-@\t";

    private Cells() {}

    /** A text that a spreadsheet would take for a formula is made a text by an apostrophe. */
    static Object plain(@Nullable Object cell) {
        if (cell == null) return "";
        return cell instanceof String s && looksLikeFormula(s) ? "'" + s : cell;
    }

    /** The text that was written so. */
    static String read(String cell) {
        return cell.startsWith("'") && looksLikeFormula(cell.substring(1)) ? cell.substring(1) : cell;
    }

    private static boolean looksLikeFormula(String text) {
        return !text.isEmpty() && BEGINS_A_FORMULA.indexOf(text.charAt(0)) >= 0;
    }
}
