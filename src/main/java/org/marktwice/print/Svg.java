package org.marktwice.print;

import java.awt.Dimension;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.awt.image.RenderedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.DefaultImageHandler;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A page as a vector drawing, its pictures and its letters within it. Text stays text. */
public final class Svg {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final String XLINK = "http://www.w3.org/1999/xlink";

    private Svg() {}

    public static byte[] of(Page page, String title) {
        try {
            Document document = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(NAMESPACE, "svg", null);
            SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
            context.setComment(null);
            context.setImageHandler(new Within());
            SVGGraphics2D g = new SVGGraphics2D(context, false);
            g.setSVGCanvasSize(new Dimension((int) Math.ceil(page.width()), (int) Math.ceil(page.height())));
            page.content().draw(g);
            Element root = g.getRoot();
            root.setAttributeNS(null, "width", length(page.width()));
            root.setAttributeNS(null, "height", length(page.height()));
            root.setAttributeNS(
                    null, "viewBox", String.format(Locale.ROOT, "0 0 %.3f %.3f", page.width(), page.height()));
            Element named = document.createElementNS(NAMESPACE, "title");
            named.setTextContent(title);
            root.insertBefore(faces(document, root), root.getFirstChild());
            root.insertBefore(named, root.getFirstChild());
            StringWriter out = new StringWriter();
            g.stream(root, out, false, false);
            return sans(out.toString()).getBytes(StandardCharsets.UTF_8);
        } catch (ParserConfigurationException | IOException e) {
            throw new IllegalStateException("a drawing in memory can always be written", e);
        }
    }

    private static String length(double points) {
        return String.format(Locale.ROOT, "%.3fmm", points * 25.4 / 72);
    }

    /** The letters that are used, within the file; a program that takes no fonts from a file shows another sans. */
    private static Element faces(Document document, Element root) {
        Element style = document.createElementNS(NAMESPACE, "style");
        style.setTextContent(Faces.declared(root.getTextContent()));
        return style;
    }

    /** With other sans for programs that don't take the letters, and without a document type that would have to be fetched. */
    private static String sans(String svg) {
        return svg.replaceFirst("<!DOCTYPE[^>]*>\\s*", "")
                .replaceAll(
                        "\"'Inter[^\"']*Semi[^\"']*'\"", "\"'Inter SemiBold', Inter, Helvetica, Arial, sans-serif\"")
                .replaceAll("\"'Inter'\"", "\"Inter, Helvetica, Arial, sans-serif\"");
    }

    /** Puts pictures into the file itself. */
    private static final class Within extends DefaultImageHandler {
        @Override
        protected void handleHREF(Image image, Element element, SVGGeneratorContext context) {
            put(element, (BufferedImage) image);
        }

        @Override
        protected void handleHREF(RenderedImage image, Element element, SVGGeneratorContext context) {
            put(element, image);
        }

        private static void put(Element element, RenderedImage image) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            try {
                ImageIO.write(image, "png", out);
            } catch (IOException e) {
                throw new UncheckedIOException("a picture in memory can always be written", e);
            }
            String data = "data:image/png;base64," + Base64.getEncoder().encodeToString(out.toByteArray());
            element.setAttributeNS(XLINK, "xlink:href", data);
        }
    }
}
