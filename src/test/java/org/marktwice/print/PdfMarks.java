package org.marktwice.print;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Where the lines, areas and images of a PDF page stand, in points from its upper left corner, as far as they are not clipped away. */
final class PdfMarks extends PDFGraphicsStreamEngine {
    private final List<Rectangle2D> marks = new ArrayList<>();
    private final GeneralPath path = new GeneralPath();
    private final double high;

    private PdfMarks(PDPage page) {
        super(page);
        this.high = page.getMediaBox().getHeight();
    }

    /** Page by page. */
    static List<List<Rectangle2D>> of(byte[] file) {
        List<List<Rectangle2D>> all = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file)) {
            for (PDPage page : document.getPages()) {
                PdfMarks marks = new PdfMarks(page);
                marks.processPage(page);
                all.add(marks.marks);
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return all;
    }

    private void mark(Rectangle2D drawn) {
        Rectangle2D clip = getGraphicsState().getCurrentClippingPath().getBounds2D();
        // a level line has no area, and no intersection by the library's rule
        double x0 = Math.max(drawn.getMinX(), clip.getMinX());
        double x1 = Math.min(drawn.getMaxX(), clip.getMaxX());
        double y0 = Math.max(drawn.getMinY(), clip.getMinY());
        double y1 = Math.min(drawn.getMaxY(), clip.getMaxY());
        if (x1 >= x0 && y1 >= y0) marks.add(new Rectangle2D.Double(x0, high - y1, x1 - x0, y1 - y0));
    }

    private void end() {
        if (path.getCurrentPoint() != null) mark(path.getBounds2D());
        path.reset();
    }

    @Override
    public void drawImage(PDImage image) {
        AffineTransform to = getGraphicsState().getCurrentTransformationMatrix().createAffineTransform();
        mark(to.createTransformedShape(new Rectangle2D.Double(0, 0, 1, 1)).getBounds2D());
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.moveTo(p0.getX(), p0.getY());
        path.lineTo(p1.getX(), p1.getY());
        path.lineTo(p2.getX(), p2.getY());
        path.lineTo(p3.getX(), p3.getY());
        path.closePath();
    }

    @Override
    public void clip(int windingRule) {
        GeneralPath clip = (GeneralPath) path.clone();
        clip.setWindingRule(windingRule);
        getGraphicsState().intersectClippingPath(clip);
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void endPath() {
        path.reset();
    }

    @Override
    public void strokePath() {
        end();
    }

    @Override
    public void fillPath(int windingRule) {
        end();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        end();
    }

    @Override
    public void shadingFill(COSName shadingName) {}
}
