package org.marktwice.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;

/** A quiz journal being written: each answer is on the disk before {@link #append} returns, whatever happens then. */
public final class QuizJournal {
    private QuizJournal() {}

    /**
     * Writes one answer at the end, and the header before it where there is no journal yet. A torn last line is kept aside in
     * a file {@code .torn} and cut off first.
     *
     * @throws FileRefused where it could not be written, or the file is no quiz journal; it then is as it was
     */
    public static void append(Path file, String learner, QuizFile.Answer answer) throws FileRefused {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            try (FileChannel channel = FileChannel.open(
                            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
                    FileLock lock = lock(file, channel)) {
                append(file, channel, learner, answer);
                // the lock goes when the channel does
                assert lock.isValid();
            }
        } catch (IOException e) {
            throw new FileRefused(file.toString(), "the answer could not be saved: " + Bytes.trouble(e));
        }
    }

    /**
     * Looks whether answers could be written there, so that nobody answers for nothing; nothing is made or changed.
     *
     * @throws FileRefused where they could not
     */
    public static void check(Path file) throws FileRefused {
        Path there = file.toAbsolutePath();
        while (there.getParent() != null && !Files.exists(there)) there = there.getParent();
        boolean isFolderInTheWay = there.equals(file.toAbsolutePath()) && Files.isDirectory(there);
        boolean isFileInTheWay = !there.equals(file.toAbsolutePath()) && !Files.isDirectory(there);
        String why = isFolderInTheWay
                ? "there is a folder where the journal should be"
                : isFileInTheWay
                        ? "there is a file where a folder should be"
                        : Files.isWritable(there) ? "" : "the permission is missing";
        if (!why.isEmpty()) throw new FileRefused(file.toString(), "no answer could be saved: " + why);
    }

    /** A copy of a journal's whole lines, to hand on. @throws FileRefused where there is none, or it can't be saved there */
    public static void copy(Path journal, Path to) throws FileRefused {
        Save.whole(to, QuizFile.read(journal).text().getBytes(StandardCharsets.UTF_8));
    }

    private static FileLock lock(Path file, FileChannel channel) throws IOException, FileRefused {
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) return lock;
        } catch (OverlappingFileLockException e) {
            // said below
        }
        throw new FileRefused(file.toString(), "another window is writing to this journal");
    }

    private static void append(Path file, FileChannel channel, String learner, QuizFile.Answer answer)
            throws IOException, FileRefused {
        byte[] bytes = bytes(file, channel);
        StringBuilder text = new StringBuilder();
        long end = bytes.length;
        if (isTornHeader(bytes, learner)) {
            end = 0;
            text.append(QuizFile.header(learner)).append('\n');
        } else {
            QuizFile.Lines lines = QuizFile.Lines.of(file.toString(), bytes);
            if (lines.whole() < bytes.length) {
                Journal.keepTornTail(file, bytes, lines.whole());
                end = lines.whole();
            }
            if (!lines.endsInLine()) text.append('\n');
        }
        text.append(QuizFile.line(answer)).append('\n');
        channel.truncate(end);
        ByteBuffer out = StandardCharsets.UTF_8.encode(text.toString());
        try {
            for (long at = end; out.hasRemaining(); ) at += channel.write(out, at);
            channel.force(true);
        } catch (IOException e) {
            channel.truncate(end);
            throw e;
        }
    }

    private static byte[] bytes(Path file, FileChannel channel) throws IOException, FileRefused {
        if (channel.size() > Bytes.MOST) throw new FileRefused(file.toString(), "it is too large for a quiz journal");
        ByteBuffer in = ByteBuffer.allocate((int) channel.size());
        while (in.hasRemaining() && channel.read(in, in.position()) >= 0) {
            // until all is read
        }
        return in.array();
    }

    /** Whether not even the header was finished when the power went. */
    private static boolean isTornHeader(byte[] bytes, String learner) {
        byte[] header = QuizFile.header(learner).getBytes(StandardCharsets.UTF_8);
        return bytes.length < header.length && Arrays.equals(bytes, Arrays.copyOf(header, bytes.length));
    }
}
