package org.marktwice.picture;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.Map;
import javax.imageio.ImageIO;
import org.marktwice.drawing.Drawing;

/** The working drawings of {@link JointJobs}, to be looked at: {@code JointSheets FOLDER}. */
public final class JointSheets {
    private JointSheets() {}

    public static void main(String[] args) throws IOException {
        System.setProperty("java.awt.headless", "true");
        for (Map.Entry<String, Drawing> job : JointJobs.all().entrySet()) {
            for (int scale = 1; scale <= 2; scale++) {
                for (Palette palette : new Palette[] {Palette.LIGHT, Palette.DARK}) {
                    String name = job.getKey() + (palette.isDark() ? "-dark" : "") + (scale > 1 ? "@2" : "");
                    ImageIO.write(drawn(job.getValue(), palette, scale), "png", new File(args[0], name + ".png"));
                }
            }
        }
    }

    private static BufferedImage drawn(Drawing drawing, Palette palette, int scale) {
        BufferedImage image = new BufferedImage(1700 * scale, 620 * scale, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.scale(scale, scale);
        g.setColor(palette.of(Ink.PANEL));
        g.fillRect(0, 0, 1700, 620);
        WorkingDrawing sheet =
                WorkingDrawing.of(drawing, WorkingDrawing.Method.FIRST_ANGLE).lettered();
        sheet.paint(g, new Rectangle2D.Double(10, 10, 280, 600), null, palette, Contact.font());
        sheet.paint(g, new Rectangle2D.Double(310, 10, 580, 600), null, palette, Contact.font());
        g.translate(900, 0);
        java.awt.geom.Rectangle2D narrow = new Rectangle2D.Double(10, 10, 260, 480);
        for (JointDetail d : JointDetail.of(drawing, WorkingDrawing.Method.FIRST_ANGLE)) {
            d.paint(g, narrow, JointDetail.Enlarging.times(0.5), palette, Contact.font());
            d.paint(
                    g,
                    new Rectangle2D.Double(300, 10, 480, 400),
                    JointDetail.Enlarging.times(0.5),
                    palette,
                    Contact.font());
        }
        g.dispose();
        return image;
    }
}
