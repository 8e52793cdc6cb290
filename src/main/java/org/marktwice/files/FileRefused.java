package org.marktwice.files;

/** A file that is not taken or can't be written, with the reason in one line: what, where, and what is expected. */
public class FileRefused extends Exception {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final int column;
    private final String path;
    private final String reason;

    /**
     * @param file the file's name as it was given
     * @param line from 1; 0 where the reason is the file as a whole
     * @param column from 1; 0 where the reason is the line or the file as a whole
     * @param path JSON path such as {@code $.drawing.parts[0].size.length}; empty where there is none
     * @param reason what is expected and what was found
     */
    public FileRefused(String file, int line, int column, String path, String reason) {
        super(text(file, line, column, path, reason));
        this.file = file;
        this.line = line;
        this.column = column;
        this.path = path;
        this.reason = reason;
    }

    /** The file as a whole is to blame. */
    public FileRefused(String file, String reason) {
        this(file, 0, 0, "", reason);
    }

    private static String text(String file, int line, int column, String path, String reason) {
        StringBuilder text = new StringBuilder(Words.printable(file));
        if (line > 0) text.append(':').append(line);
        if (line > 0 && column > 0) text.append(':').append(column);
        text.append(": ");
        if (!path.isEmpty()) text.append(path).append(": ");
        return text.append(reason).toString();
    }

    public String file() {
        return file;
    }

    public int line() {
        return line;
    }

    public int column() {
        return column;
    }

    public String path() {
        return path;
    }

    /** The message without its place. */
    public String reason() {
        return reason;
    }
}
