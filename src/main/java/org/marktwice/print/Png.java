package org.marktwice.print;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** A page as a picture. */
public final class Png {
    /** Dots an inch that a page is drawn in where nothing else is asked for. */
    public static final int DOTS = 200;

    private Png() {}

    public static byte[] of(Page page) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image(page, DOTS), "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException("a file in memory can always be written", e);
        }
        return out.toByteArray();
    }

    /** @param dots an inch */
    public static BufferedImage image(Page page, int dots) {
        double scale = dots / 72.0;
        BufferedImage image = new BufferedImage(
                (int) Math.round(page.width() * scale),
                (int) Math.round(page.height() * scale),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        g.scale(scale, scale);
        page.content().draw(g);
        g.dispose();
        return image;
    }
}
