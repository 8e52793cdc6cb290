package org.marktwice.print.html;

import java.awt.Dimension;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.marktwice.print.Page;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/** The drawings of one page: each is in the file once, as a symbol, and shown wherever it is wanted. */
final class Drawings {
    private static final String SVG = "http://www.w3.org/2000/svg";
    /** What the page's own style says, or nobody sees. */
    private static final Set<String> LEFT_OUT = Set.of(
            "text-rendering",
            "image-rendering",
            "color-rendering",
            "color-interpolation",
            "font-family",
            "font-weight",
            "font-style",
            "xml:space");

    /** A path of more letters than this is in the file once: a pencil stroke lies on a board in step after step. */
    private static final int SHARED = 120;

    private static final Pattern FIGURE = Pattern.compile("-?\\d+\\.\\d{3,}");

    private final SharedImages images = new SharedImages();
    private final Map<Object, String> ids = new LinkedHashMap<>();
    private final StringBuilder symbols = new StringBuilder();
    /** Paths long enough to be worth being shared, by what they are. */
    private final Map<String, String> paths = new LinkedHashMap<>();

    /** All symbols, and the images that they refer to. */
    String shelf() {
        StringBuilder shared = new StringBuilder();
        paths.forEach((d, id) -> shared.append("<path id=\"")
                .append(id)
                .append("\" d=\"")
                .append(d)
                .append("\"/>\n"));
        return images.elements() + shared + symbols;
    }

    /**
     * The drawing's id; it is drawn when it is first asked for.
     *
     * @param what the same for the same drawing
     */
    String id(Object what, Page drawing) {
        String known = ids.get(what);
        if (known != null) return known;
        String id = "d" + (ids.size() + 1);
        ids.put(what, id);
        symbols.append(String.format(
                Locale.ROOT,
                "<symbol id=\"%s\" viewBox=\"0 0 %.0f %.0f\"><g fill=\"black\" stroke-linecap=\"square\""
                        + " stroke-miterlimit=\"10\" font-size=\"12\">",
                id,
                drawing.width(),
                drawing.height()));
        for (Node child = drawn(id, drawing).getFirstChild(); child != null; child = child.getNextSibling()) {
            write(child);
        }
        symbols.append("</g></symbol>\n");
        return id;
    }

    private Element drawn(String id, Page drawing) {
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
        context.setComment(null);
        context.setGenericImageHandler(images);
        context.setIDGenerator(new SVGIDGenerator() {
            private int next;

            @Override
            public String generateID(String prefix) {
                return id + "-" + ++next;
            }
        });
        SVGGraphics2D g = new SVGGraphics2D(context, false);
        g.setSVGCanvasSize(new Dimension((int) Math.ceil(drawing.width()), (int) Math.ceil(drawing.height())));
        drawing.content().draw(g);
        return g.getRoot();
    }

    private static Document document() {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SVG, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("a document in memory can always be made", e);
        }
    }

    private void write(Node node) {
        if (node.getNodeType() == Node.TEXT_NODE) {
            symbols.append(Markup.escaped(node.getNodeValue()));
        }
        if (!(node instanceof Element element)) return;
        if (!element.hasChildNodes() && Set.of("g", "defs").contains(element.getTagName())) return;
        String d = shortened(element.getAttribute("d"));
        boolean shared = element.getTagName().equals("path") && d.length() > SHARED;
        String tag = shared ? "use" : element.getTagName();
        symbols.append('<').append(tag);
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) attribute((Attr) attributes.item(i), shared);
        if (shared) write("href", "#" + paths.computeIfAbsent(d, x -> "p" + (paths.size() + 1)));
        symbols.append('>');
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) write(child);
        symbols.append("</").append(tag).append('>');
    }

    private void attribute(Attr a, boolean shared) {
        if (LEFT_OUT.contains(a.getName()) || (shared && a.getName().equals("d"))) return;
        write(a.getName(), a.getName().equals("transform") ? a.getValue() : shortened(Inks.spelled(a.getValue())));
    }

    private void write(String attribute, String value) {
        symbols.append(' ')
                .append(attribute)
                .append("=\"")
                .append(Markup.escaped(value))
                .append('"');
    }

    /** Figures to a hundredth: finer isn't seen. A map keeps its places, for it is multiplied by lengths. */
    private static String shortened(String value) {
        Matcher m = FIGURE.matcher(value);
        return m.replaceAll(f -> String.format(Locale.ROOT, "%.2f", Double.parseDouble(f.group())));
    }
}
