package org.marktwice.print.html;

import java.awt.Image;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.apache.batik.svggen.DOMTreeManager;
import org.apache.batik.svggen.GenericImageHandler;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.w3c.dom.Element;

/**
 * The images of a page's drawings: each is in the file once, and drawings refer to it. The wood goes in as JPEG, whose faults
 * its figure hides and which takes a sixth of the room; what is seen through (shadows) as PNG.
 */
final class SharedImages implements GenericImageHandler {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final float QUALITY = 0.8f;

    private final Map<Image, String> known = new IdentityHashMap<>();
    /** Element by its data: the same image drawn twice is one. */
    private final Map<String, String> ids = new LinkedHashMap<>();

    private final StringBuilder elements = new StringBuilder();

    /** The images as elements that can be referred to. */
    String elements() {
        return elements.toString();
    }

    @Override
    public void setDOMTreeManager(DOMTreeManager manager) {}

    @Override
    public Element createElement(SVGGeneratorContext context) {
        return context.getDOMFactory().createElementNS(SVG, "use");
    }

    @Override
    public AffineTransform handleImage(
            Image image, Element element, int x, int y, int width, int height, SVGGeneratorContext context) {
        BufferedImage drawn = (BufferedImage) image;
        element.setAttributeNS(null, "href", "#" + known.computeIfAbsent(drawn, i -> id(drawn)));
        AffineTransform to = AffineTransform.getTranslateInstance(x, y);
        to.scale(width / (double) drawn.getWidth(), height / (double) drawn.getHeight());
        return to;
    }

    @Override
    public AffineTransform handleImage(
            RenderedImage image, Element element, int x, int y, int width, int height, SVGGeneratorContext context) {
        return handleImage((Image) image, element, x, y, width, height, context);
    }

    @Override
    public AffineTransform handleImage(
            RenderableImage image,
            Element element,
            double x,
            double y,
            double width,
            double height,
            SVGGeneratorContext context) {
        throw new UnsupportedOperationException("no painter draws one");
    }

    private String id(BufferedImage image) {
        boolean wood = !image.getColorModel().hasAlpha();
        String data = "data:image/" + (wood ? "jpeg" : "png") + ";base64,"
                + Base64.getEncoder().encodeToString(wood ? jpeg(image) : png(image));
        String known = ids.get(data);
        if (known != null) return known;
        String id = "i" + (ids.size() + 1);
        ids.put(data, id);
        elements.append("<image id=\"").append(id).append("\" width=\"").append(image.getWidth());
        elements.append("\" height=\"").append(image.getHeight()).append("\" preserveAspectRatio=\"none\" href=\"");
        elements.append(data).append("\"/>\n");
        return id;
    }

    private static byte[] png(BufferedImage image) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException("a picture in memory can always be written", e);
        }
        return out.toByteArray();
    }

    private static byte[] jpeg(BufferedImage image) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        try (MemoryCacheImageOutputStream to = new MemoryCacheImageOutputStream(out)) {
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.setOutput(to);
            writer.write(null, new IIOImage(image, null, null), how);
        } catch (IOException e) {
            throw new UncheckedIOException("a picture in memory can always be written", e);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
