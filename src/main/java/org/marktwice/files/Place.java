package org.marktwice.files;

import org.jspecify.annotations.Nullable;

/** Where a value stands in its file. The path is put together only when a message needs it. */
final class Place {
    private static final int FIELD = -1;

    private final String file;
    private final int line;
    private final int column;
    private final @Nullable Place parent;
    /** The field's name; empty for an item of a list. */
    private final String name;

    private final int index;

    private Place(String file, int line, int column, @Nullable Place parent, String name, int index) {
        this.file = file;
        this.line = line;
        this.column = column;
        this.parent = parent;
        this.name = name;
        this.index = index;
    }

    static Place root(String file, int line, int column) {
        return new Place(file, line, column, null, "", 0);
    }

    Place field(String name, int atLine, int atColumn) {
        return new Place(file, atLine, atColumn, this, name, FIELD);
    }

    Place item(int index, int atLine, int atColumn) {
        return new Place(file, atLine, atColumn, this, "", index);
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
        if (parent == null) return "$";
        return parent.path() + (index == FIELD ? "." + Words.printable(name) : "[" + index + "]");
    }

    FileRefused refuse(String reason) {
        return new FileRefused(file, line, column, path(), reason);
    }
}
