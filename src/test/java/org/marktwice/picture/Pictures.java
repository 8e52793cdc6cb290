package org.marktwice.picture;

import java.awt.image.BufferedImage;

/** Compares pictures. */
final class Pictures {
    private Pictures() {}

    /** How far two colours are apart: the mean over the three channels, 0 to 255. */
    static double difference(int a, int b) {
        int sum = 0;
        for (int shift = 0; shift <= 16; shift += 8) sum += Math.abs(((a >> shift) & 255) - ((b >> shift) & 255));
        return sum / 3.0;
    }

    static double meanDifference(BufferedImage a, BufferedImage b) {
        int w = Math.min(a.getWidth(), b.getWidth());
        int h = Math.min(a.getHeight(), b.getHeight());
        double sum = 0;
        for (int i = 0; i < w * h; i++) sum += difference(a.getRGB(i % w, i / w), b.getRGB(i % w, i / w));
        return sum / (w * h);
    }

    static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    /** Each four pixels' mean. */
    static BufferedImage halved(BufferedImage image) {
        int w = image.getWidth() / 2;
        int h = image.getHeight() / 2;
        BufferedImage out = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int rgb = 0;
                for (int shift = 0; shift <= 16; shift += 8) {
                    int sum = 2;
                    for (int q = 0; q < 4; q++) sum += (image.getRGB(2 * x + (q & 1), 2 * y + (q >> 1)) >> shift) & 255;
                    rgb |= sum / 4 << shift;
                }
                out.setRGB(x, y, rgb);
            }
        }
        return out;
    }
}
