package org.marktwice.print.html;

import java.awt.Dimension;
import java.util.HashMap;
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

    /** What takes more letters than this is in the file once: a pencil stroke lies on a board in step after step. */
    private static final int SHARED = 120;

    private static final Pattern CLIP = Pattern.compile("url\\(#([^)]*)\\)");
    private static final Pattern FIGURE = Pattern.compile("-?\\d+\\.\\d{3,}");

    private final SharedImages images = new SharedImages();
    private final Map<Object, String> ids = new LinkedHashMap<>();
    private final StringBuilder symbols = new StringBuilder();
    /** What is in the file once, by what it is: paths, clips, and groups as they lie in drawing after drawing. */
    private final Map<String, String> shared = new LinkedHashMap<>();
    /** The clips of the drawing in hand, by Batik's names for them. */
    private final Map<String, String> clips = new HashMap<>();

    /** All symbols, and the images that they refer to. */
    String shelf() {
        StringBuilder all = new StringBuilder(images.elements());
        shared.forEach((what, id) -> {
            int name = what.indexOf(' ') < 0 ? what.indexOf('>') : Math.min(what.indexOf(' '), what.indexOf('>'));
            all.append(what, 0, name).append(" id=\"").append(id).append('"');
            all.append(what.substring(name)).append('\n');
        });
        return all.append(symbols).toString();
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
        clips.clear();
        for (Node child = drawn(id, drawing).getFirstChild(); child != null; child = child.getNextSibling()) {
            for (Node in = child.getFirstChild(); in != null; in = in.getNextSibling()) layer(in);
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

    /** One of the groups that a drawing consists of, or its clips. */
    private void layer(Node node) {
        if (!(node instanceof Element element)) return;
        if (element.getTagName().equals("defs")) {
            for (Node clip = node.getFirstChild(); clip != null; clip = clip.getNextSibling()) {
                if (clip instanceof Element e && e.getTagName().equals("clipPath"))
                    clips.put(e.getAttribute("id"), once("c", written(e)));
            }
            return;
        }
        String group = written(element);
        symbols.append(group.length() > SHARED ? "<use href=\"#" + once("g", group) + "\"></use>" : group);
    }

    private String once(String kind, String what) {
        return shared.computeIfAbsent(what, w -> kind + (shared.size() + 1));
    }

    private String written(Node node) {
        if (node.getNodeType() == Node.TEXT_NODE) return Markup.escaped(node.getNodeValue());
        if (!(node instanceof Element element)) return "";
        String tag = element.getTagName();
        if (!element.hasChildNodes() && tag.equals("g")) return "";
        StringBuilder out = new StringBuilder();
        String d = tag.equals("path") ? PathText.shortened(element.getAttribute("d")) : "";
        if (tag.equals("path") && d.length() > SHARED) {
            String id = once("p", "<path d=\"" + d + "\"></path>");
            out.append("<use href=\"#").append(id).append('"');
            attributes(element, "d", out);
            return out.append("></use>").toString();
        }
        out.append('<').append(tag);
        attributes(element, "id", out);
        out.append('>');
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling())
            out.append(written(child));
        return out.append("</").append(tag).append('>').toString();
    }

    private void attributes(Element element, String besides, StringBuilder out) {
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Attr a = (Attr) attributes.item(i);
            if (LEFT_OUT.contains(a.getName()) || a.getName().equals(besides)) continue;
            out.append(' ').append(a.getName()).append("=\"");
            out.append(Markup.escaped(value(a))).append('"');
        }
    }

    private String value(Attr attribute) {
        if (attribute.getName().equals("transform")) return attribute.getValue();
        if (attribute.getName().equals("d")) return PathText.shortened(attribute.getValue());
        Matcher clip = CLIP.matcher(attribute.getValue());
        if (clip.matches()) return "url(#" + clips.getOrDefault(clip.group(1), clip.group(1)) + ")";
        return shortened(Inks.spelled(attribute.getValue()));
    }

    /** Figures to a hundredth: finer isn't seen. A map keeps its places, for it is multiplied by lengths. */
    private static String shortened(String value) {
        Matcher m = FIGURE.matcher(value);
        return m.replaceAll(f -> String.format(Locale.ROOT, "%.2f", Double.parseDouble(f.group())));
    }
}
