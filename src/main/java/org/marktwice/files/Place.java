package org.marktwice.files;

import org.jspecify.annotations.Nullable;

/** Where a value stands in its file. The path is put together only when a message needs it. */
final class Place {
    private final String file;
    private final int line;
    private final int column;
    private final @Nullable Place parent;
    private final String step;

    private Place(String file, int line, int column, @Nullable Place parent, String step) {
        this.file = file;
        this.line = line;
        this.column = column;
        this.parent = parent;
        this.step = step;
    }

    static Place root(String file, int line, int column) {
        return new Place(file, line, column, null, "$");
    }

    Place field(String name, int atLine, int atColumn) {
        return new Place(file, atLine, atColumn, this, "." + name);
    }

    Place item(int index, int atLine, int atColumn) {
        return new Place(file, atLine, atColumn, this, "[" + index + "]");
    }

    String file() {
        return file;
    }

    int line() {
        return line;
    }

    int column() {
        return column;
    }

    /** Such as {@code $.drawing.parts[0].size.length}. */
    String path() {
        return (parent == null ? "" : parent.path()) + Words.printable(step);
    }

    FileRefused refuse(String reason) {
        return new FileRefused(file, line, column, path(), reason);
    }
}
