package org.marktwice.print;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.marktwice.picture.Letters;

/** The kinds of writing on a sheet. */
enum Type {
    TITLE(15, true),
    HEAD(10.5, true),
    /** As large as a heading. */
    HEAD_PLAIN(10.5, false),
    BODY(9, false),
    STRONG(9, true),
    /** Rows of figures. */
    TABLE(8.2, false),
    NOTE(7.5, false),
    /** The captions in a title block. */
    CAPTION(6, false);

    static final String REGULAR = "Inter-Regular.ttf";
    static final String STRONG_FILE = "Inter-SemiBold.ttf";
    /** What text is measured by: fractions of a point count, and hinting doesn't. */
    static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

    private final Font font;

    Type(double size, boolean strong) {
        this.font = (strong ? Faces.STRONG : Faces.REGULAR).deriveFont((float) size);
    }

    Font font() {
        return font;
    }

    double size() {
        return font.getSize2D();
    }

    /** From one line to the next. */
    double leading() {
        return size() * (this == TITLE ? 1.3 : 1.38);
    }

    double width(String text) {
        return font.getStringBounds(Letters.shown(text, font), MEASURE).getWidth();
    }

    static InputStream file(String name) throws IOException {
        InputStream in = Type.class.getResourceAsStream(name);
        if (in == null) throw new IOException("no font " + name);
        return in;
    }

    private static final class Faces {
        static final Font REGULAR = load(Type.REGULAR);
        static final Font STRONG = load(STRONG_FILE);

        private static Font load(String name) {
            try (InputStream in = file(name)) {
                return Font.createFont(Font.TRUETYPE_FONT, in);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (FontFormatException e) {
                throw new IllegalStateException("the program's own font is whole", e);
            }
        }
    }
}
