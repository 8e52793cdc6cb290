package org.marktwice.print;

import org.jspecify.annotations.Nullable;

/** Something that takes a strip of a column's height, and is never broken over two pages. */
interface Block {
    double height(double width);

    /** @param y the strip's upper edge */
    void draw(Pen pen, double x, double y, double width);

    /** Whether it must not stand last on a page, as a heading. */
    default boolean leads() {
        return false;
    }

    /** The head of the table that it is a row of, to be said again where it stands first on a page; null for none. */
    default @Nullable Block head() {
        return null;
    }
}
