package org.marktwice.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.Optional;
import org.marktwice.bench.Attempt;

/** A file that somebody put into a folder: its bytes, taken in once, and whether it means to be an attempt. */
public final class FoundFile {
    private static final byte[] WORD = Format.ATTEMPT.word().getBytes(StandardCharsets.US_ASCII);
    /** A header is no longer than this, in bytes. */
    private static final int HEADER = 4096;

    private final String name;
    private final byte[] bytes;

    private FoundFile(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes;
    }

    /** @param name what messages call the file */
    public static FoundFile read(Path file, String name) throws FileRefused {
        return new FoundFile(name, Bytes.read(file, name));
    }

    /** @param found what the file system says of it */
    public static FoundFile read(Path file, String name, BasicFileAttributes found) throws FileRefused {
        return new FoundFile(name, Bytes.read(file, name, found));
    }

    /** Whether it says it is an attempt, be it ever so damaged, or is named as one. */
    public boolean meansToBeAnAttempt() {
        return AnyFile.kind(name, bytes) == Format.ATTEMPT || hasTheWord();
    }

    private boolean hasTheWord() {
        int last = Math.min(bytes.length, HEADER) - WORD.length;
        for (int from = 0; from <= last; from++) {
            int same = 0;
            while (same < WORD.length && bytes[from + same] == WORD[same]) same++;
            if (same == WORD.length) return true;
        }
        return false;
    }

    /** What the first line says of it, without its actions, where that much can be read. */
    public Optional<Attempt> header() {
        int end = 0;
        while (end < bytes.length && bytes[end] != '\n') end++;
        try {
            return Optional.of(AttemptFile.read(name, Arrays.copyOf(bytes, end)).attempt());
        } catch (FileRefused e) {
            return Optional.empty();
        }
    }

    /** @param known lines of other attempts, and of this one from now on */
    public AttemptFile attempt(KnownLines known) throws FileRefused {
        return AttemptFile.read(name, bytes, known);
    }
}
