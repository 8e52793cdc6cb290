package org.marktwice.view;

import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.time.Clock;
import java.util.concurrent.CountDownLatch;
import javax.swing.SwingUtilities;

/** Opens the window. */
public final class Launch {
    private Launch() {}

    /** Opens the main window, and returns when it is closed. */
    public static void open() {
        CountDownLatch closed = new CountDownLatch(1);
        SwingUtilities.invokeLater(() -> {
            LearnerFolder folder = LearnerFolder.ofThisUser();
            Settings settings = folder.settings();
            Look.install(settings.dark(), settings.textSize());
            MainWindow window =
                    new MainWindow(new Walk(folder, Shelf.scenarios(), Clock.systemDefaultZone(), System::nanoTime));
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
}
