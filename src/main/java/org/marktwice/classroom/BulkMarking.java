package org.marktwice.classroom;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import org.marktwice.classroom.Marked.State;
import org.marktwice.files.FileRefused;

/**
 * Marks every file in a folder and the folders below it, on several threads, with a bounded number of files in hand at
 * any time. The answers come in the order of the names, whichever thread was first.
 */
public final class BulkMarking {
    private static final String ENDING = ".attempt.jsonl";
    /** Files in hand for each thread: enough that a slow one doesn't keep the others waiting. */
    private static final int IN_HAND = 16;

    private final Path folder;
    private final List<Entry> entries;

    private BulkMarking(Path folder, List<Entry> entries) {
        this.folder = folder;
        this.entries = entries;
    }

    /** @param trouble why it can't even be looked at; empty where it can */
    private record Entry(String name, String trouble) {}

    /** Told after each file, on the caller's thread. */
    @FunctionalInterface
    public interface Progress {
        Progress NONE = (done, of) -> {};

        void at(int done, int of);
    }

    /** @throws FileRefused where there is no such folder, or it can't be looked into */
    public static BulkMarking of(Path folder) throws FileRefused {
        if (!Files.exists(folder)) throw new FileRefused(folder.toString(), "there is no such folder");
        if (!Files.isDirectory(folder)) throw new FileRefused(folder.toString(), "expected a folder, found a file");
        List<Entry> entries = new ArrayList<>();
        try {
            // a link to the folder would be seen as a file
            Path real = folder.toRealPath();
            Files.walkFileTree(real, new Collector(real, entries));
        } catch (IOException e) {
            throw new FileRefused(folder.toString(), "the folder can't be read");
        }
        entries.sort(Comparator.comparing(Entry::name));
        return new BulkMarking(folder, entries);
    }

    /** How many files there are. */
    public int size() {
        return entries.size();
    }

    /** The files, by name. */
    public List<String> names() {
        return entries.stream().map(Entry::name).toList();
    }

    /**
     * Marks them all. The sink is called on the caller's thread, once a file.
     *
     * @throws InterruptedException where the caller's thread was interrupted; marking has then been given up
     */
    public void run(Marker marker, int threads, Consumer<Marked> sink, Progress progress) throws InterruptedException {
        ExecutorService workers = Executors.newFixedThreadPool(threads, BulkMarking::worker);
        Map<String, String> firstWith = new HashMap<>();
        Deque<Future<Marked>> inHand = new ArrayDeque<>();
        Iterator<Entry> waiting = entries.iterator();
        try {
            for (int done = 0; done < entries.size(); done++) {
                // an answer that is there already is handed over without a look at this
                if (Thread.interrupted()) throw new InterruptedException();
                while (waiting.hasNext() && inHand.size() < threads * IN_HAND) {
                    Entry next = waiting.next();
                    inHand.add(workers.submit(() -> mark(marker, next)));
                }
                sink.accept(pointedOut(inHand.remove().get(), firstWith));
                progress.at(done + 1, entries.size());
            }
        } catch (ExecutionException e) {
            throw new IllegalStateException("marking a file never throws", e.getCause());
        } finally {
            workers.shutdownNow();
        }
    }

    private static Thread worker(Runnable task) {
        Thread thread = new Thread(task, "marking");
        thread.setDaemon(true);
        return thread;
    }

    private Marked mark(Marker marker, Entry entry) {
        if (!entry.trouble().isEmpty()) return Marked.not(entry.name(), State.UNREADABLE, entry.trouble());
        return marker.mark(folder.resolve(entry.name()), entry.name());
    }

    private static Marked pointedOut(Marked marked, Map<String, String> firstWith) {
        if (marked.journal().isEmpty()) return marked;
        String first = firstWith.putIfAbsent(marked.journal(), marked.file());
        return first == null ? marked : marked.sameAs(first);
    }

    /** Every file below a folder; what can't be looked at is kept with its reason. */
    private static final class Collector extends SimpleFileVisitor<Path> {
        private final Path root;
        private final List<Entry> entries;

        Collector(Path root, List<Entry> entries) {
            this.root = root;
            this.entries = entries;
        }

        private void add(Path file, String trouble) {
            String name = root.relativize(file).toString().replace('\\', '/');
            entries.add(new Entry(name, trouble));
        }

        /** A folder that goes by an attempt's name stands for nothing that could be marked, and is named all the same. */
        @Override
        public FileVisitResult preVisitDirectory(Path directory, BasicFileAttributes attributes) {
            boolean named = String.valueOf(directory.getFileName()).endsWith(ENDING);
            if (named && !directory.equals(root))
                add(directory, "a folder, not a file; what is in it is named by itself");
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            add(file, "");
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
            if (file.equals(root)) throw e;
            add(file, Files.isDirectory(file) ? "a folder that can't be read" : "it can't be read");
            return FileVisitResult.CONTINUE;
        }
    }
}
