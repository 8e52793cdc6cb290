package org.marktwice.view;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Tests in each of which somebody sits before a window of their own, with a folder of their own. */
abstract class BeforeAWindow {
    @TempDir
    Path home;

    AtTheWindow at;
    AtTheDesk desk;

    /** Puts into the folder what lies there before the window is opened; nothing, if nobody says otherwise. */
    void prepare() throws Exception {}

    @BeforeEach
    final void openTheWindow() throws Exception {
        prepare();
        at = new AtTheWindow(home);
        desk = new AtTheDesk(at);
    }

    @AfterEach
    final void closeTheWindow() {
        at.close();
    }

    /** Begins an exercise of the first page. */
    final void begin(String title) {
        at.exercise(title);
        at.click("enter");
    }
}
