package org.marktwice.files;

/** A file or folder that can't be written where it should be; another place might do. */
public final class NotSaved extends FileRefused {
    private static final long serialVersionUID = 1L;

    NotSaved(String file, String reason) {
        super(file, reason);
    }
}
