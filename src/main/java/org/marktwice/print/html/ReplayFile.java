package org.marktwice.print.html;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.marktwice.feedback.Replayed;
import org.marktwice.files.FileRefused;
import org.marktwice.files.Save;
import org.marktwice.print.Page;
import org.marktwice.print.Paper;
import org.marktwice.print.SheetFile;
import org.marktwice.print.Sheets;

/** An attempt to be handed on: the whole replay for a browser, or its mark sheet on paper, as the file's name says. */
public final class ReplayFile {
    private static final String EXPECTED = "expected a name that ends in .html, .pdf, .svg or .png";

    private ReplayFile() {}

    private static boolean isPage(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return name.endsWith(".html") || name.endsWith(".htm");
    }

    /** @throws FileRefused where the name tells no format: better known before anything is drawn */
    public static void check(Path file) throws FileRefused {
        if (!isPage(file) && SheetFile.named(file).isEmpty()) throw new FileRefused(file.toString(), EXPECTED);
    }

    /**
     * Saves it; an old file of that name is replaced once the new one is whole.
     *
     * @return how many pages of paper it takes; 0 for a browser's
     * @throws FileRefused where the name tells no format, or the file can't be saved
     */
    public static int save(Path file, Replayed replayed, Paper paper) throws FileRefused {
        check(file);
        if (isPage(file)) {
            Save.whole(file, ReplayPage.of(replayed));
            return 0;
        }
        List<Page> pages = Sheets.marks(replayed, paper);
        SheetFile.save(file, pages, replayed.scenario().title() + ": mark sheet");
        return pages.size();
    }
}
