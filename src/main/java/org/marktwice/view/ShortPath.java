package org.marktwice.view;

import java.nio.file.Path;

/** A path in a line: its end matters, so that is kept where there is no room for all of it. */
public final class ShortPath {
    private static final int MOST = 56;

    private ShortPath() {}

    /** The whole path, or as many of its last names as go in. */
    public static String of(Path path) {
        String whole = path.toString();
        if (whole.length() <= MOST || path.getFileName() == null) return whole;
        String separator = path.getFileSystem().getSeparator();
        String kept = path.getFileName().toString();
        for (int i = path.getNameCount() - 2; i >= 0; i--) {
            String longer = path.getName(i) + separator + kept;
            if (longer.length() > MOST) break;
            kept = longer;
        }
        return "…" + separator + kept;
    }
}
