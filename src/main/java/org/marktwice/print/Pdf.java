package org.marktwice.print;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** Pages as a PDF file: lines as lines, text as text, wood as pictures. The same pages give the same file. */
public final class Pdf {
    private static final float QUALITY = 0.88f;

    private Pdf() {}

    public static byte[] of(List<Page> pages, String title) {
        try (PDDocument document = new PDDocument()) {
            // otherwise made of the clock
            document.setDocumentId(1L);
            PDDocumentInformation about = new PDDocumentInformation();
            about.setTitle(title);
            about.setCreator("Marktwice");
            document.setDocumentInformation(about);
            PdfText text = new PdfText(document);
            Map<Image, PDImageXObject> pictures = new IdentityHashMap<>();
            for (Page page : pages) add(document, page, text, pictures);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("a file in memory can always be written", e);
        }
    }

    private static void add(PDDocument document, Page page, PdfText text, Map<Image, PDImageXObject> pictures)
            throws IOException {
        float width = (float) page.width();
        float height = (float) page.height();
        PDPage sheet = new PDPage(new PDRectangle(width, height));
        document.addPage(sheet);
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, width, height);
        g.setFontTextDrawer(text);
        g.setImageEncoder((to, stream, image, env) -> pictures.computeIfAbsent(image, i -> encoded(to, i)));
        page.content().draw(g);
        g.dispose();
        try (PDPageContentStream content = new PDPageContentStream(document, sheet)) {
            content.drawForm(g.getXFormObject());
        }
    }

    /** Wood is opaque and never flat, so that it may lose what no eye sees; whatever is seen through may not. */
    private static PDImageXObject encoded(PDDocument document, Image image) {
        BufferedImage buffered = (BufferedImage) image;
        try {
            return buffered.getColorModel().hasAlpha()
                    ? LosslessFactory.createFromImage(document, buffered)
                    : JPEGFactory.createFromImage(document, buffered, QUALITY);
        } catch (IOException e) {
            throw new UncheckedIOException("a picture in memory can always be written", e);
        }
    }
}
