package org.marktwice.files;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/** A file's bytes, taken in only where it is a file of sensible size, and its text, only where it is UTF-8. */
final class Bytes {
    /** The largest file that is read. */
    static final int MOST = 16 << 20;

    private Bytes() {}

    /** The whole file. A larger one than {@link #MOST} is refused without being read to its end. */
    static byte[] read(Path file) throws FileRefused {
        return read(file, file.toString());
    }

    /** @param name what messages call the file */
    static byte[] read(Path file, String name) throws FileRefused {
        try {
            return read(file, name, Files.readAttributes(file, BasicFileAttributes.class));
        } catch (NoSuchFileException e) {
            throw new FileRefused(name, "there is no such file");
        } catch (IOException | UncheckedIOException e) {
            throw new FileRefused(name, "it can't be read: " + trouble(e));
        }
    }

    /** @param found what the file system says of it */
    static byte[] read(Path file, String name, BasicFileAttributes found) throws FileRefused {
        try {
            if (found.isDirectory()) throw new FileRefused(name, "expected a file, found a folder");
            // a pipe that nobody writes to would be waited for without end
            if (found.isOther()) throw new FileRefused(name, "not an ordinary file");
            if (found.size() > MOST) throw tooLarge(name);
            try (InputStream in = Files.newInputStream(file)) {
                // in one go where it is as long as the file system says
                byte[] first = new byte[(int) found.size() + 1];
                int read = in.readNBytes(first, 0, first.length);
                if (read < first.length) return Arrays.copyOf(first, read);
                byte[] more = in.readNBytes(MOST - read + 1);
                if (read + more.length > MOST) throw tooLarge(name);
                byte[] all = Arrays.copyOf(first, read + more.length);
                System.arraycopy(more, 0, all, read, more.length);
                return all;
            }
        } catch (NoSuchFileException e) {
            throw new FileRefused(name, "there is no such file");
        } catch (IOException | UncheckedIOException e) {
            throw new FileRefused(name, "it can't be read: " + trouble(e));
        }
    }

    private static FileRefused tooLarge(String name) {
        return new FileRefused(name, "larger than " + (MOST >> 20) + " MiB, so it is no file of this program");
    }

    /** What went wrong, in words for the one who sits in front of it. */
    static String trouble(Exception e) {
        if (e instanceof NoSuchFileException || e instanceof FileNotFoundException)
            return "there is no such file or folder";
        if (e instanceof FileSystemLoopException
                || String.valueOf(e.getMessage()).contains("symbolic links")) return "the link leads back to itself";
        if (e instanceof AccessDeniedException) return "the permission is missing";
        String said = e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : e.getMessage();
        if (said == null) return "the disk reports an error";
        if (said.contains("Not a directory")) return "there is a file where a folder should be";
        if (said.contains("No space left") || said.contains("not enough space")) return "the disk is full";
        if (said.contains("Read-only file system")) return "the disk is read-only";
        return Words.printable(said);
    }

    /** The text of a file that holds one JSON value; a byte order mark is passed over. */
    static String text(String name, byte[] bytes) throws FileRefused {
        if (bytes.length == 0) throw new FileRefused(name, "the file is empty");
        int start = bomLength(bytes);
        checkIsText(name, bytes, start, bytes.length);
        return decode(name, bytes, start, bytes.length, 1);
    }

    static int bomLength(byte[] bytes) {
        boolean bom =
                bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF;
        return bom ? 3 : 0;
    }

    /** @throws FileRefused where the bytes hold a zero, as pictures, archives and UTF-16 texts do */
    static void checkIsText(String name, byte[] bytes, int from, int to) throws FileRefused {
        for (int i = from; i < to; i++) {
            if (bytes[i] == 0) {
                throw new FileRefused(name, "expected UTF-8 text, found a binary file or another encoding");
            }
        }
    }

    /** @param line the file's line on which {@code from} lies */
    static String decode(String name, byte[] bytes, int from, int to, int line) throws FileRefused {
        ByteBuffer in = ByteBuffer.wrap(bytes, from, to - from);
        CharBuffer out = CharBuffer.allocate(to - from);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(in, out, true);
        if (!result.isError()) return out.flip().toString();
        int badLine = line;
        int lineStart = from;
        for (int i = from; i < in.position(); i++) {
            if (bytes[i] == '\n') {
                badLine++;
                lineStart = i + 1;
            }
        }
        throw new FileRefused(
                name, badLine, in.position() - lineStart + 1, "", "expected UTF-8 text, found a byte that is none");
    }

    static String digest(byte[] bytes) {
        try {
            return "sha256:"
                    + HexFormat.of()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
