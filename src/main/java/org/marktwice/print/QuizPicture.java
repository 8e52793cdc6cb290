package org.marktwice.print;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.marktwice.picture.Figures;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.quiz.Picture;
import org.marktwice.quiz.PicturePainter;
import org.marktwice.timber.Size;

/** Pictures of quiz questions on paper: lines as lines, drawn finer than on a screen. */
final class QuizPicture {
    private static final double MOST = 400;

    /** Of what is drawn as an image, for each point: 324 an inch. */
    private static final double DOTS = 4.5;

    /** What the names beside an unrolled board take of the width. */
    private static final double NAMES = 206;

    private final double unit;
    private final SurfacePainter painter;

    /** @param unit a pixel of the painters' on the page, points */
    QuizPicture(Figures wood, double unit) {
        this.unit = unit;
        this.painter = new SurfacePainter(wood, font(unit));
    }

    private static Font font(double unit) {
        return Type.BODY.font().deriveFont((float) (Math.min(Type.BODY.size(), 13.5 * unit) / unit));
    }

    /** The height that a picture wants in a column of this width, points. */
    double height(Picture picture, double width) {
        return Math.min(MOST, wants(picture, width / unit)) * unit;
    }

    /** In pixels of the painters'. */
    private static double wants(Picture picture, double width) {
        double form = PicturePainter.form(picture);
        if (picture instanceof Picture.Lying) return Math.min(width > 400 ? 230 : 170, 1.1 * width / form);
        if (picture instanceof Picture.Job) return Math.min(250, 1.1 * width / form);
        if (picture instanceof Picture.Unrolled unrolled) return unrolled(unrolled, width);
        if (picture instanceof Picture.SquareOn square) {
            boolean part = square.low() > 0;
            return part ? Math.min(260, width / form) : Math.max(90, Math.min(175, 0.62 * width / form + 50));
        }
        List<Double> all = ((Picture.Beside) picture)
                .pictures().stream().map(p -> wants(p, width)).toList();
        Picture.Beside beside = (Picture.Beside) picture;
        if (beside.pictures().stream().anyMatch(p -> p instanceof Picture.Job)) return 300;
        boolean flat = beside.isStacked() || beside.pictures().stream().anyMatch(p -> p instanceof Picture.Unrolled);
        return flat
                ? all.stream().mapToDouble(Double::doubleValue).sum()
                : all.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }

    /** As high as the strips come in this width, but so high that the ends' names have room under each other. */
    private static double unrolled(Picture.Unrolled picture, double width) {
        Size size = picture.board().board().size();
        double scale = Math.max(0.1, (width - NAMES) / (size.length() + size.width()));
        double strips = 2 * (size.width() + size.thickness()) * scale + 30;
        double ends = 2 * size.thickness() * scale + 140;
        return Math.max(Math.min(244, strips), ends) + 10 + (picture.caption() == null ? 0 : 28);
    }

    void draw(Pen pen, Picture picture, Rectangle2D place) {
        if (isBent(picture)) {
            pen.g.drawImage(
                    painted(picture, place),
                    new AffineTransform(1 / DOTS, 0, 0, 1 / DOTS, place.getX(), place.getY()),
                    null);
        } else {
            paint(pen.g, picture, place);
        }
    }

    /** A bent board is drawn in many small pieces, between which a printer would show seams. */
    private static boolean isBent(Picture picture) {
        return picture instanceof Picture.Lying lying && lying.settled() != null
                || picture instanceof Picture.Beside beside
                        && beside.pictures().stream().anyMatch(QuizPicture::isBent);
    }

    private BufferedImage painted(Picture picture, Rectangle2D place) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(place.getWidth() * DOTS),
                (int) Math.ceil(place.getHeight() * DOTS),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(DOTS, DOTS);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        paint(g, picture, new Rectangle2D.Double(0, 0, place.getWidth(), place.getHeight()));
        g.dispose();
        return image;
    }

    private void paint(Graphics2D page, Picture picture, Rectangle2D place) {
        Graphics2D g = (Graphics2D) page.create();
        // notes beside a board keep within what is clipped
        g.clip(place);
        g.scale(unit, unit);
        Rectangle2D fine = new Rectangle2D.Double(
                place.getX() / unit, place.getY() / unit, place.getWidth() / unit, place.getHeight() / unit);
        PicturePainter.in(picture, fine, painter.font()).paint(g, painter, Pen.PALETTE, null);
        g.dispose();
    }

    Block block(Picture picture, double width) {
        return Blocks.picture(height(picture, width), (pen, place) -> draw(pen, picture, place), null);
    }
}
