package org.marktwice.files;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.scenario.Scenario;

/**
 * An attempt's file as it is being written: every action is on the disk before {@link #append} returns. One window only
 * may write to an attempt; a lock file beside it sees to that, which a crash leaves behind without harm.
 */
public final class Journal implements Closeable {
    private final Path file;
    private final Lock lock;
    private final FileChannel channel;
    private long end;

    private Journal(Path file, Lock lock, FileChannel channel, long end) {
        this.file = file;
        this.lock = lock;
        this.channel = channel;
        this.end = end;
    }

    /** A journal taken up again, with what it holds so far. */
    public record Resumed(Journal journal, AttemptFile.Opened opened) {
        /** What was done about a torn file, in lines fit to show. */
        public List<String> notices() {
            return opened.file().notices();
        }
    }

    /**
     * A new attempt's file.
     *
     * @param header the attempt before anything was done
     * @throws FileRefused where the file is there already or can't be written
     */
    public static Journal create(Path file, Attempt header) throws FileRefused {
        Lock lock = Lock.take(file);
        boolean mine = false;
        try {
            FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            mine = true;
            Journal journal = new Journal(file, lock, channel, 0);
            journal.write(ActionWriter.header(header));
            Save.forceFolder(file);
            for (Action action : header.actions()) journal.append(action);
            return journal;
        } catch (FileAlreadyExistsException e) {
            lock.release();
            throw new FileRefused(file.toString(), "there is an attempt of this name already; it is left as it is");
        } catch (IOException e) {
            lock.release();
            if (mine) Save.deleteQuietly(file);
            throw new FileRefused(file.toString(), "the attempt can't be begun: " + Bytes.trouble(e));
        } catch (FileRefused e) {
            lock.release();
            throw e;
        }
    }

    /**
     * The attempt taken up where it was left. A torn tail is kept aside in a file {@code .torn} and cut off, so that the
     * next action starts on a line of its own.
     */
    public static Resumed resume(Path file, Scenario scenario) throws FileRefused {
        byte[] bytes = Bytes.read(file);
        Lock lock = Lock.take(file);
        try {
            // read again under the lock: another window may have written in between
            bytes = Bytes.read(file);
            JournalText text = JournalText.read(file.toString(), bytes);
            AttemptFile.Opened opened = text.file().on(scenario);
            if (text.whole() < bytes.length) keepTornTail(file, bytes, text.whole());
            FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
            channel.truncate(text.whole());
            Journal journal = new Journal(file, lock, channel, text.whole());
            if (!text.endsInLine()) journal.write("");
            channel.force(true);
            return new Resumed(journal, opened);
        } catch (FileRefused e) {
            lock.release();
            throw e;
        } catch (IOException e) {
            lock.release();
            throw new NotSaved(file.toString(), "the attempt can't be gone on with: " + Bytes.trouble(e));
        }
    }

    /** A journal over a file as it is, for tests of what happens when the disk is full. */
    static Journal over(Path file) throws IOException, FileRefused {
        Lock lock = Lock.take(file);
        return new Journal(file, lock, FileChannel.open(file, StandardOpenOption.WRITE), 0);
    }

    static void keepTornTail(Path file, byte[] bytes, int from) throws IOException {
        Path aside = file.resolveSibling(file.getFileName() + ".torn");
        try (FileChannel channel = FileChannel.open(aside, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
            ByteBuffer tail = ByteBuffer.wrap(bytes, from, bytes.length - from);
            while (tail.hasRemaining()) channel.write(tail);
            channel.force(true);
        }
    }

    public Path file() {
        return file;
    }

    /**
     * Writes one action and forces it to the disk. To be called only after the bench has taken the action.
     *
     * @throws FileRefused where it could not be written; the file then still ends with the action before
     */
    public void append(Action action) throws FileRefused {
        try {
            write(ActionWriter.line(action));
        } catch (IOException e) {
            throw new FileRefused(file.toString(), "the last action could not be saved: " + Bytes.trouble(e));
        }
    }

    private void write(String line) throws IOException {
        ByteBuffer bytes = StandardCharsets.UTF_8.encode(line + "\n");
        long at = end;
        try {
            while (bytes.hasRemaining()) at += channel.write(bytes, at);
            channel.force(false);
        } catch (IOException e) {
            takeBack();
            throw e;
        }
        end = at;
    }

    /** Cuts off what a failed write left; where even that fails, the next write starts at the same place. */
    private void takeBack() {
        try {
            channel.truncate(end);
        } catch (IOException e) {
            // the failure that led here is the one to report
        }
    }

    /** The file is whole already; this lets another window have it. */
    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            // every action was forced to disk when it was appended
        }
        lock.release();
    }

    /** A hidden file beside the attempt, locked as long as the journal is open. */
    private static final class Lock {
        private final Path path;
        private final FileChannel channel;

        private Lock(Path path, FileChannel channel) {
            this.path = path;
            this.channel = channel;
        }

        static Lock take(Path file) throws FileRefused {
            Path path = file.resolveSibling("." + file.getFileName() + ".lock");
            FileChannel channel;
            try {
                channel = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            } catch (IOException e) {
                throw new NotSaved(file.toString(), "its folder can't be written to: " + Bytes.trouble(e));
            }
            if (lock(channel, file)) return new Lock(path, channel);
            closeQuietly(channel);
            throw new FileRefused(file.toString(), "this attempt is open in another window");
        }

        @SuppressWarnings("MustBeClosedChecker")
        private static boolean lock(FileChannel channel, Path file) throws FileRefused {
            try {
                FileLock lock = channel.tryLock();
                return lock != null;
            } catch (OverlappingFileLockException e) {
                return false;
            } catch (IOException e) {
                closeQuietly(channel);
                throw new FileRefused(file.toString(), "it can't be locked: " + Bytes.trouble(e));
            }
        }

        private static void closeQuietly(FileChannel channel) {
            try {
                channel.close();
            } catch (IOException e) {
                // nothing was written to it
            }
        }

        /** Deleted while still locked, so that nobody else holds it at that moment. */
        void release() {
            Save.deleteQuietly(path);
            closeQuietly(channel);
        }
    }
}
