package org.marktwice.print;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Sheets as pictures again: {@code Rendered FILE.pdf|FILE.svg FOLDER [DOTS]} writes every page as a PNG. */
public final class Rendered {
    private Rendered() {}

    public static void main(String[] args) throws IOException {
        System.setProperty("java.awt.headless", "true");
        Path file = Path.of(args[0]);
        int dots = args.length > 2 ? Integer.parseInt(args[2]) : 100;
        byte[] bytes = Files.readAllBytes(file);
        List<BufferedImage> pages = args[0].endsWith(".svg") ? List.of(svg(bytes, dots)) : pdf(bytes, dots);
        String name = String.valueOf(file.getFileName()).replace('.', '-');
        for (int i = 0; i < pages.size(); i++) {
            ImageIO.write(pages.get(i), "png", new File(args[1], name + "-" + (i + 1) + ".png"));
        }
    }

    static List<BufferedImage> pdf(byte[] bytes, int dots) throws IOException {
        try (PDDocument document = Loader.loadPDF(bytes)) {
            PDFRenderer renderer = new PDFRenderer(document);
            List<BufferedImage> pages = new ArrayList<>();
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                pages.add(renderer.renderImageWithDPI(i, dots, ImageType.RGB));
            }
            return pages;
        }
    }

    /** Without the letters within the file, which this renderer can't read. */
    static BufferedImage svg(byte[] file, int dots) {
        String text = new String(file, StandardCharsets.UTF_8);
        int style = text.indexOf("<style");
        int end = text.indexOf("</style");
        byte[] bytes = (text.substring(0, style) + text.substring(text.indexOf('>', end) + 1))
                .getBytes(StandardCharsets.UTF_8);
        SVGDocument document = Objects.requireNonNull(
                new SVGLoader().load(new ByteArrayInputStream(bytes), null, LoaderContext.createDefault()));
        // a CSS pixel is a 96th of an inch
        double scale = dots / 96.0;
        int w = (int) Math.round(document.size().width * scale);
        int h = (int) Math.round(document.size().height * scale);
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, w, h);
        g.scale(scale, scale);
        document.render(null, g);
        g.dispose();
        return image;
    }
}
