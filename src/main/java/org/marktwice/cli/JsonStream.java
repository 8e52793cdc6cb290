package org.marktwice.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.ObjectWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;

/** A JSON object written as it comes, so that a long list in it is never held as a whole. */
final class JsonStream implements AutoCloseable {
    private final JsonGenerator generator;
    private final PrintWriter out;

    JsonStream(ObjectWriter json, PrintWriter out) {
        this.out = out;
        try {
            generator = json.createGenerator((Writer) out);
            generator.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            generator.disable(JsonGenerator.Feature.FLUSH_PASSED_TO_STREAM);
            generator.writeStartObject();
        } catch (IOException e) {
            throw trouble(e);
        }
    }

    void field(String name, Object value) {
        try {
            generator.writePOJOField(name, value);
        } catch (IOException e) {
            throw trouble(e);
        }
    }

    void list(String name) {
        try {
            generator.writeArrayFieldStart(name);
        } catch (IOException e) {
            throw trouble(e);
        }
    }

    void item(Object value) {
        try {
            generator.writePOJO(value);
        } catch (IOException e) {
            throw trouble(e);
        }
    }

    void endList() {
        try {
            generator.writeEndArray();
        } catch (IOException e) {
            throw trouble(e);
        }
    }

    @Override
    public void close() {
        try {
            generator.close();
            out.print("\n");
        } catch (IOException e) {
            throw trouble(e);
        }
    }

    /** A print writer keeps its troubles to itself until it is asked. */
    private static UncheckedIOException trouble(IOException e) {
        return new UncheckedIOException(e);
    }
}
