package org.marktwice.drawing;

/** A drawing that contradicts itself, with the reason in one line. */
public final class DrawingRefused extends Exception {
    private static final long serialVersionUID = 1L;
    private final String where;

    /**
     * @param where the JSON path within the drawing that is to blame, such as {@code parts[2]} or {@code overall}
     * @param why what was found and what is expected
     */
    public DrawingRefused(String where, String why) {
        super(why);
        this.where = where;
    }

    public String where() {
        return where;
    }
}
