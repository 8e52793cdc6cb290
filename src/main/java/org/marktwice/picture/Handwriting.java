package org.marktwice.picture;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.marktwice.timber.SurfacePoint;

/**
 * Block letters as a hand writes them on wood: single strokes, drawn for this program. Letters stand 6 units high on a
 * baseline at 0; {@code ~} begins a curve through its points, {@code ;} the next stroke.
 */
final class Handwriting {
    private static final double CAP = 6;
    private static final double GAP = 1.15;
    private static final double SPACE = 2.6;
    /** A name's height where there is room for it, millimetres. */
    private static final double HEIGHT = 9.5;

    private static final Map<Character, String> STROKES = strokes();
    /** A hand that has not learnt a letter leaves a wave in its place, so that it is seen that something stands there. */
    private static final String UNKNOWN = "~0.2,2.2 0.9,3.6 1.7,2.4 2.4,3.7 3.1,2.6";

    private static final Map<Integer, String> APART = Map.of(
            (int) 'Ø', "O", (int) 'Æ', "AE", (int) 'Œ', "OE", (int) 'Đ', "D", (int) 'Ð', "D", (int) 'Þ', "TH",
            (int) 'Ł', "L", (int) 'Ħ', "H", (int) 'ẞ', "SS", (int) 'ı', "I");

    private Handwriting() {}

    /** The height of letters on a surface, millimetres. */
    static double height(SurfaceFrame frame) {
        return Math.min(HEIGHT, 0.40 * frame.height());
    }

    /** The words in the page frame, their middle at the place, moved so that they lie on the surface. */
    static Path2D.Double written(String words, SurfaceFrame frame, SurfacePoint at) {
        Path2D.Double path = line(words);
        Rectangle2D b = path.getBounds2D();
        double size = height(frame) / CAP;
        double room = 0.92 * frame.width();
        if (b.getWidth() * size > room) size = room / b.getWidth();
        double halfW = b.getWidth() * size / 2;
        double halfH = CAP * size / 2;
        var to = frame.toPage(at);
        double x = clamp(to.x, halfW + 1, frame.width() - halfW - 1);
        double y = clamp(to.y, halfH + 1, frame.height() - halfH - 1);
        AffineTransform t = AffineTransform.getTranslateInstance(x, y);
        t.rotate(-0.022);
        t.scale(size, -size);
        t.translate(-b.getCenterX(), -CAP / 2);
        path.transform(t);
        return path;
    }

    /** In capitals without accents; Latin letters that have others inside them are taken apart. */
    private static String plain(String words) {
        String bare = Normalizer.normalize(words, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toUpperCase(Locale.ROOT);
        StringBuilder all = new StringBuilder();
        bare.codePoints().forEach(c -> all.append(APART.getOrDefault(c, Character.toString(c))));
        // a letter beyond the first plane is one letter
        return all.toString().replaceAll("[\\uD800-\\uDBFF]", "");
    }

    private static double clamp(double at, double low, double high) {
        return high < low ? (low + high) / 2 : Math.max(low, Math.min(high, at));
    }

    private static Path2D.Double line(String words) {
        Path2D.Double all = new Path2D.Double();
        double x = 0;
        int n = 0;
        for (char c : plain(words).toCharArray()) {
            String strokes = Character.isWhitespace(c) ? null : STROKES.getOrDefault(c, UNKNOWN);
            n++;
            if (strokes == null) {
                x += SPACE;
                continue;
            }
            Path2D.Double letter = letter(strokes);
            Rectangle2D b = letter.getBounds2D();
            double up = 0.35 * (ValueNoise.unit(c, 1, n) - 0.5);
            double lean = 0.10 + 0.06 * (ValueNoise.unit(c, 2, n) - 0.5);
            all.append(new AffineTransform(1, 0, lean, 1, x - b.getMinX(), up).createTransformedShape(letter), false);
            x += b.getWidth() + GAP;
        }
        if (all.getCurrentPoint() == null) all.moveTo(0, 0);
        return all;
    }

    private static Path2D.Double letter(String strokes) {
        Path2D.Double path = new Path2D.Double();
        for (String stroke : strokes.split(";", -1)) {
            String s = stroke.strip();
            boolean curve = s.startsWith("~");
            String[] pairs = (curve ? s.substring(1) : s).split(" ", -1);
            double[][] p = new double[pairs.length][];
            for (int i = 0; i < pairs.length; i++) {
                String[] xy = pairs[i].split(",", -1);
                p[i] = new double[] {Double.parseDouble(xy[0]), Double.parseDouble(xy[1])};
            }
            path.moveTo(p[0][0], p[0][1]);
            for (int i = 1; i < p.length; i++) {
                if (curve) bend(path, p, i);
                else path.lineTo(p[i][0], p[i][1]);
            }
        }
        return path;
    }

    /** A piece of a Catmull–Rom curve, which runs through its points. */
    private static void bend(Path2D.Double path, double[][] p, int i) {
        double[] before = p[Math.max(0, i - 2)];
        double[] a = p[i - 1];
        double[] b = p[i];
        double[] after = p[Math.min(p.length - 1, i + 1)];
        path.curveTo(
                a[0] + (b[0] - before[0]) / 6,
                a[1] + (b[1] - before[1]) / 6,
                b[0] - (after[0] - a[0]) / 6,
                b[1] - (after[1] - a[1]) / 6,
                b[0],
                b[1]);
    }

    private static Map<Character, String> strokes() {
        Map<Character, String> m = new HashMap<>();
        String o = "~2.1,6 0.6,5.0 0.2,3 0.8,0.8 2.1,0 3.5,0.9 4.0,3 3.4,5.2 2.0,6.1";
        String pee = "0.3,0 0.3,6;~0.2,5.9 2.8,5.8 3.5,4.6 2.8,3.2 0.3,2.8";
        m.put('A', "0,0 2,6 4,0;0.8,2.2 3.3,2.2");
        m.put('B', "0.3,0 0.3,6;~0.2,6 2.6,5.7 3,4.6 2.4,3.4 0.4,3.1;~0.4,3.1 3,2.8 3.6,1.6 2.9,0.3 0.2,0");
        m.put('C', "~3.8,5.0 2.6,6 1.0,5.4 0.2,3.2 0.8,0.8 2.2,0 3.8,0.9");
        m.put('D', "0.3,0 0.3,6;~0.2,6 2.4,5.6 3.7,4 3.6,2 2.3,0.4 0.2,0");
        m.put('E', "3.4,6 0.4,6 0.4,0 3.5,0;0.4,3.1 2.8,3.1");
        m.put('F', "3.5,6 0.4,6 0.4,0;0.4,3.1 2.8,3.1");
        m.put('G', "~3.8,5.0 2.6,6 1.0,5.4 0.2,3.2 0.8,0.8 2.2,0 3.5,0.6 3.8,2.6;3.9,2.6 2.3,2.6");
        m.put('H', "0.3,6 0.3,0;3.7,6 3.7,0;0.3,3.1 3.7,3.2");
        m.put('I', "0.5,6 0.6,0");
        m.put('J', "~2.6,6 2.6,1.6 1.8,0.1 0.6,0.2 0.1,1.3");
        m.put('K', "0.3,6 0.3,0;3.4,6 0.3,2.6;1.3,3.6 3.7,0");
        m.put('L', "0.4,6 0.4,0 3.3,0");
        m.put('M', "0.2,0 0.5,6 2.3,2.0 4.1,6 4.5,0");
        m.put('N', "0.3,0 0.3,6 3.6,0 3.6,6");
        m.put('O', o);
        m.put('P', pee);
        m.put('Q', o + ";2.6,1.4 4.1,-0.4");
        m.put('R', pee + ";1.6,2.9 3.7,0");
        m.put('S', "~3.4,5.2 2.2,6 0.8,5.5 0.6,4.2 2.0,3.2 3.4,2.0 3.1,0.5 1.7,0 0.2,0.8");
        m.put('T', "0,6 4,6;2,6 2,0");
        m.put('U', "~0.3,6 0.3,2.0 1.0,0.3 2.0,0 3.1,0.4 3.7,2.0 3.7,6");
        m.put('V', "0,6 2,0 4,6");
        m.put('W', "0,6 1.1,0 2.5,4.4 3.9,0 5,6");
        m.put('X', "0.2,6 3.8,0;3.7,6 0.1,0");
        m.put('Y', "0,6 2,3;4,6 2,3 2,0");
        m.put('Z', "0.3,6 3.7,6 0.2,0 3.8,0");
        m.put('0', "~1.8,6 0.6,5.0 0.2,3 0.7,0.8 1.8,0 3.0,0.9 3.4,3 2.9,5.2 1.7,6.1");
        m.put('1', "0.4,4.8 1.5,6 1.5,0");
        m.put('2', "~0.3,4.8 1.4,6 3.0,5.6 3.2,4.2 1.8,2.2 0.2,0;0.2,0 3.6,0");
        m.put('3', "~0.4,5.3 1.6,6 3.0,5.4 2.9,3.9 1.5,3.2;~1.5,3.2 3.3,2.7 3.4,0.9 2.0,0 0.2,0.6");
        m.put('4', "2.8,0 2.8,6 0.2,1.8 3.8,1.8");
        m.put('5', "3.2,6 0.7,6 0.5,3.3;~0.5,3.3 2.2,3.8 3.4,2.7 3.2,0.8 1.8,0 0.2,0.5");
        m.put('6', "~2.9,5.9 1.3,4.8 0.4,2.6 0.8,0.5 2.0,0 3.3,0.9 3.2,2.6 2.0,3.4 0.6,2.4");
        m.put('7', "0.2,6 3.6,6 1.4,0");
        m.put(
                '8',
                "~1.9,3.2 0.7,4.2 0.9,5.6 2.0,6 3.1,5.5 3.1,4.2 1.9,3.2 0.5,2.2 0.6,0.6 1.9,0 3.3,0.6 3.3,2.2 1.9,3.2");
        m.put('9', "~3.2,3.8 2.0,2.7 0.7,3.4 0.6,5.0 1.8,6 3.0,5.5 3.3,3.8 2.8,1.6 1.6,0");
        m.put('-', "0.4,2.9 2.4,3.0");
        m.put('.', "0.3,0 0.4,0.3");
        m.put(',', "0.5,0.3 0.2,-0.9");
        m.put('/', "0,-0.4 2.6,6.2");
        m.put('\'', "0.3,6.2 0.2,4.8");
        m.put('+', "0.2,3 3.2,3;1.7,4.5 1.7,1.5");
        return Map.copyOf(m);
    }
}
