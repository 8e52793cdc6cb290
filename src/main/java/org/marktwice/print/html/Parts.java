package org.marktwice.print.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The page's own style, script and controls, which lie beside this class. */
final class Parts {
    private Parts() {}

    static String read(String name) {
        try (InputStream in = Parts.class.getResourceAsStream(name)) {
            if (in == null) throw new IllegalStateException("no " + name + " in the program");
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}
