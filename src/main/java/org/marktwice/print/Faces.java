package org.marktwice.print;

import java.awt.Font;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The program's own letters, within a file that is to need nothing but itself. */
public final class Faces {
    /** Tables of a font that a browser wants. Those that shape text would no longer know their letters by number. */
    private static final List<String> TABLES =
            List.of("OS/2", "cmap", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "post");

    private Faces() {}

    /** The letters that drawings are measured by. */
    public static Font regular() {
        return Type.BODY.font();
    }

    /** Both weights as style rules, with the letters that are used and no others. */
    public static String declared(String used) {
        return face("Inter", Type.REGULAR, used) + face("Inter SemiBold", Type.STRONG_FILE, used);
    }

    private static String face(String family, String file, String used) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (InputStream in = Type.file(file);
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
            TTFSubsetter letters = new TTFSubsetter(font, TABLES);
            used.codePoints().distinct().forEach(letters::add);
            letters.writeToStream(out);
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own font is whole", e);
        }
        return "@font-face{font-family:\"" + family + "\";src:url(data:font/ttf;base64,"
                + Base64.getEncoder().encodeToString(out.toByteArray()) + ")}";
    }
}
