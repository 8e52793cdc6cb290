package org.marktwice.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.marktwice.files.Printable;

/** Where a command's answer and its complaints go; both in UTF-8 whatever the terminal's own encoding. */
final class Console {
    private static final ObjectWriter JSON = new ObjectMapper()
            .writer(new DefaultPrettyPrinter()
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(new DefaultIndenter("  ", "\n")));

    private final PrintStream stream;
    private final PrintWriter out;
    private final PrintWriter err;
    private int progressWidth;

    Console(PrintStream out, PrintStream err) {
        this.stream = out;
        this.out = new PrintWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        this.err = new PrintWriter(new OutputStreamWriter(err, StandardCharsets.UTF_8));
    }

    PrintWriter out() {
        return out;
    }

    PrintWriter err() {
        return err;
    }

    void line(String text) {
        out.print(Printable.lines(text) + "\n");
    }

    /** A complaint is one line, whatever it is made of. */
    void complain(String text) {
        out.flush();
        err.print(Printable.of(text.replaceAll("\\p{Cntrl}+", " ")) + "\n");
        err.flush();
    }

    /** The fields keep the map's order. */
    void json(Map<String, ?> value) {
        try {
            out.print(JSON.writeValueAsString(value) + "\n");
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("maps of texts and numbers can always be written", e);
        }
    }

    void jsonList(Iterable<?> value) {
        try {
            out.print(JSON.writeValueAsString(value) + "\n");
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("maps of texts and numbers can always be written", e);
        }
    }

    /** An object too long to be held as a whole; to be closed by the caller. */
    JsonStream jsonStream() {
        return new JsonStream(JSON, out);
    }

    /** Says how far it is, over what it said last; an empty text wipes it. */
    void progress(String text) {
        out.flush();
        err.print("\r" + text + " ".repeat(Math.max(0, progressWidth - text.length())) + (text.isEmpty() ? "\r" : ""));
        err.flush();
        progressWidth = text.length();
    }

    /** Whether everything said so far went out. */
    boolean delivered() {
        err.flush();
        out.flush();
        // a print stream swallows what goes wrong and has to be asked
        return !stream.checkError();
    }
}
