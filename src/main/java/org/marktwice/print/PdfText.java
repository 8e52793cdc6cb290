package org.marktwice.print;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Writes text as text in the program's own font, of which the file gets the letters that it uses. */
final class PdfText extends PdfBoxGraphics2DFontTextDrawer {
    private final PDFont regular;
    private final PDFont strong;

    PdfText(PDDocument document) throws IOException {
        this.regular = embedded(document, Type.REGULAR);
        this.strong = embedded(document, Type.STRONG_FILE);
    }

    private static PDFont embedded(PDDocument document, String name) throws IOException {
        try (InputStream in = Type.file(name)) {
            return PDType0Font.load(document, in, true);
        }
    }

    @Override
    protected PDFont mapFont(Font font, IFontTextDrawerEnv env) {
        return font.isBold() || font.getFontName().contains("Semi") ? strong : regular;
    }
}
