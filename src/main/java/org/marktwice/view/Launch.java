package org.marktwice.view;

import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import javax.swing.SwingUtilities;
import org.marktwice.scenario.Scenario;

/** Opens the window. */
public final class Launch {
    private Launch() {}

    /** Opens the main window, and returns when it is closed. */
    public static void open() {
        CountDownLatch closed = new CountDownLatch(1);
        Future<List<Scenario>> shelf = readShelf();
        SwingUtilities.invokeLater(() -> {
            MainWindow window = window(LearnerFolder.ofThisUser(), shelf);
            window.addWindowListener(new WindowAdapter() {
                @Override
                public void windowClosed(WindowEvent event) {
                    closed.countDown();
                }
            });
            window.setVisible(true);
        });
        try {
            closed.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** The exercises are read while the look is being put on. */
    static Future<List<Scenario>> readShelf() {
        FutureTask<List<Scenario>> shelf = new FutureTask<>(Shelf::scenarios);
        Thread reader = new Thread(shelf, "shelf");
        reader.setDaemon(true);
        reader.start();
        return shelf;
    }

    static MainWindow window(LearnerFolder folder, Future<List<Scenario>> shelf) {
        Settings settings = folder.settings();
        Look.install(settings.dark(), settings.textSize());
        try {
            return new MainWindow(new Walk(folder, shelf.get(), Clock.systemDefaultZone(), System::nanoTime));
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
