package org.marktwice.picture;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3d;
import org.joml.Vector3dc;
import org.marktwice.timber.Surface;

/** Draws a board as it lies on the bench, softly shaded, with the shadow under it. */
public final class IsometricPainter {
    /** Where the light comes from, on the bench; what looks that way is lightest. */
    private static final Vector3dc LIGHT = new Vector3d(-0.32, 0.22, 0.92).normalize();

    private final SurfacePainter surfaces;

    public IsometricPainter(SurfacePainter surfaces) {
        this.surfaces = surfaces;
    }

    public void paint(Graphics2D g, BoardPicture p, Isometric view, Palette palette) {
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        shadow(own, view, palette);
        for (Surface s : view.visible()) {
            surface(own, p, s, view, palette);
        }
        arrises(own, view, palette);
        Callouts.paint(
                own,
                p.callouts(),
                view::project,
                view.bounds(),
                List.of(),
                s -> view.facing(s) > 0,
                palette,
                surfaces.font());
        own.dispose();
    }

    private void surface(Graphics2D g, BoardPicture p, Surface s, Isometric view, Palette palette) {
        Optional<BentSurface> bent = view.bent(s);
        if (bent.isPresent()) {
            bent.get().paint(g, p, surfaces, view.scale(), palette);
        } else {
            Graphics2D flat = (Graphics2D) g.create();
            flat.transform(view.transform(s));
            surfaces.paint(flat, p, s, view.scale(), palette);
            flat.dispose();
        }
        g.setColor(shade(view.normal(s)));
        g.fill(view.shape(s));
    }

    /** The less a surface looks to the light, the more of a warm dark lies on it. */
    static Color shade(Vector3dc normal) {
        double lit = Math.max(0, normal.dot(LIGHT));
        double dark = 0.24 * (1 - Math.min(1, lit / LIGHT.z()));
        return new Color(0x2A, 0x1C, 0x10, (int) Math.round(255 * dark));
    }

    private static void arrises(Graphics2D g, Isometric view, Palette palette) {
        g.setStroke(new BasicStroke(1.1f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(new Color(0x4A, 0x33, 0x1E, 190));
        for (Surface s : view.visible()) g.draw(view.shape(s));
        g.setColor(palette.of(Ink.SHADOW, 0.55));
        g.draw(view.outline());
    }

    /** A soft shadow: drawn small, blurred, and enlarged. */
    private static void shadow(Graphics2D g, Isometric view, Palette palette) {
        Path2D.Double cast = view.shadow();
        Rectangle2D b = cast.getBounds2D();
        double blur = Math.max(6, Math.min(22, 0.03 * Math.max(b.getWidth(), b.getHeight())));
        double pad = 2.5 * blur;
        double small = Math.min(1, 4 / blur);
        int w = (int) Math.ceil((b.getWidth() + 2 * pad) * small);
        int h = (int) Math.ceil((b.getHeight() + 2 * pad) * small);
        if (w < 2 || h < 2 || w > 2000 || h > 2000) return;
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_ARGB);
        Graphics2D s = image.createGraphics();
        s.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        s.scale(small, small);
        s.translate(pad - b.getX(), pad - b.getY() + blur * 0.4);
        s.setComposite(AlphaComposite.Src);
        s.setColor(palette.of(Ink.SHADOW, palette.isDark() ? 0.75 : 0.42));
        s.fill((Shape) cast);
        s.dispose();
        Blur.box(image, (int) Math.round(blur * small * 0.7), 3);
        Graphics2D under = (Graphics2D) g.create();
        under.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        AffineTransform t = AffineTransform.getTranslateInstance(b.getX() - pad, b.getY() - pad);
        t.scale(1 / small, 1 / small);
        under.drawImage(image, t, null);
        under.dispose();
    }
}
