package org.marktwice.view;

import java.time.Clock;
import javax.swing.SwingUtilities;

/** Opens the window. */
public final class Launch {
    private Launch() {}

    /** Opens the main window on the event thread, and returns at once; the program ends when it is closed. */
    public static void open() {
        SwingUtilities.invokeLater(() -> {
            LearnerFolder folder = LearnerFolder.ofThisUser();
            Settings settings = folder.settings();
            Look.install(settings.dark(), settings.textSize());
            new MainWindow(new Walk(folder, Shelf.scenarios(), Clock.systemUTC(), System::nanoTime)).setVisible(true);
        });
    }
}
