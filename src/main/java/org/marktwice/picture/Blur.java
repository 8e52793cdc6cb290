package org.marktwice.picture;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** Blurs the opacity of a picture of one colour; a few box blurs come close to a bell. */
final class Blur {
    private Blur() {}

    /** @param image TYPE_INT_ARGB, of one colour in different opacities; changed in place */
    static void box(BufferedImage image, int radius, int times) {
        int w = image.getWidth();
        int h = image.getHeight();
        int[] data = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        // where it is most opaque: towards its edge rounding falsifies the colour
        int most = 0;
        for (int p : data) if (p >>> 24 > most >>> 24) most = p;
        int colour = most & 0xFFFFFF;
        int[] a = new int[data.length];
        int[] b = new int[data.length];
        for (int i = 0; i < data.length; i++) a[i] = data[i] >>> 24 << 8;
        for (int t = 0; t < times; t++) {
            for (int y = 0; y < h; y++) line(a, b, y * w, 1, w, radius);
            for (int x = 0; x < w; x++) line(b, a, x, w, h, radius);
        }
        for (int i = 0; i < data.length; i++) data[i] = a[i] >> 8 << 24 | colour;
    }

    private static void line(int[] from, int[] to, int start, int step, int n, int radius) {
        int sum = 0;
        int wide = 2 * radius + 1;
        for (int i = 0; i < Math.min(radius, n); i++) sum += from[start + i * step];
        for (int i = 0; i < n; i++) {
            if (i + radius < n) sum += from[start + (i + radius) * step];
            if (i - radius - 1 >= 0) sum -= from[start + (i - radius - 1) * step];
            to[start + i * step] = sum / wide;
        }
    }
}
