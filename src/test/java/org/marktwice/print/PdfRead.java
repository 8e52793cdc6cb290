package org.marktwice.print;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * What a PDF file says, page by page.
 *
 * @param texts with blanks and line ends made one blank
 * @param places where each page's letters stand, in points from its upper left corner
 * @param sizes of the pages, points
 */
record PdfRead(List<String> texts, List<List<Rectangle2D>> places, List<PDRectangle> sizes) {

    static PdfRead of(byte[] file) {
        List<String> texts = new ArrayList<>();
        List<List<Rectangle2D>> places = new ArrayList<>();
        List<PDRectangle> sizes = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                List<Rectangle2D> letters = new ArrayList<>();
                PDFTextStripper stripper = new PDFTextStripper() {
                    @Override
                    protected void processTextPosition(TextPosition text) {
                        letters.add(place(text));
                        super.processTextPosition(text);
                    }
                };
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                stripper.setSortByPosition(true);
                texts.add(stripper.getText(document).replaceAll("\\s+", " ").strip());
                places.add(letters);
                sizes.add(document.getPage(page - 1).getMediaBox());
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return new PdfRead(texts, places, sizes);
    }

    /** Of a letter that reads across the page, or up it. */
    private static Rectangle2D place(TextPosition text) {
        double wide = text.getWidthDirAdj();
        double high = text.getHeightDir();
        return text.getDir() == 90
                ? new Rectangle2D.Double(text.getX() - high, text.getY() - wide, high, wide)
                : new Rectangle2D.Double(text.getXDirAdj(), text.getYDirAdj() - high, wide, high);
    }

    String all() {
        return String.join(" ", texts);
    }
}
