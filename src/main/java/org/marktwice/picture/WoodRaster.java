package org.marktwice.picture;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Arrays;
import org.joml.Vector3dc;
import org.jspecify.annotations.Nullable;

/**
 * A picture of solids with a depth for each pixel, so that of parts that stand in each other's wood each shows where it is in
 * front, from wherever they are looked at.
 */
final class WoodRaster {
    private static final float NOTHING = Float.NEGATIVE_INFINITY;
    /** An edge is not hidden by the sides that it bounds, though their depth changes within a pixel. */
    private static final double BESIDE = 2.2;

    private final int width;
    private final int height;
    private final BufferedImage image;
    private final int[] pixels;
    private final float[] depth;
    private final byte[] owner;

    /** A side's own picture. @param u0 the surface's coordinate at its corner, so {@code v0}; @param du pixels for a millimetre, so {@code dv} */
    record Texture(int[] pixels, int width, int height, double u0, double v0, double du, double dv) {
        static Texture of(BufferedImage of, double u0, double v0, double du, double dv) {
            return new Texture(
                    ((DataBufferInt) of.getRaster().getDataBuffer()).getData(),
                    of.getWidth(),
                    of.getHeight(),
                    u0,
                    v0,
                    du,
                    dv);
        }
    }

    /** How a side is coloured: its picture shaded, and mixed with another colour. */
    record Skin(Texture texture, Color shade, Color over, double share) {}

    WoodRaster(int width, int height) {
        this.width = Math.max(1, width);
        this.height = Math.max(1, height);
        image = new BufferedImage(this.width, this.height, BufferedImage.TYPE_INT_ARGB);
        pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        depth = new float[this.width * this.height];
        owner = new byte[depth.length];
        Arrays.fill(depth, NOTHING);
        Arrays.fill(owner, (byte) -1);
    }

    BufferedImage image() {
        return image;
    }

    /** Which solid is seen at a pixel; −1 for none. */
    int owner(double x, double y) {
        int i = (int) Math.floor(x);
        int j = (int) Math.floor(y);
        return i < 0 || j < 0 || i >= width || j >= height ? -1 : owner[j * width + i];
    }

    /**
     * @param uv the corners on the side's texture, millimetres of its surface
     * @param of the solid's number
     */
    void fill(FitCamera.View view, Vector3dc[] corners, double[][] uv, Skin skin, int of) {
        double[][] p = new double[4][];
        for (int i = 0; i < 4; i++) {
            Point2D.Double at = view.at(corners[i]);
            p[i] = new double[] {at.x, at.y, view.near(corners[i]), uv[i][0], uv[i][1]};
        }
        triangle(p[0], p[1], p[2], skin, of);
        triangle(p[0], p[2], p[3], skin, of);
    }

    private void triangle(double[] a, double[] b, double[] c, Skin skin, int of) {
        double area = (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
        if (Math.abs(area) < 1e-9) return;
        int top = (int) Math.max(0, Math.ceil(Math.min(a[1], Math.min(b[1], c[1])) - 0.5));
        int bottom = (int) Math.min(height - 1.0, Math.floor(Math.max(a[1], Math.max(b[1], c[1])) - 0.5));
        // depth and texture change evenly over a flat side
        double[] perX = new double[5];
        double[] perY = new double[5];
        for (int i = 2; i < 5; i++) {
            perX[i] = ((b[i] - a[i]) * (c[1] - a[1]) - (c[i] - a[i]) * (b[1] - a[1])) / area;
            perY[i] = ((c[i] - a[i]) * (b[0] - a[0]) - (b[i] - a[i]) * (c[0] - a[0])) / area;
        }
        Shading shading = new Shading(skin);
        for (int y = top; y <= bottom; y++) {
            double row = y + 0.5;
            double left = Double.POSITIVE_INFINITY;
            double right = Double.NEGATIVE_INFINITY;
            double[][] corners = {a, b, c};
            for (int i = 0; i < 3; i++) {
                double[] p = corners[i];
                double[] q = corners[(i + 1) % 3];
                if (Math.abs(q[1] - p[1]) < 1e-12) continue;
                if (row < Math.min(p[1], q[1]) || row > Math.max(p[1], q[1])) continue;
                double x = p[0] + (q[0] - p[0]) * (row - p[1]) / (q[1] - p[1]);
                left = Math.min(left, x);
                right = Math.max(right, x);
            }
            int from = (int) Math.max(0, Math.ceil(left - 0.5));
            int to = (int) Math.min(width - 1.0, Math.ceil(right - 0.5) - 1);
            if (from > to) continue;
            double dx = from + 0.5 - a[0];
            double dy = row - a[1];
            double z = a[2] + dx * perX[2] + dy * perY[2];
            double u = a[3] + dx * perX[3] + dy * perY[3];
            double v = a[4] + dx * perX[4] + dy * perY[4];
            int at = y * width + from;
            for (int x = from; x <= to; x++, at++) {
                if (z > depth[at]) {
                    depth[at] = (float) z;
                    owner[at] = (byte) of;
                    pixels[at] = shading.at(u, v);
                }
                z += perX[2];
                u += perX[3];
                v += perX[4];
            }
        }
    }

    /** Reads a texture and colours it. */
    private static final class Shading {
        private final Texture texture;
        private final int[][] mixed = new int[3][256];

        Shading(Skin skin) {
            texture = skin.texture();
            for (int i = 0; i < 256; i++) {
                mixed[0][i] = mixed(i, skin.shade().getRed(), skin.over().getRed(), skin);
                mixed[1][i] = mixed(i, skin.shade().getGreen(), skin.over().getGreen(), skin);
                mixed[2][i] = mixed(i, skin.shade().getBlue(), skin.over().getBlue(), skin);
            }
        }

        private static int mixed(int value, int shade, int over, Skin skin) {
            double dark = skin.shade().getAlpha() / 255.0;
            double shaded = value + (shade - value) * dark;
            return (int) Math.round(shaded + (over - shaded) * skin.share());
        }

        /** Between the four nearest pixels of the texture. */
        int at(double u, double v) {
            double x = (u - texture.u0()) * texture.du() - 0.5;
            double y = (v - texture.v0()) * texture.dv() - 0.5;
            int i = (int) Math.floor(x);
            int j = (int) Math.floor(y);
            int fx = (int) ((x - i) * 256);
            int fy = (int) ((y - j) * 256);
            int i0 = within(i, texture.width());
            int i1 = within(i + 1, texture.width());
            int r0 = within(j, texture.height()) * texture.width();
            int r1 = within(j + 1, texture.height()) * texture.width();
            int[] p = texture.pixels();
            int rgb = 0;
            for (int shift = 0; shift <= 16; shift += 8) {
                int top = (p[r0 + i0] >> shift & 255) * (256 - fx) + (p[r0 + i1] >> shift & 255) * fx;
                int low = (p[r1 + i0] >> shift & 255) * (256 - fx) + (p[r1 + i1] >> shift & 255) * fx;
                int value = (top * (256 - fy) + low * fy) >> 16;
                rgb |= mixed[2 - shift / 8][value] << shift;
            }
            return 0xFF000000 | rgb;
        }

        private static int within(int i, int size) {
            return i < 0 ? 0 : i >= size ? size - 1 : i;
        }
    }

    /** Adds a line's pieces. @param hidden null where these are not wanted */
    void trace(FitCamera.View view, Vector3dc from, Vector3dc to, Path2D.Double seen, Path2D.@Nullable Double hidden) {
        Point2D.Double a = view.at(from);
        Point2D.Double b = view.at(to);
        double za = view.near(from);
        double zb = view.near(to);
        int steps = (int) Math.max(1, Math.ceil(a.distance(b)));
        boolean before = isSeen(a.x, a.y, za);
        double start = 0;
        for (int i = 1; i <= steps; i++) {
            double t = (double) i / steps;
            boolean now = isSeen(a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t, za + (zb - za) * t);
            if (now == before && i < steps) continue;
            Path2D.Double path = before ? seen : hidden;
            double end = now == before ? 1 : t;
            if (path != null && end > start) {
                path.moveTo(a.x + (b.x - a.x) * start, a.y + (b.y - a.y) * start);
                path.lineTo(a.x + (b.x - a.x) * end, a.y + (b.y - a.y) * end);
            }
            start = end;
            before = now;
        }
    }

    boolean isSeen(double x, double y, double z) {
        int i = (int) Math.floor(x);
        int j = (int) Math.floor(y);
        if (i < 0 || j < 0 || i >= width || j >= height) return true;
        return z + BESIDE >= depth[j * width + i];
    }
}
