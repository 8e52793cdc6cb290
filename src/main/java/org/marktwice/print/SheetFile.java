package org.marktwice.print;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.marktwice.files.FileRefused;
import org.marktwice.files.Save;

/** Saves pages in the format that a file's name ends in. Where the format holds one page only, they lie one under the other. */
public enum SheetFile {
    PDF {
        @Override
        byte[] bytes(List<Page> pages, String title) {
            return Pdf.of(pages, title);
        }
    },
    SVG {
        @Override
        byte[] bytes(List<Page> pages, String title) {
            return Svg.of(Page.stacked(pages), title);
        }
    },
    PNG {
        @Override
        byte[] bytes(List<Page> pages, String title) {
            return Png.of(Page.stacked(pages));
        }
    };

    abstract byte[] bytes(List<Page> pages, String title);

    /** Empty where the name ends in none of them. */
    public static Optional<SheetFile> named(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        for (SheetFile one : values()) {
            if (name.endsWith("." + one.name().toLowerCase(Locale.ROOT))) return Optional.of(one);
        }
        return Optional.empty();
    }

    /** @throws FileRefused where the name tells no format: better known before the sheets are drawn */
    public static void check(Path file) throws FileRefused {
        if (named(file).isEmpty())
            throw new FileRefused(file.toString(), "expected a name that ends in .pdf, .svg or .png");
    }

    /**
     * @param title as the file itself says
     * @throws FileRefused where the name tells no format, or the file can't be saved
     */
    public static void save(Path file, List<Page> pages, String title) throws FileRefused {
        SheetFile format = named(file)
                .orElseThrow(() -> new FileRefused(file.toString(), "expected a name that ends in .pdf, .svg or .png"));
        Save.whole(file, format.bytes(pages, title));
    }
}
