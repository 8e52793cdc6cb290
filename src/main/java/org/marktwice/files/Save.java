package org.marktwice.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Saving without ever risking the old file: write aside, force to disk, move over. */
public final class Save {
    private Save() {}

    /** @throws NotSaved where it can't be saved; the old file is then as it was */
    public static void whole(Path file, byte[] bytes) throws NotSaved {
        Path aside = file.resolveSibling("." + file.getFileName() + ".new");
        try {
            write(aside, bytes);
            move(aside, file);
            forceFolder(file);
        } catch (IOException e) {
            deleteQuietly(aside);
            throw new NotSaved(file.toString(), "it can't be saved: " + Bytes.trouble(e));
        }
    }

    /**
     * Makes a folder, and those it lies in.
     *
     * @throws NotSaved where it can't be made
     */
    public static void folder(Path folder) throws NotSaved {
        try {
            // the link itself would be found in the way where it leads to a folder
            if (!Files.isDirectory(folder)) Files.createDirectories(folder);
        } catch (FileAlreadyExistsException e) {
            throw new NotSaved(folder.toString(), "the folder can't be made: there is a file where a folder should be");
        } catch (IOException e) {
            throw new NotSaved(folder.toString(), "the folder can't be made: " + Bytes.trouble(e));
        }
    }

    private static void write(Path aside, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(
                aside, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) channel.write(left);
            channel.force(true);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Forces the folder's entry of a new file to disk, where the system lets one. */
    static void forceFolder(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) return;
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // some systems can't open a folder; they order these writes themselves
        }
    }

    static void deleteQuietly(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // what stays behind is a file beside the real one
        }
    }
}
